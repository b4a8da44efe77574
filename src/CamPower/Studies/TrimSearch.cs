using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using CamPower.Assessment;
using CamPower.Sites;

namespace CamPower.Studies;

/// <summary>Finds the trim window of a box by solving what it feeds at one set point after another.</summary>
internal sealed class TrimSearch
{
    private const double CloseVolts = 1e-9, SlopeStep = 1e-3, LeastVolts = 1e-6, MostVolts = 1e5;
    private const int StepsOfSharedReturns = 100;

    private readonly Site _site;
    private readonly DistributionBox _box;
    private readonly List<FeedGroup> _groups;
    private readonly List<DistributionBox> _boxes;
    private readonly double _coldestCelsius, _fromVolts, _toVolts;
    private readonly int _steps;
    private readonly CancellationToken _cancellationToken;

    private readonly SiteDevice? _leftOut;

    internal TrimSearch(Site site, DistributionBox box, CancellationToken cancellationToken, SiteDevice? leftOut = null)
    {
        _leftOut = leftOut;
        _site = site;
        _box = box;
        _cancellationToken = cancellationToken;
        _coldestCelsius = site.Conditions.Min(c => c.At.CableCelsius);
        VoltageRange? trim = (box.Supply.Output as DcOutput)?.Trim;
        _fromVolts = trim?.LowestVolts ?? box.Supply.Output.NominalVolts;
        _toVolts = trim?.HighestVolts ?? box.Supply.Output.NominalVolts;
        (_groups, _boxes) = JoinedTo(box, site);
        _steps = _groups.Exists(g => g.SharesReturns) ? StepsOfSharedReturns : 1;
    }

    // A charger goes above its set point.
    private double RiseVolts => (_box.Supply.Output as DcOutput)?.ChargingRise?.Volts ?? 0;

    internal TrimWindow Window()
    {
        TrimLimit lowest = Limit(TrimBreach.TooLow, safe: _toVolts, end: _fromVolts, retreat: 2);

        // From there upward: under it a circuit may collapse, and its devices then see the whole supply voltage.
        TrimLimit highest = Limit(TrimBreach.TooHigh, safe: Math.Min(lowest.Volts, _toVolts), end: _toVolts, retreat: 0.5);
        var window = new TrimWindow(_box, lowest, highest, BeforeLoad());
        return window.IsEmpty && _leftOut is null ? WithSpoiler(window) : window;
    }

    // One of the two that conflict: the one that leaves the others the most room.
    private TrimWindow WithSpoiler(TrimWindow empty)
    {
        SiteDevice[] conflicting = [.. new[] { empty.Lowest.Device, empty.Highest.Device }.OfType<SiteDevice>().Distinct()];
        (SiteDevice Spoiler, TrimWindow OfOthers)[] without =
            [.. conflicting.Select(device => (device, new TrimSearch(_site, _box, _cancellationToken, device).Window()))];
        if (without.Length == 0) return empty;
        (SiteDevice spoiler, TrimWindow ofOthers) = without.OrderByDescending(x => x.OfOthers.Highest.Volts - x.OfOthers.Lowest.Volts)
            .First();
        return new TrimWindow(_box, empty.Lowest, empty.Highest, empty.HighestBeforeLoad, spoiler, ofOthers);
    }

    // Nothing is lost on the way while nothing is drawn.
    private TrimLimit BeforeLoad()
    {
        FedDevice? first = _groups.SelectMany(g => g.Devices)
            .Where(d => IsOfThisBox(d.Box) && d.Accepted is not null && !ReferenceEquals(d.Device, _leftOut))
            .OrderBy(d => d.Accepted!.HighestVolts).FirstOrDefault();
        double volts = (first?.Accepted!.HighestVolts / (1 + _box.Supply.Output.Tolerance.DecimalFractions)) - RiseVolts
            ?? double.PositiveInfinity;
        return Limits.IsBelow(volts, _toVolts)
            ? new TrimLimit(volts, TrimBound.NoLoadVoltage, first!.Device)
            : new TrimLimit(_toVolts, TrimBound.SupplyRange);
    }

