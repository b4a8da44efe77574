using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Sites;

public class SiteStructureTests
{
    private static readonly Condition Day = Condition.Day(At());

    private static readonly Device Dome = Camera(Watts(3));

    [Fact]
    public void SoundParts_HaveNoFaults() => Assert.Empty(Find([From(1, "a"), Behind("a", "b"), Behind("b", "c"), Behind("a", "d"), From(1, "e")], [At("x", "a"), At("y", "c")]));

    // The order of the runs does not matter: a run may be listed before the one that feeds it.
    [Fact]
    public void RunsInAnyOrder_HaveNoFaults() => Assert.Empty(Find([Behind("b", "c"), Behind("a", "b"), From(1, "a")], [At("x", "c")]));

    [Fact]
    public void RepeatedNames_AreFaultsOfTheSecond()
    {
        IReadOnlyList<SiteError> faults = SiteStructure.FindFaults([Day, Day], [Box(), Box()], [From(1, "a")], [At("x", "a"), At("y", "a"), At("x", "a")], [], []);
        AssertFaults(faults, (SitePart.Conditions, 1, "Name", "day"), (SitePart.Boxes, 1, "Name", "box"), (SitePart.Devices, 2, "Name", "x"));
    }

    [Fact]
    public void NamesDifferByTheirLetters_CaseIncluded() => Assert.Empty(Find([From(1, "a"), From(2, "A")], [At("x", "a"), At("X", "A")]));

    [Fact]
    public void JunctionFedTwice_IsAFault() => AssertFaults(Find([From(1, "a"), From(2, "a")], []), (SitePart.Runs, 1, "To", "a"));

    [Fact]
    public void UnknownBoxOutputAndJunction_AreFaults() => AssertFaults(
        Find([new SiteRun(RunOrigin.Output("shed", 1), "a", Runs.OfOhms(1)), From(5, "b"), Behind("nowhere", "c")], [At("x", "elsewhere")]),
        (SitePart.Runs, 0, "From", "shed"), (SitePart.Runs, 1, "From", "4 outputs"), (SitePart.Runs, 2, "From", "nowhere"), (SitePart.Devices, 0, "At", "elsewhere"));

    // A ring of one, of two, and a run that hangs on a ring: no box feeds any of them.
    [Fact]
    public void Rings_AreFaultsOfEveryRunThatComesFromOne() => AssertFaults(
        Find([Behind("a", "a"), Behind("c", "b"), Behind("b", "c"), Behind("c", "d"), From(1, "e")], []),
        (SitePart.Runs, 0, "From", "a"), (SitePart.Runs, 1, "From", "b"), (SitePart.Runs, 2, "From", "c"), (SitePart.Runs, 3, "From", "d"));

    // Copper and copper-clad aluminum are modeled from -60 °C on; -70 °C is outside.
    [Fact]
    public void CableOutsideItsRange_IsAFaultOfTheCondition()
    {
        IReadOnlyList<SiteError> faults = SiteStructure.FindFaults([Day, new Condition("frost", LoadComponents.None, At(cable: -70))], [Box()], [From(1, "a")], [], [], []);
        AssertFaults(faults, (SitePart.Conditions, 1, "At", "-70 °C"));
    }

    [Fact]
    public void AllFaultsAtOnce_AreFound_AndTheSiteNamesThemAll()
    {
        Condition frost = new("day", LoadComponents.None, At(cable: -70));
        SiteRun[] runs = [From(9, "a"), From(1, "a"), Behind("ring", "ring"), Behind("nowhere", "b")];
        SiteDevice[] devices = [At("x", "a"), At("x", "elsewhere")];
        IReadOnlyList<SiteError> faults = SiteStructure.FindFaults([Day, frost], [Box(), Box()], runs, devices, [], []);
        AssertFaults(faults,
            (SitePart.Conditions, 1, "Name", "day"), (SitePart.Boxes, 1, "Name", "box"), (SitePart.Devices, 1, "Name", "x"), (SitePart.Runs, 1, "To", "a"),
            (SitePart.Runs, 0, "From", "output 9"), (SitePart.Runs, 2, "From", "ring"), (SitePart.Runs, 3, "From", "nowhere"),
            (SitePart.Devices, 1, "At", "elsewhere"), (SitePart.Conditions, 1, "At", "-70 °C"));
        Assert.Equal(faults.Count, faults.Select(f => f.Message).Distinct().Count());

        string message = Assert.Throws<ArgumentException>(() => new Site("s", [Day, frost], [Box(), Box()], runs, devices)).Message;
        Assert.All(faults, f => Assert.Contains(f.Message, message, StringComparison.Ordinal));
    }

    [Fact]
    public void Faults_AreSaidTheSameInEveryCulture() => Cultures.AssertSame(() => string.Join("|",
        SiteStructure.FindFaults([new Condition("frost", LoadComponents.None, At(cable: -70.5))], [Box()], [From(5, "i"), Behind("I", "j")], [At("x", "ı")], [], [])));

    [Fact]
    public void Site_KeepsItsOwnLists()
    {
        var runs = new List<SiteRun> { From(1, "a") };
        var site = new Site("s", [Day], [Box()], runs, [At("x", "a")]);
        runs.Clear();
        Assert.Single(site.Runs);
        Assert.Throws<NotSupportedException>(() => ((IList<SiteRun>)site.Runs).Clear());
        Assert.Equal("s", site.ToString());
        Assert.Equal("box output 1 to a", site.Runs[0].ToString());
        Assert.Equal("junction a to b", Behind("a", "b").ToString());
    }

    // Devices keep the site's order, paths go from the output to the device, outputs go by number.
    [Fact]
    public void Assessment_KeepsTheOrderOfTheSite()
    {
        var site = new Site("s", [Day], [Box()], [Behind("a", "b"), From(3, "c"), From(2, "a")], [At("z", "c"), At("y", "b"), At("x", "a")]);
        SiteAssessment assessment = site.Assess();
        Assert.Equal(["z", "y", "x"], assessment.Devices.Select(d => d.Device.Name));
        Assert.Equal(["box output 2 to a", "junction a to b"], assessment.Devices[1].Path.Select(r => r.ToString()));
        Assert.Equal([3, 2, 2], assessment.Devices.Select(d => d.Output.Number));
        Assert.Equal([2, 3], assessment.Boxes[0].Outputs.Select(o => o.Output.Number));
        Assert.Equal(["x", "y"], assessment.Boxes[0].Outputs[0].Devices.Select(d => d.Name));
    }

    private static IReadOnlyList<SiteError> Find(IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices) => SiteStructure.FindFaults([Day], [Box()], runs, devices, [], []);

    private static SiteRun From(int output, string to) => new(RunOrigin.Output(BoxName, output), to, Runs.OfOhms(1));

    private static SiteRun Behind(string junction, string to) => new(RunOrigin.Junction(junction), to, Runs.OfOhms(1));

    private static SiteDevice At(string name, string place) => new(name, Dome, place);

    private static Surroundings At(double cable = 20) => SmallSite.At(cable);

    private static void AssertFaults(IReadOnlyList<SiteError> faults, params (SitePart Part, int Index, string Member, string Mentions)[] expected)
    {
        Assert.Equal(expected.Select(e => (e.Part, e.Index, e.Member)), faults.Select(f => (f.Part, f.Index, f.Member)));
        Assert.All(expected.Zip(faults), pair =>
        {
            Assert.Contains(pair.First.Mentions, pair.Second.Message, StringComparison.Ordinal);
            Assert.Equal(pair.Second.Message, pair.Second.ToString());
        });
    }
}
