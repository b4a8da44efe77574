using System;

namespace CamPower.Circuits;

/// <summary>The ring that closes where direct-current negatives are joined that a transformer holds at different ends. SI
/// doubles.</summary>
/// <remarks>
/// The negative of a half-wave input is one of its two input wires. That of a bridge follows the lower of both, through a diode: joined to
/// such a wire, that diode shorts every second half of the period through the winding, the wires and the shields. Two half-wave inputs of
/// opposite polarity short both halves, with no diode at all.
/// </remarks>
internal static class CommonRing
{
    /// <summary>The RMS current of one half of each period through a diode. [A]</summary>
    /// <param name="emfVolts">Open voltage, RMS. [V]</param>
    /// <param name="ohms">Resistance of the ring, above 0. [Ω]</param>
    /// <param name="diode">The diode.</param>
    internal static double ThroughDiode(double emfVolts, double ohms, RectifierDiode diode)
    {
        double crest = emfVolts * Math.Sqrt(2);
        double peak = Bisection.LastHeld(0, crest / ohms, 60, amperes => diode.VoltsAt(amperes) + (ohms * amperes) < crest);

        // The drop at the peak of the current counts all the way: the current is at least this.
        double dropped = diode.VoltsAt(peak) / crest;
        if (!(dropped < 1)) return 0;
        double from = Math.Asin(dropped), lasts = Math.PI - (2 * from);
        double squares = (lasts * (0.5 + (dropped * dropped))) + (0.5 * Math.Sin(2 * from)) - (4 * dropped * Math.Cos(from));
        return crest / ohms * Math.Sqrt(Math.Max(0, squares) / (2 * Math.PI));
    }

    /// <summary>The RMS current of a ring without a diode. [A]</summary>
    internal static double Direct(double emfVolts, double ohms) => emfVolts / ohms;
}
