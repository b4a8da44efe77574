using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>Yards made up from a seed: cameras on a plan, places for boxes among them, boxes and cables with all that the rules ask for.</summary>
internal static class PlannedYard
{
    internal static IReadOnlyList<Condition> Conditions { get; } =
    [
        Condition.Day(At(45, 45, 38)), Condition.Night(At(25, 35, 20)), Condition.ColdStart(At(0, 10, 0)),
        new("frosty night", LoadComponents.Infrared | LoadComponents.Heater, At(-10, 5, -10)),
    ];

    internal static Device Dome { get; } = Camera("infrared dome", new ComponentDraw(Watts(3.6), infrared: Watts(4.8), startUp: Watts(0.4)));

    internal static Device Bullet { get; } = Camera("infrared bullet", new ComponentDraw(Watts(4.5), infrared: Watts(6), startUp: Watts(0.5)));

    internal static Device Heated { get; } = Camera("heated camera", new ComponentDraw(
        Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.25)), heater: Load.ConstantResistance(ElectricResistance.FromOhms(24))));

    internal static Device PanTilt { get; } = Camera("camera with pan and tilt", new ComponentDraw(Watts(4), infrared: Watts(2), motor: Watts(4)));

    internal static Device Indoor { get; } = Camera("indoor camera", new ComponentDraw(Watts(3.2)));

    internal static ProtectiveDevice Limit { get; } = new ElectronicLimit("1.4 A electronic limit", ElectricCurrent.FromAmperes(1.4), Ratio.FromPercent(10),
        Duration.FromMilliseconds(5), ElectricResistance.FromMilliohms(50), Volts(30));

    internal static ProtectiveDevice ResettableFuse { get; } = CamPower.ResettableFuse.Generic16Volt.Single(fuse => fuse.HoldCurrent.Amperes.Equals(1.1));

    internal static IReadOnlyList<Cable> Cables { get; } = [Pair(20), Pair(18), Pair(16), Pair(14)];

    /// <summary>Boxes of 4, 8 and 16 outputs with electronic limits, set to a voltage.</summary>
    internal static IReadOnlyList<DistributionBox> Boxes(double setVolts = 13) => [Box(4, 5, setVolts), Box(8, 10, setVolts), Box(16, 20, setVolts)];

    internal static DistributionBox Box(int outputs, double amperes, double setVolts, ProtectiveDevice? protection = null)
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(1), new VoltageRange(Volts(12), Volts(14)),
            Volts(setVolts), sourceResistance: ElectricResistance.FromMilliohms(300 / amperes),
            overload: OverloadBehavior.Hiccup(ElectricCurrent.FromAmperes(1.3 * amperes), Duration.FromMilliseconds(100), Duration.FromSeconds(1.5)),
            capacitance: ElectricCapacitance.FromMicrofarads(330 * amperes));
        var efficiency = new ShareCurve<Ratio>(
            new(Ratio.FromPercent(10), Ratio.FromPercent(76)), new(Ratio.FromPercent(50), Ratio.FromPercent(87)), new(Ratio.FromPercent(100), Ratio.FromPercent(86)));
        return DistributionBox.OfEqualOutputs(FormattableString.Invariant($"{outputs} outputs at {setVolts} V"),
            new Supply(FormattableString.Invariant($"12 V {amperes} A supply"), output, Derating.GenericEnclosed,
                new SupplyInput(new VoltageRange(Volts(90), Volts(264)), efficiency: efficiency)),
            outputs, ElectricCurrent.FromAmperes(1.1), protection ?? Limit);
    }

    /// <summary>Cameras of four kinds anywhere on a yard, and places spread over it.</summary>
    internal static PlanningQuestion Of(int cameras, int places, int seed, double meters = 120)
    {
        var random = new Random(seed);
        Device[] models = [Dome, Bullet, Heated, Indoor];
        return new PlanningQuestion("yard", Conditions,
            [.. Enumerable.Range(1, cameras).Select(i => new PlannedCamera(
                FormattableString.Invariant($"camera {i}"), models[random.Next(models.Length)], Anywhere(), Anywhere()))],
            [.. Enumerable.Range(1, places).Select(i => new BoxPlace(FormattableString.Invariant($"place {i}"), Anywhere(), Anywhere()))])
        {
            Boxes = Boxes(), Cables = Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        };

        Length Anywhere() => Length.FromMeters(random.Next((int)meters + 1));
    }

    /// <summary>Cameras in clumps, many places, each with a price, room for two boxes and a closed enclosure that they warm; boxes set to three
    /// voltages.</summary>
    internal static PlanningQuestion HardOf(int cameras, int seed)
    {
        var random = new Random(seed);
        Device[] models = [Dome, Bullet, Heated, Indoor];
        double side = 60 * Math.Sqrt(cameras / 8.0);
        (double X, double Y)[] clumps = [.. Enumerable.Range(0, Math.Max(2, cameras / 8)).Select(_ => (random.NextDouble() * side, random.NextDouble() * side))];
        return new PlanningQuestion("hard yard", Conditions,
            [.. Enumerable.Range(1, cameras).Select(Clumped)],
            [.. Enumerable.Range(1, Math.Max(3, cameras / 4)).Select(i => new BoxPlace(
                FormattableString.Invariant($"place {i}"), Meters(random.NextDouble() * side), Meters(random.NextDouble() * side))
            {
                Enclosure = Closed(0.4), MostBoxes = 2, Price = 20 + random.Next(60),
            })])
        {
            Boxes = [.. Boxes(12.5), .. Boxes(12.8), .. Boxes()], Cables = Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        };

        PlannedCamera Clumped(int i)
        {
            (double x, double y) = clumps[random.Next(clumps.Length)];
            return new PlannedCamera(FormattableString.Invariant($"camera {i}"), models[random.Next(models.Length)],
                Meters(x + (40 * random.NextDouble()) - 20), Meters(y + (40 * random.NextDouble()) - 20));
        }

        static Length Meters(double meters) => Length.FromMeters(Math.Round(meters));
    }

    /// <summary>A closed steel enclosure on a wall, square and 15 cm deep.</summary>
    internal static Enclosure Closed(double meters) => new(
        Length.FromMeters(meters), Length.FromMeters(meters), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    internal static Cable Pair(int gauge)
    {
        var conductor = new Conductor(WireSize.Awg(gauge), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        return new Cable(conductor, conductor, name: FormattableString.Invariant($"{gauge} AWG pair"), insulation: Insulation.Pvc70);
    }

    internal static Device Camera(string name, Draw draw) => new(name, DeviceKind.Camera, draw, new VoltageRange(Volts(10.8), Volts(13.2)),
        starting: new Starting(Volts(9), Volts(8), softStart: true));

    internal static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));

    internal static Surroundings At(double cable, double box, double camera) => new(
        Temperature.FromDegreesCelsius(cable), Temperature.FromDegreesCelsius(box), Temperature.FromDegreesCelsius(camera));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);
}
