using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Commissioning;

/// <summary>How likely each explanation of the readings is.</summary>
/// <remarks>
/// Every cause is tried at every place and in every size on the circuit that it changes alone; the evidence of the other units stays.
/// Pairs are tried on top of the best single explanations, and only where these leave some unit misfitting.
/// </remarks>
internal sealed class Posterior
{
    private const int Primaries = 3;
    private const double HalfStep = 0.5, MisfitSigmas = 4, FarOff = 6, MovedShare = 0.1;

    private readonly DiagnosisModel _model;
    private readonly Hypothesis[] _hypotheses;
    private readonly CausePriors _priors;
    private readonly Observation[][] _readings;
    private readonly SymptomModel _symptoms;
    private readonly Func<int, int, double> _sigmaOf;
    private readonly UnitPrediction[] _sound;
    private readonly CancellationToken _cancellation;
    private readonly List<Explanation> _all = [];

    internal Posterior(DiagnosisModel model, Hypothesis[] hypotheses, CausePriors priors, Observation[][] readings, SymptomModel symptoms,
        Func<int, int, double> sigmaOf, CancellationToken cancellation = default)
    {
        _cancellation = cancellation;
        _sigmaOf = sigmaOf;
        _sound = [.. Enumerable.Range(0, model.Units).Select(unit => model.Predict(unit, []))];
        _model = model;
        _hypotheses = hypotheses;
        _priors = priors;
        _readings = readings;
        _symptoms = symptoms;
        var sound = new Base(this, []);
        _all.Add(new Explanation(null, null, [], Math.Log(priors.SoundShare) + sound.LogLikelihood([])));
        double logOne = Math.Log((1 - priors.SoundShare) * (1 - priors.PairShare));
        TryAll(sound, null, logOne, skipsFarOff: true);
        if (priors.PairShare > 0 && Misfits(_all.OrderByDescending(e => e.LogWeight).First()))
        {
            // What alone is far off may be one of two.
            _all.RemoveRange(1, _all.Count - 1);
            TryAll(sound, null, logOne, skipsFarOff: false);
            TryPairs();
        }

        Normalize();
    }

    /// <summary>Every explanation, the likeliest first.</summary>
    internal IReadOnlyList<Explanation> Explanations => _all;

    private void TryPairs()
    {
        List<Explanation> best = [];
        foreach (Explanation one in _all.OrderByDescending(e => e.LogWeight))
        {
            if (best.Count == Primaries) break;
            if (one.First is null || best.Exists(b => b.First!.Cause == one.First.Cause && b.First.Unit == one.First.Unit)) continue;
            best.Add(one);
        }

        var tried = new HashSet<Hypothesis>();
        foreach (Explanation primary in best)
        {
            tried.Add(primary.First!);
            double logPrior = Math.Log((1 - _priors.SoundShare) * _priors.PairShare) + primary.First!.LogPrior + Math.Log(2);
            TryAll(new Base(this, primary.Faults), primary, logPrior, skipsFarOff: true, tried);
        }
    }

    // Some unit is further off than its readings may be.
    private bool Misfits(Explanation best)
    {
        var units = new Base(this, best.Faults);
        for (int unit = 0; unit < _readings.Length; unit++)
        {
            int count = _readings[unit].Length;
            if (units.Blocks[unit].MisfitSquare() > count + (MisfitSigmas * Math.Sqrt(2 * count)) + 4) return true;
        }

        return false;
    }

    private void TryAll(Base on, Explanation? primary, double logPrior, bool skipsFarOff, HashSet<Hypothesis>? tried = null)
    {
        foreach (Hypothesis hypothesis in _hypotheses)
        {
            _cancellation.ThrowIfCancellationRequested();
            if (tried?.Contains(hypothesis) == true) continue;
            int sizes = hypothesis.Sizes.Values.Length;
            bool isRead = _symptoms.HasSiteSymptoms || hypothesis.Units.Any(u => _readings[u].Length > 0 || _symptoms.Has(u));
            var faults = new Deviation[sizes][];
            for (int k = 0; k < sizes; k++) faults[k] = [.. on.Faults, .. hypothesis.At(k)];
            UnitPrediction[][]? predicted = isRead
                ? Array.ConvertAll(faults, f => hypothesis.Units.Select(u => _model.Predict(u, f)).ToArray())
                : null;
            for (int k = 0; k < sizes; k++)
            {
                if (skipsFarOff && predicted is not null && IsFarOff(hypothesis, predicted, k)) continue;
                double log = predicted is null ? on.LogLikelihood([]) : on.LogLikelihood(Replacements(hypothesis, faults[k], predicted, k));
                if (predicted is not null) log += _symptoms.OfCause(hypothesis, predicted[k]);
                _all.Add(new Explanation(primary?.First ?? hypothesis, primary is null ? null : hypothesis, faults[k],
                    logPrior + hypothesis.LogPrior - Math.Log(sizes) + log));
            }
        }
    }

