using System;
using System.Collections.Generic;

namespace CamPower.Files.Formats;

/// <summary>A unit and how it is spelled in a file; the first spelling is the one that is written.</summary>
/// <remarks>A class: code for lists of it is compiled once, not once for each unit, so that a program starts sooner.</remarks>
internal sealed class SpelledUnit<TUnit>(TUnit unit, params string[] spellings)
    where TUnit : struct, Enum
{
    internal TUnit Unit { get; } = unit;
    internal IReadOnlyList<string> Spellings { get; } = spellings;
    internal string Written => Spellings[0];
}
