namespace CamPower.Circuits;

/// <summary>The periodic steady state of all that one transformer feeds. SI doubles.</summary>
internal sealed class AlternatingSolution(
    AlternatingState[] devices, double[] outputAmperes, double amperes, double peakAmperes, double meanAmperes)
{
    /// <summary>What each device has and takes.</summary>
    internal AlternatingState[] Devices { get; } = devices;

    /// <summary>The current of each output, RMS. [A]</summary>
    internal double[] OutputAmperes { get; } = outputAmperes;

    /// <summary>The current of the winding, RMS. [A]</summary>
    internal double Amperes { get; } = amperes;

    /// <summary>The largest current of the winding. [A]</summary>
    internal double PeakAmperes { get; } = peakAmperes;

    /// <summary>The direct current in the winding. [A]</summary>
    internal double MeanAmperes { get; } = meanAmperes;
}
