using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Assessment;
using CamPower.Sites;
using CamPower.Tolerance;

namespace CamPower.Commissioning;

/// <summary>A site as units that readings are taken of: each used output with what it feeds, then each box. SI doubles.</summary>
internal sealed class DiagnosisModel
{
    /// <summary>What a DC voltage reads on a range for AC of a meter that averages: 2.22 times, where nothing blocks it.</summary>
    private const double OnAlternatingRange = 2.22;

    private readonly IReadOnlyList<Direction>[] _directions;
    private readonly double[] _amperesDay, _amperesNight;
    private readonly double[] _supplySigma, _meterGain;

    internal DiagnosisModel(Site stated, SiteTolerance tolerance, Surroundings at, double[] meterGain)
    {
        Condition day = new("as read", LoadComponents.None, at), night = new("as read with infrared", LoadComponents.Infrared, at);
        Site site = Converters.In(stated, [day, night]);
        Site = site;
        _meterGain = meterGain;
        var parts = new UncertainParts(site, tolerance);
        Parts = parts;
        var common = new CommonParts(site, parts);
        Commons = common.Count;
        (OutputFeed Feed, FeedGroup Group)[] feeds = [.. site.Feeds.SelectMany(g => g.Feeds, (g, f) => (f, g))];
        Models = [.. site.Devices.Select(d => d.Model).Where(m => m.Kind != DeviceKind.Converter).Distinct()];
        double celsius = at.CableCelsius;
        FirstBox = feeds.Length;
        Feeds = [.. feeds.Select((f, unit) => new FeedModel(f.Feed, f.Group, unit, FirstBox + IndexOf(f.Feed.Box),
            FeedTolerance.Expected(f.Feed, parts, celsius), SetVolts(f.Feed.Box), day, night, Models,
            d => 1 + parts.Expected[parts.DrawOf(d.Device)]))];
        _directions = [.. Feeds.Select(f => FeedTolerance.Directions(f.Feed, parts, f.Expected, celsius, common, f.Box - FirstBox))];
        UnitPrediction[] designed = [.. Feeds.Select(f => f.Predict([], SetVolts(f.Feed.Box), f.Expected, 0, 0))];
        _amperesDay = [.. Feeds.Select((f, i) => designed[i].Values[f.OutputPoint(UnitPoints.AmperesDay)])];
        _amperesNight = [.. Feeds.Select((f, i) => designed[i].Values[f.OutputPoint(UnitPoints.AmperesNight)])];
        Boxes = [.. site.Boxes.Select((box, i) => new BoxModel(box, FirstBox + i, SumOf(box, _amperesDay), SumOf(box, _amperesNight)))];
        _supplySigma = [.. site.Boxes.Select(b =>
            FeedTolerance.Widening * Math.Max(1e-3, b.Supply.Output.SetVolts * parts.All[parts.SupplyOf(b)].Range.StandardDeviation))];
    }

    internal Site Site { get; }

    internal UncertainParts Parts { get; }

    internal FeedModel[] Feeds { get; }

    internal BoxModel[] Boxes { get; }

    /// <summary>The models of devices that the site has: what another device may be.</summary>
    internal IReadOnlyList<Device> Models { get; }

    /// <summary>The unit of the first box.</summary>
    internal int FirstBox { get; }

    internal int Units => Feeds.Length + Boxes.Length;

    /// <summary>The place of a meter that is wrong, beyond all units.</summary>
    internal int Meter => Units;

    /// <summary>How many numbers are common to several units.</summary>
    internal int Commons { get; }

    internal bool IsBox(int unit) => unit >= FirstBox;

    internal int PointsOf(int unit) => IsBox(unit) ? UnitPoints.OfBox : Feeds[unit].Points;

    internal MeterQuantity KindOf(int unit, int point) => UnitPoints.KindOf(IsBox(unit), IsBox(unit) ? 0 : Feeds[unit].Devices, point);

    internal UnitPrediction Predict(int unit, IReadOnlyList<Deviation> faults) => IsBox(unit)
        ? Metered(unit, BoxModel.Predict(Boxes[unit - FirstBox].Volts(faults)), faults)
        : Predict(Feeds[unit], faults, Boxes[Feeds[unit].Box - FirstBox].Volts(faults), Feeds[unit].Expected);

    /// <summary>What a feed would read with certain faults, its numbers and the voltage of its supply moved.</summary>
    internal UnitPrediction Predict(FeedModel feed, IReadOnlyList<Deviation> faults, FeedNumbers numbers, double addedVolts)
    {
        BoxModel box = Boxes[feed.Box - FirstBox];
        SupplyVolts supply = box.Volts(faults);
        return Predict(feed, faults, supply.Plus(addedVolts * supply.Unloaded / box.SetVolts), numbers);
    }

    /// <summary>What the readings of a unit say with certain faults.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="readings">Its readings.</param>
    /// <param name="faults">The faults.</param>
    /// <param name="prediction">What it would read.</param>
    /// <param name="spread">A column for each size that is uncertain: what the readings move by in half a step of it.</param>
    internal EvidenceBlock Evidence(int unit, Observation[] readings, IReadOnlyList<Deviation> faults, UnitPrediction prediction,
        List<double[]> spread)
    {
        if (readings.Length == 0) return new EvidenceBlock(Commons);
        if (!IsBox(unit)) return EvidenceOf(unit, readings, faults).Of(prediction, spread);
        double[] residuals = new double[readings.Length], variances = new double[readings.Length];
        var common = new double[Commons][];
        Compare(unit, readings, prediction, residuals, variances, new double[readings.Length], common);
        AddSupply(unit, readings, prediction, common);
        return EvidenceBlock.Of(residuals, variances, spread, common);
    }

