using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Tolerance;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>Puts readings and symptoms against every cause, and gathers the answers in groups.</summary>
internal sealed class DiagnosisStudy
{
    private const double Settled = 0.95, AllowedDanger = 0.01, LeastBits = 0.01, LeastShown = 5e-4, LeastCounted = 1e-9, NearlyBest = 0.9;

    // So many explanations are always looked at, however unlikely.
    private const int Fewest = 200;

    // What the model itself leaves out: a volt drop in a plug, a device that idles, a bend in a run.
    private const double ModelVolts = 0.01, ModelAmperes = 0.005, ModelOhms = 0.02;

    private readonly CommissioningSheet _sheet;
    private readonly DiagnosisModel _model;
    private readonly Hypothesis[] _hypotheses;
    private readonly CausePriors _priors;
    private readonly SitePoints _points;
    private readonly double[][] _sigmas;

    internal DiagnosisStudy(CommissioningSheet sheet, CausePriors priors)
    {
        _sheet = sheet;
        _priors = priors;
        _model = new DiagnosisModel(sheet.Site, sheet.Tolerance, sheet.At, MeterGain(sheet.Meter));
        _hypotheses = HypothesisList.Of(_model, priors);
        _points = new SitePoints(_model);
        _sigmas = [.. Enumerable.Range(0, _model.Units).Select(SigmasOf)];
    }

    internal DiagnosisModel Model => _model;

    internal SitePoints Points => _points;

    internal IReadOnlyList<Hypothesis> Hypotheses => _hypotheses;

    internal Diagnosis Of(
        IReadOnlyList<MeterReading> readings, IReadOnlyList<Symptom> symptoms, CancellationToken cancellation = default)
    {
        foreach (Symptom symptom in symptoms)
        {
            if (symptom.Device is string device && _sheet.Site.Index.Device(device) is null)
            {
                throw new ArgumentException($"The site {_sheet.Site.Name} has no device named {device}.", nameof(symptoms));
            }
        }

        var unused = new List<MeterReading>();
        Observation[][] observed = Observe(readings, unused);
        var posterior = new Posterior(_model, _hypotheses, _priors, observed, new SymptomModel(_model, symptoms), SigmaOf, cancellation);
        SheetScope[] scopes = [.. observed.Select((o, unit) => SheetScope.Of(_model, unit, o))];
        (GroupKey Key, double Share)[] full = Shares(posterior, _ => SheetScope.Full);
        IReadOnlyList<CauseGroup> groups = Groups(posterior, scopes, [.. readings.Where(r => !unused.Contains(r))]);
        bool mustIsolate = full.Any(g => CauseWords.IsDanger(g.Key.Cause) && g.Share > AllowedDanger);
        bool isSettled = full[0].Share >= Settled
            && !full.Skip(1).Any(g => CauseWords.IsDanger(g.Key.Cause) && g.Share > AllowedDanger);
        return new Diagnosis(groups, isSettled ? null : Next(posterior, observed, cancellation), isSettled, mustIsolate, unused, full);
    }

    /// <summary>The group of a cause at a place on a sheet, as an explanation has it.</summary>
    internal GroupKey KeyOf(Hypothesis hypothesis, Func<int, SheetScope> scopeOf) => CauseGrouping.KeyOf(_model, hypothesis, scopeOf);

    /// <summary>How well one reading is known, with the tolerances of the site, as designed; on the scale of readings.</summary>
    internal double SigmaOf(int unit, int point) => _sigmas[unit][point];

    private static double[] MeterGain(Meter meter) => Array.ConvertAll<MeterRange, double>(
        [meter.Volts, meter.Amperes, meter.Ohms], range => FeedTolerance.Widening * range.Share / Math.Sqrt(3));

    private Observation[][] Observe(IReadOnlyList<MeterReading> readings, List<MeterReading> unused)
    {
        var observed = new List<Observation>[_model.Units];
        for (int unit = 0; unit < observed.Length; unit++) observed[unit] = [];
        foreach (MeterReading reading in readings)
        {
            if (!_points.TryFind(reading.Point, out int unit, out int point))
            {
                if (!reading.Point.IsOn(_sheet.Site))
                {
                    throw new ArgumentException($"The site {_sheet.Site.Name} has no place for {reading.Point}.", nameof(readings));
                }

                unused.Add(reading);
                continue;
            }

            if (IsImpossible(reading))
            {
                unused.Add(reading);
                continue;
            }

            observed[unit].Add(new Observation(unit, point, MeasuredValue(unit, point, reading.Si), MeterSigma(_model.KindOf(unit,
                point))));
        }

        return Array.ConvertAll(observed, o => o.ToArray());
    }

