using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Backup;
using CamPower.Supplies;
using CamPower.Tests.Mains;
using UnitsNet;
using static CamPower.Tests.Backup.Batteries;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Backup;

/// <summary>What is judged of a battery, its fuse, its charger and the outputs that run on it.</summary>
public class BatteryVerdictTests
{
    private static readonly Battery Seven = BatteryCatalog.Generic12Volt[0];

    // 12 V behind 1 mΩ. 8 W at 8 V are 1 A; at the 4 V where the battery ends it is 2 A, and a fuse of 1.25 A opens.
    [Fact]
    public void FuseOfTheBattery_CarriesTheCurrentOfTheFallingVoltage()
    {
        Judgment judged = Study(Box().WithBattery(Of(5, full: 12, empty: 4, ohms: 1e-6), Slow(1.25)), Camera(Watts(8), starting: Starts(3, 2))).FuseLoad;
        Assert.Equal(Verdict.Violated, judged.Verdict);
        Assert.Equal(2, ((ElectricCurrent)judged.Value!).Amperes, 1e-4);
        Assert.Equal(1.25, ((ElectricCurrent)judged.Limit!).Amperes, 1e-12);
        Assert.Equal(Verdict.Holds, Study(Box().WithBattery(Of(5, full: 12, empty: 4, ohms: 1e-6), Slow(2.5)), Camera(Watts(8), starting: Starts(3, 2))).FuseLoad.Verdict);
    }

    // A blade fuse carries its rating for 100 h at 1.1 times it (ISO 8820-3, from memory), and 75 % of it is common practice: 2.25 A of 3 A.
    [Theory]
    [InlineData(2.2, Verdict.Holds)]
    [InlineData(2.3, Verdict.ThinMargin)]
    [InlineData(3.1, Verdict.Violated)]
    public void FuseOfTheBattery_HasRoom(double charging, Verdict expected) => Assert.Equal(expected, Study(
        Charger(0, charging).WithBattery(Of(5, ohms: 0.1), new Fuse("blade", ElectricCurrent.FromAmperes(3), FuseCharacteristic.Blade, Volts(32),
            ElectricCurrent.FromAmperes(1000), ElectricResistance.FromMilliohms(20), dcVoltageRating: Volts(32))), Camera(Amperes(1))).FuseLoad.Verdict);

    // Two cameras of 20 A for 1 ms each are 1.6 A²s at the most, of which a fuse of 10 A²s gives 22 % (common practice, no source); of 20 ms 32 A²s.
    [Theory]
    [InlineData(1, Verdict.Holds)]
    [InlineData(20, Verdict.Violated)]
    public void FuseOfTheBattery_WithstandsTheStart(double milliseconds, Verdict expected)
    {
        Device camera = new("model", DeviceKind.Camera, new ComponentDraw(Amperes(0.5)), dcInput: Wide, inrush: new Inrush(ElectricCurrent.FromAmperes(20), Duration.FromMilliseconds(milliseconds)));
        Fuse fuse = new("fuse", ElectricCurrent.FromAmperes(2), FuseCharacteristic.IecTimeLag, Volts(32), ElectricCurrent.FromAmperes(1000),
            ElectricResistance.FromMilliohms(20), JouleIntegral.FromAmpereSquaredSeconds(10), dcVoltageRating: Volts(32));
        Judgment judged = Star(Box().WithBattery(Of(5), fuse), [Night], (0.1, camera), (0.1, camera)).Assess().StudyBackup()[0].FuseStart;
        Assert.Equal(expected, judged.Verdict);
    }

