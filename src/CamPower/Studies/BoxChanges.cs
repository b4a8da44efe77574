using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower.Studies;

/// <summary>The changes to the boxes that a finding depends on: set point, supply, a second box, protective devices.</summary>
internal sealed class BoxChanges(ChangeScope scope, PriceList prices, Func<DistributionBox, TrimWindow> windowOf)
{
    // A person sets a supply by a meter.
    private const double StepsAVolt = 10;

    /// <summary>Set points inside the window in which every device of the box is right.</summary>
    /// <param name="box">The box.</param>
    /// <param name="asked">A voltage that a finding asks for; null where it asks for none.</param>
    internal IEnumerable<SiteChange> SetPoints(DistributionBox box, double? asked)
    {
        if (box.Supply.Output is not DcOutput { Trim: VoltageRange trim } output) yield break;
        TrimWindow window = windowOf(box);
        if (window.IsEmpty) yield break;
        double lowest = window.Lowest.SetPoint.Volts, highest = window.Highest.SetPoint.Volts;
        double beforeLoad = Math.Min(highest, window.HighestBeforeLoad.SetPoint.Volts);
        double[] wanted = [(lowest + beforeLoad) / 2, (lowest + highest) / 2, lowest, highest];
        IEnumerable<double> first = asked is double volt && trim.Contains(volt) ? [volt] : [];
        IEnumerable<double> all = first.Concat(wanted).Select(v => Rounded(v, trim.LowestVolts, trim.HighestVolts)).Distinct();
        foreach (double volts in all.Where(v => !v.Equals(output.SetVolts)))
        {
            yield return new SiteChange(Invariant($"Set the supply of {box} to {volts:0.0##} V."), prices.Visit, [$"set point of {box}"],
                site => site.With(BoxIn(site, box).WithSetPoint(ElectricPotential.FromVolts(volts))));
        }
    }

    /// <summary>Supplies like the present one with a larger rating.</summary>
    internal IEnumerable<SiteChange> LargerSupplies(DistributionBox box) =>
        from rating in prices.SupplyRatings
        where rating.Amperes > box.Supply.Output.RatedAmperes
        let larger = box.WithRating(rating)
        select new SiteChange(
            Invariant($"Replace the {box.Supply.Output.RatedAmperes:0.##} A supply of {box} ") +
            Invariant($"with one of {rating.Amperes:0.##} A, otherwise the same."),
            prices.Visit + prices.Of(larger.Supply), [$"supply of {box}"], site => site.With(BoxIn(site, box).WithRating(rating)));

    /// <summary>Half of what the box feeds goes to a second box like it.</summary>
    internal SiteChange? SecondBox(DistributionBox box)
    {
        if (scope.Site.Ties.Any(tie => tie.IsAt(box.Name))) return null;
        var stay = new List<string>();
        var move = new List<string>();
        foreach (IReadOnlyList<string> unit in UnitsOf(box)) (move.Count < stay.Count ? move : stay).AddRange(unit);
        if (move.Count == 0) return null;
        string name = FreeName(box.Name);
        var moved = new HashSet<string>(move, StringComparer.Ordinal);
        return new SiteChange(
            $"Add a second {(box.IsAdapter ? "adapter" : "box")} like {box}. " +
            $"Move the {(move.Count == 1 ? "run" : "runs")} to {string.Join(", ", move)} to it.",
            (2 * prices.Visit) + prices.Of(box), [$"set point of {box}", $"supply of {box}", .. move.Select(to => $"run to {to}")],
            site => site.With(
                boxes: site.Boxes.SelectMany(b => Same(b.Name, box.Name) ? [b, Beside(b, name)] : new[] { b }),
                runs: site.Runs.Select(run => moved.Contains(run.To)
                    ? run.StartingAt(RunOrigin.Output(name, run.From.OutputNumber))
                    : run)),
            (name, box.Name));
    }

    /// <summary>Other protective devices at some outputs of a box.</summary>
    internal IEnumerable<SiteChange> Protections(DistributionBox box, IReadOnlyCollection<BoxOutput> outputs) =>
        from protection in prices.ProtectiveDevices
        where !outputs.All(o => Same(o.Protection?.Name ?? "", protection.Name))
        let numbers = outputs.Select(o => o.Number).ToList()
        let rows = NumberRows.Text(numbers)
        select new SiteChange(
            Invariant($"Fit a {protection} at {(numbers.Count == 1 ? "output" : "outputs")} {rows} of {box}."),
            prices.Visit + (numbers.Count * prices.Of(protection)), [.. numbers.Select(n => Invariant($"protection of {box} output {n}"))],
            site => site.With(BoxIn(site, box).WithProtection(protection, numbers)));

    private static double Rounded(double volts, double lowest, double highest)
    {
        double rounded = Math.Round(volts * StepsAVolt) / StepsAVolt;
        return rounded >= lowest && rounded <= highest ? rounded : volts;
    }

    // What goes to another box together: a run from an output with all behind it, or what hangs together through its returns.
    private IEnumerable<IReadOnlyList<string>> UnitsOf(DistributionBox box)
    {
        foreach (FeedGroup group in scope.Site.Feeds.Where(g => g.Feeds.Any(f => ReferenceEquals(f.Box, box))))
        {
            List<string> first = [.. group.Feeds.SelectMany(feed => feed.Runs.Where((_, i) => feed.Parents[i] < 0)).Select(run => run.To)];
            if (!group.SharesReturns)
            {
                foreach (string to in first) yield return [to];
            }
            else if (group.Boxes.Count == 1 && group.Bonds.Count == 0)
            {
                yield return first;
            }
        }
    }

    private static DistributionBox Beside(DistributionBox box, string name)
    {
        DistributionBox second = box.WithName(name);
        return box.Enclosure is Enclosure enclosure ? second.WithEnclosure(enclosure) : second;
    }

    private string FreeName(string name)
    {
        int number = 2;
        while (scope.Site.Index.Box(Invariant($"{name} {number}")) is not null) number++;
        return Invariant($"{name} {number}");
    }

    private static DistributionBox BoxIn(Site site, DistributionBox box) => site.BoxNamed(box.Name, nameof(box));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
