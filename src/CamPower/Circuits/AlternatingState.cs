namespace CamPower.Circuits;

/// <summary>What one device has and takes through a period of alternating current. SI doubles.</summary>
internal struct AlternatingState
{
    /// <summary>Voltage between its terminals, RMS. [V]</summary>
    internal double RmsVolts;

    /// <summary>The largest voltage between its terminals; in the direction that charges where it takes one half-wave alone. [V]</summary>
    internal double CrestVolts;

    /// <summary>The highest voltage of its capacitor; 0 without a rectifier. [V]</summary>
    internal double HighestVolts;

    /// <summary>The lowest voltage of its capacitor; 0 without a rectifier. [V]</summary>
    internal double ValleyVolts;

    /// <summary>Its current, RMS. [A]</summary>
    internal double RmsAmperes;

    /// <summary>The direct part of its current: only half-waves have one. [A]</summary>
    internal double MeanAmperes;

    /// <summary>The largest of its current. [A]</summary>
    internal double PeakAmperes;

    /// <summary>Power that it takes. [W]</summary>
    internal double Watts;
}
