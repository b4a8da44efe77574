namespace CamPower.Tests.Circuits.Alternating;

/// <summary>One run of a case: the run that feeds it, or -1 for the winding, and its loop. [Ω, H]</summary>
internal sealed record AlternatingRun(int Parent, double Ohms, double Henries = 0);
