using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using UnitsNet;

namespace CamPower;

/// <summary>A short at one place of a run: what flows, what the protective device does, what the conductors stand.</summary>
/// <remarks>A short without resistance of its own. Currents lie between those of hot conductors at the lowest voltage and of
/// cold ones at the highest; every answer holds for all of them.</remarks>
public sealed class ShortCircuit
{
    private readonly double _letThrough;

    internal ShortCircuit(string place, Length distance, double mostProspective, double leastProspective, IReadOnlyCollection<FaultCase> cases,
        bool hasConductor, double? withstandIntegral, FaultStudy study)
    {
        Place = place;
        Distance = distance;
        LargestProspective = ElectricCurrent.FromAmperes(mostProspective);
        SmallestProspective = ElectricCurrent.FromAmperes(leastProspective);
        double peak = cases.Max(c => c.PeakAmperes);
        Largest = ElectricCurrent.FromAmperes(peak);
        Smallest = ElectricCurrent.FromAmperes(cases.Min(c => c.RmsAmperes));
        Opening = OpeningTimes.AnyOf([.. cases.Select(c => c.Opening)]);
        IsWithinBreakingCapacity = study.Device.BreakingCapacity is ElectricCurrent capacity ? peak <= capacity.Amperes : null;
        IsWithinVoltageRating = study.Device.VoltageRating is ElectricPotential rating ? study.Supply.Output.HighestVolts <= rating.Volts : null;
        _letThrough = cases.Max(c => c.LetThrough);
        Withstand = withstandIntegral is double integral ? JouleIntegral.FromAmpereSquaredSeconds(integral) : null;
        WithstandVerdict = hasConductor ? WithstandOf(cases, withstandIntegral) : WithstandVerdict.NoConductor;
    }

    /// <summary>Where: "terminals", the name of a joint, or "far end".</summary>
    public string Place { get; }

    /// <summary>How far along the route, one way. [m]</summary>
    public Length Distance { get; }

    /// <summary>The most current that the resistances alone let flow. [A]</summary>
    public ElectricCurrent LargestProspective { get; }

    /// <summary>The least current that the resistances alone let flow. [A]</summary>
    public ElectricCurrent SmallestProspective { get; }

    /// <summary>The most current at any moment, limited by the supply. [A]</summary>
    public ElectricCurrent Largest { get; }

    /// <summary>The least current that heats the device, limited by the supply: RMS where it pulses, 0 where it shuts down. [A]</summary>
    public ElectricCurrent Smallest { get; }

    /// <summary>Whether and when the protective device interrupts it.</summary>
    /// <remarks>Asked for more than its rating, a device is not certain to interrupt anything: see <see cref="Verdict"/>.</remarks>
    public OpeningTimes Opening { get; }

    /// <summary>The verdict of <see cref="Opening"/>, but never "clears" where the device is asked for more than its rating.</summary>
    public ClearingVerdict Verdict => Opening.Verdict == ClearingVerdict.Clears && (IsWithinBreakingCapacity == false || IsWithinVoltageRating == false)
        ? ClearingVerdict.MayClear
        : Opening.Verdict;

    /// <summary>Whether the device may interrupt the largest current; null where its breaking capacity is not stated.</summary>
    public bool? IsWithinBreakingCapacity { get; }

    /// <summary>Whether the device may interrupt at the supply's highest voltage; null where its voltage rating is not stated.</summary>
    public bool? IsWithinVoltageRating { get; }

    /// <summary>The most I²t until the device or the supply ends the fault; null where nothing ends it for certain. [A²·s]</summary>
    public JouleIntegral? LetThrough => double.IsInfinity(_letThrough) ? null : JouleIntegral.FromAmpereSquaredSeconds(_letThrough);

    /// <summary>The I²t that the weakest conductor on the way stands; null at the terminals, and where the limit of the insulation in a fault is not known. [A²·s]</summary>
    public JouleIntegral? Withstand { get; }

    /// <summary>Whether the conductors on the way stand it.</summary>
    public WithstandVerdict WithstandVerdict { get; }

    /// <summary>Place, currents and opening in the invariant culture; never throws.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Place}: {Smallest.Amperes:G4} A to {Largest.Amperes:G4} A, {Opening}");

    private static WithstandVerdict WithstandOf(IEnumerable<FaultCase> cases, double? withstandIntegral) =>
        withstandIntegral is double integral ? Worst(cases.Select(c => c.WithstandOf(integral))) : WithstandVerdict.Unknown;

    private static WithstandVerdict Worst(IEnumerable<WithstandVerdict> verdicts)
    {
        var found = new HashSet<WithstandVerdict>(verdicts);
        if (found.Contains(WithstandVerdict.DoesNotStand)) return WithstandVerdict.DoesNotStand;
        return found.Contains(WithstandVerdict.OutsideAdiabaticModel) ? WithstandVerdict.OutsideAdiabaticModel : WithstandVerdict.Stands;
    }
}
