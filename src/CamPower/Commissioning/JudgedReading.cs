namespace CamPower.Commissioning;

/// <summary>A line of a record: what was expected, what was read, and the verdict.</summary>
/// <remarks>Immutable.</remarks>
public sealed class JudgedReading
{
    internal JudgedReading(ExpectedReading expected, MeterReading? reading)
    {
        Expected = expected;
        Reading = reading;
        Verdict = reading is null ? ReadingVerdict.NotRead : expected.Judge(reading);
    }

    /// <summary>What was expected.</summary>
    public ExpectedReading Expected { get; }

    /// <summary>What was read, or null where it was not.</summary>
    public MeterReading? Reading { get; }

    /// <summary>What the reading says.</summary>
    public ReadingVerdict Verdict { get; }

    /// <summary>Point and verdict; never throws.</summary>
    public override string ToString() => $"{Expected.Point}: {ReadingWords.Of(Verdict)}";
}
