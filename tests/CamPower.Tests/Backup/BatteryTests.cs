using System;
using System.Linq;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Tests.Backup;

public class BatteryTests
{
    private static readonly Temperature Room = Temperature.FromDegreesCelsius(25);

    private static readonly Battery Seven = BatteryCatalog.Generic12Volt[0];

    // Valve-regulated lead-acid, share of the 20 h capacity (from memory, no source): ±5 %.
    [Theory]
    [InlineData(20, 100)]
    [InlineData(10, 93)]
    [InlineData(5, 85)]
    [InlineData(1, 60)]
    public void Capacity_AtUsualTimes_IsThatOfTheTrade(double hours, double percent)
    {
        // The current at which it lasts so long, by bisection of the time alone.
        double low = 1e-3, high = 100;
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            if (Seven.TimeAt(ElectricCurrent.FromAmperes(middle), Room).Hours > hours) low = middle;
            else high = middle;
        }

        Assert.InRange(100 * low * hours / 7, percent - 5, percent + 5);
    }

    // n = (log t2 - log t1)/(log I1 - log I2), as a battery monitor's manual has it.
    [Fact]
    public void TimeAt_TwoCurrents_GivesTheExponentBack()
    {
        double one = Seven.TimeAt(ElectricCurrent.FromAmperes(0.7), Room).Hours, two = Seven.TimeAt(ElectricCurrent.FromAmperes(4.9), Room).Hours;
        double exponent = (Math.Log(one) - Math.Log(two)) / (Math.Log(4.9) - Math.Log(0.7));
        Assert.Equal(BatteryChemistry.ValveRegulatedLeadAcid.RateExponent, exponent, 1e-12);
        Assert.InRange(exponent, 1.10, 1.25);
    }

    // 7 Ah at the 20 h rate are 0.35 A; at a tenth of that Peukert alone would promise 1.48 times the capacity.
    [Fact]
    public void TimeAt_BelowTheRatedCurrent_NeverRaisesTheCapacity() =>
        Assert.Equal(200, Seven.TimeAt(ElectricCurrent.FromAmperes(0.035), Room).Hours, 1e-9);

    [Fact]
    public void TimeAt_RatedOverTenHours_GivesItsRatedCurrentForTenHours() =>
        Assert.Equal(10, Batteries.Of(100, hours: 10, exponent: 1.3).TimeAt(ElectricCurrent.FromAmperes(10), Room).Hours, 1e-12);

    // IEEE 485, from memory: 1/1.30 of the capacity at 4.4 °C; 7 Ah·0.8 at the end of life.
    [Fact]
    public void TimeAt_ColdAndAged_LosesBoth()
    {
        Battery old = Seven.Aged(Ratio.FromPercent(80));
        Assert.Equal(20 * 0.8 / 1.3, old.TimeAt(ElectricCurrent.FromAmperes(0.35), Temperature.FromDegreesCelsius(4.4)).Hours, 1e-9);
        Assert.Equal(5.6, old.Capacity.AmpereHours, 1e-12);
        Assert.Equal(25 / 0.8, old.Resistance.Milliohms, 1e-12);
    }

    // Common practice, no source: 13.5 V to 13.8 V at 20 °C to 25 °C, -18 mV/K to -20 mV/K.
    [Theory]
    [InlineData(20)]
    [InlineData(25)]
    public void FloatAt_LeadAcid_IsThatOfTheTrade(double celsius)
    {
        double at = Seven.FloatAt(Temperature.FromDegreesCelsius(celsius)).Volts;
        Assert.InRange(at, 13.5, 13.8);
        Assert.InRange(1000 * (Seven.FloatAt(Temperature.FromDegreesCelsius(celsius + 1)).Volts - at), -20, -18 + 1e-9);
    }

    // 7 Ah/1.3 at 4.4 °C; 3 Ah less 1.2 Ah/1.2 a day. 3.6 Ah/1.2 keep up with it.
    [Fact]
    public void AutonomyAt_CountsWhatIsLeftOfTheCharge()
    {
        ElectricCharge used = ElectricCharge.FromAmpereHours(3);
        Assert.Equal(7 / 1.3 / 2, Seven.AutonomyAt(used, ElectricCharge.FromAmpereHours(1.2), Temperature.FromDegreesCelsius(4.4))!.Value.Days, 1e-9);
        Assert.Null(Seven.AutonomyAt(used, ElectricCharge.FromAmpereHours(3.6), Room));
    }

    // 2.14 V a cell: 12.84 V over 25 mΩ.
    [Fact]
    public void ShortCircuitCurrent_IsOpenCircuitVoltageOverResistance() => Assert.Equal(513.6, Seven.ShortCircuitCurrent.Amperes, 1e-9);

    // 60 % of 7 Ah times 1.2 at 1.4 A.
    [Fact]
    public void RechargeTime_PutsBackMoreThanWasTaken() =>
        Assert.Equal(3.6, Seven.RechargeTime(Ratio.FromPercent(60), ElectricCurrent.FromAmperes(1.4)).Hours, 1e-12);

    [Fact]
    public void OpenCircuit_LeadAcid_IsStraightWithTheDensityOfTheAcid() => Assert.Equal(
        2.04, BatteryChemistry.ValveRegulatedLeadAcid.OpenCircuitAt(Ratio.FromPercent(50)).Volts, 1e-12);

    [Fact]
    public void Catalog_OfTypicalBatteries_RisesInCapacityAndFallsInResistance()
    {
        Assert.Equal(BatteryCatalog.Generic12Volt.OrderBy(b => b.Capacity.AmpereHours), BatteryCatalog.Generic12Volt);
        Assert.Equal(BatteryCatalog.Generic12Volt.OrderByDescending(b => b.Resistance.Ohms), BatteryCatalog.Generic12Volt);
    }

    [Theory]
    [InlineData(0, 20, 1, "capacity")]
    [InlineData(7, 0, 1, "ratedOver")]
    [InlineData(7, 20, 0, "resistance")]
    public void Battery_ImpossibleNumber_NamesTheParameter(double ampereHours, double hours, double ohms, string parameter) => Assert.Equal(parameter,
        Assert.Throws<ArgumentOutOfRangeException>(() => Batteries.Of(ampereHours, hours, ohms: ohms)).ParamName);

    [Fact]
    public void TimeAt_ColderThanItsCurve_SaysFromWhereToWhere()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Seven.TimeAt(ElectricCurrent.FromAmperes(1), Temperature.FromDegreesCelsius(-21)));
        Assert.Contains("-21 °C", error.Message, StringComparison.Ordinal);
        Assert.Contains("from -20 to 50", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Chemistry_VoltageThatFallsWithCharge_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Batteries.Of(7, full: 11, empty: 12));

    [Fact]
    public void Chemistry_CapacityAboveTheRatedOne_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Batteries.Chemistry(12, 12, 1, 0.5, cold: 1.1));
}
