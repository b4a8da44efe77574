using System;
using System.Linq;
using CamPower.Tests.Protection;
using CamPower.Tests.Sites;
using CamPower.Tests.Working;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Heat;

/// <summary>Resettable fuses lose more in warm air and warm it: where that settles.</summary>
public class EnclosureBalanceTests
{
    private const double Efficiency = 0.85;

    // 1 % a kelvin above 20 °C (common practice, from memory), up to the end of the thermal curve at 85 °C.
    [Theory]
    [InlineData(-30, 0.14)]
    [InlineData(20, 0.14)]
    [InlineData(45, 0.175)]
    [InlineData(70, 0.21)]
    [InlineData(85, 0.231)]
    public void MaximumResistance_GrowsWithTheAir(double celsius, double ohms) =>
        Assert.Equal(ohms, SmallDevices.Printed(1.10).MaximumResistanceIn(Temperature.FromDegreesCelsius(celsius)).Ohms, 1e-12);

    [Fact]
    public void MaximumResistance_IsRefusedOutsideTheCurve() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SmallDevices.Printed(1.10).MaximumResistanceIn(Temperature.FromDegreesCelsius(85.1)));

    // Found another way: by halving between the air around and 200 °C, with the losses written down anew.
    [Theory]
    [InlineData(0.15, 1.0, 12, -20)]
    [InlineData(0.15, 1.0, 12, 0)]
    [InlineData(0.15, 1.0, 12, 30)]
    [InlineData(0.15, 1.5, 18, 30)]
    [InlineData(0.05, 1.0, 12, 45)]
    [InlineData(0.15, 1.5, 18, 90)]
    public void Inside_IsInBalanceWithWhatIsLostThere(double depth, double amperes, int outputs, double around)
    {
        Enclosure enclosure = Of(depth);
        double Lost(double inside) => (12 * amperes * outputs * ((1 / Efficiency) - 1)) + (outputs * amperes * amperes * 0.14 * (1 + (0.01 * (Math.Clamp(inside, 20, 85) - 20))));
        double low = Halved(around, 200, air => HeatedEnclosure.Of(enclosure, Power.FromWatts(Lost(air)), Temperature.FromDegreesCelsius(around)).Inside.DegreesCelsius > air);
        BoxInCondition box = Solved(enclosure, SmallDevices.Printed(1.10), amperes, outputs, around);
        Assert.Equal(low, box.InsideTemperature!.Value.DegreesCelsius, 1e-5);
        Assert.Equal(Lost(low), (double)box.Losses!.Total.Watts, 1e-5);
        Steps.AssertEvaluate(box.Explain());
        Steps.AssertRenders(box.Explain());
        Assert.Equal(low > 20, box.Explain().Steps.Any(s => s.Symbol == "g"));
    }

    // The first step, with the resistance of the sheet, is a lower bound; the resistance at the end of the thermal curve an upper one.
    [Fact]
    public void Inside_LiesBetweenTheColdAndTheHottestResistance()
    {
        Enclosure enclosure = Of(0.15);
        double inside = Solved(enclosure, SmallDevices.Printed(1.10), 1, 12, 30).InsideTemperature!.Value.DegreesCelsius;
        double Fixed(double growth) => Solved(enclosure, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.14 * growth), 1, 12, 30).InsideTemperature!.Value.DegreesCelsius;
        Assert.InRange(inside, Fixed(1) + 0.1, Fixed(1.65) - 0.1);
    }

    // Behind so much insulation a kelvin of air brings back more than a kelvin: it runs up to the bound, and ends.
    [Fact]
    public void RunawayEndsAtTheBound()
    {
        double inside = Solved(Felt, SmallDevices.Printed(1.10), 2, 18, 15).InsideTemperature!.Value.DegreesCelsius;
        Assert.Equal(Bound(2, 15, Efficiency), inside, 1e-6);
    }

    // A kelvin that brings back 0.999 of one, and a hundredth of a kelvin to begin with: it would settle in ten thousand steps. The bound counts.
    [Fact]
    public void CreepingEndsAtTheBound()
    {
        const double Lossless = 0.9999;
        double Next(double amperes, double around, double air) => HeatedEnclosure.Of(Felt, Power.FromWatts(18 * ((12 * amperes * ((1 / Lossless) - 1)) + (amperes * amperes * 0.14 * (1 + (0.01 * (air - 20)))))), Temperature.FromDegreesCelsius(around)).Inside.DegreesCelsius;
        double amperes = Halved(0.5, 2, a => Next(a, -80, 21) - Next(a, -80, 20) < 0.999);
        double around = Halved(-120, -20, t => Next(amperes, t, 20) < 20.01);
        Assert.True(Next(amperes, around, 50) < 50);
        double inside = Solved(Felt, SmallDevices.Printed(1.10), amperes, 18, around, Lossless).InsideTemperature!.Value.DegreesCelsius;
        Assert.Equal(Bound(amperes, around, Lossless), inside, 1e-6);
    }

    [Fact]
    public void MoreCurrent_IsNeverCooler()
    {
        double[] inside = [.. Enumerable.Range(1, 40).Select(i => Solved(Of(0.15), SmallDevices.Printed(1.10), i * 0.05, 12, 25).InsideTemperature!.Value.DegreesCelsius)];
        Assert.All(inside.Zip(inside.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    private static Enclosure Felt => new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15),
        new EnclosureWall("felt", Ratio.FromPercent(90), Ratio.FromPercent(50), ThermalResistance.FromSquareMeterKelvinsPerWatt(10)), EnclosureFaces.OnWall);

    // 0.14 Ω in air of 85 °C, the end of the thermal curve.
    private static double Bound(double amperes, double around, double efficiency) =>
        Solved(Felt, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.14 * 1.65), amperes, 18, around, efficiency).InsideTemperature!.Value.DegreesCelsius;

    private static double Halved(double low, double high, Func<double, bool> isTooLow)
    {
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            (low, high) = isTooLow(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static Enclosure Of(double depth) => new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    private static BoxInCondition Solved(Enclosure enclosure, ProtectiveDevice device, double amperes, int outputs, double around, double efficiency = Efficiency)
    {
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, Dc(amperes: 100).WithEfficiency(efficiency), outputs, ElectricCurrent.FromAmperes(50), device).WithEnclosure(enclosure);
        return Star(box, [Condition.Day(At(box: around))], [.. Enumerable.Repeat((0.0, Camera(Amperes(amperes))), outputs)]).Assess().Boxes[0].Worst;
    }
}
