using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Tests.Mains;
using CamPower.Tests.Protection;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Checks;

/// <summary>What is said of a battery, of a breaker and of an uninterruptible supply, on either side of each line. Numbers by hand.</summary>
public class BatteryAndMainsFindingTests
{
    // 12 V behind 0.1 Ω draw 120 A; a fifth of a fuse's breaking capacity is a margin (common practice): 150 A.
    [Theory]
    [InlineData(119, Severity.Danger)]
    [InlineData(121, Severity.Caution)]
    [InlineData(149, Severity.Caution)]
    [InlineData(151, null)]
    public void ABatteryFuse_InterruptsWithAMargin(double breaking, Severity? severity)
    {
        Finding? found = Found(Rules.BatteryFuseRatingExceeded, RuleCases.Backed(RuleCases.DcFuse(breaking))).SingleOrDefault();
        Assert.Equal(severity, found?.Severity);
        if (found is null) return;
        string policy = severity == Severity.Caution ? FormattableString.Invariant($", policy maximum {breaking / 1.25:0.#} A") : string.Empty;
        Assert.Equal(FormattableString.Invariant($"Its battery fuse (battery fuse) interrupts at most {breaking} A{policy}; a short draws up to 120 A."), found.Message);
    }

    // 12 V of a fuse for 10 V, and 120 A of one for 100 A: both are said, and the first is told.
    [Fact]
    public void ABatteryFuse_MayBeWrongTwice()
    {
        Fuse fuse = SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 5, breaking: 100, volts: 10, ohms: 0.005);
        Finding found = Assert.Single(Found(Rules.BatteryFuseRatingExceeded, RuleCases.Backed(fuse)));
        Assert.Equal("Its battery fuse (fuse) is rated for 10 V DC; it gets up to 12 V. It interrupts at most 100 A; a short draws up to 120 A.", found.Message);
        Assert.Equal((12, 10), (((ElectricPotential)found.Measured!).Volts, ((ElectricPotential)found.Limit!).Volts));
    }

    // The camera takes 1 A from the battery, the charger gives it as much as is said here. A fuse to IEC 60127 carries its rating; of a blade fuse 75 % (common practice).
    [Theory]
    [InlineData("IEC", 0.9, 0.5, Severity.Failure, "Its battery gives up to 1.00 A in \"night\"; its fuse, fuse, carries 0.90 A.", 0.9)]
    [InlineData("IEC", 1.1, 1.5, Severity.Failure, "Its battery takes up to 1.50 A; its fuse, fuse, carries 1.10 A.", 1.1)]
    [InlineData("IEC", 1.6, 1.5, null, null, null)]
    [InlineData("blade", 3, 2.5, Severity.Caution, "Its battery takes up to 2.50 A; policy maximum 2.25 A: its fuse, fuse, carries 3.00 A.", 2.25)]
    public void ABatteryFuse_CarriesWhatItGivesAndTakes(string kind, double rated, double charging, Severity? severity, string? message, double? limit)
    {
        Fuse fuse = SmallDevices.Fuse(kind == "IEC" ? FuseCharacteristic.IecTimeLag : FuseCharacteristic.Blade, rated, volts: 32);
        Finding? found = Found(Rules.BatteryFuseMayOpen, RuleCases.Backed(fuse, charging: charging)).SingleOrDefault();
        Assert.Equal((severity, message), (found?.Severity, found?.Message));
        Assert.Equal(limit, found is null ? null : Math.Round(((ElectricCurrent)found.Limit!).Amperes, 9));
        Assert.Equal(message?.Contains("night", StringComparison.Ordinal) == true, found?.Condition is not null);
    }

    // 12 W from 12 V through 0.101 Ω are 1.0086 A.
    [Fact]
    public void OnBattery_ALimitIsALimit() => Assert.Equal("On battery it carries up to 1.01 A in \"night\"; its limit is 1.00 A.",
        Assert.Single(Found(Rules.OutputOverloadedOnBattery, RuleCases.Backed(watts: 12, limit: 1.004))).Message);

    // 1 A from 1 mAh: 3.6 s new, and 2.88 s with 80 % of it (IEEE 485, from memory): both are less than a tenth of an hour.
    [Fact]
    public void ABackup_SaysOfWhichBattery()
    {
        Assert.StartsWith("On its battery (battery), every device goes off after 0.0 h in \"night\"; wanted ", Assert.Single(Found(Rules.BatteryBackupTooShort, RuleCases.Backed(wanted: 4))).Message, StringComparison.Ordinal);
        Assert.StartsWith("On an old battery (battery at 80 %), every device goes off", Assert.Single(Found(Rules.ThinBatteryBackup, RuleCases.Backed(wanted: 3))).Message, StringComparison.Ordinal);
    }

    // 30 mA may trip from 15 mA on (IEC 61008-1), and 30 % of it are 9 mA (IEC 60364-5-53, both from memory).
    [Theory]
    [InlineData(8.9, true, null, null, null)]
    [InlineData(12, true, Severity.Caution, "Its supplies leak 12 mA; the limit is 9 mA. That is 30 % of the 30 mA rating of its residual-current device (RCD, GFCI).", 9.0)]
    [InlineData(16, true, Severity.Failure, "Its supplies leak 16 mA; the limit is 15 mA. That is 50 % of the 30 mA rating of its residual-current device (RCD, GFCI).", 15.0)]
    [InlineData(16, false, Severity.Failure, "Its supplies leak at least 16 mA; the limit is 15 mA. That is 50 % of the 30 mA rating of its residual-current device (RCD, GFCI).", 15.0)]
    public void Leakage_IsHeldAgainstTwoLines(double milliamperes, bool isKnown, Severity? severity, string? message, double? limit)
    {
        DistributionBox[] boxes = [Breakers.Plugged(Breakers.B16, 1, 20, leakage: milliamperes / 1000), Breakers.Plugged(Breakers.B16, 2, 20, leakage: isKnown ? 0 : null)];
        Finding? found = Found(Rules.LeakageMayTripResidualDevice, new Site("site", [Condition.Day(At())], boxes, [], [])).SingleOrDefault();
        Assert.Equal((severity, message), (found?.Severity, found?.Message));
        Assert.Equal(limit, found is null ? null : Math.Round(((ElectricCurrent)found.Limit!).Milliamperes, 9));
    }

    // A peak of 84.85 A is that of a sine of 60 A; type B of 16 A holds 48 A (IEC 60898-1, from memory).
    [Fact]
    public void AStart_NamesItsSupplies()
    {
        Assert.StartsWith("A cold start of its supply draws 84.9 A peak (60 A RMS). The breaker is certain to hold only up to 48 A RMS.", Start(Breakers.Plugged(Breakers.B16, 1, 84.853)), StringComparison.Ordinal);
        Assert.StartsWith("A cold start of its 2 supplies draws 84.9 A peak", Start(Breakers.Plugged(Breakers.B16, 1, 64.853), Breakers.Plugged(Breakers.B16, 2, 20)), StringComparison.Ordinal);
        Assert.StartsWith("A cold start of its 2 supplies draws at least 84.9 A peak", Start(Breakers.Plugged(Breakers.B16, 1, 84.853), Breakers.Plugged(Breakers.B16, 2, null)), StringComparison.Ordinal);
        Assert.StartsWith("A warm start of its supply draws 90 A peak", Start(Breakers.Plugged(Breakers.B16, 1, 70, warm: 90)), StringComparison.Ordinal);

        static string Start(params DistributionBox[] boxes) => Assert.Single(Found(Rules.StartMayTripBreaker, new Site("site", [Condition.Day(At())], boxes, [], []))).Message;
    }

    // 5 A of 12 V at 85 % are 70.6 W: at least 30 min, of which an aged battery has 80 %. 10 A are 141.2 W: at most 21.76 min on the line between 30 min and 10 min.
    [Theory]
    [InlineData(5, 23.9, null, null, null)]
    [InlineData(5, 24.4, Severity.Caution, "At 70.6 W it runs at least 30 min in \"day\"; wanted 30.5 min with a new battery.", 30.5)]
    [InlineData(10, 22, Severity.Failure, "At 141.2 W it runs at most 21.8 min in \"day\"; wanted 22 min.", 22.0)]
    public void ARuntime_IsThatOfANewOrAnAgedBattery(double amperes, double wanted, Severity? severity, string? message, double? limit)
    {
        Finding? found = Found(Rules.UninterruptibleRuntimeTooShort, UninterruptibleTests.Behind(UninterruptibleTests.Unit(wanted: wanted), amperes)).SingleOrDefault();
        Assert.Equal((severity, message), (found?.Severity, found?.Message));
        Assert.Equal(limit, found is null ? null : Math.Round(((Duration)found.Limit!).Minutes, 9));
    }

    // 9 A of 12 V at 85 % and a power factor of 0.95 take 1.11 A at 120 V, more than 80 % of 1 A; what the other box takes is not known, and can only be more.
    [Theory]
    [InlineData(false, "Its boxes draw 1.11 A at 120 V in \"day\"; it may carry 0.80 A, 80 % of its rating.")]
    [InlineData(true, "Its boxes draw at least 1.11 A at 120 V in \"day\"; it may carry 0.80 A, 80 % of its rating.")]
    public void WhatIsKnownOfAReceptacle_IsALowerBound(bool isBesideUnknown, string message)
    {
        Receptacle receptacle = Receptacles.Rated(1);
        DistributionBox known = Box(Receptacles.Sheet()).WithName("box 1").WithReceptacle(receptacle), unknown = Box(Dc(amperes: 10)).WithName("box 2").WithReceptacle(receptacle);
        var site = new Site("site", [Condition.Day(At())], isBesideUnknown ? [known, unknown] : [known],
            [new SiteRun(RunOrigin.Output("box 1", 1), "one", Runs.OfOhms(0)), .. isBesideUnknown ? [new SiteRun(RunOrigin.Output("box 2", 1), "two", Runs.OfOhms(0))] : Array.Empty<SiteRun>()],
            [new SiteDevice("first", Camera(Amperes(9)), "one"), .. isBesideUnknown ? [new SiteDevice("second", Camera(Amperes(1)), "two")] : Array.Empty<SiteDevice>()]);
        Assert.Equal(message, Assert.Single(Found(Rules.ReceptacleOverloaded, site)).Message);
    }

    private static IReadOnlyList<Finding> Found(Rule rule, Site site) => [.. rule.Check(new Evidence(site.Assess()))];
}