    /// <summary>Readings less what is predicted, the variances of the meter, the predictions on the scale of readings, and the columns of
    /// its gains.</summary>
    internal void Compare(int unit, Observation[] readings, UnitPrediction prediction, double[] residuals, double[] variances,
        double[] predictions, double[]?[] common)
    {
        for (int i = 0; i < readings.Length; i++)
        {
            Observation reading = readings[i];
            MeterQuantity kind = KindOf(unit, reading.Point);
            bool isUnsteady = prediction.IsUnsteady[reading.Point];
            double value = prediction.Values[reading.Point], predicted = isUnsteady ? ReadingScale.UnsteadyMean(value) : value;
            double sigma = ReadingScale.Sigma(kind, reading.Sigma, value, isUnsteady);
            predictions[i] = ReadingScale.Of(kind, predicted);
            residuals[i] = ReadingScale.Of(kind, reading.Value) - predictions[i];
            double drift = isUnsteady || kind != MeterQuantity.Volts ? 0 : FeedTolerance.SupplyDrift * value;
            variances[i] = (sigma * sigma) + (drift * drift);
            if (isUnsteady) continue;
            int gain = CommonParts.GainOf(kind);
            (common[gain] ??= new double[readings.Length])[i] = _meterGain[(int)kind] * (kind == MeterQuantity.Ohms ? 1 : predicted);
        }
    }

    /// <summary>Standard deviation of readings of a sound unit, with everything uncertain in it, on the scale of readings.</summary>
    internal double[] Sigmas(int unit, Observation[] readings)
    {
        UnitPrediction prediction = Predict(unit, []);
        if (!IsBox(unit)) return EvidenceOf(unit, readings, []).Sigmas(prediction);
        double[] variances = new double[readings.Length];
        var common = new double[Commons][];
        Compare(unit, readings, prediction, new double[readings.Length], variances, new double[readings.Length], common);
        AddSupply(unit, readings, prediction, common);
        return EvidenceBlock.Sigmas(variances, common.OfType<double[]>());
    }

    /// <summary>What readings move by between two predictions, times a factor; nothing where a device or supply changes its
    /// state.</summary>
    internal double[] Column(int unit, Observation[] readings, UnitPrediction from, UnitPrediction to, double factor)
    {
        var column = new double[readings.Length];
        for (int i = 0; i < column.Length; i++)
        {
            int point = readings[i].Point;
            if (from.IsUnsteady[point] || to.IsUnsteady[point]) continue;
            MeterQuantity kind = KindOf(unit, point);
            column[i] = factor * (ReadingScale.Of(kind, to.Values[point]) - ReadingScale.Of(kind, from.Values[point]));
        }

        return column;
    }

    private static SupplyVolts SetVolts(DistributionBox box) =>
        new(box.Supply.Output.SetVolts, box.Supply.Output.SetVolts, box.Supply.Output.SetVolts, isUnsteady: false);

    private int IndexOf(DistributionBox box) => Site.Boxes.TakeWhile(b => !ReferenceEquals(b, box)).Count();

    private double SumOf(DistributionBox box, double[] amperes) => Feeds.Where(f => ReferenceEquals(f.Feed.Box, box)).Sum(f =>
        amperes[f.Unit]);

    private UnitPrediction Predict(FeedModel feed, IReadOnlyList<Deviation> faults, SupplyVolts supply, FeedNumbers numbers)
    {
        double amperesDay = 0, amperesNight = 0;
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Cause != Cause.WrongOutput || faults[i].Unit != feed.Unit) continue;
            bool isUsed = faults[i].Place >= 0;
            (amperesDay, amperesNight) = isUsed ? (_amperesDay[faults[i].Place], _amperesNight[faults[i].Place]) : (0, 0);
        }

        return Metered(feed.Unit, feed.Predict(faults, supply, numbers, amperesDay, amperesNight), faults);
    }

    // What a wrong meter makes of the readings.
    private UnitPrediction Metered(int unit, UnitPrediction prediction, IReadOnlyList<Deviation> faults)
    {
        for (int i = 0; i < faults.Count; i++)
        {
            if (faults[i].Cause != Cause.MeterWrong) continue;
            for (int point = 0; point < prediction.Values.Length; point++)
            {
                var kind = (MeterQuantity)faults[i].Place;
                if (KindOf(unit, point) != kind) continue;
                double value = prediction.Values[point];
                prediction.Values[point] = kind switch
                {
                    MeterQuantity.Volts => value * OnAlternatingRange,
                    MeterQuantity.Amperes => 0,
                    _ => value + faults[i].Size,
                };
            }
        }

        return prediction;
    }

    private void AddSupply(int unit, Observation[] readings, UnitPrediction prediction, double[][] common)
    {
        BoxModel box = Boxes[unit - FirstBox];
        var column = new double[readings.Length];
        for (int i = 0; i < column.Length; i++)
        {
            column[i] = prediction.IsUnsteady[readings[i].Point]
                ? 0
                : _supplySigma[unit - FirstBox] * prediction.Values[readings[i].Point] / box.SetVolts;
        }

        common[CommonParts.SupplyOf(unit - FirstBox)] = column;
    }

    private FeedEvidence EvidenceOf(int unit, Observation[] readings, IReadOnlyList<Deviation> faults) =>
        new(this, Feeds[unit], _directions[unit], readings, faults);
}
