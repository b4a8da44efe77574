using System;
using System.Collections.Generic;
using CamPower.Commissioning;
using CamPower.Tolerance;

namespace CamPower.Evaluation;

/// <summary>How cases are made up: as the diagnosis believes, or otherwise.</summary>
/// <remarks>The other manner has other priors, sizes beyond the usual ranges and bunched in them, wider tolerances, and a meter that errs a third
/// more, by a normal distribution, and now and then by three times that.</remarks>
internal sealed class Manner
{
    private static readonly Dictionary<Cause, double> OtherWeights = new()
    {
        [Cause.PoorJoint] = 12, [Cause.WrongConductor] = 14, [Cause.LongerRun] = 5, [Cause.WaterInJoint] = 10, [Cause.OpenConductor] = 7, [Cause.ShortCircuit] = 4,
        [Cause.ReversedLeads] = 3, [Cause.WrongOutput] = 8, [Cause.ProtectiveDeviceOpen] = 9, [Cause.ProtectiveDeviceHot] = 5, [Cause.SupplySetWrong] = 8,
        [Cause.SupplySags] = 5, [Cause.SupplyInLimit] = 2, [Cause.LoadTooLarge] = 7, [Cause.WrongDevice] = 5, [Cause.BatteryLow] = 3,
        [Cause.ShieldCarriesReturn] = 4, [Cause.MeterWrong] = 2,
    };

    private Manner(string name, bool isOther)
    {
        Name = name;
        IsOther = isOther;
    }

    internal static Manner Own { get; } = new("own", isOther: false);

    internal static Manner Other { get; } = new("other", isOther: true);

    internal string Name { get; }

    internal bool IsOther { get; }

    internal double WeightOf(Hypothesis hypothesis) =>
        IsOther ? OtherWeights[hypothesis.Cause] / CausePriors.CommonPractice.WeightOf(hypothesis.Cause) * Math.Exp(hypothesis.LogPrior) : Math.Exp(hypothesis.LogPrior);

    internal double SizeOf(CauseSizes sizes, Random random)
    {
        double share = random.NextDouble();
        if (!IsOther || !sizes.IsContinuous) return sizes.Quantile(share);

        // Bunched in the middle, and a little beyond both ends.
        return sizes.Quantile(-0.05 + (1.1 * ((share + random.NextDouble()) / 2)));
    }

    /// <summary>The deviation of an uncertain part.</summary>
    internal double DeviationOf(UncertainPart part, Random random)
    {
        UncertainRange range = part.Range;
        if (!range.HasWidth) return range.Expected;
        double value = range.Quantile(0.000001 + (0.999998 * random.NextDouble()));
        if (!IsOther || part.Quantity == UncertainQuantity.ProtectionResistance) return value;
        double other = range.Expected + (1.2 * range.StandardDeviation * Normal(random));

        // A wide range may reach below nothing at all: no draw, and no resistance, is there.
        return other > -1 ? other : value;
    }

    /// <summary>By how much the draw with infrared is off by itself.</summary>
    internal double InfraredOf(UncertainPart draw, Random random) =>
        FeedTolerance.InfraredShare * draw.Range.StandardDeviation * (IsOther ? 1.2 * Normal(random) : Math.Sqrt(3) * ((2 * random.NextDouble()) - 1));

    /// <summary>The error of a meter that is common to a kind of reading, over the reading.</summary>
    internal double GainOf(MeterRange range, Random random) =>
        range.Share * (IsOther ? 1.3 / Math.Sqrt(3) * Normal(random) : (2 * random.NextDouble()) - 1);

    /// <summary>By how much a supply is off at one reading.</summary>
    internal double DriftOf(Random random) =>
        FeedTolerance.SupplyDrift * (IsOther ? 1.3 * Normal(random) : Math.Sqrt(3) * ((2 * random.NextDouble()) - 1));

    /// <summary>The error of one reading, in counts.</summary>
    internal double CountsOf(MeterRange range, Random random)
    {
        if (!IsOther) return range.Counts * ((2 * random.NextDouble()) - 1);
        double wide = random.NextDouble() < 0.05 ? 3 : 1;
        return range.Counts * 1.3 / Math.Sqrt(3) * wide * Normal(random);
    }

    internal static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
