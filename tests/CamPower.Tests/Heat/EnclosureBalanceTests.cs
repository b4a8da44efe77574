using System;
using System.Linq;
using CamPower.Tests.Devices;
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
    public void GreatestResistance_GrowsWithTheAir(double celsius, double ohms) =>
        Assert.Equal(ohms, SmallDevices.Generic(1.10).GreatestResistanceIn(Temperature.FromDegreesCelsius(celsius)).Ohms, 1e-12);

    [Fact]
    public void GreatestResistance_IsRefusedOutsideTheCurve() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SmallDevices.Generic(1.10).GreatestResistanceIn(Temperature.FromDegreesCelsius(85.1)));

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
        double low = around, high = 200;
        while (high - low > 1e-9)
        {
            double middle = (low + high) / 2;
            bool isTooCool = enclosure.HeatedBy(Power.FromWatts(Lost(middle)), Temperature.FromDegreesCelsius(around)).Inside.DegreesCelsius > middle;
            (low, high) = isTooCool ? (middle, high) : (low, middle);
        }

        BoxInCondition box = Solved(enclosure, SmallDevices.Generic(1.10), amperes, outputs, around);
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
        double inside = Solved(enclosure, SmallDevices.Generic(1.10), 1, 12, 30).InsideTemperature!.Value.DegreesCelsius;
        double Fixed(double growth) => Solved(enclosure, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.14 * growth), 1, 12, 30).InsideTemperature!.Value.DegreesCelsius;
        Assert.InRange(inside, Fixed(1) + 0.1, Fixed(1.65) - 0.1);
    }

    // Behind so much insulation a kelvin of air brings back more than a kelvin: it runs up to the bound, and ends.
    [Fact]
    public void RunawayEndsAtTheBound()
    {
        var wall = new EnclosureWall("felt", Ratio.FromPercent(90), Ratio.FromPercent(50), ThermalResistance.FromSquareMeterKelvinsPerWatt(10));
        var felt = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), wall, EnclosureFaces.OnWall);
        double inside = Solved(felt, SmallDevices.Generic(1.10), 2, 18, 15).InsideTemperature!.Value.DegreesCelsius;
        double bound = Solved(felt, SmallDevices.Fuse(FuseCharacteristic.IecQuickActing, 2, ohms: 0.14 * 1.65), 2, 18, 15).InsideTemperature!.Value.DegreesCelsius;
        Assert.Equal(bound, inside, 1e-6);
    }

    [Fact]
    public void MoreCurrent_IsNeverCooler()
    {
        double[] inside = [.. Enumerable.Range(1, 40).Select(i => Solved(Of(0.15), SmallDevices.Generic(1.10), i * 0.05, 12, 25).InsideTemperature!.Value.DegreesCelsius)];
        Assert.All(inside.Zip(inside.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    private static Enclosure Of(double depth) => new(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);

    private static BoxInCondition Solved(Enclosure enclosure, ProtectiveDevice device, double amperes, int outputs, double around)
    {
        DistributionBox box = DistributionBox.WithEqualOutputs(BoxName, Dc(amperes: 100).WithEfficiency(Efficiency), outputs, ElectricCurrent.FromAmperes(50), device).In(enclosure);
        return Star(box, [Condition.Day(At(box: around))], [.. Enumerable.Repeat((0.0, Camera(Amperes(amperes))), outputs)]).Assess().Boxes[0].Worst;
    }
}
