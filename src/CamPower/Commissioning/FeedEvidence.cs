using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>What the readings of a feed say with certain faults in it, linearized where its uncertain numbers most likely are.</summary>
/// <remarks>
/// Close to its limit a circuit is far from linear: a camera that draws a tenth more may restart. So the numbers are estimated from the
/// readings, the circuit is solved and linearized there, and that again (Gauss and Newton). With x the numbers at which it is solved, f
/// what it then reads and L its columns there, the readings are normal about f − L·x.
/// </remarks>
internal sealed class FeedEvidence(DiagnosisModel model, FeedModel feed, IReadOnlyList<Direction> directions, Observation[] readings,
    IReadOnlyList<Deviation> faults)
{
    private const int MostPasses = 3;

    // Numbers closer to the expected ones than this, and predictions that bend less, are left as they are. [standard deviations]
    private const double Near = 0.8, Bend = 0.5, Furthest = 3;

    /// <param name="expected">What it reads with the expected numbers.</param>
    /// <param name="spread">A column for each size that is uncertain.</param>
    internal EvidenceBlock Of(UnitPrediction expected, List<double[]> spread)
    {
        var linear = new Linear(this, new double[directions.Count], expected, spread);
        EvidenceBlock best = linear.Block();
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double[] at = linear.Estimate();
            if (Array.TrueForAll(at, x => Math.Abs(x) < Near)) return best;
            UnitPrediction there = PredictAt(at);
            if (!linear.Bends(at, there)) return best;
            linear = new Linear(this, at, there, spread);
            EvidenceBlock block = linear.Block();
            if (block.LogLikelihoodAlone() > best.LogLikelihoodAlone()) best = block;
        }

        return best;
    }

    /// <summary>Standard deviations of readings about what is expected, on the scale of readings.</summary>
    internal double[] Sigmas(UnitPrediction expected) => new Linear(this, new double[directions.Count], expected, []).Sigmas();

    private UnitPrediction PredictAt(double[] at)
    {
        double volts = 0;
        for (int i = 0; i < at.Length; i++) volts += at[i] * directions[i].SupplyVolts;
        return model.Predict(feed, faults, feed.Expected.Moved(directions, at), volts);
    }

    // The readings about one point: what is left of them, the variances of the meter, and a column for each uncertain number.
    private sealed class Linear
    {
        private readonly FeedEvidence _of;
        private readonly double[] _at, _residuals, _variances, _predicted;
        private readonly UnitPrediction _prediction;
        private readonly double[][] _columns;
        private readonly List<double[]> _own;
        private readonly double[]?[] _common;

        internal Linear(FeedEvidence of, double[] at, UnitPrediction prediction, List<double[]> spread)
        {
            _of = of;
            _at = at;
            _prediction = prediction;
            _own = [.. spread];
            _common = new double[of.Model.Commons][];
            _residuals = new double[of.Readings.Length];
            _variances = new double[of.Readings.Length];
            _predicted = new double[of.Readings.Length];
            _columns = Columns();
            of.Model.Compare(of.Feed.Unit, of.Readings, prediction, _residuals, _variances, _predicted, _common);
            for (int i = 0; i < at.Length; i++)
            {
                for (int r = 0; r < _residuals.Length; r++) _residuals[r] += at[i] * _columns[i][r];
            }
        }

        internal EvidenceBlock Block() => EvidenceBlock.Of(_residuals, _variances, _own, _common);

        /// <summary>The likeliest of each number, from these readings alone. [standard deviations]</summary>
        internal double[] Estimate()
        {
            double[] estimate = EvidenceBlock.Estimate(_residuals, _variances, [.. _own, .. _common.OfType<double[]>()], _columns);
            for (int i = 0; i < estimate.Length; i++) estimate[i] = Math.Max(-Furthest, Math.Min(Furthest, estimate[i]));
            return estimate;
        }

        /// <summary>Whether what is read elsewhere differs from what the columns say of it.</summary>
        internal bool Bends(double[] at, UnitPrediction there)
        {
            for (int r = 0; r < _residuals.Length; r++)
            {
                int point = _of.Readings[r].Point;
                if (there.IsUnsteady[point] != _prediction.IsUnsteady[point]) return true;
                if (there.IsUnsteady[point]) continue;
                double linear = _predicted[r];
                for (int i = 0; i < at.Length; i++) linear += (at[i] - _at[i]) * _columns[i][r];
                double off = ReadingScale.Of(_of.Model.KindOf(_of.Feed.Unit, point), there.Values[point]) - linear;
                if (off * off > Bend * Bend * _variances[r]) return true;
            }

            return false;
        }

        internal double[] Sigmas() => EvidenceBlock.Sigmas(_variances, _own.Concat(_common.OfType<double[]>()));

        private double[][] Columns()
        {
            var columns = new double[_at.Length][];
            double[] moved = (double[])_at.Clone();
            for (int i = 0; i < columns.Length; i++)
            {
                Direction direction = _of.Directions[i];
                moved[i] += 1;
                columns[i] = _of.Model.Column(_of.Feed.Unit, _of.Readings, _prediction, _of.PredictAt(moved), 1);
                moved[i] -= 1;
                if (direction.Common is int common)
                {
                    _common[common] = columns[i];
                    continue;
                }

                _own.Add(columns[i]);
                if (direction.IsDraw) _own.Add(_of.OfInfrared(columns[i]));
            }

            return columns;
        }
    }

    private DiagnosisModel Model => model;

    private FeedModel Feed => feed;

    private IReadOnlyList<Direction> Directions => directions;

    private Observation[] Readings => readings;

    // Illuminators differ from their data sheets by themselves too.
    private double[] OfInfrared(double[] column)
    {
        var own = new double[column.Length];
        for (int r = 0; r < own.Length; r++)
        {
            if (feed.IsByNight(readings[r].Point)) own[r] = FeedTolerance.InfraredShare * column[r];
        }

        return own;
    }
}
