using System;
using System.Collections.Generic;
using CamPower.Tests.Quantities;
using UnitsNet;
using static CamPower.Tests.Protection.SmallDevices;

namespace CamPower.Tests.Protection;

/// <summary>Every guarded argument of the room: refused by name, with its value, unit and range.</summary>
public class InvalidDeviceInputTests
{
    private static readonly FuseCharacteristic F = FuseCharacteristic.IecQuickActing;

    private static readonly Dictionary<string, (Action Call, string Parameter, string Shown)> Cases = new()
    {
        ["negative I²t"] = (() => JouleIntegral.FromAmpereSquaredSeconds(-1.5), "value", "-1.5 A²·s"),
        ["factor of zero"] = (() => Fuse(F, 2, rerating: Curve((20, 0), (30, 1))), "rerating", "0"),
        ["factor above 5"] = (() => Curve((20, 5.5), (30, 1)), "share", "5.5"),
        ["colder than the curve"] = (() => Printed(1.1).HoldCurrentAt(Celsius(-40.5)), "ambient", "-40.5 °C"),
        ["hotter than the curve"] = (() => Printed(1.1).HoldCurrentAt(Celsius(85.5)), "ambient", "85.5 °C"),
        ["fuse hotter than its curve"] = (() => Fuse(F, 2, rerating: Curve((0, 1), (60, 0.8))).OpeningAt(Amperes(3), Celsius(60.5)), "ambient", "60.5 °C"),
        ["gate at the rated current"] = (() => Gate(1, 1, 2), "multiple", "1"),
        ["gate at NaN"] = (() => Gate(double.NaN, 1, 2), "multiple", "NaN"),
        ["gate of no time"] = (() => Gate(2, 0, 2), "notBefore", "0 s"),
        ["gate upside down"] = (() => Gate(2, 2, 1.5), "notAfter", "1.5 s"),
        ["fuse below its class"] = (() => Fuse(F, 0.1), "ratedCurrent", "0.1 A"),
        ["fuse above its class"] = (() => Fuse(F, 10.5), "ratedCurrent", "10.5 A"),
        ["fuse that breaks nothing"] = (() => Fuse(F, 2, breaking: 0), "breakingCapacity", "0 A"),
        ["fuse of no voltage"] = (() => Fuse(F, 2, volts: 0), "voltageRating", "0 V"),
        ["fuse of negative resistance"] = (() => Fuse(F, 2, ohms: -0.5), "coldResistance", "-0.5 Ω"),
        ["fuse that melts by itself"] = (() => Fuse(F, 2, meltingIntegral: 0), "minimumMeltingIntegral", "0 A²·s"),
        ["class of no current"] = (() => Of(0, 1, Gate(2, 1, 2)), "ratedFrom", "0 A"),
        ["class upside down"] = (() => Of(2, 1.5, Gate(2, 1, 2)), "ratedTo", "1.5 A"),
        ["negative current"] = (() => Fuse(F, 2).OpeningAt(Amperes(-1.5), Room), "current", "-1.5 A"),
        ["breaking capacity of nothing"] = (() => CamPower.Fuse.IecLowBreakingCapacity(Amperes(0)), "ratedCurrent", "0 A"),
        ["no hold current"] = (() => Resettable(hold: 0), "holdCurrent", "0 A"),
        ["trip at the hold current"] = (() => Resettable(trip: 1), "tripCurrent", "1 A"),
        ["timed below the trip current"] = (() => Resettable(timed: 1.5), "testCurrent", "1.5 A"),
        ["trips at once"] = (() => Resettable(seconds: 0), "longestTimeToTrip", "0 s"),
        ["negative resistance"] = (() => Resettable(least: -0.5), "minimumResistance", "-0.5 Ω"),
        ["resistance upside down"] = (() => Resettable(greatest: 0.01), "maximumResistance", "0.01 Ω"),
        ["tripped at no power"] = (() => Resettable(trippedWatts: 0), "trippedPower", "0 W"),
        ["tripped behind nothing"] = (() => Resettable(trippedWatts: 1).StaysTripped(ElectricPotential.Zero, ElectricResistance.Zero), "source", "0 V"),
        ["limit of nothing"] = (() => ElectronicLimitTests.Limit(amperes: 0), "limit", "0 A"),
        ["limit of no use"] = (() => ElectronicLimitTests.Limit(percent: 95), "tolerance", "0.95"),
        ["limit that opens at once"] = (() => ElectronicLimitTests.Limit(seconds: 0), "opensWithin", "0 s"),
        ["limit of negative resistance"] = (() => ElectronicLimitTests.Limit(ohms: -0.5), "resistance", "-0.5 Ω"),
        ["limit of no voltage"] = (() => ElectronicLimitTests.Limit(volts: 0), "voltageRating", "0 V"),
        ["limit that retries at once"] = (() => ElectronicLimitTests.Limit(pause: 0), "retriesAfter", "0 s"),
        ["tripped behind a negative loop"] = (() => Resettable().StaysTripped(ElectricPotential.FromVolts(12), ElectricResistance.FromOhms(-1.5)), "restOfLoop", "-1.5 Ω"),
    };

    public static TheoryData<string> Impossible => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void ImpossibleInput_IsRefusedByNameValueUnitAndRange(string name)
    {
        (Action call, string parameter, string shown) = Cases[name];
        Refusal.AssertNames(call, parameter, shown);
    }

    [Fact]
    public void GatesThatContradictEachOther_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Of(1, 2));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, null, null)));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(3, 1, 2), Gate(2, 1, 2)));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, 1, 2), Gate(2, 1, 2)));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, 1, 2), Gate(3, 1, 2.5)));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, 1, 3), Gate(3, 1.5, 3)));

        // A gate in between that says nothing of one side does not hide the contradiction of its neighbors.
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, 1, 3), Gate(3, 0.5, null), Gate(4, 0.2, 4)));
        Assert.Throws<ArgumentException>(() => Of(1, 2, Gate(2, null, 3), Gate(3, 4, null)));
    }

    [Fact]
    public void CurvesThatDoNotRise_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Curve((20, 1)));
        Assert.Throws<ArgumentException>(() => Curve((20, 1), (20, 0.9)));
        Assert.Throws<ArgumentNullException>(() => new ShareCurve<Temperature>(null!));
        Assert.Throws<ArgumentNullException>(() => new FuseTimeLimit(2, Duration.FromSeconds(1), null, null!));
        Assert.Throws<ArgumentNullException>(() => Fuse(null!, 2));
    }

    private static FuseTimeLimit Gate(double multiple, double? from, double? to) =>
        new(multiple, from is double f ? Duration.FromSeconds(f) : null, to is double t ? Duration.FromSeconds(t) : null, Sheet);

    private static FuseCharacteristic Of(double from, double to, params FuseTimeLimit[] gates) => new("class", Amperes(from), Amperes(to), gates);

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);
}