    // No size near this one comes anywhere near some reading: its likelihood is nothing beside that of others.
    private bool IsFarOff(Hypothesis hypothesis, UnitPrediction[][] predicted, int k)
    {
        int below = Math.Max(0, k - 1), above = Math.Min(predicted.Length - 1, k + 1);
        bool isContinuous = hypothesis.Sizes.IsContinuous;
        for (int i = 0; i < hypothesis.Units.Count; i++)
        {
            int unit = hypothesis.Units[i];
            UnitPrediction here = predicted[k][i];
            foreach (Observation reading in _readings[unit])
            {
                int point = reading.Point;
                if (here.IsUnsteady[point]) continue;
                MeterQuantity kind = _model.KindOf(unit, point);
                double at = ReadingScale.Of(kind, here.Values[point]);
                double read = ReadingScale.Sigma(kind, reading.Sigma, here.Values[point], isUnsteady: false);
                double known = Math.Max(_sigmaOf(unit, point), read);
                double spread = isContinuous
                    ? HalfStep / Math.Max(1, above - below) * (ReadingScale.Of(kind, predicted[above][i].Values[point])
                        - ReadingScale.Of(kind, predicted[below][i].Values[point]))
                    : 0;
                double moved = Math.Abs(at - ReadingScale.Of(kind, _sound[unit].Values[point]));
                double off = ReadingScale.Of(kind, reading.Value) - at;
                double allowed = (known * known) + (spread * spread) + (MovedShare * MovedShare * moved * moved);
                if (off * off > FarOff * FarOff * allowed) return true;
            }
        }

        return false;
    }

    private List<(int Unit, EvidenceBlock Block)> Replacements(Hypothesis hypothesis, Deviation[] faults, UnitPrediction[][] predicted,
        int k)
    {
        var replaced = new List<(int, EvidenceBlock)>(hypothesis.Units.Count);
        for (int i = 0; i < hypothesis.Units.Count; i++)
        {
            int unit = hypothesis.Units[i];
            if (_readings[unit].Length == 0 && !_symptoms.Has(unit)) continue;
            var spread = new List<double[]>();
            if (hypothesis.Sizes.IsContinuous)
            {
                int below = Math.Max(0, k - 1), above = Math.Min(predicted.Length - 1, k + 1);
                double share = HalfStep / Math.Max(1, above - below);
                spread.Add(_model.Column(unit, _readings[unit], predicted[below][i], predicted[above][i], share));
            }

            replaced.Add((unit, BlockOf(unit, faults, predicted[k][i], spread)));
        }

        return replaced;
    }

    private EvidenceBlock BlockOf(int unit, Deviation[] faults, UnitPrediction prediction, List<double[]> spread)
    {
        EvidenceBlock block = _model.Evidence(unit, _readings[unit], faults, prediction, spread);
        block.LogSymptoms = _symptoms.OfUnit(unit, prediction);
        return block;
    }

    private void Normalize()
    {
        double most = _all.Max(e => e.LogWeight), sum = _all.Sum(e => Math.Exp(e.LogWeight - most));
        foreach (Explanation one in _all) one.Probability = Math.Exp(one.LogWeight - most) / sum;
        Explanation[] sorted = [.. _all.OrderByDescending(e => e.Probability)];
        _all.Clear();
        _all.AddRange(sorted);
    }

    // The evidence of every unit with certain faults, of which a few are replaced at a time.
    private sealed class Base
    {
        private readonly EvidenceBlock _sum, _work;

        internal Base(Posterior posterior, Deviation[] faults)
        {
            Faults = faults;
            DiagnosisModel model = posterior._model;
            _sum = new EvidenceBlock(model.Commons);
            _work = new EvidenceBlock(model.Commons);
            Blocks = new EvidenceBlock[model.Units];
            for (int unit = 0; unit < Blocks.Length; unit++)
            {
                Blocks[unit] = posterior.BlockOf(unit, faults, model.Predict(unit, faults), []);
                _sum.Add(Blocks[unit], 1);
            }
        }

        internal Deviation[] Faults { get; }

        internal EvidenceBlock[] Blocks { get; }

        internal double LogLikelihood(List<(int Unit, EvidenceBlock Block)> replaced)
        {
            _work.CopyFrom(_sum);
            foreach ((int unit, EvidenceBlock block) in replaced)
            {
                _work.Add(Blocks[unit], -1);
                _work.Add(block, 1);
            }

            return _work.LogLikelihood();
        }
    }
}
