using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>Looks for the fewest boxes of a catalog that feed what a box of a site feeds, and for the smallest of them.</summary>
internal sealed class BoxSplitSearch
{
    // Trials of a box, each some microseconds: for the number of boxes, and for their sizes.
    private const int TrialsForTheNumber = 100_000, TrialsForTheSizes = 50_000, MostSelections = 20_000;

    private readonly Site _site;
    private readonly DistributionBox _box;
    private readonly SizingPolicy _policy;
    private readonly BoxOffer _present;
    private readonly IReadOnlyList<BoxOffer> _offers;
    private readonly IReadOnlyList<int> _order;

    internal BoxSplitSearch(Site site, DistributionBox box, SizingPolicy policy, IEnumerable<DistributionBox> catalog)
    {
        var trial = new BoxTrial(site, box, policy);
        _site = site;
        _box = box;
        _policy = policy;
        _offers = [.. catalog.Where(candidate => trial.WrongVoltage(candidate) is null)
            .OrderBy(b => b.Supply.Output.RatedAmperes).ThenBy(b => b.Outputs.Count)
            .Select(candidate => new BoxOffer(trial, site, box, candidate))];
        _present = new BoxOffer(trial, site, box, box);
        _order = [.. Enumerable.Range(0, _present.Count).OrderByDescending(part => _present.Feeding([part]).Worst.Amperes)];
    }

    internal BoxSplit Split()
    {
        if (_order.Count == 0) return BoxSplit.None(_site, []);
        int[] notAlone = [.. _order.Where(part => !_offers.Any(offer => offer.CanFeed([part]))).OrderBy(part => part)];
        int[] never = [.. notAlone.Where(part => !_offers.Any(offer => offer.MayFeed([part])))];
        if (never.Length > 0) return NoneFor(never);

        (int least, BoxShortfall? binding) = Bound();
        IReadOnlyList<IReadOnlyList<int>>? contents = null;
        bool isProven = true;
        int number = least, trials = TrialsForTheNumber;
        for (; contents is null; number++)
        {
            // As many boxes as parts: what does not go in alone then, goes in nowhere that is found.
            if (number > _order.Count) return NoneFor(notAlone);
            var packing = new BoxPacking([.. Enumerable.Repeat(_offers, number)], _order, AreAlike, trials);
            contents = packing.Search()
                ?? (number == _order.Count && notAlone.Length == 0 ? [.. _order.Select(part => new[] { part })] : null);
            isProven &= contents is not null || !packing.IsOutOfTrials;
            if (contents is not null || !isProven) continue;

            // Every way of doing with so many was tried.
            least = number + 1;
            binding = null;
        }

        return new SplitSite(_site, _box, [.. Smallest(contents)]).Made(least, binding);
    }

    private BoxSplit NoneFor(int[] misfits) => BoxSplit.None(_site, [.. misfits.SelectMany(part => _present.Feeding([part]).Outputs)]);

    // No box is better in any respect than one that has the best of each: so many of those are needed at least.
    private (int Number, BoxShortfall? Binding) Bound()
    {
        int mostOutputs = _offers.Max(UsableOutputs), number = CeilingOf(OutputsUsed, mostOutputs);
        BoxShortfall? binding = number <= 1
            ? null
            : new(BoxConstraint.Outputs, Scalar.FromAmount(OutputsUsed), Scalar.FromAmount((number - 1) * mostOutputs));
        for (int c = 0; c < _site.Conditions.Count; c++)
        {
            int condition = c;
            double needed = LeastRating(condition);
            double most = _offers.Max(o => o.MostAmperes(condition));
            int byCurrent = needed > 0 ? CeilingOf(needed, most) : 0;
            if (byCurrent <= number) continue;
            number = byCurrent;
            binding = new(BoxConstraint.Rating, ElectricCurrent.FromAmperes(needed), ElectricCurrent.FromAmperes((number - 1) * most),
                _site.Conditions[c]);
        }

        return (Math.Max(number, 1), binding);
    }

    private int OutputsUsed => _order.Sum(_present.OutputsOf);

    // What all of it takes at least, over the share that supplies may be loaded with.
    private double LeastRating(int condition) =>
        _order.Sum(part => LeastAmperes(part, condition)) / _policy.LoadingShare;

    private double LeastAmperes(int part, int condition) => _offers.Min(o => o.LeastAmperes(part, condition));

    // The outputs that may be used beside the spare ones.
    private int UsableOutputs(BoxOffer offer)
    {
        int there = offer.Box.Outputs.Count, usable = there;
        while (usable > 0 && _policy.OutputsFor(usable) > there) usable--;
        return usable;
    }

    // The first selection of boxes, by total current and then by number of outputs, that takes everything; failing that, in
    // the places that were found, the smallest box that will do for each.
    private IEnumerable<(BoxOffer Offer, IReadOnlyList<int> Parts)> Smallest(IReadOnlyList<IReadOnlyList<int>> contents)
    {
        int trials = TrialsForTheSizes;
        IReadOnlyList<IReadOnlyList<BoxOffer>> single = [.. _offers.Select(o => new[] { o })];
        foreach (int[] selection in Selections(contents.Count).Where(AreEnough))
        {
            var packing = new BoxPacking([.. selection.Select(o => single[o])], _order, AreAlike, trials);
            if (packing.Search() is IReadOnlyList<IReadOnlyList<int>> found)
            {
                return found.Select((parts, place) => (_offers[selection[place]], parts)).Where(x => x.parts.Count > 0);
            }

            trials = packing.TrialsLeft;
            if (trials == 0) break;
        }

        return contents.Where(parts => parts.Count > 0).Select(parts => (_offers.First(o => o.CanFeed(parts)), parts));
    }

    // Whether the boxes together have the outputs and the current; that the parts divide so is another matter.
    private bool AreEnough(int[] selection) =>
        selection.Sum(o => UsableOutputs(_offers[o])) >= OutputsUsed && Enumerable.Range(0, _site.Conditions.Count)
        .All(c => !Limits.IsAbove(LeastRating(c), selection.Sum(o => _offers[o].MostAmperes(c))));

    private IEnumerable<int[]> Selections(int number)
    {
        var selections = new List<int[]>();
        Choose(new int[number], 0, 0);
        return selections.Count > MostSelections
            ? []
            : selections.OrderBy(s => s.Sum(o => _offers[o].Box.Supply.Output.RatedAmperes))
                .ThenBy(s => s.Sum(o => _offers[o].Box.Outputs.Count));

        void Choose(int[] chosen, int place, int from)
        {
            if (selections.Count > MostSelections) return;
            if (place == number)
            {
                selections.Add([.. chosen]);
                return;
            }

            for (int o = from; o < _offers.Count; o++)
            {
                chosen[place] = o;
                Choose(chosen, place + 1, o);
            }
        }
    }

    private bool AreAlike(int a, int b) => _offers.All(o => o.AreAlike(a, b));

    // What rounding adds makes no box more.
    private static int CeilingOf(double needed, double each) => (int)Math.Ceiling((needed / each) - 1e-9);
}
