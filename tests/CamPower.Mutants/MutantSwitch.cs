using System;
using System.Linq;
using System.Reflection;

namespace CamPower.Mutants;

/// <summary>Switches one mutant of the loaded library on: the field that Stryker's own code in it reads.</summary>
internal static class MutantSwitch
{
    private const int None = -1;

    private static readonly FieldInfo Field = Control().GetField("ActiveMutant", BindingFlags.Public | BindingFlags.Static)
        ?? throw new InvalidOperationException("Stryker's switch has no field ActiveMutant: another version of it?");

    public static void Set(int mutant) => Field.SetValue(null, mutant);

    public static void Clear() => Set(None);

    private static Type Control() => typeof(Cable).Assembly.GetTypes().SingleOrDefault(t => t.Name == "MutantControl")
        ?? throw new InvalidOperationException("The loaded library is not a mutated one.");
}
