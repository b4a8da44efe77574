using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>The smallest box that will do. Cameras draw constant current at the box itself, so that every sum is done in the head.</summary>
public class BoxSizingTests
{
    private static readonly SizingPolicy Common = SizingPolicy.CommonPractice, NoRoom = new(Ratio.Zero, Ratio.FromPercent(100));

    // At 0.9 A each: 4 take 3.6 A, which is 80 % of 4.5 A, but want 5 outputs. 7 take 6.3 A, 80 % of 7.875 A: more than 10 A
    // leave at 60 °C, where 75 % are left; they want 8.75 outputs, so 9. 12 want 15 outputs; 13 want 17. The resettable fuse of 1.10 A of each output holds
    // 0.77 A of it in 50 °C: none of the boxes will do there.
    [Theory]
    [InlineData(3, 25, "4 outputs, 5 A", null)]
    [InlineData(4, 25, "8 outputs, 10 A", BoxConstraint.Outputs)]
    [InlineData(7, 25, "12 outputs, 15 A", BoxConstraint.Outputs)]
    [InlineData(7, 50, null, BoxConstraint.Protection)]
    [InlineData(12, 25, "16 outputs, 20 A", BoxConstraint.Outputs)]
    [InlineData(13, 25, null, BoxConstraint.Outputs)]
    public void Generic_ByCommonPractice(int cameras, double boxCelsius, string? chosen, BoxConstraint? binding)
    {
        BoxChoice choice = Of(Cameras(cameras, 0.9, boxCelsius)).SmallestBoxFor(BoxName, BoxCatalog.Generic, Common);
        Assert.Equal(chosen, choice.Chosen?.Name);
        if (binding is BoxConstraint expected) Assert.Contains(choice.Binding, s => s.Constraint == expected);
        else Assert.Empty(choice.Binding);
    }

    [Fact]
    public void Shortfalls_SayWhatIsNeededAndWhatThereIs()
    {
        BoxChoice choice = Of(Cameras(7, 0.9, 60)).SmallestBoxFor(BoxName, BoxCatalog.Generic, Common);
        Assert.Equal(
        [
            "4 outputs, 5 A: too few outputs: 4, and 9 are wanted; its supply is too weak: 3.75 A, and 7.875 A is wanted in day; a protective device may open: it carries 0.66 A, and 0.9 A is wanted in day",
            "8 outputs, 10 A: too few outputs: 8, and 9 are wanted; its supply is too weak: 7.5 A, and 7.875 A is wanted in day; a protective device may open: it carries 0.66 A, and 0.9 A is wanted in day",
            "12 outputs, 15 A: a protective device may open: it carries 0.66 A, and 0.9 A is wanted in day",
            "16 outputs, 20 A: a protective device may open: it carries 0.66 A, and 0.9 A is wanted in day",
        ], choice.Candidates.Select(c => c.ToString()));
        Assert.Equal("none, the largest: a protective device may open: it carries 0.66 A, and 0.9 A is wanted in day", choice.ToString());
    }

    // The resettable fuse of 1.10 A holds 0.70 of it, 0.77 A, in 50 °C: what a finding says, the choice says before.
    [Fact]
    public void ProtectiveDevice_MustCarryItsOutput_AtTheTemperatureOfTheBox()
    {
        DistributionBox offered = DistributionBox.OfEqualOutputs("offered", Dc(amperes: 10), 4, Amps(1.1), ResettableFuse.Generic16Volt[1]);
        Assert.Equal("offered", Of(Cameras(2, 0.76, 50)).SmallestBoxFor(BoxName, [offered], NoRoom).Chosen?.Name);
        BoxShortfall binding = Assert.Single(Of(Cameras(2, 0.78, 50)).SmallestBoxFor(BoxName, [offered], NoRoom).Binding);
        Assert.Equal("a protective device may open: it carries 0.77 A, and 0.78 A is wanted in day", binding.ToString());
        Assert.Equal(BoxConstraint.Protection, binding.Constraint);
    }

