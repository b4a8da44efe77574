using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Mains;

/// <summary>Boxes that are plugged into receptacles of 120 V.</summary>
internal static class Receptacles
{
    internal static Receptacle Rated(double amperes, string name = "receptacle") => new(name, Volts(120), ElectricCurrent.FromAmperes(amperes));

    /// <summary>12 V and 10 A, 85 % and a power factor of 0.95 at every load from a share on.</summary>
    internal static Supply Sheet(double percent = 0, double curvesFrom = 0)
    {
        ShareCurve<Ratio> Level(double share) => new(
            new(Ratio.FromPercent(curvesFrom), Ratio.FromDecimalFractions(share)), new(Ratio.FromPercent(100), Ratio.FromDecimalFractions(share)));
        return new Supply("supply", Dc(12, 10, percent).Output, Derating.GenericEnclosed, new SupplyInput(efficiency: Level(0.85), powerFactor: Level(0.95)));
    }

    internal static Site Plugged(double amperes, double percent = 0, double curvesFrom = 0, params Condition[] conditions) =>
        Plugged(amperes, Sheet(percent, curvesFrom), 15, conditions);

    /// <summary>One camera of constant current at the terminals of a box that is plugged into a receptacle.</summary>
    internal static Site Plugged(double amperes, Supply supply, double rating = 15, params Condition[] conditions) => Star(
        Box(supply).WithReceptacle(Rated(rating)), conditions.Length > 0 ? conditions : [Condition.Day(At())], (0, Camera(Amperes(amperes))));

    /// <summary>A box for each, with one camera of constant current at its terminals.</summary>
    internal static Site Boxes(params (Receptacle? Receptacle, double Amperes)[] boxes) => new("site", [Condition.Day(At())],
        boxes.Select((b, i) => b.Receptacle is null ? Named(i) : Named(i).WithReceptacle(b.Receptacle)),
        boxes.Select((_, i) => new SiteRun(RunOrigin.Output(Named(i).Name, 1), Place(i), Runs.OfOhms(0))),
        boxes.Select((b, i) => new SiteDevice(Name(i), Camera(Amperes(b.Amperes)), Place(i))));

    private static DistributionBox Named(int index) => Box(Sheet()).WithName($"box {index + 1}");
}
