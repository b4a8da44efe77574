using System;
using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;
using static CamPower.Tests.Studies.TrimSites;

namespace CamPower.Tests.Studies;

/// <summary>Trim windows worked out by hand: the set point that leaves V at a device is (V + R·I(V)) over what the tolerance leaves.</summary>
public class TrimWindowTests
{
    // A limit is kept to within 1e-9 of it, beside the nanovolt of the bisection.
    private const double Close = 4e-8;

    // Far: 8 W at night over 2 Ω at 10.8 V: 10.8 + 2·8/10.8 = 12.281481 V, of which the supply may give 99 %: 12.405537 V.
    // Near: 2.64 W by day over 0.5 Ω at 13.2 V: 13.2 + 0.5·2.64/13.2 = 13.3 V, of which it may give 101 %: 13.168317 V.
    private static readonly (double, Device) Near = (0.5, Camera(new ComponentDraw(Watts(2.64), infrared: Watts(2)), Range(10.8, 13.2)));
    private static readonly (double, Device) Far = (2, Camera(new ComponentDraw(Watts(3), infrared: Watts(5)), Range(10.8, 13.2)));
    private const double FarNeeds = 12.405536849981292, NearAllows = 13.168316831683168;

    [Fact]
    public void NearBindsTheTop_AndFarTheBottom()
    {
        TrimWindow window = Star(Trimmable(1, 12, 14), Near, Far).TrimWindowOf(BoxName);
        AssertLimit(window.Lowest, FarNeeds, TrimBound.LowestVoltage, "camera 2", "night");
        AssertLimit(window.Highest, NearAllows, TrimBound.HighestVoltage, "camera 1", null);
        Assert.False(window.IsEmpty);
        Assert.Equal(0, window.Conflict.Volts);
        Assert.Equal((FarNeeds + NearAllows) / 2, window.Middle.Volts, Close);
        Assert.True(window.Contains(Volts(13)) && window.Contains(window.Lowest.SetPoint) && window.Contains(window.Highest.SetPoint));
        Assert.False(window.Contains(Volts(12.405)) || window.Contains(Volts(13.169)));
        Assert.Equal("box: 12.406 V (camera 2, night: lowest voltage) to 13.168 V (camera 1, light load: highest voltage); without load at most 13.069 V (camera 1, before it draws: highest voltage)", window.ToString());
    }

