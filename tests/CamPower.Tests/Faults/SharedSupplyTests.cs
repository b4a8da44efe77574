using System;
using UnitsNet;
using static CamPower.Tests.Faults.SmallFaultSite;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>What a fault is left with while another output of the supply takes 2 A, whatever its voltage. All by hand: 12 V, 1.6 Ω to the short.</summary>
public class SharedSupplyTests
{
    private static readonly ElectricCurrent Nine = ElectricCurrent.FromAmperes(9);

    // 12/1.6 = 7.5 A, and 2 A beside it are more than 9 A: V/1.6 + 2 = 9 leaves 11.2 V, 7 A. With foldback to 3 A V/1.6 + 2 = 3 + V/2 leaves 8 V, 5 A.
    // Pulses of 0.2 s a second are 7·√0.2 A RMS, and a supply that shuts down gives nothing. The most flows while the other takes nothing.
    [Theory]
    [InlineData("constant", 7)]
    [InlineData("foldback", 5)]
    [InlineData("hiccup", 3.1305)]
    [InlineData("shutdown", 0)]
    public void AShort_GetsWhatTheOthersLeave(string behavior, double least)
    {
        ShortCircuit fault = Short(Behavior(behavior), Quick(2));
        Assert.Equal(7.5, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(least, fault.Smallest.Amperes, 1e-4);
        Assert.Equal(7.5, Short(Behavior(behavior), Quick(2), others: 1.5 - 1e-9).Smallest.Amperes, 1e-9);
    }

    // 7.5 A are 3.75 times a fuse F of 2 A: 2·(5.5/7.5)² s, 60.5 A²s. Pulsed it gets 1.57 times, and may carry that for ever. Where the supply shuts down the fuse need not open, but
    // the fault ends: at the latest when the others take nothing, the supply stays up and the fuse opens.
    [Fact]
    public void AFuse_IsNotCertainToOpenWhereTheSupplyStopsFirst()
    {
        Assert.Equal(60.5 / 7.5 / 7.5, Short(Behavior("hiccup"), Quick(2), others: 1).Opening.Latest!.Value.Seconds, 1e-9);
        Assert.Equal(OperatingVerdict.MayOperate, Short(Behavior("hiccup"), Quick(2)).Verdict);
        ShortCircuit shut = Short(Behavior("shutdown"), Quick(2));
        Assert.Equal(OperatingVerdict.MayOperate, shut.Verdict);
        Assert.Equal(60.5, shut.LetThrough!.Value.AmpereSquaredSeconds, 1e-6);
    }

    // A fuse F of 2.6 A: 7.5 A are 2.88 times, within 2·(2.75/2.88)² s; 7 A are 2.69 times, within 30·(2.1/2.69)² min.
    [Theory]
    [InlineData(1, 2 * 7.15 * 7.15 / 7.5 / 7.5)]
    [InlineData(2, 1800 * 5.46 * 5.46 / 49)]
    public void LessCurrent_OperatesItLater(double others, double latest) =>
        Assert.Equal(latest, Short(Behavior("constant"), Quick(2.6), others).Opening.Latest!.Value.Seconds, 0.001 * latest);

    // A battery of 10 A behind 0.1 Ω: (12 − V)/0.1 = V/1.1 + 2 + 0, and 1.1 Ω alone would be 10 A.
    [Fact]
    public void ABattery_SagsUnderBoth()
    {
        double volts = 118 / (10 + (1 / 1.1));
        Assert.Equal(volts / 1.1, Short(OverloadBehavior.Unlimited, Quick(2), ohms: 1.1).Smallest.Amperes, 1e-6);
    }

    // 8 A drawn and 2 A beside them pulse a supply that gives 9 A: 8·√0.2 A, not twice a fuse F of 2 A.
    [Fact]
    public void AnOverload_IsPulsedByTheOthersToo()
    {
        OutputFaults fed = TwoOutputs(Behavior("hiccup"), Quick(2), others: 2, ohms: 1.6).Assess().StudyFaults()[0];
        Overload four = fed.OverloadOf(4 * fed.Output.Limit);
        Assert.Equal(8, four.Drawn.Amperes, 1e-12);
        Assert.Equal(8 * Math.Sqrt(0.2), four.Smallest.Amperes, 1e-9);
        Assert.Equal(OperatingVerdict.MayOperate, four.Verdict);
    }

    internal static ShortCircuit Short(OverloadBehavior overload, ProtectiveDevice device, double others = 2, double ohms = 1.6) =>
        ShortAt(TwoOutputs(overload, device, others, ohms), "one");

    internal static OverloadBehavior Behavior(string name) => name switch
    {
        "constant" => OverloadBehavior.ConstantCurrent(Nine),
        "foldback" => OverloadBehavior.Foldback(Nine, ElectricCurrent.FromAmperes(3)),
        "hiccup" => OverloadBehavior.Hiccup(Nine, Duration.FromSeconds(0.2), Duration.FromSeconds(1)),
        _ => OverloadBehavior.Shutdown(Nine, Duration.FromMilliseconds(50)),
    };

    private static Fuse Quick(double amperes) => SmallFault.QuickActing(amperes);

    private static Site TwoOutputs(OverloadBehavior overload, ProtectiveDevice device, double others, double ohms) => new("site", [Condition.Day(At())],
        [Box(device, overload, sourceOhms: overload.Limit is null ? 0.1 : null)], [Run(RunOrigin.Output(BoxName, 1), "one", ohms), Run(RunOrigin.Output(BoxName, 2), "two", 0)],
        [new SiteDevice("first", Camera(Amperes(0.1)), "one"), new SiteDevice("second", Camera(Amperes(others)), "two")]);
}
