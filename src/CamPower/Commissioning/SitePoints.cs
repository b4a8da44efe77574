using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>Which point of which unit a reading is of, and back.</summary>
internal sealed class SitePoints
{
    private readonly DiagnosisModel _model;
    private readonly Dictionary<ReadingPoint, (int Unit, int Point)> _places = [];
    private readonly ReadingPoint[][] _points;

    internal SitePoints(DiagnosisModel model)
    {
        _model = model;
        _points = [.. Enumerable.Range(0, model.Units).Select(unit => new ReadingPoint[model.PointsOf(unit)])];
        foreach (FeedModel feed in model.Feeds) AddFeed(feed);
        foreach (BoxModel box in model.Boxes)
        {
            Add(box.Unit, UnitPoints.Unloaded, ReadingPoint.AtSupply(box.Box.Name, ReadingState.Unloaded));
            Add(box.Unit, UnitPoints.SupplyDay, ReadingPoint.AtSupply(box.Box.Name, ReadingState.Running));
            Add(box.Unit, UnitPoints.SupplyNight, ReadingPoint.AtSupply(box.Box.Name, ReadingState.InfraredForced));
        }
    }

    /// <summary>The point of the sheet that stands for a point of a unit.</summary>
    internal ReadingPoint Of(int unit, int point) => _points[unit][point];

    /// <summary>Where a point of the sheet is among the units; false where the diagnosis has no use for it.</summary>
    internal bool TryFind(ReadingPoint point, out int unit, out int place)
    {
        bool isKnown = _places.TryGetValue(point, out (int Unit, int Point) at);
        (unit, place) = at;
        return isKnown;
    }

    /// <summary>A value at a point of a unit as a quantity; null for a resistance beyond the range of a meter.</summary>
    internal IQuantity? QuantityOf(int unit, int point, double value) => _model.KindOf(unit, point) switch
    {
        MeterQuantity.Volts => ElectricPotential.FromVolts(value),
        MeterQuantity.Amperes => ElectricCurrent.FromAmperes(value),
        _ => value >= FeedFaults.OpenOhms ? null : ElectricResistance.FromOhms(value),
    };

    private void AddFeed(FeedModel feed)
    {
        string box = feed.Feed.Box.Name;
        int number = feed.Feed.Output.Number;
        for (int device = 0; device < feed.Devices; device++)
        {
            SiteDevice at = feed.Feed.Devices[device].Device;
            AtDevice(ReadingKind.LoopResistance, ReadingKind.JunctionLoopResistance, ReadingState.FarEndJumpered, UnitPoints.Loop);
            AtDevice(ReadingKind.PlugVoltage, ReadingKind.JunctionVoltage, ReadingState.DeviceUnplugged, UnitPoints.Plug);
            AtDevice(ReadingKind.PlugVoltage, ReadingKind.JunctionVoltage, ReadingState.Running, UnitPoints.Day);
            AtDevice(ReadingKind.PlugVoltage, ReadingKind.JunctionVoltage, ReadingState.InfraredForced, UnitPoints.Night);

            void AtDevice(ReadingKind kind, ReadingKind atJunction, ReadingState state, int point)
            {
                int place = FeedModel.PointOf(device, point);
                Add(feed.Unit, place, ReadingPoint.AtDevice(kind, at.Name, state));
                Also(feed.Unit, place, ReadingPoint.AtJunction(atJunction, at.At, state));
            }
        }

        for (int bare = 0; bare < feed.Bare.Length; bare++)
        {
            string junction = feed.Feed.Runs[feed.Bare[bare]].To;
            AtBare(ReadingKind.JunctionLoopResistance, ReadingState.FarEndJumpered, UnitPoints.Loop);
            AtBare(ReadingKind.JunctionVoltage, ReadingState.DeviceUnplugged, UnitPoints.Plug);
            AtBare(ReadingKind.JunctionVoltage, ReadingState.Running, UnitPoints.Day);
            AtBare(ReadingKind.JunctionVoltage, ReadingState.InfraredForced, UnitPoints.Night);

            void AtBare(ReadingKind kind, ReadingState state, int point) =>
                Add(feed.Unit, feed.PointAt(bare, point), ReadingPoint.AtJunction(kind, junction, state));
        }

        Output(ReadingKind.PairResistance, ReadingState.JumperRemoved, UnitPoints.Insulation);
        Output(ReadingKind.OutputVoltage, ReadingState.Running, UnitPoints.OutputDay);
        Output(ReadingKind.OutputVoltage, ReadingState.InfraredForced, UnitPoints.OutputNight);
        Output(ReadingKind.OutputVoltage, ReadingState.DeviceUnplugged, UnitPoints.OutputUnplugged);
        Output(ReadingKind.OutputCurrent, ReadingState.Running, UnitPoints.AmperesDay);
        Output(ReadingKind.OutputCurrent, ReadingState.InfraredForced, UnitPoints.AmperesNight);
        Also(feed.Unit, feed.OutputPoint(UnitPoints.Insulation), ReadingPoint.AtOutput(ReadingKind.PairResistance, box, number,
            ReadingState.Dead));

        void Output(ReadingKind kind, ReadingState state, int point) =>
            Add(feed.Unit, feed.OutputPoint(point), ReadingPoint.AtOutput(kind, box, number, state));
    }

    private void Add(int unit, int place, ReadingPoint point)
    {
        _points[unit][place] = point;
        _places.Add(point, (unit, place));
    }

    // Another reading of the same: a junction where a device hangs, the pair before the jumper was on.
    private void Also(int unit, int place, ReadingPoint point)
    {
        if (!_places.ContainsKey(point)) _places.Add(point, (unit, place));
    }
}