    // Seen from the side where nothing should be out: the last set point before something is.
    private TrimLimit Limit(Breaches breaches, double safe, double end, double retreat)
    {
        double inside = safe;
        while (IsOut(breaches, inside))
        {
            double outside = inside;
            inside = Math.Min(Math.Max(outside * retreat, LeastVolts), MostVolts);
            bool isNeverMet = inside.Equals(outside);
            if (isNeverMet || !IsOut(breaches, inside)) return Narrowed(breaches, inside, outside);
        }

        for (int step = 1; step <= _steps; step++)
        {
            double outside = step < _steps ? safe + ((end - safe) * step / _steps) : end;
            if (IsOut(breaches, outside)) return Narrowed(breaches, inside, outside);
            inside = outside;
        }

        return new TrimLimit(end, TrimBound.SupplyRange);
    }

    private TrimLimit Narrowed(Breaches breaches, double inside, double outside)
    {
        while (Math.Abs(outside - inside) > CloseVolts)
        {
            double middle = (inside + outside) / 2;
            if (middle.Equals(inside) || middle.Equals(outside)) break;
            if (IsOut(breaches, middle)) outside = middle;
            else inside = middle;
        }

        return BreachesAt(breaches, outside).OrderByDescending(b => b.RankAt(_coldestCelsius)).First().At(inside);
    }

    private bool IsOut(Breaches breaches, double volts) => BreachesAt(breaches, volts).Any();

    private IEnumerable<TrimBreach> BreachesAt(Breaches breaches, double volts)
    {
        SiteAssessment solved = SolvedAt(volts);
        HashSet<Condition> overloaded = OverloadedBySettingAt(volts, solved);
        return solved.Devices.Where(device => IsOfThisBox(device.Box) && !ReferenceEquals(device.Device, _leftOut))
            .SelectMany(device => breaches(device, overloaded));
    }

    // Resistances take more the higher the supply is set, constant powers less: the slope says which side overloads it.
    private HashSet<Condition> OverloadedBySettingAt(double volts, SiteAssessment solved)
    {
        List<BoxInCondition> overloaded = [.. Box(solved).InConditions.Where(c => c.SupplyState != SupplyState.StaysUp)];
        if (overloaded.Count == 0) return [];
        BoxAssessment lower = Box(SolvedAt(volts * (1 - SlopeStep)));
        return [.. overloaded.Select(c => c.Condition).Where((_, i) => AmperesIn(lower, overloaded[i].Condition) < overloaded[i].Amperes)];

        BoxAssessment Box(SiteAssessment site) => site.Boxes.Single(b => IsOfThisBox(b.Box));

        static double AmperesIn(BoxAssessment box, Condition condition) =>
            box.InConditions.Single(c => ReferenceEquals(c.Condition, condition)).Amperes;
    }

    // The box set to a voltage, whether or not its supply can be.
    private SiteAssessment SolvedAt(double volts)
    {
        double share = _box.Supply.Output.Tolerance.DecimalFractions;
        double lost = (_box.Supply.Output as DcOutput)?.DiodeVolts ?? 0;
        RailVolts lowest = RailVolts.Lowest.With(_box, Math.Max((volts * (1 - share)) - lost, LeastVolts));
        RailVolts highest = RailVolts.Highest.With(_box, (volts + RiseVolts) * (1 + share));
        return new SiteSolver(_site, _groups, _boxes, lowest, highest, _cancellationToken).Solve();
    }

    // What hangs together with it through shared returns, and through the air of a cabinet.
    private static (List<FeedGroup> Groups, List<DistributionBox> Boxes) JoinedTo(DistributionBox box, Site site)
    {
        List<DistributionBox> boxes = [box];
        while (true)
        {
            List<FeedGroup> groups = [.. site.Feeds.Where(g => g.Feeds.Any(f => boxes.Contains(f.Box)))];
            List<DistributionBox> joined =
                [.. site.Boxes.Where(b =>
                boxes.Exists(known => ReferenceEquals(known, b) || (known.Cabinet is not null && known.Cabinet == b.Cabinet))
                || groups.Exists(g => g.Feeds.Any(f => ReferenceEquals(f.Box, b))))];
            if (joined.Count == boxes.Count) return (groups, joined);
            boxes = joined;
        }
    }

    private bool IsOfThisBox(DistributionBox box) => ReferenceEquals(box, _box);

    private delegate IEnumerable<TrimBreach> Breaches(DeviceAssessment device, ICollection<Condition> overloaded);
}
