using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>One cause, one finding: where two rules could speak of the same thing, which of them does.</summary>
public class OneCauseOneFindingTests
{
    private static readonly Condition Day = Condition.Day(At()), Night = Condition.Night(At());

    // What is mixed is the voltage or the kind of current, and only in one cabinet.
    [Theory]
    [InlineData(12, CurrentKind.Dc, true, false)]
    [InlineData(12, CurrentKind.Ac, true, true)]
    [InlineData(24, CurrentKind.Dc, true, true)]
    [InlineData(24, CurrentKind.Ac, true, true)]
    [InlineData(24, CurrentKind.Ac, false, false)]
    public void MixedVoltages_AreOfOneCabinet(double volts, CurrentKind kind, bool isShared, bool isFound) =>
        Assert.Equal(isFound, Ids(RuleCases.Banks(volts, kind, isShared)).Contains("mixed-voltages-in-one-cabinet"));

    [Fact]
    public void SplitAdapter_IsNotAlsoAnOverloadedSupplyOrOutput() =>
        Assert.Equal(["split-adapter-beyond-rating"], Ids(Shared(0, Adapter(Dc(amperes: 2)), [Day], Camera(Amperes(1.5)), Camera(Amperes(1.5)))));

    [Fact]
    public void OverloadedAdapterOfOneDevice_IsTheSuppliesFinding() =>
        Assert.Equal(["supply-above-derated-rating"], Ids(Star(Adapter(Dc(amperes: 2)), [Day], (0, Camera(Amperes(2.5))))));

    [Fact]
    public void SplitAdapterInsideItsRating_StillHasAHeadroom() =>
        Assert.Equal(["supply-above-headroom-policy"], Ids(Shared(0, Adapter(Dc(amperes: 2)), [Day], Camera(Amperes(0.9)), Camera(Amperes(0.9)))));

    [Fact]
    public void AboveTheRating_IsNotAlsoAboveTheHeadroom() =>
        Assert.Equal(["supply-above-derated-rating"], Ids(Star(Box(Dc(amperes: 2)), [Day], (0, Camera(Amperes(2.5))))));

    // The limit of the output and the rating of the supply bind separately.
    [Fact]
    public void OverloadedOutputAndSupply_AreTwoCauses() =>
        Assert.Equal(["output-overloaded", "supply-above-derated-rating"], Ids(Star(Box(Dc(amperes: 2), limit: 1), [Day], (0, Camera(Amperes(2.5))))));

    [Fact]
    public void WrongSupply_IsNotAlsoAnOvervoltageAtLightLoad() =>
        Assert.Equal(["supply-voltage-too-high"], Ids(Single(0, Camera(Watts(3), Range(8, 13)), Dc(24))));

