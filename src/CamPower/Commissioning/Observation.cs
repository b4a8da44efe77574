namespace CamPower.Commissioning;

/// <summary>One reading as the diagnosis takes it: at which point of which unit, and how well it is known. SI doubles.</summary>
internal readonly struct Observation(int unit, int point, double value, double sigma)
{
    internal int Unit { get; } = unit;

    internal int Point { get; } = point;

    internal double Value { get; } = value;

    /// <summary>Standard deviation of what differs from one reading to the next: digits, contact. [the unit of the value]</summary>
    internal double Sigma { get; } = sigma;
}
