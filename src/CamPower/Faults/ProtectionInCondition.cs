using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Protection;
using UnitsNet;

namespace CamPower;

/// <summary>The protective device of an output under the current of one condition, at the temperature of its box: what it should carry and not notice.</summary>
/// <remarks>
/// Immutable. The start is judged as if every device of the output that declares its inrush began at one moment, from a stiff source and
/// through no cable: the worst case. A device that declares none adds nothing to it.
/// </remarks>
public sealed class ProtectionInCondition
{
    private readonly double _carried;
    private readonly bool _standsDuration;

    /// <param name="output">The output in the condition.</param>
    /// <param name="load">The current against what the device carries continuously.</param>
    /// <param name="carried">What it carries; infinite where nothing limits it, or it is not known. [A]</param>
    /// <param name="opening">When it opens at the current.</param>
    /// <param name="ratedAmperes">The rated current of a fuse; infinite for another device. [A]</param>
    /// <param name="start">What becomes of the start of all devices at once; null where none states its inrush.</param>
    /// <param name="standsDuration">Whether it stands the current for as long as the condition is declared to last.</param>
    internal ProtectionInCondition(OutputInCondition output, Judgment load, double carried, OpeningTimes opening, double ratedAmperes, Judgment? start, bool standsDuration)
    {
        _standsDuration = standsDuration;
        Condition = output.Condition;
        Current = output.Current;
        _carried = carried;
        Load = load;
        Opening = output.IsDemandOnly ? default : opening;
        Start = start;
        ShareOfRating = double.IsInfinity(ratedAmperes) ? null : Ratio.FromDecimalFractions(output.Amperes / ratedAmperes);
    }

    /// <summary>The device of an output in each condition of its box.</summary>
    internal static IReadOnlyList<ProtectionInCondition> AllOf(OutputAssessment output, BoxAssessment box)
    {
        Inrush? inrush = output.Inrush;
        return Array.AsReadOnly([.. output.InConditions.Zip(box.InConditions, (drawn, inBox) => Of(output.Output.Protection, drawn, inBox, inrush))]);
    }

    /// <summary>A device under the current of an output, and the inrush of all that it feeds, in one condition of its box; null where nobody declares one.</summary>
    /// <remarks>Hotter than its ambient curve goes, it carries at most what it does at the end of it. In a box whose inside is not known nothing is said of a device that has a curve.</remarks>
    internal static ProtectionInCondition Of(ProtectiveDevice? device, OutputInCondition drawn, BoxInCondition inBox, Inrush? inrush)
    {
        double? factor = device?.Ambient is ShareCurve<Temperature> curve ? (inBox.IsInsideUnknown ? null : curve.MostFactorAt(inBox.SupplyCelsius)) : 1;
        if (device is null || factor is not double known)
        {
            Judgment unknown = Judgment.Unknown(device is null ? "protective device" : $"what {device} carries at the temperature of the box");
            return new ProtectionInCondition(drawn, unknown, double.PositiveInfinity, default, double.PositiveInfinity, inrush is null ? null : unknown, standsDuration: false);
        }

        double carried = device.CarriedAmperes(known), certain = device.CarriedAmperes(known - Math.Min(known, device.Ambient?.Band ?? 0));
        Judgment load = Judgment.AtMost(drawn.Amperes, carried, certain, amperes => ElectricCurrent.FromAmperes(amperes));
        if (device is Fuse fuse && !load.IsViolated && !IsRated(fuse, inBox)) (load, carried) = (Judgment.Unknown($"re-rating of {device}"), double.PositiveInfinity);
        Judgment? start = inrush is null ? null : device.JudgeInrush(inrush.PeakAmperes, inrush.AmpereSquaredSeconds, known);
        OpeningTimes opening = device.OpeningAt(drawn.Amperes, known);
        bool standsDuration = drawn.Condition.Duration is Duration lasts
            && (lasts.Seconds <= opening.EarliestSeconds || device.JudgeInrush(drawn.Amperes, drawn.Amperes * drawn.Amperes * lasts.Seconds, known).Verdict is Verdict.Holds or Verdict.ThinMargin);
        return new ProtectionInCondition(drawn, load, carried, opening, device is Fuse ? carried : double.PositiveInfinity, start, standsDuration);
    }

    /// <summary>The condition.</summary>
    public Condition Condition { get; }

    /// <summary>The current of the output. [A]</summary>
    public ElectricCurrent Current { get; }

    /// <summary>The current against what the device is certain to carry continuously at the temperature of the box; the margin is how far its ambient curve may be off.</summary>
    /// <remarks>A fuse of unstated re-rating is known near the reference temperature of its standard, and in colder air, where it carries no less.</remarks>
    public Judgment Load { get; }

    /// <summary>What the device carries continuously at the temperature of the box; null where nothing limits it, or it is not known. [A]</summary>
    public ElectricCurrent? Carried => double.IsInfinity(_carried) ? null : ElectricCurrent.FromAmperes(_carried);

    /// <summary>When the device opens at the current; the default value where that is not known, or the circuit has no operating point.</summary>
    public OpeningTimes Opening { get; }

    /// <summary>The current over the rated current of a fuse, re-rated for the temperature of the box; null for another device. [1]</summary>
    public Ratio? ShareOfRating { get; }

    /// <summary>Whether the device stays closed when all that the output feeds starts at once, as the share that the start takes of what it withstands; null where no device states its inrush.</summary>
    /// <remarks>
    /// Of a fuse by its least melting I²t, of which a start may take 22 % (<see cref="Sources.InrushPractice"/>); where that is not stated,
    /// by what its pre-arcing time limits allow. Of a resettable fuse by an estimate from its time to trip. Of an electronic limit it is not known
    /// where the peak is above its limit: it draws the inrush out, and does not hold it longer than its operating time.
    /// </remarks>
    public Judgment? Start { get; }

    /// <summary>Whether the device stays closed at that start; null where it is not known.</summary>
    public bool? StandsInrush => Start?.Verdict switch
    {
        Verdict.Holds or Verdict.ThinMargin => true,
        Verdict.Violated => false,
        _ => null,
    };

    /// <summary>Whether the device may open though nothing is wrong: within the duration of the condition, where that is known.</summary>
    /// <remarks>A short condition is held against the time before which the device does not open, and its I²t against what it stands of an <see cref="StandsInrush">inrush</see>.</remarks>
    public bool MayTrip => !_standsDuration && Opening.Verdict is (OperatingVerdict.MayClear or OperatingVerdict.Clears);

    // In colder air than that of its tests a fuse carries no less than its rating.
    private static bool IsRated(Fuse fuse, BoxInCondition inBox) => !inBox.IsInsideUnknown
        && (fuse.IsRatedIn(inBox.SupplyCelsius) || inBox.SupplyCelsius < fuse.Characteristic.ReferenceCelsius);

    /// <summary>Condition, current and what the device does, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{Condition}: {Current.Amperes:0.###} A, {Opening}");
}