    // A resistance takes more the higher the supply is set: 6 Ω behind 0.5 Ω take its 2 A at 2·6.5 = 13 V. A constant power takes less: 26 W
    // take 2 A at 13 V.
    [Fact]
    public void WhatOverloadsASupplySetHigh_BindsTheTop()
    {
        var supply = new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(2), Ratio.Zero, Range(12, 14)), Derating.GenericEnclosed);
        TrimWindow heater = Star(supply, (0.5, Camera(Ohms(6)))).TrimWindowOf(BoxName);
        AssertLimit(heater.Lowest, 12, TrimBound.SupplyRange, null, null);
        AssertLimit(heater.Highest, 13, TrimBound.SupplyOverloaded, "camera 1", "day");
        TrimWindow camera = Star(supply, (0, Camera(Watts(26)))).TrimWindowOf(BoxName);
        AssertLimit(camera.Lowest, 13, TrimBound.SupplyOverloaded, "camera 1", "day");
        AssertLimit(camera.Highest, 14, TrimBound.SupplyRange, null, null);
    }

    // Plugged in, a device sees all of the supply before it draws: 13.2 V over 1.01, 13.0693 V, also where no set point so low would do; of two devices
    // the more delicate. Where the range of the supply ends below that, nothing is said.
    [Theory]
    [InlineData(13.2, 14, 13.2 / 1.01, TrimBound.NoLoadVoltage)]
    [InlineData(12.2, 14, 12.2 / 1.01, TrimBound.NoLoadVoltage)]
    [InlineData(14.2, 14, 14, TrimBound.SupplyRange)]
    public void HighestBeforeLoad_CountsOnNoLoad(double accepted, double trimTop, double expected, TrimBound bound)
    {
        TrimWindow window = Star(Trimmable(1, 12, trimTop), (0, Camera(Watts(1), Range(10.8, 20))), (8, Camera(Watts(2.64), Range(5, accepted)))).TrimWindowOf(BoxName);
        Assert.Equal(expected, window.HighestBeforeLoad.SetPoint.Volts, 1e-12);
        Assert.Equal((bound, bound == TrimBound.SupplyRange ? null : "camera 2"), (window.HighestBeforeLoad.Bound, window.HighestBeforeLoad.Device?.Name));
        Assert.Equal(bound == TrimBound.NoLoadVoltage, window.ToString().Contains("without load at most", StringComparison.Ordinal));
    }

    // The near one accepts 12.2 V: 12.2 + 0.5·2.64/12.2 = 12.308197 V, over 1.01 is 12.186333 V.
    [Fact]
    public void Empty_NamesWhoConflicts_AndByHowMuch()
    {
        (double, Device) near = (0.5, Camera(new ComponentDraw(Watts(2.64)), Range(10.8, 12.2)));
        TrimWindow window = Star(Trimmable(1, 12, 14), near, Far).TrimWindowOf(BoxName);
        Assert.True(window.IsEmpty);
        AssertLimit(window.Lowest, FarNeeds, TrimBound.LowestVoltage, "camera 2", "night");
        AssertLimit(window.Highest, 12.186333387436, TrimBound.HighestVoltage, "camera 1", null);
        Assert.Equal(0.219203462545, window.Conflict.Volts, Close);
        Assert.Throws<InvalidOperationException>(() => window.Middle);
        Assert.DoesNotContain(Enumerable.Range(0, 201), i => window.Contains(Volts(12 + (i / 100.0))));
        Assert.Equal("box: no set point works: camera 2 needs at least 12.406 V (night: lowest voltage), camera 1 allows at most 12.186 V (light load: highest voltage); without camera 1: 12.406 V (camera 2, night: lowest voltage) to "
            + window.OfOthers!.Highest, window.ToString());

        // Without the near one, which sees too much, the far one has all the room up to its own highest voltage.
        Assert.Equal("camera 1", window.Spoiler!.Name);
        AssertLimit(window.OfOthers.Lowest, FarNeeds, TrimBound.LowestVoltage, "camera 2", "night");
        Assert.NotEqual("camera 1", window.OfOthers.Highest.Device?.Name);
        Assert.True(window.OfOthers.Contains(Volts(12.9)));
        Assert.Null(window.OfOthers.Spoiler);
    }

    // What each bound asks of the source over 2.6 Ω and 12.5 W: drop-out 8 V, 8 + 2.6·12.5/8 = 12.0625 V; turn-on 12.5 V, that;
    // turn-on 4 V without a soft start, 4 + 2.6·12.5/4 = 12.125 V; nothing declared, 2·√(2.6·12.5) = 11.401754 V. Over 0.98.
    [Theory]
    [InlineData(9.5, 8, true, 12.0625, TrimBound.DropOut)]
    [InlineData(12.5, 8, true, 12.5, TrimBound.Starting)]
    [InlineData(4, 3, false, 12.125, TrimBound.Starting)]
    [InlineData(0, 0, true, 11.401754250991380, TrimBound.Collapse)]
    public void Bottom_IsNamed(double turnOn, double dropOut, bool? soft, double sourceVolts, TrimBound bound)
    {
        Device camera = Camera(Watts(12.5), starting: turnOn > 0 ? Starts(turnOn, dropOut, soft) : null);
        TrimWindow window = Single(2.6, camera, Trimmable(2, 10, 20)).TrimWindowOf(BoxName);
        AssertLimit(window.Lowest, sourceVolts / 0.98, bound, "camera 1", "day");
        AssertLimit(window.Highest, 20, TrimBound.SupplyRange, null, null);
    }

    // Three in a row, each 1 Ω from the last and 6 W: the last one pulls all of them down, and is named.
    [Fact]
    public void Collapse_NamesTheFarthest()
    {
        Device camera = Camera(Watts(6));
        TrimLimit lowest = Chain(Box(Trimmable(0, 5, 30)), [Condition.Day(At())], (1, camera), (1, camera), (1, camera)).TrimWindowOf(BoxName).Lowest;
        Assert.Equal(TrimBound.Collapse, lowest.Bound);
        Assert.Equal("camera 3", lowest.Device!.Name);
    }

    // Devices without a least load all see the same: the nearest is named, which no longer cable can help.
    [Fact]
    public void TooMuchForSeveral_NamesTheNearest()
    {
        Device camera = Camera(Load.None, Range(10, 13));
        Assert.Equal("camera 2", Star(Trimmable(0, 12, 14), (2, camera), (1, camera), (3, camera)).TrimWindowOf(BoxName).Highest.Device!.Name);
    }

    // One of two on one run drops out and lets the other go up and down: the one that drops out is the cause. Both draw
    // 5 W over 1 Ω; the drop-out of 9 V asks for 9 + 10/9 = 10.111 V.
    [Fact]
    public void DropOut_NamesTheCause_NotTheOneThatIsTakenAlong()
    {
        Device innocent = Camera(Watts(5), starting: Starts(7, 6)), cause = Camera(Watts(5), starting: Starts(9.5, 9));
        TrimWindow window = Shared(1, Box(Trimmable(0, 5, 30)), [Condition.Day(At())], innocent, cause).TrimWindowOf(BoxName);
        AssertLimit(window.Lowest, 9 + (10 / 9.0), TrimBound.DropOut, "camera 2", "day");
    }

    [Fact]
    public void BoxThatFeedsNothing_HasTheRangeOfItsSupply()
    {
        TrimWindow window = Star(Trimmable(1, 12, 14)).TrimWindowOf(BoxName);
        AssertLimit(window.Lowest, 12, TrimBound.SupplyRange, null, null);
        AssertLimit(window.Highest, 14, TrimBound.SupplyRange, null, null);
        Assert.Equal("box: 12.00 V (range of the supply) to 14.00 V (range of the supply)", window.ToString());
    }

    // A fixed supply has one set point: either that is the window, or what is asked for beyond it is named.
    [Theory]
    [InlineData(13, 13, 13, TrimBound.SupplyRange, TrimBound.SupplyRange)]
    [InlineData(12, FarNeeds, 12, TrimBound.LowestVoltage, TrimBound.SupplyRange)]
    [InlineData(13.5, 13.5, NearAllows, TrimBound.SupplyRange, TrimBound.HighestVoltage)]
    public void SupplyThatCannotBeTrimmed_HasOneSetPoint(double nominal, double lowest, double highest, TrimBound bottom, TrimBound top)
    {
        TrimWindow window = Star(Dc(nominal, percent: 1), Near, Far).TrimWindowOf(BoxName);
        Assert.Equal(lowest, window.Lowest.SetPoint.Volts, Close);
        Assert.Equal(highest, window.Highest.SetPoint.Volts, Close);
        Assert.Equal((bottom, top), (window.Lowest.Bound, window.Highest.Bound));
        Assert.Equal(lowest > highest, window.IsEmpty);
    }

    // Needs beyond the range of the supply are found outside it, so that the conflict is known.
    [Theory]
    [InlineData(10, 12, FarNeeds, 12)]
    [InlineData(14, 15, 14, NearAllows)]
    public void Needs_AreFoundOutsideTheRangeOfTheSupply(double from, double to, double lowest, double highest)
    {
        TrimWindow window = Star(Trimmable(1, from, to), Near, Far).TrimWindowOf(BoxName);
        Assert.Equal(lowest, window.Lowest.SetPoint.Volts, Close);
        Assert.Equal(highest, window.Highest.SetPoint.Volts, Close);
        Assert.Equal(lowest - highest, window.Conflict.Volts, Close);
    }

    // A light load that collapses leaves its device at the full supply voltage. 12 W over 8 Ω fold at 2·√96 = 19.596 V; at 15 V
    // they need 15 + 8·12/15 = 21.4 V, at 10 V 19.6 V: between those the device is inside its range.
    [Fact]
    public void CollapseBelowTheWindow_IsNotTakenForTooMuch()
    {
        TrimWindow window = Single(8, Camera(Watts(12), Range(10, 15)), Trimmable(0, 16, 25)).TrimWindowOf(BoxName);
        Assert.Equal(19.6, window.Lowest.SetPoint.Volts, Close);
        Assert.Equal(21.4, window.Highest.SetPoint.Volts, Close);
    }

    [Fact]
    public void DeviceOfTheWrongCurrent_IsLeftOut()
    {
        var acOnly = new Device("model", DeviceKind.Camera, new ComponentDraw(Watts(50)), acInput: Range(20, 28));
        TrimWindow window = Star(Trimmable(1, 12, 14), Near, Far, (1, acOnly)).TrimWindowOf(BoxName);
        Assert.Equal(FarNeeds, window.Lowest.SetPoint.Volts, Close);
        Assert.Equal(NearAllows, window.Highest.SetPoint.Volts, Close);
    }

    // Behind 100 MΩ no set point gives 10 W: the search ends at 100 kV and says so.
    [Fact]
    public void NeedThatNoVoltageMeets_EndsAtTheLastOneTried()
    {
        TrimWindow window = Single(1e8, Camera(Watts(1000)), Trimmable(1, 12, 14)).TrimWindowOf(BoxName);
        AssertLimit(window.Lowest, 1e5, TrimBound.Collapse, "camera 1", "day");
        Assert.True(window.IsEmpty);
    }

    // Shields that meet, and a window below what the diodes of two supplies take: there is no set point, and that is an answer.
    [Fact]
    public void WindowBelowTheDiodes_IsEmpty()
    {
        Device model = Camera(Amperes(0.1), Range(0.3, 0.35));
        Site star = TrimSites.Star(Trimmable(1, 10, 16), (0.3, model), (0.5, model));
        Site site = new("site", star.Conditions, [star.Boxes[0].WithReserve(new Supply("reserve", Dc().Output, Derating.GenericEnclosed), Volts(0.5))],
            star.Runs, star.Devices, [.. star.Devices.Select(d => new VideoLink(d.Name, "recorder", ElectricResistance.FromOhms(2)))]);
        TrimWindow window = site.TrimWindowOf(BoxName);
        Assert.True(window.IsEmpty);
        Assert.Equal(TrimBound.HighestVoltage, window.Highest.Bound);
    }

    [Fact]
    public void ImpossibleArguments_Throw()
    {
        Site site = Star(Near);
        Assert.Throws<ArgumentNullException>("site", () => SiteQuestions.TrimWindowOf(null!, BoxName));
        Assert.Throws<ArgumentNullException>("boxName", () => site.TrimWindowOf(null!));
        Assert.Throws<ArgumentException>("boxName", () => site.TrimWindowOf("no such box"));
        Assert.Throws<ArgumentException>("box", () => site.With(DistributionBox.Adapter("no such box", Dc())));
        Assert.Throws<ArgumentException>("setPoint", () => site.Boxes[0].WithSetPoint(Volts(12)));
        Assert.Throws<ArgumentOutOfRangeException>("setPoint", () => Trimmable(1, 12, 14).WithSetPoint(Volts(14.001)));
    }

    private static void AssertLimit(TrimLimit limit, double volts, TrimBound bound, string? device, string? condition)
    {
        Assert.Equal(volts, limit.SetPoint.Volts, bound == TrimBound.Collapse ? 1e-7 : Close);
        Assert.Equal((bound, device, condition), (limit.Bound, limit.Device?.Name, limit.Condition?.Name));
    }
}