    // In an enclosure nobody knows how warm a supply without an efficiency gets, and beyond the end of its curve not either: 3 A of 5 A are 60 %.
    [Theory]
    [InlineData(null, "0 %")]
    [InlineData(50.0, "50 %")]
    [InlineData(60.0, null)]
    public void InAnEnclosure_TheEfficiencyMustBeDeclaredUpToTheLoad(double? upToPercent, string? has)
    {
        var input = upToPercent is double percent ? new SupplyInput(efficiency: new ShareCurve<Ratio>(
            new(Ratio.Zero, Ratio.FromPercent(90)), new(Ratio.FromPercent(percent), Ratio.FromPercent(90)))) : null;
        DistributionBox offered = DistributionBox.OfEqualOutputs("offered", new Supply("supply", Dc(amperes: 5).Output, Derating.GenericEnclosed, input), 4, Amps(2));
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        BoxChoice choice = Star(Box().WithEnclosure(enclosure), [Condition.Day(At())], (0, Camera(Amperes(1.5))), (0, Camera(Amperes(1.5)))).SmallestBoxFor(BoxName, [offered], NoRoom);
        Assert.Equal(has is null ? [] : new[] { $"how warm it gets inside is not known: its efficiency is declared up to {has} of its rating, and 60 % is wanted in day" },
            choice.Binding.Select(b => b.ToString()));
    }

    // The generic boxes declare theirs: 85 % at half load and at the rating.
    [Fact]
    public void GenericBoxes_KnowHowWarmTheyGet()
    {
        Supply supply = BoxCatalog.Generic[1].Supply;
        Assert.Equal(85, supply.Input!.EfficiencyAt(Ratio.FromPercent(75))!.Value.Percent, 1e-9);
        Assert.Equal(60, supply.Input.PowerFactorAt(Ratio.FromPercent(100))!.Value.Percent, 1e-9);
    }

    // 1.2 A are too much for any output of 1.1 A, whatever the supply.
    [Fact]
    public void None_IsAnAnswer()
    {
        BoxChoice choice = Of(Cameras(2, 1.2)).SmallestBoxFor(BoxName, BoxCatalog.Generic, Common);
        Assert.Null(choice.Chosen);
        Assert.Equal("none, the largest: an output is too weak: 1.1 A, and 1.2 A is wanted in day; a protective device may open: it carries 1.045 A, and 1.2 A is wanted in day", choice.ToString());
        Assert.Equal("none: there is none to choose from", Of(Cameras(2, 1)).SmallestBoxFor(BoxName, [], Common).ToString());
    }

    // Outputs of 2 A and 1 A feed cameras of 0.5 A and 1.5 A the other way round; two of 1.5 A they do not.
    [Theory]
    [InlineData(0.5, 1.5, true)]
    [InlineData(1.5, 1.5, false)]
    public void Outputs_MayBeWiredAnew(double first, double second, bool fits)
    {
        var offered = new DistributionBox("two", Dc(amperes: 10), [new BoxOutput(1, Amps(2)), new BoxOutput(2, Amps(1))]);
        Site site = Star(Box(), [Condition.Day(At())], (0, Camera(Amperes(first))), (0, Camera(Amperes(second))));
        Assert.Equal(fits, site.SmallestBoxFor(BoxName, [offered], NoRoom).Chosen is not null);
    }

    // 12 W over 2 Ω leave 6 + √(36 − 24) = 9.464 V of 12 V and 6.5 + √(42.25 − 24) = 10.772 V of 13 V: a supply that can be trimmed is set as the present one, one that cannot is not.
    [Fact]
    public void Supply_IsSetAsThePresentOne_WhereItsTrimAllows()
    {
        Site site = Star(Box(TrimSites.Trimmable(0, 12, 14).WithSetPoint(Volts(13))), [Condition.Day(At())], (2, Camera(Watts(12))));
        Assert.Equal(12 / 10.772001872658, Needed(TrimSites.Trimmable(0, 12, 14)), 1e-9);
        Assert.Equal(12 / 9.464101615138, Needed(Dc()), 1e-9);

        double Needed(Supply supply) =>
            ((ElectricCurrent)site.SmallestBoxFor(BoxName, [DistributionBox.OfEqualOutputs("x", supply, 1, Amps(0.5))], NoRoom).Binding.Single().Needed).Amperes;
    }

