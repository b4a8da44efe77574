using System.Globalization;

namespace CamPower.Mutants;

/// <summary>One change to the library that Stryker made.</summary>
/// <param name="Id">The number that switches it on.</param>
/// <param name="Room">The folder of src/CamPower that it is in.</param>
/// <param name="File">The file, from src/CamPower, with forward slashes.</param>
/// <param name="Line">The line that it begins on.</param>
/// <param name="Original">What the source says, on one line.</param>
/// <param name="Mutated">What it says instead, on one line.</param>
internal sealed record Mutant(int Id, string Room, string File, int Line, string Original, string Mutated)
{
    /// <summary>The line of a list: file, line, original and mutated with tabs between.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}\t{Line}\t{Original}\t{Mutated}");
}
