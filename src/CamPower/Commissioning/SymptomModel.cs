using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Commissioning;

/// <summary>How likely symptoms are, given what becomes of the devices.</summary>
/// <remarks>The probabilities are common practice, no source. Each leaves room for what no circuit explains: a broken device, a wrong
/// word.</remarks>
internal sealed class SymptomModel
{
    private const double Unlikely = 0.02;

    private readonly (int Device, SymptomKind Kind)[][] _ofUnits;

    internal SymptomModel(DiagnosisModel model, IReadOnlyList<Symptom> symptoms)
    {
        HasSiteSymptoms = symptoms.Any(s => s.Device is null);
        _ofUnits = new (int, SymptomKind)[model.Units][];
        for (int unit = 0; unit < _ofUnits.Length; unit++)
        {
            _ofUnits[unit] = model.IsBox(unit)
                ? []
                : [.. model.Feeds[unit].Feed.Devices.SelectMany((d, i) => symptoms
                    .Where(s => string.Equals(s.Device, d.Device.Name, StringComparison.Ordinal)).Select(s => (i, s.Kind)))];
        }
    }

    /// <summary>Whether several devices failed at once.</summary>
    internal bool HasSiteSymptoms { get; }

    internal bool Has(int unit) => _ofUnits[unit].Length > 0;

    internal double OfUnit(int unit, UnitPrediction prediction)
    {
        double log = 0;
        foreach ((int device, SymptomKind kind) in _ofUnits[unit]) log += Math.Log(Of(kind, device, prediction));
        return log;
    }

    /// <summary>Whether a cause takes several devices down at once.</summary>
    internal double OfCause(Hypothesis hypothesis, UnitPrediction[] predicted)
    {
        if (!HasSiteSymptoms || hypothesis.Cause == Cause.MeterWrong) return 0;
        int failing = predicted.Sum(p => p.ByNight.Count(s => s != DeviceState.Up));
        return Math.Log(failing > 1 ? 0.8 : 0.05);
    }

    private static double Of(SymptomKind kind, int device, UnitPrediction prediction)
    {
        DeviceState day = prediction.ByDay[device], night = prediction.ByNight[device];
        bool isUp = day == DeviceState.Up, restarts = day == DeviceState.Restarting;
        bool failsAtNight = isUp && night != DeviceState.Up;
        return kind switch
        {
            SymptomKind.Works => isUp ? failsAtNight ? 0.4 : 0.95 : 0.02,
            SymptomKind.Dark => isUp ? failsAtNight ? 0.1 : Unlikely : restarts ? 0.4 : 0.95,
            SymptomKind.Restarts => restarts ? 0.7 : failsAtNight ? 0.3 : Unlikely,
            SymptomKind.FlickersAtDusk => failsAtNight ? 0.8 : prediction.IsDim[device] ? 0.4 : restarts ? 0.2 : Unlikely,
            SymptomKind.HumBars => prediction.HasShieldCurrent[device] ? 0.6 : Unlikely,
            SymptomKind.DimInfrared => prediction.IsDim[device] || failsAtNight ? 0.4 : Unlikely,
            _ => isUp && !failsAtNight ? 0.2 : 0.6,
        };
    }
}
