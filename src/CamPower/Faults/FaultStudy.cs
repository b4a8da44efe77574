using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Faults;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>What a short does at every place of one run: at the terminals, at each joint, at the far end.</summary>
/// <remarks>
/// Immutable. The current that the resistances let flow is V/R, with the source, the device and the run out and back in R;
/// a short at a joint lies before the joint's own resistance. Source: <see cref="Sources.Kirchhoff"/>. The supply then
/// limits it, see <see cref="OverloadBehaviour"/>. Pulsed current counts by its RMS where the device outlasts a pulse. Not
/// in it: what output capacitors add in the first milliseconds, the resistance of an arc, and the conductors' warming
/// during the fault, which lowers the current.
/// <para>Faults start fires. A study on paper does not replace the local code and a licensed electrician.</para>
/// </remarks>
/// <example>
/// <code>
/// var study = new FaultStudy(run, supply, fuse, Insulation.Pvc70, conditions);
/// ShortCircuit far = study.AtFarEnd;
/// if (far.Verdict != ClearingVerdict.Clears) Console.WriteLine($"A short at the camera {far.Opening}.");
/// </code>
/// </example>
public sealed class FaultStudy
{
    // Just below a step of the device, by more than a multiple may be rounded, its latest time is the longer one.
    private const double JustBelow = 1 - 1e-8;

    private readonly double _coldCelsius, _hotCelsius, _currentFactor, _sourceOhms;
    private readonly OverloadBehaviour _overload;

    /// <summary>Studies a run.</summary>
    /// <param name="run">The run.</param>
    /// <param name="supply">The supply behind the fault; its data sheet states source resistance and overload behaviour. An alternating one counts by its RMS voltage, with resistance alone.</param>
    /// <param name="device">What is meant to interrupt it.</param>
    /// <param name="insulation">The insulation of every conductor of the run.</param>
    /// <param name="conditions">The temperatures, inside the ranges of the conductor materials and of the device.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="supply"/> does not state its source resistance or its overload behaviour.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside the range of a material or of the device.</exception>
    public FaultStudy(CableRun run, Supply supply, ProtectiveDevice device, Insulation insulation, FaultConditions conditions)
    {
        Run = Require.NotNull(run, nameof(run));
        Supply = Require.NotNull(supply, nameof(supply));
        _sourceOhms = (supply.Output.SourceResistance ?? throw Unstated(supply, "source resistance", nameof(supply))).Ohms;
        _overload = supply.Output.Overload ?? throw Unstated(supply, "overload behaviour", nameof(supply));
        Device = Require.NotNull(device, nameof(device));
        Insulation = Require.NotNull(insulation, nameof(insulation));
        Conditions = Require.NotNull(conditions, nameof(conditions));
        _coldCelsius = run.CelsiusOf(conditions.Coldest, nameof(conditions));
        _hotCelsius = run.CelsiusOf(conditions.Hottest, nameof(conditions));
        _currentFactor = device.CurrentFactorAt(conditions.Device, nameof(conditions));
        Shorts = Array.AsReadOnly([.. Places()]);
    }

    /// <summary>The run.</summary>
    public CableRun Run { get; }

    /// <summary>The supply behind the fault.</summary>
    public Supply Supply { get; }

    /// <summary>What is meant to interrupt it.</summary>
    public ProtectiveDevice Device { get; }

    /// <summary>The insulation of every conductor of the run.</summary>
    public Insulation Insulation { get; }

    /// <summary>The temperatures.</summary>
    public FaultConditions Conditions { get; }

    /// <summary>A short at each place, from the terminals to the far end.</summary>
    public IReadOnlyList<ShortCircuit> Shorts { get; }

    /// <summary>A short at the terminals, behind the protective device.</summary>
    public ShortCircuit AtTerminals => Shorts[0];

    /// <summary>A short at the far end, where the camera is.</summary>
    public ShortCircuit AtFarEnd => Shorts[Shorts.Count - 1];

    /// <summary>Every short on a line of its own, in the invariant culture; never throws.</summary>
    public override string ToString() => string.Join("\n", Shorts);

    private IEnumerable<ShortCircuit> Places()
    {
        var before = new List<RunPart>();
        yield return At("terminals", before);
        foreach (RunPart part in Run.Parts)
        {
            if (part is Joint joint) yield return At(joint.Name, before);
            before.Add(part);
        }

        yield return At("far end", before);
    }

    private ShortCircuit At(string place, IReadOnlyCollection<RunPart> before)
    {
        double most = Supply.Output.HighestVolts / (_sourceOhms + Device.LeastOhms + before.Sum(p => p.OhmsAt(_coldCelsius)));
        double least = Supply.Output.LowestVolts / (_sourceOhms + Device.GreatestOhms + before.Sum(p => p.OhmsAt(_hotCelsius)));
        bool hasConductor = before.OfType<CableSegment>().Any();
        double? withstand = before.OfType<CableSegment>().SelectMany(s => s.Cable.Conductors).Select(Insulation.WithstandIntegral).Min();
        Length distance = Length.FromMeters(before.Sum(p => p.OneWayLength.Meters));
        return new ShortCircuit(place, distance, most, least, [.. Cases(most, least)], hasConductor, withstand, this);
    }

    // The ends of the range of current; the limit of the supply, where its behaviour changes; and just below every current at
    // which the device gets faster. Between these nothing gets worse.
    private IEnumerable<FaultCase> Cases(double mostProspective, double leastProspective)
    {
        OverloadBehaviour overload = _overload;
        var ends = new List<LimitedCurrent> { overload.Limited(mostProspective), overload.Limited(leastProspective) };
        if (overload.LimitAmperes < mostProspective && overload.LimitAmperes > leastProspective) ends.Add(LimitedCurrent.Steady(overload.LimitAmperes));
        double high = ends.Max(c => c.PeakAmperes), low = ends.Min(c => c.PeakAmperes);
        IEnumerable<LimitedCurrent> steps = Device.StepsAt(_currentFactor).Select(s => s * JustBelow).Where(s => s > low && s < high).Select(LimitedCurrent.Steady);
        return ends.Concat(steps).Select(c => new FaultCase(c, Device, _currentFactor));
    }

    private static ArgumentException Unstated(Supply supply, string what, string parameter) =>
        new($"The supply {supply} does not state its {what}: without it nobody can tell what flows into a fault.", parameter);
}
