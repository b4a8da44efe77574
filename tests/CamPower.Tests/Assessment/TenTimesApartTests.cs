using System.Linq;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>
/// A resettable fuse of 0.05 Ω new and 0.5 Ω after a trip: the greatest where devices go dark, the least where they see too much,
/// on every kind of feed. By hand, 12 V without tolerance, constant currents, a box of 30 °C: 0.5 Ω are 0.55 Ω there (1 % a kelvin
/// above 20 °C, common practice), 0.05 Ω stay what they are.
/// </summary>
public class TenTimesApartTests
{
    private const double Least = 0.05, Greatest = 0.55;

    [Fact]
    public void OneDevice()
    {
        DeviceAssessment found = Of([Out(1, "a", 1.3)], (0.8, "a")).Devices[0];
        Assert.Equal(12 - (0.8 * (Greatest + 1.3)), found.Worst.Voltage.Volts, 1e-9);
        Assert.Equal(12 - (0.8 * (Least + 1.3)), found.LightLoadVoltage.Volts, 1e-9);
    }

    // Both go through the device of their output: 1.2 A.
    [Fact]
    public void BranchesOfOneOutput()
    {
        SiteAssessment found = Of([Out(1, "a", 1.3), Out(1, "b", 0.6)], (0.8, "a"), (0.4, "b"));
        double[] lost = [0.8 * 1.3, 0.4 * 0.6];
        AssertVolts(found, [.. lost.Select(v => 12 - (1.2 * Greatest) - v)], [.. lost.Select(v => 12 - (1.2 * Least) - v)]);
        VoltageProfile profile = found.Devices[1].Worst.Profile()!;
        Assert.Equal(12 - (1.2 * Greatest), profile.Points[1].Voltage.Volts, 1e-9);
        Assert.Equal(12 - (1.2 * Greatest) - (0.4 * 0.6), profile.Points[^1].Voltage.Volts, 1e-9);
    }

    // The second comes back over the negative of the first: half of 1.3 Ω carries 1.2 A. Each output has a device of its own.
    [Fact]
    public void OutputsThatShareANegative()
    {
        var second = new SiteRun(RunOrigin.Output(BoxName, 2), "b", Runs.OfOhms(0.6), returnAt: "a");
        SiteAssessment found = Of([Out(1, "a", 1.3), second], (0.8, "a"), (0.4, "b"));
        const double back = 0.65 * 1.2;
        double[] lost = [(0.8 * 0.65) + back, (0.4 * 0.3) + back], amperes = [0.8, 0.4];
        AssertVolts(found,
            [.. lost.Select((v, i) => 12 - (amperes[i] * Greatest) - v)], [.. lost.Select((v, i) => 12 - (amperes[i] * Least) - v)]);
    }

    private static void AssertVolts(SiteAssessment found, double[] worst, double[] lightLoad)
    {
        for (int i = 0; i < worst.Length; i++)
        {
            Assert.Equal(worst[i], found.Devices[i].Worst.Voltage.Volts, 1e-9);
            Assert.Equal(lightLoad[i], found.Devices[i].LightLoadVoltage.Volts, 1e-9);
        }
    }

    private static SiteRun Out(int output, string to, double ohms) => new(RunOrigin.Output(BoxName, output), to, Runs.OfOhms(ohms));

    private static SiteAssessment Of(SiteRun[] runs, params (double Amperes, string At)[] devices) => new Site(
        "site", [Condition.Day(At(box: 30))],
        [Box(protection: SmallDevices.Resettable(hold: 5, trip: 10, timed: 15, least: Least, greatest: 0.5))],
        runs, devices.Select(d => new SiteDevice(d.At, Camera(Amperes(d.Amperes)), d.At))).Assess();
}