    [Theory]
    [InlineData(24, CurrentKind.Dc)]
    [InlineData(12, CurrentKind.Ac)]
    public void OtherVoltageOrCurrent_WillNotDo(double volts, CurrentKind kind)
    {
        BoxChoice choice = Of(Cameras(1, 0.1)).SmallestBoxFor(BoxName, [Box(Dc(volts, kind: kind))], NoRoom);
        Assert.Equal(BoxConstraint.Voltage, Assert.Single(choice.Binding).Constraint);
    }

    // The rules of the package judge the same boxes on the same site: what is chosen breaks none of them, and each smaller box
    // breaks one or has too few outputs.
    [SeededProperty(MaxTest = 300)]
    public void Chosen_PassesTheRules_AndNoSmallerOneDoes(int seed)
    {
        var random = new Random(seed);
        (double, Device)[] cameras = [.. Enumerable.Range(0, random.Next(1, 17)).Select(_ => (random.NextDouble(), Camera(Watts(1 + (random.NextDouble() * 9)), Range(2, 60))))];
        Condition[] conditions = [Condition.Day(At(box: 25 + (45 * random.NextDouble())))];
        BoxChoice choice = Star(Box(outputs: 20), conditions, cameras).SmallestBoxFor(BoxName, BoxCatalog.Generic.Reverse(), Common);

        Assert.Equal(choice.Candidates.OrderBy(c => c.Box.Supply.Output.RatedCurrent.Amperes).ThenBy(c => c.Box.Outputs.Count), choice.Candidates);
        Assert.All(choice.Candidates, c => Assert.Equal(Passes(c.Box), c.Fits));
        Assert.Same(choice.Candidates.FirstOrDefault(c => Passes(c.Box))?.Box, choice.Chosen);

        bool Passes(DistributionBox box)
        {
            if (box.Outputs.Count < Math.Ceiling(1.25 * cameras.Length)) return false;
            Site site = Star(new DistributionBox(BoxName, box.Supply, box.Outputs), conditions, cameras);
            // That the hold current may lie a band of its curve lower is a caution, and no reason to refuse a box.
            return !RuleSet.Standard.Check(site.Assess()).Any(f => f.Rule is "output-overloaded" or "supply-above-derated-rating" or "supply-above-headroom-policy"
                || (f.Rule is "nuisance-trip" && f.Severity > Severity.Caution));
        }
    }

    [Fact]
    public void ImpossibleArguments_Throw()
    {
        Site site = Of(Cameras(1, 0.1));
        Assert.Throws<ArgumentNullException>("site", () => SiteQuestions.SmallestBoxFor(null!, BoxName, [], Common));
        Assert.Throws<ArgumentNullException>("catalog", () => site.SmallestBoxFor(BoxName, null!, Common));
        Assert.Throws<ArgumentNullException>("policy", () => site.SmallestBoxFor(BoxName, [], null!));
        Assert.Throws<ArgumentException>("boxName", () => site.SmallestBoxFor("no such box", [], Common));
        Assert.Throws<ArgumentOutOfRangeException>("spareOutputs", () => new SizingPolicy(Ratio.FromPercent(-1), Ratio.FromPercent(80)));
        Assert.Throws<ArgumentOutOfRangeException>("loading", () => new SizingPolicy(Ratio.Zero, Ratio.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("loading", () => new SizingPolicy(Ratio.Zero, Ratio.FromPercent(101)));
    }

    private static ElectricCurrent Amps(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static (Condition, IEnumerable<Device>) Cameras(int count, double amperes, double boxCelsius = 25) =>
        (Condition.Day(At(box: boxCelsius)), Enumerable.Repeat(Camera(Amperes(amperes)), count));

    private static Site Of((Condition Condition, IEnumerable<Device> Devices) cameras) =>
        Star(Box(outputs: 20), [cameras.Condition], [.. cameras.Devices.Select(d => (0.0, d))]);
}