    [Fact]
    public void TrimmedTooHigh_IsAnOvervoltageAtLightLoad()
    {
        var supply = new Supply("trimmed", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(9), Ratio.Zero, Range(11, 15), Volts(14)), Derating.GenericEnclosed);
        Assert.Equal(["overvoltage-at-light-load"], Ids(Single(0.1, Camera(Watts(3), Range(8, 13)), supply)));
    }

    // Off at night, for it settles under its drop-out voltage of 8 V; by day inside its range.
    [Fact]
    public void NotUp_IsNotAlsoAnUndervoltage()
    {
        var draw = new ComponentDraw(Watts(2), infrared: Watts(10.5));
        Assert.Equal(["settles-below-drop-out"], Ids(Single(2.6, Camera(draw, Range(10, 20), Starts(9, 8)), null, Day, Night)));
    }

    // At night off, by day up with (12 + √(144 − 93.6))/2 = 9.55 V, under the 10 V that it accepts: two conditions, two findings.
    [Fact]
    public void NotUpAtNight_AndTooLowByDay_AreTwoFindings()
    {
        var draw = new ComponentDraw(Watts(9), infrared: Watts(3.5));
        IReadOnlyList<Finding> found = WithoutFaultsUnknown.Check(Single(2.6, Camera(draw, Range(10, 20), Starts(9, 8)), null, Day, Night).Assess());
        Assert.Equal([("settles-below-drop-out", "night"), ("undervoltage", "day")], found.Select(f => (f.Rule, f.Condition!.Name)));
        Assert.Equal((12 + Math.Sqrt(144 - 93.6)) / 2, (double)found[1].Measured!.Value, 1e-9);
    }

    // The margin is of the lowest voltage of the supply, and of the worst condition, not of the nominal day.
    [Fact]
    public void ThinMargin_IsOfTheLowestSupplyVoltageInTheWorstCondition()
    {
        var draw = new ComponentDraw(Load.None, infrared: Amperes(1));
        Finding found = Assert.Single(WithoutFaultsUnknown.Check(Single(1, Camera(draw, Range(10.2, 14)), Dc(percent: 5), Day, Night).Assess()));
        Assert.Equal("thin-voltage-margin", found.Rule);
        Assert.Equal(Night.Name, found.Condition!.Name);
        Assert.Equal(10.4, (double)found.Measured!.Value, 1e-12);
        Assert.Equal(10.404, (double)found.Limit!.Value, 1e-12);
    }

    [Fact]
    public void Undervoltage_IsNotAlsoAThinMargin() => Assert.Equal(["undervoltage"], Ids(Single(1, Camera(Amperes(1), Range(11.5, 20)))));

    [Fact]
    public void WrongCurrent_IsTheOnlyFindingAboutADevice() => Assert.Equal(["ac-into-dc-device"],
        Ids(Single(9, Camera(Watts(100), Range(8, 9), Starts(20, 19)), Dc(kind: CurrentKind.Ac))));

    [Fact]
    public void NoOperatingPoint_IsNotAlsoARefusalToStart() =>
        Assert.Equal(["no-operating-point"], Ids(Single(3, Camera(Watts(13), starting: Starts(9, 8)))));

    // A lead that joins another at a junction is extended as well, and named once however many devices hang on it.
    [Fact]
    public void PreTerminatedLead_IsNamedOnce_AlsoWhereItIsExtendedAtAJunction()
    {
        var lead = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, isPreTerminated: true), Length.FromMeters(5));
        Site site = new("site", [Day], [Box()],
            [new SiteRun(RunOrigin.Output(BoxName, 1), "a", lead), new SiteRun(RunOrigin.Junction("a"), "b", Runs.OfOhms(0.1)), new SiteRun(RunOrigin.Junction("a"), "c", Runs.OfOhms(0.1))],
            [new SiteDevice("x", Camera(Watts(1)), "b"), new SiteDevice("y", Camera(Watts(1)), "c")]);
        Assert.Equal("box output 1 to a", Assert.Single(WithoutFaultsUnknown.Check(site.Assess())).About.Name);
    }

    // What one cable of the trade does at many places is one finding with its list; at one place it is about that run.
    [Theory]
    [InlineData(1, "box output 1 to place 1", "It has conductors of copper-clad aluminum, with 55 % to 59 % more resistance than copper.")]
    [InlineData(3, "site", "3 runs have conductors of copper-clad aluminum, with 55 % to 59 % more resistance than copper: box output 1 to place 1, box output 2 to place 2, box output 3 to place 3.")]
    public void AlikeRuns_AreOneFindingWithItsList(int runs, string about, string message)
    {
        var clad = new CableRun(Cable.Pair(WireSize.Awg(16), Stranding.Solid, ConductorMaterial.CopperCladAluminum10), Length.FromMeters(1));
        var site = new Site("site", [Day], [Box()], Enumerable.Range(0, runs).Select(i => new SiteRun(RunOrigin.Output(BoxName, i + 1), Place(i), clad)),
            Enumerable.Range(0, runs).Select(i => new SiteDevice(Name(i), Camera(Watts(1)), Place(i))));
        Finding found = Assert.Single(WithoutFaultsUnknown.Check(site.Assess()));
        Assert.Equal(("copper-clad-aluminum", about, message), (found.Rule, found.About.Name, found.Message));
    }

    // 100 W behind a supply of 5 A that shuts down at 5.5 A: the supply's finding, and no cable is blamed.
    [Theory]
    [InlineData("shutdown", "It shuts down, and its devices go dark.")]
    [InlineData("hiccup", "Its voltage pulses, and its devices restart with it.")]
    [InlineData(null, "Its overload behavior is not stated.")]
    public void OverloadedSupply_IsTheSuppliesFinding_AndSaysWhatFollows(string? overload, string then)
    {
        ElectricCurrent limit = ElectricCurrent.FromAmperes(5.5);
        OverloadBehavior? behavior = overload switch
        {
            "shutdown" => OverloadBehavior.Shutdown(limit, Duration.FromMilliseconds(100)),
            "hiccup" => OverloadBehavior.Hiccup(limit, Duration.FromMilliseconds(100), Duration.FromSeconds(1)),
            _ => null,
        };
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero, overload: behavior), Derating.GenericEnclosed);
        Finding found = Assert.Single(WithoutFaultsUnknown.Check(Star(Box(supply), [Day], (0.01, Camera(Watts(50))), (0.01, Camera(Watts(50)))).Assess()));
        Assert.Equal("supply-above-derated-rating", found.Rule);
        Assert.EndsWith(then, found.Message, StringComparison.Ordinal);
    }

    // 76.8 W are 6.4 A at 12 V, 12.8 A at a turn-on of 6 V and 15.36 A at a drop-out of 5 V. How long the cameras wait is not stated, so nobody knows that they are
    // held down; after a dip all that have not dropped out draw at once, drop out and start again.
    [Theory]
    [InlineData(15.3, true)]
    [InlineData(15.4, false)]
    public void ADipThatTheLimitCannotLift_IsACaution(double limit, bool isFound)
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero,
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(limit))), Derating.GenericEnclosed);
        Site site = Shared(0, Box(supply, outputs: 8), [Day], [.. Enumerable.Repeat(Camera(Watts(9.6), starting: Starts(6, 5)), 8)]);
        Finding? found = WithoutFaultsUnknown.Check(site.Assess()).SingleOrDefault();
        Assert.Equal(isFound, found is not null);
        if (found is null) return;
        Assert.Equal(("start-beyond-supply-limit", Severity.Caution), (found.Rule, found.Severity));
        Assert.Equal(15.36, ((ElectricCurrent)found.Measured!).Amperes, 1e-9);
        Assert.Equal(15.3, ((ElectricCurrent)found.Limit!).Amperes, 1e-9);
    }

    // A quiet site is quiet.
    [Fact]
    public void SoundSite_HasNoFindings() => Assert.Empty(Ids(Chain((0.1, Camera(Watts(3), Range(9, 16), Starts(8, 7))), (0.1, Camera(Watts(3), Range(9, 16))))));

    private static IEnumerable<string> Ids(Site site) => WithoutFaultsUnknown.Check(site.Assess()).Select(f => f.Rule);
}
