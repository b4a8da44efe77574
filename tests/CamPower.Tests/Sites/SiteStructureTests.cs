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
        IReadOnlyList<SiteError> faults = ErrorsOf([Day, Day], [Box(), Box()], [From(1, "a")], [At("x", "a"), At("y", "a"), At("x", "a")], [], []);
        AssertFaults(faults, ("conditions", 1, "Name", "day"), ("boxes", 1, "Name", "box"), ("devices", 2, "Name", "x"));
    }

    [Fact]
    public void NamesDifferByTheirLetters_CaseIncluded() => Assert.Empty(Find([From(1, "a"), From(2, "A")], [At("x", "a"), At("X", "A")]));

    [Fact]
    public void JunctionFedTwice_IsAFault() => AssertFaults(Find([From(1, "a"), From(2, "a")], []), ("runs", 1, "To", "a"));

    [Fact]
    public void UnknownBoxOutputAndJunction_AreFaults() => AssertFaults(
        Find([new SiteRun(RunOrigin.Output("shed", 1), "a", Runs.OfOhms(1)), From(5, "b"), Behind("nowhere", "c")], [At("x", "elsewhere")]),
        ("runs", 0, "From", "shed"), ("runs", 1, "From", "4 outputs"), ("runs", 2, "From", "nowhere"), ("devices", 0, "At", "elsewhere"));

    // A ring of one, of two, and a run that hangs on a ring: no box feeds any of them.
    [Fact]
    public void Rings_AreFaultsOfEveryRunThatComesFromOne() => AssertFaults(
        Find([Behind("a", "a"), Behind("c", "b"), Behind("b", "c"), Behind("c", "d"), From(1, "e")], []),
        ("runs", 0, "From", "a"), ("runs", 1, "From", "b"), ("runs", 2, "From", "c"), ("runs", 3, "From", "d"));

    // Copper and copper-clad aluminum are modeled from -60 °C on; -70 °C is outside.
    [Fact]
    public void CableOutsideItsRange_IsAFaultOfTheCondition()
    {
        IReadOnlyList<SiteError> faults = ErrorsOf([Day, new Condition("frost", LoadComponents.None, At(cable: -70))], [Box()], [From(1, "a")], [], [], []);
        AssertFaults(faults, ("conditions", 1, "At", "-70 °C"));
    }

    [Fact]
    public void AllFaultsAtOnce_AreFound_AndTheSiteNamesThemAll()
    {
        Condition frost = new("day", LoadComponents.None, At(cable: -70));
        SiteRun[] runs = [From(9, "a"), From(1, "a"), Behind("ring", "ring"), Behind("nowhere", "b")];
        SiteDevice[] devices = [At("x", "a"), At("x", "elsewhere")];
        IReadOnlyList<SiteError> faults = ErrorsOf([Day, frost], [Box(), Box()], runs, devices, [], []);
        AssertFaults(faults,
            ("conditions", 1, "Name", "day"), ("boxes", 1, "Name", "box"), ("devices", 1, "Name", "x"), ("runs", 1, "To", "a"),
            ("runs", 0, "From", "output 9"), ("runs", 2, "From", "ring"), ("runs", 3, "From", "nowhere"),
            ("devices", 1, "At", "elsewhere"), ("conditions", 1, "At", "-70 °C"));
        Assert.Equal(faults.Count, faults.Select(f => f.Message).Distinct().Count());

        ArgumentException refused = Assert.Throws<ArgumentException>(() => new Site("s", [Day, frost], [Box(), Box()], runs, devices));
        Assert.All(faults, f => Assert.Contains(f.Message, refused.Message, StringComparison.Ordinal));
        Assert.Equal(["conditions[1].Name", "boxes[1].Name", "devices[1].Name", "runs[1].To", "runs[0].From", "runs[2].From", "runs[3].From", "devices[1].At", "conditions[1].At"],
            Assert.IsType<AggregateException>(refused.InnerException).InnerExceptions.Select(e => Assert.IsType<ArgumentException>(e).ParamName));
    }

    [Fact]
    public void Faults_AreSaidTheSameInEveryCulture() => Cultures.AssertSame(() => string.Join("|",
        ErrorsOf([new Condition("frost", LoadComponents.None, At(cable: -70.5))], [Box()], [From(5, "i"), Behind("I", "j")], [At("x", "ı")], [], [])));

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

    private static IReadOnlyList<SiteError> Find(IReadOnlyList<SiteRun> runs, IReadOnlyList<SiteDevice> devices) => ErrorsOf([Day], [Box()], runs, devices, [], []);

    private static SiteRun From(int output, string to) => new(RunOrigin.Output(BoxName, output), to, Runs.OfOhms(1));

    private static SiteRun Behind(string junction, string to) => new(RunOrigin.Junction(junction), to, Runs.OfOhms(1));

    private static SiteDevice At(string name, string place) => new(name, Dome, place);

    private static Surroundings At(double cable = 20) => SmallSite.At(cable);

    private static void AssertFaults(IReadOnlyList<SiteError> faults, params (string List, int Index, string Member, string Mentions)[] expected)
    {
        Assert.Equal(expected.Select(e => (e.List, e.Index, e.Member)), faults.Select(f => (f.List, f.Index, f.Member)));
        Assert.All(expected.Zip(faults), pair =>
        {
            Assert.Contains(pair.First.Mentions, pair.Second.Message, StringComparison.Ordinal);
            Assert.Equal(pair.Second.Message, pair.Second.ToString());
        });
    }
}
