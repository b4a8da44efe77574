using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>How often each cause is met, before anything is read.</summary>
/// <remarks>
/// Immutable. Common practice, no source: count your own service calls and put them in their place. A weight is of a cause on the whole
/// site, and counts for all places where it may be; only what the weights are to each other matters.
/// </remarks>
/// <example>
/// <code>
/// CausePriors priors = CausePriors.CommonPractice.With(Cause.WaterInJoint, weight: 20).WithSound(Ratio.FromPercent(10));
/// </code>
/// </example>
public sealed class CausePriors
{
    private readonly Dictionary<Cause, double> _weights;

    private CausePriors(Dictionary<Cause, double> weights, double soundShare, double pairShare)
    {
        _weights = weights;
        SoundShare = soundShare;
        PairShare = pairShare;
    }

    /// <summary>Half of the sites sound, one fault in ten a pair, poor joints the commonest cause. Common practice, no source.</summary>
    public static CausePriors CommonPractice { get; } = new(
        new Dictionary<Cause, double>
        {
            [Cause.PoorJoint] = 18, [Cause.WrongConductor] = 10, [Cause.LongerRun] = 8, [Cause.WaterInJoint] = 6,
                [Cause.OpenConductor] = 10,
            [Cause.ShortCircuit] = 6, [Cause.ReversedLeads] = 6, [Cause.WrongOutput] = 5, [Cause.ProtectiveDeviceOpen] = 6,
            [Cause.ProtectiveDeviceHot] = 3, [Cause.SupplySetWrong] = 5, [Cause.SupplySags] = 3, [Cause.SupplyInLimit] = 3,
            [Cause.LoadTooLarge] = 4, [Cause.WrongDevice] = 3, [Cause.BatteryLow] = 2, [Cause.ShieldCarriesReturn] = 2,
                [Cause.MeterWrong] = 4,
        }, soundShare: 0.5, pairShare: 0.1);

    /// <summary>How likely a site is as designed, before anything is read.</summary>
    public Ratio Sound => Ratio.FromDecimalFractions(SoundShare);

    internal double SoundShare { get; }

    /// <summary>How many of the sites with a fault have two.</summary>
    internal double PairShare { get; }

    /// <summary>The weight of a cause against the others; 0 for one that is ruled out.</summary>
    /// <param name="cause">A cause other than <see cref="Cause.None"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cause is none of those there are.</exception>
    public double WeightOf(Cause cause) => _weights.TryGetValue(Require.Known(cause, nameof(cause)), out double weight) ? weight : 0;

    /// <summary>The same with another weight for one cause.</summary>
    /// <param name="cause">A cause other than <see cref="Cause.None"/>.</param>
    /// <param name="weight">At least 0. [1]</param>
    /// <exception cref="ArgumentException">The cause is <see cref="Cause.None"/>: see <see cref="WithSound"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CausePriors With(Cause cause, double weight)
    {
        if (Require.Known(cause, nameof(cause)) == Cause.None) throw new ArgumentException("A sound site has a share of its own.",
            nameof(cause));
        return new(new Dictionary<Cause, double>(_weights) { [cause] = Require.NotNegative(weight, nameof(weight), "") }, SoundShare,
            PairShare);
    }

    /// <summary>The same with another share of sound sites: low where you were called because something fails.</summary>
    /// <param name="share">Above 0 and below 1. [1]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside its range.</exception>
    public CausePriors WithSound(Ratio share) =>
        new(_weights, Require.Within(share.DecimalFractions, 1e-6, 1 - 1e-6, nameof(share), ""), PairShare);

    /// <summary>The share of sound sites and the commonest cause; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{SoundShare * 100:0.#} % sound, most often {_weights.OrderByDescending(w => w.Value).First().Key}");
}