    // 13 V falls straight to 11 V over 5 Ah. 15 W are 1.2 A at 12.5 V, after 5 Ah·0.25·12.75 V/15 W; at 11 V 1.364 A.
    [Fact]
    public void Output_OnFallingVoltage_MayOpenInTime()
    {
        var limit = new ElectronicLimit("limit", ElectricCurrent.FromAmperes(1.2), Ratio.Zero, Duration.FromSeconds(1), ElectricResistance.Zero, Volts(60));
        DistributionBox box = Box(limit: 1.3, protection: limit).WithBattery(Of(5, full: 13, empty: 11));
        OutputOnBattery output = Assert.Single(Star(box, [Night], (0, Camera(Watts(15), starting: Starts(10, 9.2)))).RunOnBattery(BoxName, Night).Outputs);
        Assert.Equal(5 * 0.25 * 12.75 / 15, output.MayOpenAfter!.Value.Hours, 1e-4);
        Assert.Equal(15 / 11.0, output.MostCurrent.Amperes, 1e-4);
        Assert.Equal((Verdict.Violated, Verdict.Violated), (output.OfProtection.Verdict, output.OfLimit.Verdict));
    }

    // 18 AWG alone in a cable, 14 A at 60 °C (NEC 310.16, from memory), 7 A as a small conductor's protection and 5.6 A of continuous load. 60 W are 5 A at 12 V and 7.5 A at 8 V.
    [Fact]
    public void Conductor_OnFallingVoltage_CarriesMore()
    {
        Site Yard(bool hasBattery)
        {
            DistributionBox box = hasBattery ? Box().WithBattery(Of(50, full: 12, empty: 8)) : Box();
            var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), Length.FromMeters(0.01));
            return new Site("site", [Night], [box], [new SiteRun(RunOrigin.Output(BoxName, 1), "end", run, installationMethod: InstallationMethod.InCableOrRaceway(2))],
                [new SiteDevice("heavy", Camera(Watts(60), starting: Starts(4, 3)), "end")]);
        }

        Assert.Empty(Rules.ConductorOverAmpacity.Check(new Evidence(Yard(hasBattery: false).Assess())));
        Finding found = Assert.Single(Rules.ConductorOverAmpacity.Check(new Evidence(Yard(hasBattery: true).Assess())));
        Assert.Equal(7.5, ((ElectricCurrent)found.Measured!).Amperes, 0.01);
    }

    [Fact]
    public void Output_ThatCarriesAllOfIt_StaysClosed()
    {
        OutputOnBattery output = Assert.Single(Star(Box(protection: Slow(2)).WithBattery(Of(5, full: 13, empty: 11)), [Night], (0, Camera(Watts(15), starting: Starts(10, 9.2))))
            .RunOnBattery(BoxName, Night).Outputs);
        Assert.Null(output.MayOpenAfter);
        Assert.Equal((Verdict.Holds, Verdict.Holds), (output.OfProtection.Verdict, output.OfLimit.Verdict));
    }

    // 12 V falls straight to 10 V over 6 h: below 10.8 V after 3.6 h, while it runs down to 8 V.
    [Fact]
    public void Device_BelowWhatItAccepts_IsTold()
    {
        BatteryRun run = Star(Box().WithBattery(Of(6, full: 12, empty: 10)), [Night], (0, Camera(Amperes(1), Range(10.8, 15), Starts(9, 8)))).RunOnBattery(BoxName, Night);
        Assert.Equal(3.6, Assert.Single(run.BelowAccepted).After.Hours, 1e-5);
        Assert.Empty(run.DropOuts);
        Assert.Equal(6, run.Length.Hours, 1e-5);
    }

    // 13 V falls to 11 V over 6 Ah. Camera 2 has 1 V less and drops out at 11.9 V: 3.3 Ah, 1.1 h. What is left lasts 2.7 h for 1 A, and 0.9 h if it draws on.
    [Fact]
    public void DeviceThatRestarts_LeavesTwoEnds()
    {
        BatteryRun run = Star(Box().WithBattery(Of(6, full: 13, empty: 11)), [Night], (0, Camera(Amperes(1), starting: Starts(9, 8))),
            (0.5, Camera(Amperes(2), starting: Starts(11.5, 10.9)))).RunOnBattery(BoxName, Night);
        Assert.Equal(1.1, Assert.Single(run.DropOuts).After.Hours, 1e-5);
        Assert.Equal(3.8, run.Length.Hours, 1e-5);
        Assert.Equal(2.0, run.IfRestartsDraw!.Length.Hours, 1e-5);
        Assert.Null(run.IfRestartsDraw.IfRestartsDraw);
        Assert.EndsWith("after 2.0 h to 3.8 h", run.ToString(), StringComparison.Ordinal);
    }

    // At its cut-off, at the end of its life and at -20 °C: 10.5 V behind 25 mΩ·2.5·2/0.8, the fuse of 50 mΩ and 0.5 Ω. New, full and warm: 12.84 V and 25 mΩ.
    [Fact]
    public void Short_OnABattery_HasBothEnds()
    {
        DistributionBox box = Charger(0, 1, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(100))).WithBattery(Seven, Slow(50));
        Site site = Star(box, [Night, Condition.Day(At(box: -20))], (0.5, Camera(Amperes(0.1))));
        ShortCircuit far = site.Assess().StudyFaults()[0].Shorts[^1];
        Assert.Equal(10.5 / ((0.025 * 2.5 * 2 / 0.8) + 0.05 + 0.5), far.SmallestProspective!.Value.Amperes, 1e-6);
        Assert.Equal(12.84 / (0.025 + 0.5), far.LargestProspective!.Value.Amperes, 1e-6);
    }

    // A battery opens the fuse of 4 A; the charger alone holds 6 A, which it carries for an hour at 1.5 times its rating (IEC 60127-2 sheet 3).
    [Fact]
    public void Short_WithADeadBattery_IsLeftToTheCharger()
    {
        DistributionBox box = Charger(0, 1, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(6)), protection: Slow(4)).WithBattery(Seven, Slow(50));
        ShortCircuit near = Star(box, [Night], (0.01, Camera(Amperes(0.1)))).Assess().StudyFaults()[0].AtTerminals;
        Assert.Equal(OperatingVerdict.MayOperate, near.Verdict);
        Assert.Equal(6, near.Smallest.Amperes, 1e-9);
        Assert.True(near.Largest!.Value.Amperes > 100);
    }

    [Fact]
    public void Short_OnABattery_StillAsksForTheCharger()
    {
        Site site = Star(Charger(0, 1, protection: Slow(4)).WithBattery(Seven, Slow(50)), [Night], (0.01, Camera(Amperes(0.1))));
        Assert.True(site.Assess().StudyFaults()[0].AtTerminals.Missing.HasFlag(FaultData.Overload));
    }

    // 12 Ah and 18 mΩ at 13.65 V + 0.75 V and 1 %: 808 A, and 6 A of the charger. A fuse of 750 A may burst; 1000 A leave less than a fifth.
    [Theory]
    [InlineData(750, Verdict.Violated)]
    [InlineData(1000, Verdict.ThinMargin)]
    [InlineData(1020, Verdict.Holds)]
    public void FuseOfTheBattery_BreaksTheShortOfTheChargedBattery(double breaking, Verdict expected)
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.FromPercent(1), Range(12, 15), Volts(13.65),
            overload: OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(6))).WithCharging(Volts(0.75), ElectricCurrent.FromAmperes(1));
        DistributionBox box = Box(new Supply("supply", output, Derating.GenericEnclosed)).WithBattery(BatteryCatalog.Generic12Volt[1], Slow(10, breaking));
        Judgment judged = Study(box, Camera(Amperes(1))).FuseBreaking;
        Assert.Equal(expected, judged.Verdict);
        Assert.Equal((14.4 * 1.01 / 0.018) + 6, ((ElectricCurrent)judged.Value!).Amperes, 1e-6);
    }

    // 0.3 C of 12 Ah are 3.6 A; 2.45 V a cell 14.7 V (both from memory).
    [Theory]
    [InlineData(2.7, 3.6, Verdict.Holds, Verdict.Holds)]
    [InlineData(2.71, 3.61, Verdict.Violated, Verdict.Violated)]
    public void Charging_OfLeadAcid_IsBounded(double rise, double amperes, Verdict voltage, Verdict current)
    {
        BackupAssessment backup = Study(Charger(rise, amperes).WithBattery(BatteryCatalog.Generic12Volt[1]), Camera(Amperes(1)));
        Assert.Equal((voltage, current), (backup.ChargingVoltage.Verdict, backup.OfChargingCurrent.Verdict));
    }

    // At 0 °C the float voltage is 75 mV a cell higher, and so is the limit: 15.15 V.
    [Theory]
    [InlineData(3.14, Verdict.Holds)]
    [InlineData(3.16, Verdict.Violated)]
    public void Charging_InTheCold_IsCompensated(double rise, Verdict expected) => Assert.Equal(expected,
        Star(Charger(rise, 1).WithBattery(BatteryCatalog.Generic12Volt[1]), [Condition.Night(At(box: 0))], (0.1, Camera(Amperes(1)))).Assess().StudyBackup()[0].ChargingVoltage.Verdict);

    // Four cells: 14.6 V (from memory), no compensation.
    [Theory]
    [InlineData(2.6, Verdict.Holds)]
    [InlineData(2.61, Verdict.Violated)]
    public void Charging_OfLithium_IsBounded(double rise, Verdict expected) => Assert.Equal(expected, Study(
        Charger(rise, 1).WithBattery(new Battery("cells", BatteryChemistry.LithiumIronPhosphate, 4, ElectricCharge.FromAmpereHours(20), Duration.FromHours(5), ElectricResistance.FromMilliohms(15))),
        Camera(Amperes(1))).ChargingVoltage.Verdict);

    // A tolerance of 5 % of 12 V is 11.4 V: 5 % under a float voltage of 12 V, where 2 % are allowed (common practice, no source).
    [Fact]
    public void FloatVoltage_CountsTheTolerance()
    {
        var battery = new Battery("battery", Chemistry(12, 12, 1, 0.5, floating: 12), 1, ElectricCharge.FromAmpereHours(5), Duration.FromHours(20), ElectricResistance.FromMilliohms(1));
        Assert.Equal(Verdict.Holds, Study(Box(Dc(percent: 1)).WithBattery(battery), Camera(Amperes(1))).FloatVoltage.Verdict);
        Assert.Equal(Verdict.Violated, Study(Box(Dc(percent: 5)).WithBattery(battery), Camera(Amperes(1))).FloatVoltage.Verdict);
    }

    // 60 W at 12 V + 3 V are 4 A, not 5 A: 1 A of load and 3.5 A that charge are too much, and 3 A are left.
    [Fact]
    public void Charging_AtTheRisenVoltage_HasTheRatedPower()
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero).WithCharging(Volts(3), ElectricCurrent.FromAmperes(3.5));
        BackupAssessment backup = Study(Box(new Supply("supply", output, Derating.GenericEnclosed)).WithBattery(Of(30)), Camera(Amperes(1)));
        Assert.Equal((Verdict.Violated, 4.0), (backup.WhileCharging.Verdict, ((ElectricCurrent)backup.WhileCharging.Limit!).Amperes));
        Assert.Equal(3, backup.ChargingCurrentLeft!.Value.Amperes, 1e-9);
        Assert.Equal(10, backup.Recharge!.Value.Hours, 1e-9);
    }

    [Fact]
    public void Charging_WithNothingLeft_NeverEnds()
    {
        var output = new DcOutput(Volts(12), ElectricCurrent.FromAmperes(5), Ratio.Zero).WithCharging(Volts(0), ElectricCurrent.FromAmperes(1));
        Assert.Null(Study(Box(new Supply("supply", output, Derating.GenericEnclosed)).WithBattery(Of(30)), Camera(Amperes(5))).Recharge);
    }

    // 2 A of load and 3 A that charge at 12 V, 85 % and a power factor of 0.95: 60 W/(0.85·0.95)/120 V.
    [Fact]
    public void Receptacle_CarriesLoadAndCharging()
    {
        Supply sheet = Receptacles.Sheet();
        var output = ((DcOutput)sheet.Output).WithCharging(Volts(0), ElectricCurrent.FromAmperes(3));
        DistributionBox box = Box(new Supply("supply", output, sheet.Derating, sheet.Input)).WithReceptacle(Receptacles.Rated(15)).WithBattery(Of(30));
        SiteAssessment assessment = Star(box, [Night], (0, Camera(Amperes(2)))).Assess();
        Assert.Equal(60 / 0.85 / 0.95 / 120, assessment.StudyReceptacles()[0].Worst.KnownCurrent.Amperes, 1e-9);
    }

    // 60 W at 85 % lose 10.59 W; the 24 W of the load alone would lose 4.24 W.
    [Fact]
    public void Enclosure_IsWarmedByCharging()
    {
        Supply sheet = Receptacles.Sheet();
        var enclosure = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        DistributionBox box = Box(new Supply("supply", ((DcOutput)sheet.Output).WithCharging(Volts(0), ElectricCurrent.FromAmperes(3)), sheet.Derating, sheet.Input))
            .WithEnclosure(enclosure).WithBattery(Of(30));
        Assert.Equal(60 * ((1 / 0.85) - 1), (double)Star(box, [Night], (0, Camera(Amperes(2)))).Assess().Boxes[0].Worst.Losses!.Total.Watts, 1e-9);
    }

    // A charger in its limit of 4 A gives no more than that.
    [Fact]
    public void Charging_StaysInTheLimitOfTheSupply()
    {
        DistributionBox box = Charger(0, 3, OverloadBehavior.ConstantCurrent(ElectricCurrent.FromAmperes(4))).WithBattery(Of(30));
        Assert.Equal((4.0, 3.5, 5.0), (box.AmperesWhileCharging(2), box.AmperesWhileCharging(0.5), box.AmperesWhileCharging(5)));
    }

    // 25.7 V of twelve cells at rest are never charged by 13.65 V: the smaller battery that fits is chosen, not the one of fewer ampere-hours.
    [Fact]
    public void SmallestBattery_IsOneThatTheChargerFills()
    {
        var tooHigh = new Battery("24 V", BatteryChemistry.ValveRegulatedLeadAcid, 12, ElectricCharge.FromAmpereHours(2), Duration.FromHours(20), ElectricResistance.FromMilliohms(50));
        Site site = Star(Box(Dc(13.65)), [Night], (0.1, Camera(Watts(4))));
        BatteryRun? chosen = site.SmallestBatteryFor(BoxName, [tooHigh, .. BatteryCatalog.Generic12Volt], BackupPolicy.CommonPractice, Duration.FromHours(4), Night);
        Assert.Equal("12 V, 7 Ah", chosen!.Box.Battery!.Name);
        Assert.Null(site.SmallestBatteryFor(BoxName, [tooHigh], BackupPolicy.CommonPractice, Duration.FromHours(1), Night));
    }

    [Theory]
    [InlineData("{0}", 0.5)]
    [InlineData("{0}", 11)]
    public void Chemistry_ImpossibleLastingResistance_IsRefused(string format, double factor) => Assert.Contains(string.Format(System.Globalization.CultureInfo.InvariantCulture, format, factor),
        Assert.Throws<ArgumentOutOfRangeException>(() => new BatteryChemistry("cells", Sources.CommonPractice, BatteryChemistry.LithiumIronPhosphate.Charge,
            BatteryChemistry.LithiumIronPhosphate.Capacity, BatteryChemistry.LithiumIronPhosphate.Resistance, 1, Volts(2), Volts(3), Volts(0), 1, lastingResistance: factor)).Message, StringComparison.Ordinal);

    // 2.45 V a cell at 25 °C (from memory), 5 mV and 3 mV less for each kelvin of what follows: at 40 °C 14.43 V, at -10 °C 15.33 V. A cold night in the site
    // does not spare the summer.
    [Theory]
    [InlineData(14.4, null, Verdict.Holds)]
    [InlineData(15.0, null, Verdict.Unknown)]
    [InlineData(15.0, true, Verdict.Holds)]
    [InlineData(15.0, false, Verdict.Violated)]
    [InlineData(15.4, null, Verdict.Violated)]
    [InlineData(15.4, true, Verdict.Violated)]
    public void Charging_OverTheYear_DependsOnWhetherTheChargerFollowsTheTemperature(double volts, bool? follows, Verdict expected)
    {
        Condition summer = Condition.Day(At(box: 40)), winter = Condition.Night(At(box: -10));
        BackupAssessment Of(params Condition[] conditions) => Star(Following(12, volts - 12, follows).WithBattery(BatteryCatalog.Generic12Volt[1]), conditions,
            (0.1, Camera(Amperes(1)))).Assess().StudyBackup()[0];
        Assert.Equal(expected, Of(summer, winter).ChargingVoltage.Verdict);
        Assert.Equal(expected, Of(winter, summer).ChargingVoltage.Verdict);
    }

    // Six cells of 2.275 V at 25 °C, 3 mV less for each kelvin: 13.2 V at 50 °C. 13.65 V are 3.4 % above it, 13.75 V 4.2 %; 2 % are 13.46 V.
    [Theory]
    [InlineData(13.65, false, Severity.Caution)]
    [InlineData(13.75, false, Severity.Failure)]
    [InlineData(13.65, true, null)]
    [InlineData(13.65, null, null)]
    public void Float_InAHotBox_IsJudgedAtItsTemperature(double set, bool? follows, Severity? expected)
    {
        Site site = Star(Following(set, 0, follows).WithBattery(BatteryCatalog.Generic12Volt[1]), [Condition.Day(At(box: 50))], (0.1, Camera(Amperes(1))));
        var evidence = new Evidence(site.Assess());
        Finding? found = Rules.FloatVoltageWrong.Check(evidence).SingleOrDefault();
        Assert.Equal(expected, found?.Severity);
        if (found is not null) Assert.Contains("13.20 V at 50 °C in \"day\"", found.Message, StringComparison.Ordinal);
        Assert.Equal(follows is null, RuleSet.Standard.Check(site.Assess()).Any(f => f.Message.Contains("follows the temperature", StringComparison.Ordinal)));
    }

    // Lithium iron phosphate is charged up to 45 °C (from memory), inside its box.
    [Theory]
    [InlineData(45, false)]
    [InlineData(45.1, true)]
    public void ChargingInHotAir_IsADanger(double box, bool isFound)
    {
        var battery = new Battery("cells", BatteryChemistry.LithiumIronPhosphate, 4, ElectricCharge.FromAmpereHours(20), Duration.FromHours(5), ElectricResistance.FromMilliohms(20));
        var evidence = new Evidence(Star(Following(13.6, 0, true).WithBattery(battery), [Condition.Day(At(box: box))], (0.1, Camera(Amperes(1)))).Assess());
        Assert.Equal(isFound, Rules.BatteryChargedTooHard.Check(evidence).Any(f => f.Message.Contains("45 °C", StringComparison.Ordinal)));
    }

    private static DistributionBox Following(double set, double rise, bool? follows) => Box(new Supply("supply",
        new DcOutput(Volts(set), ElectricCurrent.FromAmperes(10), Ratio.Zero).WithCharging(Volts(rise), ElectricCurrent.FromAmperes(1), follows), Derating.GenericEnclosed));

    private static BackupAssessment Study(DistributionBox box, Device device) => Star(box, [Night], (0, device)).Assess().StudyBackup()[0];

    private static DistributionBox Charger(double rise, double amperes, OverloadBehavior? overload = null, ProtectiveDevice? protection = null) => Box(new Supply("supply",
        new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero, overload: overload).WithCharging(Volts(rise), ElectricCurrent.FromAmperes(amperes)), Derating.GenericEnclosed), protection: protection);

    // It carries its rating, and for an hour half as much more; the resistance is 50 mΩ.
    private static Fuse Slow(double amperes, double breaking = 10_000) => new("fuse", ElectricCurrent.FromAmperes(amperes),
        new FuseCharacteristic("slow", ElectricCurrent.FromAmperes(0.1), ElectricCurrent.FromAmperes(100),
            new FuseTimeLimit(1.5, Duration.FromHours(1), null, Sources.CommonPractice), new FuseTimeLimit(2.1, null, Duration.FromMinutes(2), Sources.CommonPractice)),
        Volts(60), ElectricCurrent.FromAmperes(breaking), ElectricResistance.FromMilliohms(50), dcVoltageRating: Volts(60));
}
