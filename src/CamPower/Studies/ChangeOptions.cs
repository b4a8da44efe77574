using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>What could be changed because of a finding, by what it is about: rows of changes, each from the least to the most.</summary>
internal static class ChangeOptions
{
    // Not on the edge: a supply is set by hand.
    private const double InsideLimit = 0.01;

    internal static IEnumerable<IEnumerable<SiteChange>> For(Trial trial, Finding finding, PriceList prices)
    {
        var scope = ChangeScope.Of(trial.Site, finding.About);
        var boxes = new BoxChanges(scope, prices, trial.WindowOf);
        double? asked = finding is { About.Kind: SubjectKind.Box, Measured: ElectricPotential found, Limit: ElectricPotential limit }
            ? limit.Volts * (1 + (Math.Sign(limit.Volts - found.Volts) * InsideLimit))
            : null;
        IEnumerable<IEnumerable<SiteChange>> ofBoxes = scope.Boxes.Select(box => boxes.SetPoints(box, asked));

        // Nothing else lowers the voltage at a device.
        if (IsTooHigh(finding)) return ofBoxes.Concat(AtSubject(scope, finding.About, prices));
        var cables = new CableChanges(scope, prices);
        return ofBoxes.Concat(AtSubject(scope, finding.About, prices)).Concat(cables.All()).Concat(cables.ToOtherOutputs().Select(One))
            .Concat(Protections(scope, boxes)).Concat(scope.Boxes.Select(boxes.LargerSupplies))
            .Concat(scope.Boxes.Select(boxes.SecondBox).OfType<SiteChange>().Select(One));
    }

    // One row for each output, or for the outputs of a box that are alike.
    private static IEnumerable<IEnumerable<SiteChange>> Protections(ChangeScope scope, BoxChanges boxes) => scope.IsOfWholeBox
        ? scope.Boxes.SelectMany(box => scope.Feeds.Where(f => ReferenceEquals(f.Box, box)).GroupBy(f => f.Output.Protection)
            .Select(alike => boxes.Protections(box, [.. alike.Select(f => f.Output)])))
        : scope.Feeds.Select(feed => boxes.Protections(feed.Box, [feed.Output]));

    private static IEnumerable<IEnumerable<SiteChange>> AtSubject(ChangeScope scope, Subject about, PriceList prices)
    {
        if (scope.Device?.Device is SiteDevice { LeadsReversed: true } device)
        {
            yield return One(new SiteChange($"Swap the leads of {device}.", prices.Visit, [$"leads of {device}"], site => site.With(
                devices: site.Devices.Select(d => string.Equals(d.Name, device.Name, StringComparison.Ordinal)
                    ? new SiteDevice(d.Name, d.Model, d.At)
                    : d))));
        }

        foreach (OutputTie tie in scope.Site.Ties.Where(tie => IsAt(tie, about)))
        {
            string one = FormattableString.Invariant($"{tie.OneBox} output {tie.OneOutput}");
            string other = FormattableString.Invariant($"{tie.OtherBox} output {tie.OtherOutput}");
            yield return One(new SiteChange($"Disconnect {one} from {other}.", prices.Visit, [tie.ToString()],
                site => site.With(ties: site.Ties.Where(t => !ReferenceEquals(t, tie)))));
        }
    }

    private static bool IsAt(OutputTie tie, Subject about) => about.Kind == SubjectKind.Output
        && (IsNamed(about, tie.OneBox, tie.OneOutput) || IsNamed(about, tie.OtherBox, tie.OtherOutput));

    private static bool IsNamed(Subject about, string box, int output) =>
        string.Equals(about.Name, RunOrigin.NameOf(box, output), StringComparison.Ordinal);

    private static bool IsTooHigh(Finding finding) => finding is { About.Kind: SubjectKind.Device, Measured: ElectricPotential found }
        && finding.Limit is ElectricPotential limit && found.Volts > limit.Volts;

    private static IEnumerable<SiteChange> One(SiteChange change) => [change];
}
