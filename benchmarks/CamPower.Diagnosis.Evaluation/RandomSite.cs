using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Evaluation;

/// <summary>A made-up site of 1 to 32 cameras: single runs, chains, trunks with branches, shared negatives, video shields that meet.</summary>
internal sealed class RandomSite
{
    private const double SetVolts = 12.6;

    private static readonly Cable[] Cables = [CableCatalog.Pair18, CableCatalog.Pair16, CableCatalog.Pair20, CableCatalog.Pair14];
    private static readonly VoltageRange Accepted = new(ElectricPotential.FromVolts(10.2), ElectricPotential.FromVolts(14));
    private static readonly Starting Starting = new(ElectricPotential.FromVolts(9), ElectricPotential.FromVolts(8), softStart: null);

    private static readonly Device[] Models =
    [
        Camera("dome", 3.6, 4.8), Camera("bullet", 4.5, 6), Camera("small dome", 2.4, 2),
        new("indoor dome", DeviceKind.Camera, new LabelDraw(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(0.3), InputStage.Unknown), Accepted, starting: Starting),
    ];

    private readonly Random _random;
    private readonly List<SiteRun> _runs = [];
    private readonly List<SiteDevice> _devices = [];
    private readonly List<VideoLink> _links = [];

    private RandomSite(Random random) => _random = random;

    internal static Site Of(Random random) => new RandomSite(random).Make();

    private static Device Camera(string name, double watts, double infrared) => new(name, DeviceKind.Camera,
        new ComponentDraw(Load.ConstantPower(Power.FromWatts(watts)), infrared: Load.ConstantPower(Power.FromWatts(infrared))), Accepted, starting: Starting);

    private Site Make()
    {
        int cameras = 1 + (int)(32 * Math.Pow(_random.NextDouble(), 1.5));
        var boxes = new List<DistributionBox>();
        while (_devices.Count < cameras)
        {
            string name = FormattableString.Invariant($"box {boxes.Count + 1}");
            int outputs = _random.Next(2) == 0 ? 4 : 9, used = 0;
            bool hasShields = _random.NextDouble() < 0.1;
            while (used < outputs - _random.Next(2) && _devices.Count < cameras) used += Feed(name, used + 1, outputs - used, cameras - _devices.Count, hasShields);
            boxes.Add(Box(name, outputs));
        }

        GroundBond[] bonds = _links.Count > 0 ? [new GroundBond("recorder", boxes[0].Name, ElectricResistance.FromMilliohms(200))] : [];
        var mild = new Surroundings(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(20));
        return new Site("made up", [Condition.Day(mild), Condition.Night(mild)], boxes, _runs, _devices, _links, bonds);
    }

    private DistributionBox Box(string name, int outputs)
    {
        var output = new DcOutput(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(1.5 * outputs), Ratio.FromPercent(1),
            new VoltageRange(ElectricPotential.FromVolts(11), ElectricPotential.FromVolts(15)), ElectricPotential.FromVolts(SetVolts));
        var limit = new ElectronicLimit("1.4 A electronic limit", ElectricCurrent.FromAmperes(1.4), Ratio.FromPercent(10), Duration.FromMilliseconds(5),
            ElectricResistance.FromMilliohms(50), ElectricPotential.FromVolts(30));
        ProtectiveDevice protection = _random.NextDouble() < 0.1 ? ProtectiveDevice.None : limit;
        DistributionBox box = DistributionBox.OfEqualOutputs(name, new Supply("supply", output, Derating.GenericEnclosed), outputs, ElectricCurrent.FromAmperes(1.5), protection);
        return _random.NextDouble() < 0.15 ? box.WithBattery(BatteryCatalog.Generic12Volt[0]) : box;
    }

    // One feed of a few cameras; returns how many outputs it uses.
    private int Feed(string box, int output, int free, int wanted, bool hasShields)
    {
        double kind = _random.NextDouble();
        RunOrigin from = RunOrigin.Output(box, output);
        if (kind < 0.55 || wanted == 1) Single(from, hasShields);
        else if (kind < 0.75) Chain(from, Math.Min(wanted, 2 + _random.Next(3)));
        else if (kind < 0.92) Tree(from, Math.Min(wanted, 2 + _random.Next(3)));
        else if (free > 1) return SharedNegative(box, output);
        else Single(from, hasShields);
        return 1;
    }

    private void Single(RunOrigin from, bool hasShields)
    {
        string end = Run(from, 10, 45);
        SiteDevice device = Place(end);
        if (hasShields) _links.Add(new VideoLink(device.Name, "recorder", ElectricResistance.FromOhms(1 + (2 * _random.NextDouble()))));
    }

    private void Chain(RunOrigin from, int cameras)
    {
        for (int i = 0; i < cameras; i++)
        {
            string end = Run(from, 8, 30 / cameras);
            Place(end);
            from = RunOrigin.Junction(end);
        }
    }

    private void Tree(RunOrigin from, int cameras)
    {
        string trunk = Run(from, 8, 30 / cameras);
        for (int i = 0; i < cameras; i++) Place(Run(RunOrigin.Junction(trunk), 4, 15));
    }

    private int SharedNegative(string box, int output)
    {
        string first = Run(RunOrigin.Output(box, output), 8, 20);
        Place(first);
        string second = Name();
        _runs.Add(new SiteRun(RunOrigin.Output(box, output + 1), second, new CableRun(Cables[_random.Next(2)], Length.FromMeters(8 + _random.Next(15))), returnAt: first));
        Place(second);
        return 2;
    }

    private string Run(RunOrigin from, double least, double more)
    {
        string end = Name();
        var run = new CableRun(Cables[_random.Next(Cables.Length)], Length.FromMeters(least + (more * _random.NextDouble())));
        if (_random.NextDouble() < 0.3) run = run.Then(new Joint("splice", ElectricResistance.FromMilliohms(10)));
        _runs.Add(new SiteRun(from, end, run));
        return end;
    }

    private SiteDevice Place(string junction)
    {
        var device = new SiteDevice(FormattableString.Invariant($"camera {_devices.Count + 1}"), Models[_random.Next(Models.Length)], junction);
        _devices.Add(device);
        return device;
    }

    private string Name() => FormattableString.Invariant($"post {_runs.Count + 1}");
}
