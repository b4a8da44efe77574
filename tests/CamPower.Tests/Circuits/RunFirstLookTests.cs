using UnitsNet;

namespace CamPower.Tests.Circuits;

public class RunFirstLookTests
{
    // The same "18 AWG, 250 ft, 9 W, 12 V" in three make-ups. By hand from NBS Handbook 100: 6.385 Ω/1000 ft solid
    // at 20 °C, so R = 3.1925 Ω and V = (12 + √(144 − 4·3.1925·9))/2 = 8.70 V.
    [Fact]
    public void Feed_EighteenGaugeSolidAt20C_Gives870()
    {
        RunResult result = Run(Stranding.Solid, ConductorMaterial.AnnealedCopper, 20);
        Assert.InRange(result.LoadVoltage.Volts, 8.695, 8.705);
    }

    [Fact]
    public void Feed_SameStrandedAt60C_Gives744()
    {
        RunResult result = Run(Stranding.ClassB, ConductorMaterial.AnnealedCopper, 60);
        Assert.InRange(result.LoadVoltage.Volts, 7.435, 7.445);
    }

    [Fact]
    public void Feed_SameInCopperCladAluminum_IsImpossible()
    {
        RunResult result = Run(Stranding.Solid, ConductorMaterial.CopperCladAluminum10, 20);
        Assert.False(result.TryGetOperatingPoint(out _));
        Assert.InRange((double)result.MaximumPower!.Value.Watts, 7.0, 7.2);
    }

    private static RunResult Run(Stranding stranding, ConductorMaterial material, double celsius) =>
        new CableRun(Cable.Pair(WireSize.Awg(18), stranding, material), oneWayLength: Length.FromFeet(250))
            .Feed(Load.ConstantPower(Power.FromWatts(9)), from: ElectricPotential.FromVolts(12),
                conductorAt: Temperature.FromDegreesCelsius(celsius));

    // At the kink of a label both shares are the same, and rounding must not lose both. 12.4356 V less 1.2 A over 0.363 Ω is 12 V.
    [Theory]
    [InlineData(12, 1.2, 0.363, 12.4356)]
    [InlineData(8.99, 1.298, 3.639, 13.713422)]
    public void Feed_LabelAtItsOwnVoltage_IsThere(double volts, double amperes, double ohms, double source)
    {
        Load label = new LabelDraw(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes), InputStage.Unknown).LoadWith(LoadComponents.None);
        RunResult result = Runs.OfOhms(ohms).Feed(label, ElectricPotential.FromVolts(source), Temperature.FromDegreesCelsius(20));
        Assert.Equal(volts, result.LoadVoltage.Volts, 1e-9);
    }

    // At the matched load both roots are half of the source voltage, whatever rounding makes of the discriminant.
    [Fact]
    public void UnstableVoltage_OfALabelAtTheMatch_IsHalfOfTheSource()
    {
        RunResult result = Runs.OfOhms(5.382 / 1.17 / 1.17).Feed(Load.LargerOf(Power.FromWatts(5.382), ElectricCurrent.FromAmperes(1.17)),
            ElectricPotential.FromVolts(9.2), Temperature.FromDegreesCelsius(20));
        Assert.Equal(4.6, result.LoadVoltage.Volts, 1e-6);
        Assert.Equal(4.6, result.UnstableVoltage.Volts, 1e-6);
    }
}
