using System;
using CamPower.Tests.Protection;
using UnitsNet;

namespace CamPower.Tests.Faults;

/// <summary>What the supply's own behavior does to a fault. All by hand.</summary>
public class OverloadTests
{
    private static readonly ElectricCurrent Four = ElectricCurrent.FromAmperes(4);

    // 12 V behind 2 Ω is 6 A, behind 4 Ω 3 A. Foldback from 4 A to 1 A: the line I = 1 + 3·V/12 meets V = 2·I at 2 A, 4 V.
    [Theory]
    [InlineData("none", 2, 6, 6)]
    [InlineData("constant", 2, 4, 4)]
    [InlineData("constant", 4, 3, 3)]
    [InlineData("foldback", 2, 2, 2)]
    [InlineData("foldback", 3, 4, 4)]
    [InlineData("foldback", 4, 3, 3)]
    [InlineData("hiccup", 2, 4, 2)]
    [InlineData("hiccup", 4, 3, 3)]
    [InlineData("shutdown", 2, 4, 0)]
    [InlineData("shutdown", 4, 3, 3)]
    public void Current_IsWhatTheSupplyLets(string behavior, double ohms, double peak, double heating)
    {
        ShortCircuit fault = SmallFault.Behind(ohms, ProtectiveDevice.None, Behavior(behavior));
        Assert.Equal(12 / ohms, fault.LargestProspective!.Value.Amperes, 1e-12);
        Assert.Equal(peak, fault.Largest!.Value.Amperes, 1e-9);
        Assert.Equal(heating, fault.Smallest.Amperes, 1e-9);
    }

    // Foldback into a dead short gives its short-circuit current: 12 V behind the least resistance there is.
    [Fact]
    public void Foldback_IntoADeadShort_IsItsShortCircuitCurrent()
    {
        Supply source = SmallFault.Source(Behavior("foldback"), ohms: 1e-6);
        Assert.Equal(1, SmallFault.Study(Runs.OfOhms(0), ProtectiveDevice.None, source).AtTerminals.Largest!.Value.Amperes, 1e-6);
    }

    // A fuse F of 0.4 A at 4 A, ten times: by 20 ms, within the pulse of 25 ms.
    [Fact]
    public void Hiccup_MayBlowAFastFuseInItsFirstPulse() =>
        Assert.Equal(0.02, SmallFault.Behind(2, SmallFault.QuickActing(0.4), Behavior("hiccup")).Opening.Latest!.Value.Seconds);

    // A fuse F of 1 A: at 4 A not before 10 ms and by 300 ms, not surely in a pulse of 25 ms. By its RMS, 2 A, the fuse may
    // never open. One of 0.5 A sees 8 times for at most 300 ms, and by its RMS 4 times: 300 ms as well, over a period of 100 ms.
    [Fact]
    public void Hiccup_CountsByItsRms()
    {
        OpeningTimes one = SmallFault.Behind(2, SmallFault.QuickActing(1), Behavior("hiccup")).Opening;
        Assert.Equal(OperatingVerdict.MayOperate, one.Verdict);
        Assert.Equal(0.01, one.Earliest!.Value.Seconds);
        Assert.Null(one.Latest);

        OpeningTimes half = SmallFault.Behind(2, SmallFault.QuickActing(0.5), Behavior("hiccup")).Opening;
        Assert.Equal(OperatingVerdict.Operates, half.Verdict);
        Assert.Equal(0.3, half.Latest!.Value.Seconds);
    }

