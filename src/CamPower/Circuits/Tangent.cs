namespace CamPower.Circuits;

/// <summary>The current of a load, or of all that lies behind a point, near a voltage: I = a + b·V.</summary>
internal struct Tangent
{
    /// <summary>a. [A]</summary>
    internal double Amperes;

    /// <summary>b. [S]</summary>
    internal double Siemens;
}
