using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Tests.Sites;

/// <summary>Sites of a few devices, built from bare numbers in SI units.</summary>
internal static class SmallSite
{
    internal const string BoxName = "box";

    /// <summary>Wide enough that neither end matters, unless the test sets another.</summary>
    internal static readonly VoltageRange Wide = Range(2, 60);

    internal static VoltageRange Range(double lowest, double highest) => new(Volts(lowest), Volts(highest));

    internal static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    internal static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));

    internal static Load Amperes(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    internal static Load Ohms(double ohms) => Load.ConstantResistance(ElectricResistance.FromOhms(ohms));

    internal static Surroundings At(double cable = 20, double box = 25) => new(
        Temperature.FromDegreesCelsius(cable), Temperature.FromDegreesCelsius(box), Temperature.FromDegreesCelsius(20));

    internal static Starting Starts(double turnOn, double dropOut, bool? soft = true) => new(Volts(turnOn), Volts(dropOut), soft);

    internal static Supply Dc(double volts = 12, double amperes = 100, double percent = 0, CurrentKind kind = CurrentKind.Dc) => new(
        "supply", Output(volts, amperes, percent, kind), Derating.GenericEnclosed);

    /// <summary>The same supply with one efficiency at every load.</summary>
    internal static Supply WithEfficiency(this Supply supply, double efficiency) => new(supply.Name, supply.Output, supply.Derating, new SupplyInput(
        efficiency: new ShareCurve<Ratio>(new(Ratio.Zero, Ratio.FromDecimalFractions(efficiency)), new(Ratio.FromPercent(100), Ratio.FromDecimalFractions(efficiency)))));

    private static SupplyOutput Output(double volts, double amperes, double percent, CurrentKind kind) => kind == CurrentKind.Ac
        ? new AcOutput(Volts(volts), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(percent))
        : new DcOutput(Volts(volts), ElectricCurrent.FromAmperes(amperes), Ratio.FromPercent(percent));

    /// <summary>All rules but the one that speaks of boxes of which nothing on faults is declared, as that of nearly every site here, and the one that speaks of joints, which stand for
    /// cables here.</summary>
    internal static RuleSet WithoutFaultsUnknown { get; } = RuleSet.Standard.Without("faults-unknown").Without("joint-overloaded");

    internal static DistributionBox Box(Supply? supply = null, int outputs = 4, double limit = 50, ProtectiveDevice? protection = null) =>
        DistributionBox.OfEqualOutputs(BoxName, supply ?? Dc(), outputs, ElectricCurrent.FromAmperes(limit), protection);

    /// <summary>A protective device that matters by its resistance alone.</summary>
    internal static ElectronicLimit SeriesOhms(double ohms) => new("limit", ElectricCurrent.FromAmperes(1e6), Ratio.Zero, Duration.FromSeconds(1),
        ElectricResistance.FromOhms(ohms), Volts(1000));

    internal static DistributionBox Adapter(Supply? supply = null) => DistributionBox.Adapter(BoxName, supply ?? Dc());

    internal static Device Camera(Load draw, VoltageRange? window = null, Starting? starting = null) => Camera(new ComponentDraw(draw), window, starting);

    internal static Device Camera(Draw draw, VoltageRange? window = null, Starting? starting = null, DeviceKind kind = DeviceKind.Camera) =>
        new("model", kind, draw, dcInput: window ?? Wide, starting: starting);

    /// <summary>Each device on an output of its own, behind its own loop resistance; camera 1 on output 1 and so on.</summary>
    internal static Site Star(DistributionBox box, IEnumerable<Condition> conditions, params (double Ohms, Device Device)[] feeds) => new("site", conditions, [box],
        feeds.Select((feed, i) => new SiteRun(RunOrigin.Output(BoxName, i + 1), Place(i), Runs.OfOhms(feed.Ohms))),
        feeds.Select((feed, i) => new SiteDevice(Name(i), feed.Device, Place(i))));

    internal static Site Star(params (double Ohms, Device Device)[] feeds) => Star(Box(), [Condition.Day(At())], feeds);

    /// <summary>One device on one output.</summary>
    internal static Site Single(double ohms, Device device, Supply? supply = null, params Condition[] conditions) =>
        Star(Box(supply), conditions.Length > 0 ? conditions : [Condition.Day(At())], (ohms, device));

    /// <summary>All devices on output 1, one behind the other.</summary>
    internal static Site Chain(DistributionBox box, IEnumerable<Condition> conditions, params (double Ohms, Device Device)[] links) => new("site", conditions, [box],
        links.Select((link, i) => new SiteRun(i == 0 ? RunOrigin.Output(BoxName, 1) : RunOrigin.Junction(Place(i - 1)), Place(i), Runs.OfOhms(link.Ohms))),
        links.Select((link, i) => new SiteDevice(Name(i), link.Device, Place(i))));

    internal static Site Chain(params (double Ohms, Device Device)[] links) => Chain(Box(), [Condition.Day(At())], links);

    /// <summary>All devices at the end of one run.</summary>
    internal static Site Shared(double ohms, DistributionBox box, IEnumerable<Condition> conditions, params Device[] devices) => new("site", conditions, [box],
        [new SiteRun(RunOrigin.Output(BoxName, 1), Place(0), Runs.OfOhms(ohms))],
        devices.Select((device, i) => new SiteDevice(Name(i), device, Place(0))));

    internal static Site Shared(double ohms, params Device[] devices) => Shared(ohms, Box(), [Condition.Day(At())], devices);

    internal static string Name(int index) => $"camera {index + 1}";

    internal static string Place(int index) => $"place {index + 1}";

    /// <summary>Why parts do not make up a site.</summary>
    internal static IReadOnlyList<SiteError> ErrorsOf(IReadOnlyList<Condition> conditions, IReadOnlyList<DistributionBox> boxes, IReadOnlyList<SiteRun> runs,
        IReadOnlyList<SiteDevice> devices, IReadOnlyList<VideoLink> links, IReadOnlyList<GroundBond> bonds, IReadOnlyList<OutputTie>? ties = null) =>
        ErrorsIn(() => new Site("site", conditions.Count > 0 ? conditions : [Condition.Day(At())], boxes, runs, devices, links, bonds, ties: ties));

    // As a caller sees them: an exception for each, whose parameter is its place.
    private static IReadOnlyList<SiteError> ErrorsIn(Func<Site> make)
    {
        try
        {
            _ = make();
            return [];
        }
        catch (ArgumentException e) when (e.InnerException is AggregateException errors)
        {
            return [.. errors.InnerExceptions.Cast<ArgumentException>().Select(ErrorOf)];
        }
    }

    private static SiteError ErrorOf(ArgumentException error)
    {
        string[] place = error.ParamName!.Split('[', ']', '.');
        string message = error.Message.Replace($" (Parameter '{error.ParamName}')", string.Empty, StringComparison.Ordinal);
        return new SiteError(place[0], int.Parse(place[1], CultureInfo.InvariantCulture), place[3], message);
    }
}