    // What no wiring gives is of the meter, and says nothing of the site.
    private bool IsImpossible(MeterReading reading) =>
        (_sheet.Lines.FirstOrDefault(l => l.Point.Equals(reading.Point)) ?? _sheet.Expect(reading.Point)).Judge(reading)
            == ReadingVerdict.Impossible;

    // What the leads and half of what the contacts may add is taken off.
    private double MeasuredValue(int unit, int point, double value) => _model.KindOf(unit, point) == MeterQuantity.Ohms
        ? Math.Min(Math.Max(0, value - _sheet.Meter.LeadOhms - (_sheet.Meter.ContactOhms / 2)), FeedFaults.OpenOhms)
        : value;

    // As the meter shows it: with the leads, and half of what the contacts may add.
    private IQuantity? Shown(int unit, int point, double value) => _points.QuantityOf(unit, point,
        _model.KindOf(unit, point) == MeterQuantity.Ohms ? value + _sheet.Meter.LeadOhms + (_sheet.Meter.ContactOhms / 2) : value);

    private double MeterSigma(MeterQuantity kind)
    {
        Meter meter = _sheet.Meter;
        MeterRange range = kind switch { MeterQuantity.Volts => meter.Volts, MeterQuantity.Amperes => meter.Amperes, _ => meter.Ohms };
        double counts = FeedTolerance.Widening * range.Counts * range.Resolution / Math.Sqrt(3);
        double model = kind switch { MeterQuantity.Volts => ModelVolts, MeterQuantity.Amperes => ModelAmperes, _ => ModelOhms };
        double contacts = kind == MeterQuantity.Ohms ? meter.ContactOhms / Math.Sqrt(12) : 0;
        return Math.Sqrt((counts * counts) + (model * model) + (contacts * contacts));
    }

    private double[] SigmasOf(int unit)
    {
        Observation[] all = [.. Enumerable.Range(0, _model.PointsOf(unit)).Select(p =>
            new Observation(unit, p, 0, MeterSigma(_model.KindOf(unit, p))))];
        return _model.Sigmas(unit, all);
    }

    private NextReading? Next(Posterior posterior, Observation[][] observed, CancellationToken cancellation)
    {
        var numbers = new Dictionary<(GroupKey, GroupKey?), int>();
        var gain = new InformationGain(_model, posterior.Explanations, NumberOf, SigmaOf);
        var worth = new List<(int Unit, ReadingPoint At, double Bits, double Cost)>();
        for (int unit = 0; unit < _model.Units; unit++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int point = 0; point < _model.PointsOf(unit); point++)
            {
                if (observed[unit].Any(o => o.Point == point)) continue;
                double bits = gain.Of(unit, point);
                ReadingPoint at = _points.Of(unit, point);
                if (bits >= LeastBits) worth.Add((unit, at, bits, ReadingCost.Of(at)));
            }
        }

        if (worth.Count == 0) return null;
        double most = worth.Max(w => w.Bits / w.Cost);
        (int _, ReadingPoint best, double expected, double cost) = worth.Where(w => w.Bits / w.Cost >= NearlyBest * most)
            .OrderByDescending(w => SuspicionOf(posterior, w.Unit)).ThenByDescending(w => w.Bits / w.Cost).First();
        return new NextReading(_sheet.Expect(best), expected, cost);

