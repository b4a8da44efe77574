using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Commissioning;
using UnitsNet;

namespace CamPower.Evaluation;

/// <summary>One made-up site with what is wrong with it, and what a meter shows there.</summary>
internal sealed class Case
{
    private const double Celsius = 20;
    private const double Moved = 3;

    private readonly UnitPrediction[] _truth, _sound;
    private readonly double[] _gains;
    private readonly Manner _manner;
    private readonly Random _random;
    private readonly Dictionary<ReadingPoint, MeterReading> _read = [];

    internal Case(Manner manner, int seed)
    {
        _manner = manner;
        _random = new Random(seed);
        Site site = RandomSite.Of(_random);
        var at = new Surroundings(Temperature.FromDegreesCelsius(Celsius), Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(Celsius));
        Sheet = new CommissioningSheet(site, Tolerance.SiteTolerance.Standard, Meter.Handheld, at);
        Study = new DiagnosisStudy(Sheet, CausePriors.CommonPractice);
        DiagnosisModel model = Study.Model;
        Causes = Draw();
        Faults = [.. Causes.SelectMany(h => h.Sizes.IsContinuous ? h.WithSize(manner.SizeOf(h.Sizes, _random)) : h.At(_random.Next(h.Sizes.Values.Length)))];
        double[] deviations = [.. model.Parts.All.Select(part => manner.DeviationOf(part, _random))];
        double[] infrared = [.. model.Site.Devices.Select(d => manner.InfraredOf(model.Parts.All[model.Parts.DrawOf(d)], _random))];
        var built = new TrueSite(model, model.Parts, deviations, infrared, Celsius);
        _truth = built.Solve(Faults);
        _sound = built.Solve([]);
        _gains = [.. new[] { Sheet.Meter.Volts, Sheet.Meter.Amperes, Sheet.Meter.Ohms }.Select(range => manner.GainOf(range, _random))];
        foreach (UnitPrediction unit in _truth) ApplyMeter(unit, Array.IndexOf(_truth, unit));
    }

    internal CommissioningSheet Sheet { get; }

    internal DiagnosisStudy Study { get; }

    /// <summary>What is wrong: nothing, one cause or two.</summary>
    internal IReadOnlyList<Hypothesis> Causes { get; }

    internal Deviation[] Faults { get; }

    internal bool IsSound => Causes.Count == 0;

    internal int Cameras => Sheet.Site.Devices.Count;

    /// <summary>Everything that the sheet asks for; an output that is found shorted is not energized.</summary>
    internal IReadOnlyList<ReadingPoint> FullSheet()
    {
        HashSet<int> shorted = [.. Faults.Where(f => f.Cause == Cause.ShortCircuit).Select(f => f.Unit)];
        return [.. Sheet.Lines.Select(l => l.Point).Where(p => Study.Points.TryFind(p, out int unit, out _) && (p.IsDead || !shorted.Contains(unit)))];
    }

    /// <summary>The voltages of supplies and cameras, as they run and with infrared.</summary>
    internal IReadOnlyList<ReadingPoint> VoltsOnly() =>
    [
        .. Sheet.Site.Boxes.Where(b => Study.Model.Feeds.Any(f => ReferenceEquals(f.Feed.Box, b)))
            .SelectMany(b => new[] { ReadingPoint.AtSupply(b.Name, ReadingState.Running), ReadingPoint.AtSupply(b.Name, ReadingState.InfraredForced) }),
        .. Sheet.Site.Devices.SelectMany(d => new[]
        {
            ReadingPoint.AtDevice(ReadingKind.PlugVoltage, d.Name, ReadingState.Running),
            ReadingPoint.AtDevice(ReadingKind.PlugVoltage, d.Name, ReadingState.InfraredForced),
        }),
    ];

    /// <summary>Whether a fault moves a reading of a sheet by three combined standard uncertainties.</summary>
    internal bool Moves(IEnumerable<ReadingPoint> sheet) => sheet.Any(point =>
    {
        Study.Points.TryFind(point, out int unit, out int place);
        MeterQuantity kind = Study.Model.KindOf(unit, place);
        double off = ReadingScale.Of(kind, _truth[unit].Values[place]) - ReadingScale.Of(kind, _sound[unit].Values[place]);
        return Math.Abs(off) >= Moved * Study.SigmaOf(unit, place);
    });

    /// <summary>What the meter shows: the same again where it is asked twice.</summary>
    internal MeterReading Read(ReadingPoint point)
    {
        if (!_read.TryGetValue(point, out MeterReading? reading)) _read.Add(point, reading = Shown(point));
        return reading;
    }

