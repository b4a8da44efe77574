using UnitsNet;

namespace CamPower.Tests.Loads;

public class DrawTests
{
    private static readonly Surroundings Mild = new(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20));

    private static readonly ComponentDraw Dome = new(Watts(4), infrared: Watts(5), motor: Watts(7), heater: Watts(11), startUp: Watts(13));

    // By hand: 4; 4 + 5; 4 + 5 + 7; 4 + 5 + 7 + 11 + 13.
    [Fact]
    public void LoadIn_GivenConditions_AddsTheSharesThatAreOn()
    {
        Assert.Equal(4, Dome.In(Condition.Day(Mild)).Watts);
        Assert.Equal(9, Dome.In(Condition.Night(Mild)).Watts);
        Assert.Equal(16, Dome.In(Condition.NightWithMotion(Mild)).Watts);
        Assert.Equal(40, Dome.In(Condition.ColdStart(Mild)).Watts);
        Assert.Equal(20, Dome.In(Condition.Night(Mild).With(LoadComponents.Heater)).Watts);
        Assert.Equal(4, Dome.Lightest.Watts);
        Assert.True(Dome.HasMotor);
        Assert.False(new ComponentDraw(Watts(4)).HasMotor);
    }

    // "12 V, 1 A": 12 W to a switching input, 1 A to a linear one; nothing is added, and no least draw is promised.
    [Theory]
    [InlineData(InputStage.Switching, 24, 0.5)]
    [InlineData(InputStage.Switching, 6, 2)]
    [InlineData(InputStage.Linear, 24, 1)]
    [InlineData(InputStage.Linear, 6, 1)]
    [InlineData(InputStage.Unknown, 24, 1)]
    [InlineData(InputStage.Unknown, 12, 1)]
    [InlineData(InputStage.Unknown, 6, 2)]
    public void Label_DrawsByItsInputStage(InputStage stage, double volts, double amperes)
    {
        var label = new LabelDraw(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(1), stage);
        foreach (Condition condition in new[] { Condition.Day(Mild), Condition.ColdStart(Mild) })
        {
            Assert.Equal(amperes, label.In(condition).CurrentAt(ElectricPotential.FromVolts(volts)).Amperes);
        }

        Assert.Equal(0, label.Lightest.CurrentAt(ElectricPotential.FromVolts(volts)).Amperes);
        Assert.False(label.HasMotor);
    }

    // 9 W + 0.5 A + 24 Ω at 12 V: 0.75 + 0.5 + 0.5 A; the slope is −9/144 + 1/24 S.
    [Fact]
    public void Load_OfThreeShares_DrawsTheirSum()
    {
        Load load = Watts(9) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)) + Load.ConstantResistance(ElectricResistance.FromOhms(24));
        Assert.Equal(1.75, load.CurrentAt(ElectricPotential.FromVolts(12)).Amperes, 1e-15);
        Assert.Equal((1 / 24.0) - (9 / 144.0), load.SlopeAt(12), 1e-16);
        Assert.Equal(9, (double)load.PowerComponent.Watts);
        Assert.Equal(0.5, load.CurrentComponent.Amperes);
        Assert.Equal(24, load.ResistanceComponent!.Value.Ohms);
        Assert.Equal("9 W + 0.5 A + 24 Ω", load.ToString());
    }

    [Fact]
    public void Device_AnswersForTheCurrentThatItAccepts()
    {
        var window = new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2));
        var device = new Device("dome", DeviceKind.Camera, Dome, dcInput: window);
        Assert.Same(window, device.InputFor(CurrentKind.Dc));
        Assert.Null(device.InputFor(CurrentKind.Ac));
    }

    private static Load Watts(double watts) => Load.ConstantPower(Power.FromWatts(watts));
}
