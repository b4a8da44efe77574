namespace CamPower.Reports.Charts;

/// <summary>One line of a chart of volts along a way.</summary>
internal sealed record VoltageAlongLine(string Whose, string Label, VoltageProfile Profile, VoltageRange? Accepted)
{
    internal double EndVolts => Profile.Points[^1].Voltage.Volts;
}
