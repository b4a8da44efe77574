using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>The protective device of an output in one condition, at the temperature of its box: it must carry the current without
/// opening.</summary>
/// <remarks>
/// Immutable. The start is judged as if every device of the output that declares its inrush began at one moment, from a stiff source and
/// through no cable: the worst case. So is what they draw as illuminators or motors are switched on. A device that declares none adds
/// nothing to it.
/// </remarks>
public sealed class ProtectionInCondition
{
    private readonly double _carried;

    private ProtectionInCondition(
        OutputInCondition drawn, Judgment load, double carried, OpeningTimes opening, double ratedAmperes, Func<Inrush, Judgment> stands,
        OutputAssessment fed, double airCelsius)
    {
        Condition = drawn.Condition;
        AirCelsius = airCelsius;
        Current = drawn.Current;
        _carried = carried;
        Load = load;
        Opening = opening;
        Start = fed.Inrush is Inrush start ? stands(start) : null;
        Switching = fed.SwitchedInrushIn(drawn.Condition, drawn.Amperes) is Inrush switched ? stands(switched) : null;
        ShareOfRating = double.IsInfinity(ratedAmperes) ? null : Ratio.FromDecimalFractions(drawn.Amperes / ratedAmperes);
    }

    /// <summary>The device of an output in each condition of its box.</summary>
    internal static IReadOnlyList<ProtectionInCondition> AllOf(OutputAssessment output, BoxAssessment box) =>
        Array.AsReadOnly([.. output.InConditions.Zip(box.InConditions, (drawn, inBox) => Of(output.Output, output, drawn, inBox))]);

    /// <summary>The device of an output, or of another in its place, under the current and the inrush of all that the first feeds, in one
    /// condition of its box.</summary>
    internal static ProtectionInCondition Of(BoxOutput output, OutputAssessment fed, OutputInCondition drawn, BoxInCondition inBox)
    {
        Judgment load = drawn.ProtectionOf(output);
        if (output.Protection is not ProtectiveDevice device || device.MostFactorIn(inBox.SupplyCelsius) is not double factor)
        {
            return new ProtectionInCondition(drawn, load, double.PositiveInfinity, default, double.PositiveInfinity,
                _ => Judgment.Unknown(load.NotStated!), fed, inBox.SupplyCelsius);
        }

        double carried = load.Verdict == Verdict.Unknown ? double.PositiveInfinity : device.CarriedAmperes(factor);
        return new ProtectionInCondition(drawn, load, carried, drawn.IsDemandOnly ? default : device.OpeningAt(drawn.Amperes, factor),
            device is Fuse ? carried : double.PositiveInfinity, inrush => Withstood(device, factor, inBox, inrush), fed,
            inBox.SupplyCelsius);
    }

    // In warmer air than is known a device withstands no more.
    private static Judgment Withstood(ProtectiveDevice device, double factor, BoxInCondition inBox, Inrush inrush)
    {
        Judgment withstood = device.JudgeInrush(inrush.PeakAmperes, inrush.AmpereSquaredSeconds, factor);
        return inBox.IsInsideUnknown && device.Ambient is not null && !withstood.IsViolated
            ? Judgment.Unknown(BoxInCondition.InsideNotStated)
            : withstood;
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The current of the output. [A]</summary>
    public ElectricCurrent Current { get; }

    /// <summary>Temperature of the air around the device. [°C]</summary>
    internal double AirCelsius { get; }

    /// <summary>The current against what the device carries continuously, as <see cref="OutputInCondition.OfProtection"/> judges
    /// it.</summary>
    public Judgment Load { get; }

    /// <summary>Current that the protective device carries continuously at the temperature of the box; null where nothing limits it, or it
    /// is unknown. [A]</summary>
    public ElectricCurrent? Carried => double.IsInfinity(_carried) ? null : ElectricCurrent.FromAmperes(_carried);

    /// <summary>When the device opens at the current; the default value where that is not known, or the circuit has no operating
    /// point.</summary>
    public OpeningTimes Opening { get; }

    /// <summary>The current over the rated current of a fuse, re-rated for the temperature of the box; null for another device.
    /// [1]</summary>
    public Ratio? ShareOfRating { get; }

    /// <summary>Whether the device stays closed when all that the output feeds starts at once, as the share that the start takes of what it
    /// withstands; null where no device states its inrush.</summary>
    /// <remarks>
    /// Of a fuse by its least melting I²t, of which a start may take 22 % (<see cref="Sources.InrushPractice"/>); where that is not stated,
    /// by what its pre-arcing time limits allow. Of a resettable fuse by an estimate from its time to trip. For an electronic limit it is
    /// unknown where the peak is above the limit and the inrush, held to the limit and so prolonged, is over before its operating time.
    /// </remarks>
    public Judgment? Start { get; }

    /// <summary>Whether the device stays closed when illuminators or motors of all that the output feeds are switched on at once, on top of
    /// its current, judged as <see cref="Start"/>; null where the condition has none, or no device states its inrush.</summary>
    public Judgment? Switching { get; }

    /// <summary>Whether the device stays closed at that start; null where it is not known.</summary>
    public bool? CarriesInrush => Start?.Verdict switch
    {
        Verdict.Holds or Verdict.ThinMargin => true,
        Verdict.Violated => false,
        _ => null,
    };

    /// <summary>Whether the device may open though nothing is wrong: within the duration of the condition, where that is known.</summary>
    public bool MayTrip => Load.IsViolated;

    /// <summary>Condition, current and what the device does, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {Current.Amperes:0.###} A, {Opening}");
}
