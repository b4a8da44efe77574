namespace CamPower.Circuits;

/// <summary>The components of one load, scaled, as the solvers read them.</summary>
internal struct LoadRow
{
    /// <summary>Constant power. [W]</summary>
    internal double Watts;

    /// <summary>Constant current. [A]</summary>
    internal double Amperes;

    /// <summary>Constant resistance, as a conductance. [S]</summary>
    internal double Siemens;

    /// <summary>Constant power before it was scaled: how fast it grows with the scale. [W]</summary>
    internal double WattsPerScale;

    /// <summary>Current at a voltage. [A]</summary>
    internal readonly double AmperesAt(double volts) => (Watts / volts) + Amperes + (Siemens * volts);

    /// <summary>dI/dV at a voltage. [S]</summary>
    internal readonly double SlopeAt(double volts) => Siemens - (Watts / (volts * volts));
}
