using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Assessment.Returns;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>A central box against adapters. Cameras draw constant current, so that every sum is done in the head.</summary>
public class AdapterComparingTests
{
    private static readonly SizingPolicy Common = SizingPolicy.CommonPractice;

    private static readonly CableRun Lead = Runs.OfOhms(0.1);

    // Two cameras that want 10.5 V, 0.5 A over 1 Ω and 1 A over 2 Ω: 11.5 V and 10 V of 12 V, so the second is out by 0.5 V, and the
    // cables lose 0.25 W and 2 W. With adapters and 0.1 Ω: 11.95 V and 11.9 V, losses of 0.025 W and 0.1 W; 0.5 A want 0.625 A by the
    // 80 % policy, so a 1 A adapter, and 1 A wants 1.25 A, so one of 2 A. Both are loaded to 50 %; the box to 1.5 A of 5 A.
    [Fact]
    public void Figures_OfBothWays()
    {
        SupplyLayout central = TwoCameras().LayoutOf(BoxName), adapters = TwoCameras().LayoutWithAdapters(BoxName, [Dc(amperes: 2), Dc(amperes: 1), Dc(24, 1)], Lead, Common);
        Assert.Equal((2, 1, 1), (central.Devices, central.DevicesInWindow, central.Supplies.Count));
        Assert.Equal((2, 2, 2), (adapters.Devices, adapters.DevicesInWindow, adapters.Supplies.Count));
        Assert.Equal(-0.5, central.WorstMargin!.Value.Volts, 1e-12);
        Assert.Equal("camera 2", central.Least!.Device.Name);
        Assert.Equal(1.4, adapters.WorstMargin!.Value.Volts, 1e-12);
        Assert.Equal(2.25, (double)central.CableLoss.Watts, 1e-9);
        Assert.Equal(0.125, (double)adapters.CableLoss.Watts, 1e-9);
        Assert.Equal([1, 2], adapters.Supplies.Select(b => b.Box.Supply.Output.RatedCurrent.Amperes));
        Assert.Equal((30, 50), (Math.Round(central.Loading!.Value.Percent, 9), Math.Round(adapters.Loading!.Value.Percent, 9)));
        Assert.Equal("1 of 2 in their windows, worst margin -0.50 V (camera 2, day), most loaded box 30 %, supplies and receptacles: 1, 0 m of cable losing 2.3 W", central.ToString());
    }

    // The whole power that the sources give, less what the devices take, counted apart from the figure.
    [Fact]
    public void CableLoss_IsWhatSourcesGiveAndDevicesDoNotGet()
    {
        Site chain = Chain(Box(), [Condition.Day(At())], (0.5, Camera(Amperes(1))), (0.7, Camera(Watts(6))), (0.9, Camera(Ohms(30))));
        SupplyLayout central = chain.LayoutOf(BoxName);
        double given = central.Supplies[0].Worst.TotalCurrent.Amperes * 12;
        double taken = central.Assessment.Devices.Sum(d => d.Worst.Voltage.Volts * d.Worst.Current.Amperes);
        Assert.Equal(given - taken, (double)central.CableLoss.Watts, 1e-9);
    }

    [Fact]
    public void DeviceTooStrongForEveryAdapter_HasTheStrongest_AndShowsIt()
    {
        SupplyLayout adapters = TwoCameras().LayoutWithAdapters(BoxName, [Dc(amperes: 0.7)], Lead, Common);
        Assert.Equal(100 / 0.7, adapters.Loading!.Value.Percent, 1e-9);
        Assert.Equal("adapter of camera 2", adapters.MostLoaded.Box.Name);
    }

    // 7 A over 2 Ω from 12 V is nothing at all: no margin, and nobody up.
    [Fact]
    public void DeviceThatIsNotUp_LeavesNoMargin()
    {
        SupplyLayout central = Star((2, Camera(Amperes(7)))).LayoutOf(BoxName);
        Assert.Equal((0, null), (central.DevicesInWindow, central.WorstMargin));
        Assert.Contains("none, not all are up", central.ToString(), StringComparison.Ordinal);
    }

    // A camera that was wired the wrong way round does not mend itself; a tie of another box stays, one of this box goes with it.
    [Fact]
    public void ReversedLeads_AndOtherTies_Stay()
    {
        Site two = TwoCameras();
        var site = new Site("site", two.Conditions, [.. two.Boxes, ReturnSites.Box("a", 12)], two.Runs, two.Devices.Select((d, i) => new SiteDevice(d.Name, d.Model, d.At, leadsReversed: i == 0)),
            ties: [new OutputTie("a", 1, "a", 2), new OutputTie(BoxName, 1, "a", 3)]);
        SupplyLayout adapters = site.LayoutWithAdapters(BoxName, [Dc(amperes: 2)], Lead, Common);
        Assert.Equal(1, adapters.DevicesInWindow);
        Assert.True(adapters.Site.Devices[0].LeadsReversed);
        Assert.Equal("tie of a output 1 and a output 2", Assert.Single(adapters.Site.Ties).ToString());
    }

    // Only the box that is asked about goes; what another feeds, and the names that others bear, stay.
    [Fact]
    public void OtherBoxes_StayAsTheyAre()
    {
        Site site = ReturnSites.Of([ReturnSites.Box("a", 12), ReturnSites.Box("adapter of camera 1", 12)],
            [ReturnSites.Run("a", 1, "1", 1), ReturnSites.Run("adapter of camera 1", 1, "2", 1)], [ReturnSites.Amperes(1, 1), ReturnSites.Amperes(2, 1)],
            [ReturnSites.Link(1, "g", 0.9), ReturnSites.Link(2, "g", 0.9)], [ReturnSites.Bond("g", "a", 0.1), ReturnSites.Bond("g", "adapter of camera 1", 0.1)]);
        SupplyLayout adapters = site.LayoutWithAdapters("a", [Dc(amperes: 5)], Lead, Common);
        Assert.Equal(["adapter of camera 1", "adapter of camera 1 *"], adapters.Site.Boxes.Select(b => b.Name));
        Assert.Equal((1, 2), (adapters.Devices, adapters.Assessment.Devices.Count));
        Assert.Equal("adapter of camera 1", Assert.Single(adapters.Site.Bonds).Box);
    }

    [Fact]
    public void ImpossibleArguments_Throw()
    {
        Site site = TwoCameras();
        Assert.Throws<ArgumentException>("boxName", () => site.LayoutWithAdapters("no such box", [Dc()], Lead, Common));
        Assert.Throws<ArgumentException>("adapters", () => site.LayoutWithAdapters(BoxName, [Dc(24)], Lead, Common));
        Assert.Throws<ArgumentNullException>("lead", () => site.LayoutWithAdapters(BoxName, [Dc()], null!, Common));
        Assert.Throws<ArgumentNullException>("policy", () => site.LayoutWithAdapters(BoxName, [Dc()], Lead, null!));
        var idle = new Site("idle", [Condition.Day(At())], [Box()], [], []);
        Assert.Throws<ArgumentException>("boxName", () => idle.LayoutWithAdapters(BoxName, [Dc()], Lead, Common));
    }

    private static Site TwoCameras() => Star(Box(Dc(amperes: 5)), [Condition.Day(At())],
        (1, Camera(Amperes(0.5), Range(10.5, 13))), (2, Camera(Amperes(1), Range(10.5, 13))));
}