    /// <summary>What people say of the devices.</summary>
    internal IReadOnlyList<Symptom> Seen()
    {
        var seen = new List<Symptom>();
        foreach (FeedModel feed in Study.Model.Feeds)
        {
            UnitPrediction truth = _truth[feed.Unit];
            for (int d = 0; d < feed.Devices; d++)
            {
                string name = feed.Feed.Devices[d].Device.Name;
                DeviceState day = truth.ByDay[d], night = truth.ByNight[d];
                seen.Add(day == DeviceState.Restarting ? Symptom.Restarts(name) : day != DeviceState.Up ? Symptom.Dark(name)
                    : night != DeviceState.Up ? Symptom.FlickersAtDusk(name) : Symptom.Works(name));
            }
        }

        return seen;
    }

    /// <summary>The true groups, as a sheet can tell them apart.</summary>
    internal HashSet<GroupKey> TrueKeys(IReadOnlyList<ReadingPoint> sheet)
    {
        if (IsSound) return [default];
        var observed = new List<Observation>[Study.Model.Units];
        for (int unit = 0; unit < observed.Length; unit++) observed[unit] = [];
        foreach (ReadingPoint point in sheet)
        {
            if (Study.Points.TryFind(point, out int unit, out int place)) observed[unit].Add(new Observation(unit, place, 0, 1));
        }

        return [.. Causes.Select(h => Study.KeyOf(h, unit => SheetScope.Of(Study.Model, unit, observed[unit])))];
    }

    internal HashSet<GroupKey> TrueKeysOfFullSheet() => IsSound ? [default] : [.. Causes.Select(h => Study.KeyOf(h, _ => SheetScope.Full))];

    private Hypothesis[] Draw()
    {
        if (_random.NextDouble() < 0.5) return [];
        Hypothesis first = DrawOne();
        if (_random.NextDouble() >= 0.1) return [first];
        Hypothesis second;
        do second = DrawOne();
        while (ReferenceEquals(second, first) || Clashes(first, second));
        return [first, second];
    }

    // What two faults of one kind at one place would be is one fault.
    private static bool Clashes(Hypothesis one, Hypothesis other) => one.Cause == other.Cause && (one.Unit == other.Unit || one.Cause is Cause.WrongOutput or Cause.MeterWrong);

    private Hypothesis DrawOne()
    {
        double[] weights = [.. Study.Hypotheses.Select(_manner.WeightOf)];
        double at = _random.NextDouble() * weights.Sum();
        for (int i = 0; i < weights.Length; i++)
        {
            at -= weights[i];
            if (at < 0) return Study.Hypotheses[i];
        }

        return Study.Hypotheses[^1];
    }

    private void ApplyMeter(UnitPrediction truth, int unit)
    {
        foreach (Deviation fault in Faults.Where(f => f.Cause == Cause.MeterWrong))
        {
            for (int point = 0; point < truth.Values.Length; point++)
            {
                var kind = (MeterQuantity)fault.Place;
                if (Study.Model.KindOf(unit, point) != kind) continue;
                truth.Values[point] = kind == MeterQuantity.Volts ? truth.Values[point] * 2.22 : kind == MeterQuantity.Amperes ? 0 : truth.Values[point] + fault.Size;
            }
        }
    }

    private MeterReading Shown(ReadingPoint point)
    {
        if (!Study.Points.TryFind(point, out int unit, out int place)) throw new ArgumentException($"{point} is nowhere.", nameof(point));
        MeterQuantity kind = Study.Model.KindOf(unit, place);
        double value = _truth[unit].Values[place];
        if (_truth[unit].IsUnsteady[place]) value *= ReadingScale.LeastUnsteady + ((1 - ReadingScale.LeastUnsteady) * _random.NextDouble());
        Meter meter = Sheet.Meter;
        MeterRange range = kind switch { MeterQuantity.Volts => meter.Volts, MeterQuantity.Amperes => meter.Amperes, _ => meter.Ohms };
        if (kind == MeterQuantity.Ohms && value >= FeedFaults.OpenOhms) return new MeterReading(point, null);
        if (kind == MeterQuantity.Ohms) value += meter.ContactOhms * _random.NextDouble();
        if (kind == MeterQuantity.Volts) value *= 1 + _manner.DriftOf(_random);
        value = (value * (1 + _gains[(int)kind])) + (range.Resolution * _manner.CountsOf(range, _random));
        value = Math.Round(value / range.Resolution) * range.Resolution;
        return new MeterReading(point, kind switch
        {
            MeterQuantity.Volts => ElectricPotential.FromVolts(value),
            MeterQuantity.Amperes => ElectricCurrent.FromAmperes(Math.Max(0, value)),
            _ => (IQuantity)ElectricResistance.FromOhms(Math.Max(0, value)),
        });
    }
}
