namespace CamPower.Files.Formats;

/// <summary>A unit and how it is spelt; the first spelling is the one that is written.</summary>
internal sealed class UnitSpelling<TUnit>(TUnit unit, params string[] spellings)
{
    internal TUnit Unit { get; } = unit;

    internal string[] Spellings { get; } = spellings;
}
