using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Assessment;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Studies;

/// <summary>Versions of a site compared, and places for one more device.</summary>
public class SiteComparisonTests
{
    private static readonly RuleSet Rules = SmallSite.WithoutFaultsUnknown;

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 60)]
    public void SiteComparedWithItself_DiffersInNothing(TreeCase tree)
    {
        Site site = TrimSites.Of(tree);
        Assert.True(Compared(site, TrimSites.Of(tree)).IsEmpty);
        Assert.Equal(0, Compared(site, site).Cost);
    }

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 60)]
    public void DeviceThatIsAdded_IsRemovedTheOtherWayRound(TreeCase tree)
    {
        Site site = TrimSites.Of(tree);
        Site with = With(site, RunOrigin.Junction(site.Runs[0].To), site.Devices[0].Model, ohms: 0.5);
        SiteComparison there = Compared(with, site), back = Compared(site, with);
        Assert.Equal(2, there.Added.Count);
        Assert.Empty(there.Removed);
        Assert.Equal(there.Added, back.Removed);
        Assert.Equal(Texts(there.Gained), Texts(back.Lost));
        Assert.Equal(Texts(there.Lost), Texts(back.Gained));
        Assert.Equal(there.Cost, -back.Cost, 1e-9);

        // Taken out again it is as if it had never been there.
        Site without = new(with.Name, with.Conditions, with.Boxes, with.Runs.Take(site.Runs.Count), with.Devices.Take(site.Devices.Count));
        Assert.True(Compared(without, site).IsEmpty);
    }

    // Hand-worked: 9 W behind 1 Ω from 12 V get 6 + √27 = 11.196 V, behind 2 Ω 6 + √18 = 10.243 V: 0.953 V less, 9.5 % of 10 V.
    [Fact]
    public void Margins_AreThoseOfTheWorstCondition_TheOneThatLostMostFirst()
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(9), SmallSite.Range(10, 15));
        Site before = SmallSite.Star((1, camera), (1, camera)), after = SmallSite.Star((1, camera), (2, camera));
        SiteComparison comparison = Compared(after, before);
        MovedMargin first = comparison.Margins[0];
        Assert.Equal(("camera 2", "room to its lowest voltage"), (first.About.Name, first.What));
        Assert.Equal(1.196152, (double)first.Before.Value, 1e-6);
        Assert.Equal(0.242641, (double)first.After.Value, 1e-6);
        Assert.Equal(-9.53512, first.Change.Percent, 1e-4);
        Assert.Equal(comparison.Margins.OrderBy(m => m.Change.Percent), comparison.Margins);
        Assert.DoesNotContain(comparison.Margins, m => m.About.Name == "camera 1");
        Assert.StartsWith("run to place 2: cable ", Assert.Single(comparison.Changed), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_AreGainedAndLost()
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(9), SmallSite.Range(10.8, 15));
        SiteComparison comparison = Compared(SmallSite.Star((1, camera), (2, camera)), SmallSite.Star((2, camera), (1, camera)));
        Assert.Equal(("undervoltage", "camera 2"), (Assert.Single(comparison.Gained).Rule, comparison.Gained[0].About.Name));
        Assert.Equal(("undervoltage", "camera 1"), (Assert.Single(comparison.Lost).Rule, comparison.Lost[0].About.Name));
    }

    [SeededProperty(Arbitrary = [typeof(TreeCases)], MaxTest = 25)]
    public void Place_IsAllowed_WhereAddingTheDeviceByHandAddsNoFailure(TreeCase tree)
    {
        Site site = TrimSites.Of(tree);
        Device model = site.Devices[0].Model;
        IReadOnlyList<DevicePlace> places = site.PlacesFor(model, Runs.OfOhms(0.5), Rules);
        Assert.Equal(site.Boxes.Sum(b => b.Outputs.Count) + site.Runs.Count, places.Count);
        HashSet<string> before = [.. Failures(site)];
        foreach (DevicePlace place in places)
        {
            bool fails = Failures(With(site, place.Origin, model, 0.5)).Any(f => !before.Contains(f));
            Assert.Equal(!fails, place.IsAllowed);
        }

        Assert.Equal(places.OrderBy(p => p.IsAllowed ? 0 : 1), places);
    }

    // 9.6 W from 12 V is 0.8 A: one more on a free output of 1.1 A, none beside another.
    [Fact]
    public void HowMany_CountsUntilTheFirstFailure()
    {
        Device camera = SmallSite.Camera(SmallSite.Watts(9.6), SmallSite.Range(9, 15));
        Site site = SmallSite.Star(SmallSite.Box(outputs: 2, limit: 1.1), [Condition.Day(SmallSite.At())], (0.1, camera));
        IReadOnlyList<DevicePlace> places = site.PlacesFor(camera, Runs.OfOhms(0.1), Rules);
        Assert.Equal("box output 2", places[0].Origin.ToString());
        Assert.Equal(1, places[0].HowMany());
        Assert.Equal(0, places.Single(p => p.Origin.JunctionName == "place 1").HowMany());
        Assert.Contains("no (output-overloaded)", places.Single(p => p.Origin.JunctionName == "place 1").ToString(), StringComparison.Ordinal);
    }

    private static SiteComparison Compared(Site after, Site before) => after.ComparedWith(before, Rules, PriceList.Neutral);

    private static Site With(Site site, RunOrigin origin, Device model, double ohms) => new(site.Name, site.Conditions, site.Boxes,
        [.. site.Runs, new SiteRun(origin, "one more", Runs.OfOhms(ohms))], [.. site.Devices, new SiteDevice("one more", model, "one more")]);

    private static IEnumerable<string> Failures(Site site) => Rules.Check(site.Assess()).Where(f => f.Severity >= Severity.Failure)
        .Select(f => $"{f.Rule} {f.About.Kind} {f.About.Name} {f.Severity}");

    private static IEnumerable<string> Texts(IEnumerable<Finding> findings) => findings.Select(f => f.ToString());
}
