namespace CamPower.Tests.Circuits.Alternating;

/// <summary>One device of a case: at the end of which run, how many diodes (0 for linear), what it takes.</summary>
internal sealed record AlternatingDevice(int Run, int Diodes, double Watts, double Farads = 0, double PowerFactor = 1, bool IsReversed = false, double Siemens = 0);
