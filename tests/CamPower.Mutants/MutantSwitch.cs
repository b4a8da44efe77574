using System;
using System.Linq;
using System.Reflection;

namespace CamPower.Mutants;

/// <summary>Switches one mutant of the loaded library on, and asks which were reached: fields of the code in it.</summary>
internal static class MutantSwitch
{
    /// <summary>The type that Stryker adds to the library.</summary>
    public const string Type = "MutantControl";

    /// <summary>More than any library has mutants.</summary>
    public const int Most = 1 << 17;

    private const int None = -1;

    private static readonly FieldInfo Active = Field(Rewriting.Active), Reached = Field(Rewriting.Reached);

    public static void Set(int mutant) => Active.SetValue(null, mutant);

    public static void Clear() => Set(None);

    /// <summary>From now on each mutant that is reached, on or off, is noted in the array.</summary>
    public static void Record(bool[]? reached) => Reached.SetValue(null, reached);

    private static FieldInfo Field(string name) =>
        typeof(Cable).Assembly.GetTypes().SingleOrDefault(t => t.Name == Type)?.GetField(name, BindingFlags.Public | BindingFlags.Static)
        ?? throw new InvalidOperationException($"The library is no mutated one, or its switch has no {name}: another Stryker?");
}
