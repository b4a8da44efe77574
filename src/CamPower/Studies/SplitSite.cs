using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Studies;

/// <summary>A site with several boxes in the place of one.</summary>
internal sealed class SplitSite(Site site, DistributionBox box, IReadOnlyList<(BoxOffer Offer, IReadOnlyList<int> Parts)> chosen)
{
    internal BoxSplit Made(int leastNumber, BoxShortfall? binding)
    {
        string[] names = [.. FreeNames().Take(chosen.Count)];
        List<BoxShare> shares = [.. chosen.Select((x, i) => ShareOf(x.Offer, x.Parts, names[i]))];
        return new BoxSplit(With(shares), shares.AsReadOnly(), [], leastNumber, binding);
    }

    // One box keeps the name.
    private IEnumerable<string> FreeNames() => chosen.Count == 1
        ? [box.Name]
        : Enumerable.Range(1, int.MaxValue).Select(i => FormattableString.Invariant($"{box.Name} {i}"))
            .Where(name => !site.Boxes.Any(b => string.Equals(b.Name, name, StringComparison.Ordinal)));

    private static BoxShare ShareOf(BoxOffer offer, IReadOnlyList<int> parts, string name)
    {
        IReadOnlyList<OutputAssessment> used = offer.Feeding(parts).Outputs;
        IReadOnlyList<BoxOutput> there = offer.Box.Outputs;

        // Where the outputs differ the strongest takes the largest current; otherwise they keep their order.
        bool areAlike = there.All(o => o.LimitAmperes.Equals(there[0].LimitAmperes) && ReferenceEquals(o.Protection, there[0].Protection));
        IEnumerable<OutputAssessment> wired = areAlike ? used : used.OrderByDescending(o => o.Worst.Amperes);
        IEnumerable<BoxOutput> taken = areAlike ? there : there.OrderByDescending(o => o.LimitAmperes);
        return new BoxShare(offer.Box.WithName(name), offer.Box.Name,
            Array.AsReadOnly([.. wired.Zip(taken, (from, to) => new MovedOutput(from.Output, to, from.Devices))
                .OrderBy(m => m.To.Number)]));
    }

    private Site With(IReadOnlyList<BoxShare> shares)
    {
        var origins = shares.SelectMany(
            share => share.Outputs, (share, output) => (output.From.Number, Origin: RunOrigin.Output(share.Box.Name, output.To.Number)))
            .ToDictionary(x => x.Number, x => x.Origin);
        return site.With(
            boxes: site.Boxes.SelectMany(b => ReferenceEquals(b, box) ? shares.Select(s => s.Box) : [b]),
            runs: site.Runs.Select(run => IsOfThisBox(run.From.BoxName) ? run.StartingAt(origins[run.From.OutputNumber]) : run),
            bonds: site.Bonds.Select(
                bond => IsOfThisBox(bond.Box) ? new GroundBond(bond.Ground, BoxAt(bond.Ground, shares), bond.Resistance) : bond),
            ties: new MovedTies(box.Name, shares).Of(site.Ties));
    }

    // Whatever shares a ground hangs together, so that one box feeds all of it. A ground that this box does not feed is
    // bonded to its first one.
    private string BoxAt(string ground, IReadOnlyList<BoxShare> shares)
    {
        var linked = new HashSet<string>(
            site.VideoLinks.Where(l => string.Equals(l.Ground, ground, StringComparison.Ordinal))
            .Select(l => l.Device), StringComparer.Ordinal);
        return (shares.FirstOrDefault(s => s.Outputs.Any(o => o.Devices.Any(d => linked.Contains(d.Name)))) ?? shares[0]).Box.Name;
    }

    private bool IsOfThisBox(string? name) => string.Equals(name, box.Name, StringComparison.Ordinal);
}
