namespace CamPower.Commissioning;

/// <summary>One way to explain the readings: nothing, one cause of a size, or two.</summary>
internal sealed class Explanation(Hypothesis? first, Hypothesis? second, Deviation[] faults, double logWeight)
{
    internal Hypothesis? First { get; } = first;

    internal Hypothesis? Second { get; } = second;

    /// <summary>The faults in the model.</summary>
    internal Deviation[] Faults { get; } = faults;

    internal double LogWeight { get; } = logWeight;

    /// <summary>How likely it is, once all are known.</summary>
    internal double Probability { get; set; }
}
