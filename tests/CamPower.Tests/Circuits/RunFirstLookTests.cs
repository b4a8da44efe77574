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
    public void Feed_SameInCopperCladAluminium_IsImpossible()
    {
        RunResult result = Run(Stranding.Solid, ConductorMaterial.CopperCladAluminium10, 20);
        Assert.False(result.TryGetOperatingPoint(out _));
        Assert.InRange((double)result.MostPower!.Value.Watts, 7.0, 7.2);
    }

    private static RunResult Run(Stranding stranding, ConductorMaterial material, double celsius) =>
        new CableRun(Cable.Pair(WireSize.Awg(18), stranding, material), oneWayLength: Length.FromFeet(250))
            .Feed(Load.ConstantPower(Power.FromWatts(9)), from: ElectricPotential.FromVolts(12),
                conductorAt: Temperature.FromDegreesCelsius(celsius));
}
