using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using CamPower.Tests.Studies;

namespace CamPower.Tests;

/// <summary>One of each public type that a study of a site answers with.</summary>
internal static class StudySamples
{
    internal static IEnumerable<object> All()
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(8.5), SmallSite.Range(10.8, 12.25));
        TrimWindow window = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), (1.25, camera)).TrimWindowOf(SmallSite.BoxName);
        TrimWindow empty = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), (0, camera), (2.5, camera)).TrimWindowOf(SmallSite.BoxName);
        BoxChoice choice = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), [.. Enumerable.Repeat((1.25, camera), 4)])
            .SmallestBoxFor(SmallSite.BoxName, BoxCatalog.Generic, SizingPolicy.CommonPractice);
        BoxSplit split = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), [.. Enumerable.Repeat((1.25, camera), 4)])
            .SplitFor(SmallSite.BoxName, [BoxCatalog.Generic[0]], SizingPolicy.CommonPractice);
        SupplyLayout layout = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), (1.25, camera)).LayoutOf(SmallSite.BoxName);
        Device wide = SmallSite.Camera(SmallSite.Watts(8.5), SmallSite.Range(10.8, 15.25));
        Site failing = TrimSites.Star(TrimSites.Trimmable(1.5, 12, 14.5), (1.75, wide), (0.5, wide));
        FindingRemedies[] remedies = [.. failing.FindRemedies(RuleSet.Standard, PriceList.Neutral)];
        Remedy remedy = remedies.First(r => r.Remedies.Count > 0).Remedies[0];
        SiteRepair repair = failing.CheapestRepair(RuleSet.Standard, PriceList.Neutral);
        SiteComparison comparison = remedy.Site.ComparedWith(failing, RuleSet.Standard, PriceList.Neutral);
        DevicePlace place = failing.PlacesFor(camera, failing.Runs[0].Run, RuleSet.Standard)[0];
        MaterialList material = failing.ListMaterial();
        return [PriceList.Neutral, remedies[0], remedy, remedy.Changes[0], repair, comparison, comparison.Margins[0], place, MaterialPolicy.CommonPractice,
            material, material.Lines[0], material.Pulls[0], layout, split, split.Boxes[0], split.Boxes[0].Outputs[0], window, window.Lowest, empty, empty.Highest, choice, choice.Candidates[0], choice.Binding[0], SizingPolicy.CommonPractice];
    }
}
