using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>How much a reading that is not taken yet is expected to tell about which group it is.</summary>
/// <remarks>The mutual information of the group and the reading, each explanation being normal about its own prediction; the integral over
/// the reading by five points of Gauss and Hermite for each.</remarks>
internal sealed class InformationGain
{
    private const int MostExplanations = 60;
    private const double LeastProbability = 2e-4;

    // Abscissas and weights of order 5 for a standard normal. Source: Abramowitz and Stegun, table 25.10, scaled by √2 and 1/√π.
    private static readonly double[] Nodes = [-2.8569700138728, -1.3556261799743, 0, 1.3556261799743, 2.8569700138728];
    private static readonly double[] Weights = [0.011257411327721, 0.22207592200561, 0.53333333333333, 0.22207592200561, 0.011257411327721];

    private readonly DiagnosisModel _model;
    private readonly Func<int, int, double> _sigmaOf;
    private readonly Explanation[] _explanations;
    private readonly int[] _groups;
    private readonly double[] _weights;
    private readonly Dictionary<int, UnitPrediction>[] _predictions;
    private readonly UnitPrediction[] _designed;

    /// <param name="model">The model.</param>
    /// <param name="explanations">What may be, the likeliest first.</param>
    /// <param name="groupOf">The group of each, by number.</param>
    /// <param name="sigmaOf">How well a point of a unit will be known, on the scale of readings.</param>
    internal InformationGain(
        DiagnosisModel model, IEnumerable<Explanation> explanations, Func<Explanation, int> groupOf, Func<int, int, double> sigmaOf)
    {
        _model = model;
        _sigmaOf = sigmaOf;
        _explanations = [.. explanations.TakeWhile(e => e.Probability > LeastProbability).Take(MostExplanations)];
        _groups = Array.ConvertAll(_explanations, e => groupOf(e));
        double sum = _explanations.Sum(e => e.Probability);
        _weights = Array.ConvertAll(_explanations, e => e.Probability / sum);
        _designed = [.. Enumerable.Range(0, model.Units).Select(unit => model.Predict(unit, []))];
        _predictions = Array.ConvertAll(_explanations, Predict);
    }

    /// <summary>The expected information of a reading. [bit]</summary>
    internal double Of(int unit, int point)
    {
        int count = _explanations.Length;
        double[] means = new double[count], sigmas = new double[count];
        MeterQuantity kind = _model.KindOf(unit, point);
        double designed = ReadingScale.Of(kind, _designed[unit].Values[point]);
        double known = _sigmaOf(unit, point);
        bool differs = false;
        for (int e = 0; e < count; e++)
        {
            UnitPrediction prediction = _predictions[e].TryGetValue(unit, out UnitPrediction? own) ? own : _designed[unit];
            double value = prediction.IsUnsteady[point] ? ReadingScale.UnsteadyMean(prediction.Values[point]) : prediction.Values[point];
            means[e] = ReadingScale.Of(kind, value);
            sigmas[e] = prediction.IsUnsteady[point] ? ReadingScale.Sigma(kind, known, prediction.Values[point], isUnsteady: true)
                : kind == MeterQuantity.Ohms && ReadingScale.IsBeyondRange(prediction.Values[point])
                    ? ReadingScale.Sigma(kind, 0, prediction.Values[point], isUnsteady: false)
                    : known;
            differs |= Math.Abs(means[e] - designed) > known;
        }

        return differs ? Of(means, sigmas) : 0;
    }

    private double Of(double[] means, double[] sigmas)
    {
        double bits = 0;
        for (int e = 0; e < means.Length; e++)
        {
            for (int node = 0; node < Nodes.Length; node++)
            {
                double at = means[e] + (Nodes[node] * sigmas[e]), all = 0, own = 0, ownWeight = 0;
                for (int other = 0; other < means.Length; other++)
                {
                    double off = (at - means[other]) / sigmas[other];
                    double density = off is > 9 or < -9 ? 0 : _weights[other] * Math.Exp(-0.5 * off * off) / sigmas[other];
                    all += density;
                    if (_groups[other] != _groups[e]) continue;
                    own += density;
                    ownWeight += _weights[other];
                }

                if (own > 0) bits += _weights[e] * Weights[node] * Math.Log(own / ownWeight / all, 2);
            }
        }

        return Math.Max(0, bits);
    }

    private Dictionary<int, UnitPrediction> Predict(Explanation explanation)
    {
        var predictions = new Dictionary<int, UnitPrediction>();
        foreach (int unit in UnitsOf(explanation)) predictions[unit] = _model.Predict(unit, explanation.Faults);
        return predictions;
    }

    private static IEnumerable<int> UnitsOf(Explanation explanation) =>
        (explanation.First?.Units ?? []).Concat(explanation.Second?.Units ?? []).Distinct();
}