    // Pulses of 4 A, a quarter of the time: 2 A RMS. A fuse F of 0.5 A sees 8 times, 0.3·(4/8)² = 75 ms, within a pulse of 0.25 s: 1.2 A²s. In pulses of 60 ms it
    // may outlast one, and by its RMS, 4 times, takes 0.3 s: whole periods of 0.24 s, two pulses, 4² × 0.12 = 1.92 A²s. One of 0.95 A sees 4.21 times, 0.271 s, and by its
    // RMS 2.105 times: 1800·(1.995/2)² = 1791.01 s, 1792 pulses of 4 A²s.
    [Theory]
    [InlineData(0.5, 0.25, 0.075, 1.2)]
    [InlineData(0.5, 0.06, 0.3, 1.92)]
    [InlineData(0.95, 0.25, 1800 * 0.9975 * 0.9975, 7168)]
    public void Hiccup_LetsWholePulsesThrough(double rated, double pulse, double latest, double integral)
    {
        OverloadBehavior pulsing = OverloadBehavior.Hiccup(Four, Duration.FromSeconds(pulse), Duration.FromSeconds(4 * pulse));
        ShortCircuit fault = SmallFault.Behind(2, SmallFault.QuickActing(rated), pulsing);
        Assert.Equal(latest, fault.Opening.Latest!.Value.Seconds, 1e-9);
        Assert.Equal(integral, fault.LetThrough!.Value.AmpereSquaredSeconds, 1e-9);
    }

    // At 12 V + 20 % 3.5 Ω draw 1/(1 − 3/4.114) = 3.69 A in foldback; at 12 V − 20 % 2.74 A, below the limit. In between, at 14 V, it is 4 A.
    [Fact]
    public void FoldbackAcrossItsLimit_DrawsTheLimitInBetween()
    {
        ShortCircuit fault = SmallFault.Study(Runs.OfOhms(3.5), ProtectiveDevice.None, SmallFault.Source(Behavior("foldback"), ohms: 1e-6, percent: 20)).AtFarEnd;
        Assert.Equal(9.6 / 3.5, fault.Smallest.Amperes, 1e-5);
        Assert.Equal(4, fault.Largest!.Value.Amperes, 1e-9);
    }

    // A fuse T of 2 A lasts 4 A for ever so long; by the RMS of 2 A, its rating, it never opens, and no pulse of 25 ms opens it.
    [Fact]
    public void Hiccup_BelowTheRatingByRms_NeverOperates() => Assert.Equal(OperatingVerdict.DoesNotOperate,
        SmallFault.Behind(2, SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 2), Behavior("hiccup")).Verdict);

    // The supply ends the fault within 25 ms: 4² × 0.025 = 0.4 A²s, whatever the fuse does.
    [Fact]
    public void Shutdown_EndsTheFaultForTheFuse()
    {
        ShortCircuit slow = SmallFault.Behind(2, SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 1), Behavior("shutdown"));
        Assert.Equal(OperatingVerdict.DoesNotOperate, slow.Verdict);
        Assert.Equal(0.4, slow.LetThrough!.Value.AmpereSquaredSeconds, 1e-12);
        ShortCircuit fast = SmallFault.Behind(2, SmallFault.QuickActing(1), Behavior("shutdown"));
        Assert.Equal(OperatingVerdict.MayOperate, fast.Verdict);
        Assert.Equal(0.4, fast.LetThrough!.Value.AmpereSquaredSeconds, 1e-12);
        Assert.Equal(WithstandVerdict.NoConductor, fast.WithstandVerdict);

        // 10 times its rating opens an F fuse within 20 ms, and the supply may be off sooner than in the 25 ms of its sheet.
        Assert.Equal(OperatingVerdict.MayOperate, SmallFault.Behind(2, SmallFault.QuickActing(0.4), Behavior("shutdown")).Verdict);
    }

    [Fact]
    public void Behavior_SaysWhatItIs()
    {
        Assert.Null(OverloadBehavior.Unlimited.Limit);
        Assert.Equal(4, Behavior("hiccup").Limit!.Value.Amperes);
        Cultures.AssertSame(() => Behavior("hiccup").ToString() + Behavior("shutdown") + Behavior("foldback") + Behavior("constant"));
    }

    private static OverloadBehavior Behavior(string name) => name switch
    {
        "constant" => OverloadBehavior.ConstantCurrent(Four),
        "foldback" => OverloadBehavior.Foldback(Four, ElectricCurrent.FromAmperes(1)),
        "hiccup" => OverloadBehavior.Hiccup(Four, Duration.FromMilliseconds(25), Duration.FromMilliseconds(100)),
        "shutdown" => OverloadBehavior.Shutdown(Four, Duration.FromMilliseconds(25)),
        "none" => OverloadBehavior.Unlimited,
        _ => throw new ArgumentException($"'{name}' is no behavior.", nameof(name)),
    };
}
