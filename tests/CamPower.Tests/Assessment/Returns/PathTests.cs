using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Assessment.Returns.ReturnSites;

namespace CamPower.Tests.Assessment.Returns;

/// <summary>Voltages along the way, the resistance of the way, and the voltage that draws a device down, worked out by hand.</summary>
/// <remarks>Source: Kuphaldt, Lessons in Electric Circuits, DC, ch. 5, 6 and 10.</remarks>
public class PathTests
{
    // By hand: 0.6 A at n1 goes back by its negative, 0.5 Ω, or by both shields and the other's negative, 0.9 + 0.6 + 0.9 Ω;
    // 0.3 A at n2 by 0.9 Ω or by 0.6 + 0.9 + 0.5 Ω. Divided and added: (0.6·2.4 + 0.3·0.9)/2.9 = 0.589655 A and
    // (0.6·0.5 + 0.3·2)/2.9 = 0.310345 A. The first run has 0.4 Ω, then 0.6 Ω, half of each out and half back.
    [Fact]
    public void Profile_WhereReturnsDivide_LosesWhatGoesOutAndWhatComesBack()
    {
        var halves = new CableRun(new CableSegment(Runs.Eighteen, Length.Zero),
            new Joint("near", ElectricResistance.FromOhms(0.4)), new Joint("far", ElectricResistance.FromOhms(0.6)));
        Site site = Of([Box("a", 12)], [new SiteRun(RunOrigin.Output("a", 1), "1", halves), Run("a", 2, "2", 1.8)],
            [Amperes(1, 0.6), Amperes(2, 0.3)], [Link(1, "g", 0.9), Link(2, "g", 0.6)]);
        DeviceInCondition[] found = [.. site.Assess().Devices.Select(d => d.Worst)];
        double firstBack = 1.71 / 2.9, secondBack = 0.9 / 2.9;

        double[] first = [.. found[0].Profile()!.Points.Select(p => p.Voltage.Volts)];
        Assert.Equal(12, first[0], 1e-12);
        Assert.Equal(12 - (0.2 * (0.6 + firstBack)), first[^2], 1e-9);
        Assert.Equal(12 - (0.5 * (0.6 + firstBack)), first[^1], 1e-9);
        Assert.Equal(12 - (0.9 * (0.3 + secondBack)), found[1].Profile()!.Points[^1].Voltage.Volts, 1e-9);
    }

    // By hand: 3 A each leave 48 − 18 − 36 = −6 V and 48 − 24 − 36 = −12 V: nothing balances. The way to the second, 8 Ω out
    // and 6 Ω back over the first's negative, is longer than the first's 6 + 6 Ω, though without the shared negative it
    // would be shorter: it lets go, and leaves the first 48 − 36 = 12 V. The other way round the second would stay, at 6 V.
    [Fact]
    public void NothingBalances_TheLongerWayLetsGoFirst()
    {
        Load three = Load.ConstantCurrent(ElectricCurrent.FromAmperes(3));
        Starting starting = SmallSite.Starts(8, 5.5, soft: false);
        Site site = Of([Box("a", 48)], [Run("a", 1, "1", 12), Run("a", 2, "2", 16, "1")], [Device(1, three, starting), Device(2, three, starting)]);
        DeviceInCondition[] found = [.. site.Assess().Devices.Select(d => d.Worst)];
        Assert.Equal(DeviceState.Up, found[0].State);
        Assert.Equal(12, found[0].Voltage.Volts, 1e-9);
        Assert.NotEqual(DeviceState.Up, found[1].State);
    }

    // By hand: beside 0.5 A at the junction 11.5 V are left behind 2.6 Ω: 12.5 W balance at (11.5 ± √(132.25 − 130))/2, 6.5 V
    // and 5 V. From 4.9 V its own draw pulls it down; the unstable voltage is 5 V, and not that of the run alone (4.13 V).
    [Fact]
    public void UnstableVoltage_InATree_IsThatBesideTheOthers()
    {
        Site site = Of([Box("a", 12)], [Run("a", 1, "1", 1), Next("1", "2", 1.6)],
            [Amperes(1, 0.5), Device(2, Load.ConstantPower(Power.FromWatts(12.5)), SmallSite.Starts(4.9, 3, soft: false))]);
        DeviceInCondition found = site.Assess().Devices[1].Worst;
        Assert.Equal(StartVerdict.TurnOnBelowUnstableVoltage, found.Start);
        Assert.Equal(6.5, found.SolvedVoltage!.Value.Volts, 1e-9);
        Assert.Equal(5, found.UnstableVoltage!.Value.Volts, 1e-9);
    }
}
