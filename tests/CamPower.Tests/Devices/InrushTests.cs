using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace CamPower.Tests.Devices;

/// <summary>What devices draw at first, and whether a protective device stays closed under it.</summary>
public class InrushTests
{
    [Fact]
    public void PeakAndDuration_CountAsARectangle()
    {
        Inrush inrush = Of(8, 0.002);
        Assert.Equal(0.128, inrush.Integral.AmpereSquaredSeconds, 1e-15);
        Assert.Equal("8 A, 0.128 A²·s", inrush.ToString());
    }

    [Fact]
    public void StatedIntegral_StandsAsItIs()
    {
        var inrush = new Inrush(SmallDevices.Amperes(8), JouleIntegral.FromAmpereSquaredSeconds(0.05));
        Assert.Equal(0.05, inrush.Integral.AmpereSquaredSeconds);
        Assert.Null(inrush.Duration);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 1)]
    [InlineData(1e7, 1)]
    [InlineData(1, 0)]
    [InlineData(1, -1)]
    [InlineData(1, 1e7)]
    public void ImpossibleNumbers_AreRefused(double amperes, double seconds)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(amperes, seconds));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Inrush(ElectricCurrent.FromAmperes(amperes), seconds >= 0 ? JouleIntegral.FromAmpereSquaredSeconds(seconds > 1 ? 1e16 : 0) : default));
    }

    // By hand: rectangles of 3 A for 4 ms and 5 A for 1 ms give 64·1 ms + 9·3 ms = 0.091 A²s; the bound is (3·√4 + 5·√1)² ms = 0.121 A²s.
    // Alike ones are as the bound has them: n² times.
    [Fact]
    public void Together_AreNeverLessThanTheSumOfTheCurrents()
    {
        Inrush two = Inrush.AtOnce([Of(3, 0.004), Of(5, 0.001)])!;
        Assert.Equal(8, two.Peak.Amperes);
        Assert.Equal(0.121, two.Integral.AmpereSquaredSeconds, 1e-12);
        Assert.Equal(0.128 * 25, Inrush.AtOnce(Enumerable.Repeat(Of(8, 0.002), 5))!.Integral.AmpereSquaredSeconds, 1e-12);
        Assert.Null(Inrush.AtOnce([]));
    }

    // Gates: IEC 60127-2 sheet 2 (S09-011, S09-015), sheet 3 (S09-023, S09-025 from memory), ISO 8820-3 type C (S09-038, S09-039 from memory).
    // A fuse F of 2 A holds 8 A for 10 ms: 0.64 A²s. Above 4 times its rating no gate says that it holds anything.
    [Theory]
    [InlineData("IEC F", 2, 8, 0.01, true)]
    [InlineData("IEC F", 2, 8, 0.0101, false)]
    [InlineData("IEC F", 2, 8.1, 0.0001, false)]
    [InlineData("IEC F", 2, 5.5, 0.05, true)]
    [InlineData("IEC F", 2, 5.5, 0.051, false)]
    [InlineData("IEC F", 2, 5.6, 0.051, false)]
    [InlineData("IEC F", 2, 2, 1000, true)]
    [InlineData("IEC T", 2, 20, 0.02, true)]
    [InlineData("IEC T", 2, 20, 0.021, false)]
    [InlineData("IEC T", 2, 8, 0.125, true)]
    [InlineData("IEC T", 2, 8, 0.16, false)]
    [InlineData("blade", 5, 30, 0.03, true)]
    [InlineData("blade", 5, 30, 0.031, false)]
    [InlineData("blade", 5, 17.5, 0.088, true)]
    public void Fuse_StandsWhatAGateHoldsItClosedUnder(string gates, double rated, double amperes, double seconds, bool stands) =>
        Assert.Equal(stands, Stands(SmallDevices.Fuse(SmallDevices.Characteristic(gates), rated), Of(amperes, seconds)));

    // Melting I²t of 4.5 A²s: 30 A for 4.9 ms are 4.41, for 5 ms 4.5.
    [Theory]
    [InlineData(0.0049, true)]
    [InlineData(0.005, false)]
    public void Fuse_StandsLessThanItsLeastMeltingIntegral(double seconds, bool stands) =>
        Assert.Equal(stands, Stands(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, meltingIntegral: 4.5), Of(30, seconds)));

    // Re-rated to 0.8 at 60 °C it is a fuse of 1.6 A: 6.4 A for 10 ms.
    [Theory]
    [InlineData(20, true)]
    [InlineData(60, false)]
    public void Fuse_InAWarmBoxStandsLess(double celsius, bool stands) => Assert.Equal(stands,
        Stands(SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, rerating: SmallDevices.Curve((20, 1), (60, 0.8))), Of(8, 0.01), celsius));

    // The 1.10 A one trips within 2.3 s at 8 A (S09-047), its trip current being 2.2 A (S09-046): τ = −2.3/ln(1 − (2.2/8)²) = 29.25 s, by one
    // time constant. One that just holds 1.1 A then trips with 1.1²·29.25 = 35.4 A²s; at 50 °C, where it holds 0.70 of it (S09-067), with 17.3 A²s.
    [Theory]
    [InlineData(20, 1.1, 1000, true)]
    [InlineData(20, 10, 0.353, true)]
    [InlineData(20, 10, 0.355, false)]
    [InlineData(50, 10, 0.173, true)]
    [InlineData(50, 10, 0.174, false)]
    [InlineData(50, 1.1, 1000, false)]
    [InlineData(20, 40, 0.002, true)]
    public void ResettableFuse_StandsWhatDoesNotHeatIt(double celsius, double amperes, double seconds, bool stands) =>
        Assert.Equal(stands, Stands(SmallDevices.Generic(1.10), Of(amperes, seconds), celsius));

    // Found another way: the temperature of a body of that time constant under the rectangle, step by step, against that of 1.1 A for good.
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(40)]
    public void ResettableFuse_AgreesWithABodyOfOneTimeConstant(double amperes)
    {
        double timeConstant = 2.3 / -Math.Log(1 - (2.2 * 2.2 / 64));
        double rise = 0, seconds = 0;
        const double Step = 1e-5;
        for (; rise < 1.1 * 1.1; seconds += Step) rise += ((amperes * amperes) - rise) * Step / timeConstant;
        Assert.True(Stands(SmallDevices.Generic(1.10), Of(amperes, seconds * 0.99)));
        Assert.False(Stands(SmallDevices.Generic(1.10), Of(amperes, seconds * 1.001)));
    }

    [Fact]
    public void NoDevice_StandsAnything_AndAnElectronicLimitWhatIsUnderIt()
    {
        Assert.True(Stands(ProtectiveDevice.None, Of(1e5, 10)));
        ElectronicLimit limit = ElectronicLimitTests.Limit(amperes: 1.5);
        Assert.True(Stands(limit, Of(1, 10)));
        Assert.Null(Stands(limit, Of(10, 0.001)));
    }

    // More peak, more I²t, a device more or warmer air never turn a trip into none.
    [SeededProperty(MaxTest = 2000)]
    public Property MoreInrush_NeverTurnsATripIntoNone()
    {
        ProtectiveDevice[] devices =
        [
            .. new[] { "IEC F", "IEC T", "UL fast", "UL slow", "blade" }.Select(g => SmallDevices.Fuse(SmallDevices.Characteristic(g), 3)),
            SmallDevices.Fuse(FuseCharacteristic.IecTimeLag, 1, meltingIntegral: 2, rerating: SmallDevices.Curve((20, 1), (60, 0.8))), SmallDevices.Generic(0.90), SmallDevices.Generic(2.50),
        ];
        var cases = from device in Gen.Elements(devices)
                    from centiamperes in Gen.Choose(50, 6000)
                    from microseconds in Gen.Choose(10, 5_000_000)
                    from more in Gen.Choose(0, 300)
                    from longer in Gen.Choose(0, 300)
                    from celsius in Gen.Choose(20, 59)
                    select (Device: device, Amperes: centiamperes / 100.0, Seconds: microseconds / 1e6, More: 1 + (more / 100.0), Longer: 1 + (longer / 100.0), Celsius: (double)celsius);
        return Prop.ForAll(cases.ToArbitrary(), c =>
        {
            if (Stands(c.Device, Of(c.Amperes, c.Seconds), c.Celsius)!.Value) return;
            double integral = c.Amperes * c.Amperes * c.Seconds;
            Assert.False(Stands(c.Device, Of(c.Amperes * c.More, c.Seconds * c.Longer), c.Celsius));
            Assert.False(Stands(c.Device, new Inrush(SmallDevices.Amperes(c.Amperes * c.More), JouleIntegral.FromAmpereSquaredSeconds(integral * c.Longer)), c.Celsius));
            Assert.False(Stands(c.Device, Inrush.AtOnce([Of(c.Amperes, c.Seconds), Of(0.1, 0.001)])!, c.Celsius));
            Assert.False(Stands(c.Device, Of(c.Amperes, c.Seconds), c.Celsius + 1));
        });
    }

    private static Inrush Of(double amperes, double seconds) => new(ElectricCurrent.FromAmperes(amperes), Duration.FromSeconds(seconds));

    private static bool? Stands(ProtectiveDevice device, Inrush inrush, double celsius = 20) => Judge(device, inrush, celsius).Verdict switch
    {
        Verdict.Violated => false,
        Verdict.Unknown => null,
        _ => true,
    };

    private static Judgment Judge(ProtectiveDevice device, Inrush inrush, double celsius = 20) => device.JudgeInrush(
        inrush.PeakAmperes, inrush.AmpereSquaredSeconds, device.CurrentFactorAt(Temperature.FromDegreesCelsius(celsius), "celsius"));
}