        int NumberOf(Explanation explanation)
        {
            GroupKey first = KeyOf(explanation.First, SheetScope.Full);
            (GroupKey, GroupKey?) pair = (first, explanation.Second is null ? null : KeyOf(explanation.Second, SheetScope.Full));
            if (!numbers.TryGetValue(pair, out int number)) numbers.Add(pair, number = numbers.Count);
            return number;
        }
    }

    // The likeliest few, and every other that is not all but impossible.
    private static IEnumerable<Explanation> Counted(Posterior posterior) =>
        posterior.Explanations.TakeWhile((e, i) => i < Fewest || e.Probability > LeastCounted);

    // Of readings that tell as much, people expect to take the one where they suspect something.
    private static double SuspicionOf(Posterior posterior, int unit) =>
        Counted(posterior).Where(e => e.First?.Unit == unit).Sum(e => e.Probability);

    private GroupKey KeyOf(Hypothesis? hypothesis, SheetScope scope) =>
        hypothesis is null ? default : CauseGrouping.KeyOf(_model, hypothesis, _ => scope);

    private (GroupKey Key, double Share)[] Shares(Posterior posterior, Func<int, SheetScope> scopeOf)
    {
        var shares = new Dictionary<GroupKey, double>();
        foreach (Explanation explanation in Counted(posterior))
        {
            foreach (GroupKey key in KeysOf(explanation, scopeOf))
            {
                shares[key] = (shares.TryGetValue(key, out double share) ? share : 0) + explanation.Probability;
            }
        }

        return [.. shares.Select(s => (s.Key, s.Value)).OrderByDescending(s => s.Value)];
    }

    private IEnumerable<GroupKey> KeysOf(Explanation explanation, Func<int, SheetScope> scopeOf)
    {
        if (explanation.First is null) return [default];
        GroupKey first = CauseGrouping.KeyOf(_model, explanation.First, scopeOf);
        if (explanation.Second is null) return [first];
        GroupKey second = CauseGrouping.KeyOf(_model, explanation.Second, scopeOf);
        return first == second ? [first] : [first, second];
    }

    private IReadOnlyList<CauseGroup> Groups(Posterior posterior, SheetScope[] scopes, IReadOnlyList<MeterReading> readings)
    {
        (GroupKey Key, double Share)[] shares = Shares(posterior, unit => scopes[unit]);
        var best = new Dictionary<GroupKey, (Explanation Explanation, Hypothesis? One)>();
        var causes = new Dictionary<GroupKey, Dictionary<Cause, double>>();
        foreach (Explanation explanation in Counted(posterior))
        {
            foreach (Hypothesis? one in new[] { explanation.First, explanation.Second })
            {
                if (one is null && explanation.First is not null) continue;
                GroupKey key = one is null ? default : CauseGrouping.KeyOf(_model, one, unit => scopes[unit]);
                if (!best.ContainsKey(key)) best.Add(key, (explanation, one));
                if (!causes.TryGetValue(key, out Dictionary<Cause, double>? of)) causes.Add(key, of = []);
                Cause cause = one?.Cause ?? Cause.None;
                of[cause] = (of.TryGetValue(cause, out double share) ? share : 0) + explanation.Probability;
            }
        }

        return [.. shares.Where((s, i) => i < 3 || s.Share >= LeastShown).Select(s => new CauseGroup(s.Key,
            [.. causes[s.Key].OrderByDescending(c => c.Value).Select(c => c.Key)], PlaceWords.Of(_model, s.Key), s.Share,
            causes[s.Key].Any(c => CauseWords.IsDanger(c.Key) && c.Value > AllowedDanger),
            PredictionsOf(best[s.Key].Explanation, best[s.Key].One, readings).AsReadOnly(),
            point => PredictionOf(best[s.Key].Explanation, point)))];
    }

    // Beside what the explanation predicts: what it would without the one cause.
    private List<ReadingPrediction> PredictionsOf(Explanation explanation, Hypothesis? one, IReadOnlyList<MeterReading> readings)
    {
        Deviation[] others = [.. explanation.Faults.Where(f => one?.Owns(f) != true)];
        Dictionary<int, UnitPrediction> with = [], without = [];
        var predictions = new List<ReadingPrediction>();
        foreach (MeterReading reading in readings)
        {
            _points.TryFind(reading.Point, out int unit, out int point);
            UnitPrediction prediction = Known(with, unit, explanation.Faults);
            predictions.Add(new ReadingPrediction(reading, Shown(unit, point, Typical(prediction, point)),
                OffBy(unit, point, reading, prediction), OffBy(unit, point, reading, Known(without, unit, others))));
        }

        return predictions;
    }

    private UnitPrediction Known(Dictionary<int, UnitPrediction> known, int unit, Deviation[] faults)
    {
        if (!known.TryGetValue(unit, out UnitPrediction? prediction)) known.Add(unit, prediction = _model.Predict(unit, faults));
        return prediction;
    }

    private static double Typical(UnitPrediction prediction, int point) =>
        prediction.IsUnsteady[point] ? ReadingScale.UnsteadyMean(prediction.Values[point]) : prediction.Values[point];

    private double OffBy(int unit, int point, MeterReading reading, UnitPrediction prediction)
    {
        MeterQuantity kind = _model.KindOf(unit, point);
        double sigma = prediction.IsUnsteady[point] || (kind == MeterQuantity.Ohms && prediction.Values[point] >= FeedFaults.OpenOhms)
            ? ReadingScale.Sigma(kind, MeterSigma(kind), prediction.Values[point], prediction.IsUnsteady[point])
            : SigmaOf(unit, point);
        return (ReadingScale.Of(kind, MeasuredValue(unit, point, reading.Si)) - ReadingScale.Of(kind, Typical(prediction, point))) / sigma;
    }

    private IQuantity? PredictionOf(Explanation explanation, ReadingPoint point) => _points.TryFind(point, out int unit, out int place)
        ? Shown(unit, place, Typical(_model.Predict(unit, explanation.Faults), place))
        : throw new ArgumentException($"The diagnosis has no use for {point}.", nameof(point));
}
