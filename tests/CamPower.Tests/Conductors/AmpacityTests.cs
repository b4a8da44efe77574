using System;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>What a conductor carries, against columns of tables that the library was not made from, and against the physics of air.</summary>
public class AmpacityTests
{
    private static readonly InstallationMethod Cable = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);

    // NEC Table 310.16, copper in 30 °C air, the columns of 60 and 75 °C as they were printed until 2008 (seen in a reprint, rows
    // S07-072 to 074). The model knows the 90 °C column alone. The table rounds to 5 A.
    [Theory]
    [InlineData(14, 60, 20)]
    [InlineData(14, 75, 20)]
    [InlineData(12, 60, 25)]
    [InlineData(12, 75, 25)]
    [InlineData(10, 60, 30)]
    [InlineData(10, 75, 35)]
    public void Ampacity_OfCoolerInsulation_IsWhatTheOtherColumnsSay(int gauge, double celsius, double amperes) =>
        Assert.Equal(amperes, Most(Cable, WireSize.Awg(gauge), celsius, 30), 2.75);

    // IEC 60364-5-52 Table B.52.2, method B2, two loaded conductors, PVC 70 °C in 30 °C air, from memory.
    [Theory]
    [InlineData(1.5, 16.5)]
    [InlineData(2.5, 23)]
    [InlineData(4, 30)]
    public void Ampacity_MeetsTheIecTableOfAnotherContinent(double squareMillimeters, double amperes) =>
        Assert.Equal(amperes, Most(Cable, WireSize.SquareMillimeters(squareMillimeters), 70, 30), 0.06 * amperes);

    // By hand: 18 AWG carries 14 A at 90 °C in 30 °C: θ = 60/(14²·0.026711) = 11.461. At 60 °C r = 0.020948·1.1572 = 0.024241 Ω/m;
    // in 40 °C air √(20/(11.461·0.024241)) = 8.485 A.
    [Fact]
    public void Ampacity_IsAsWorkedByHand() => Assert.Equal(8.485, Most(Cable, WireSize.Awg(18), 60, 40), 0.002);

    // By hand: 24 AWG is 92^(-6/39) = 0.49875 of 18 AWG in diameter, so 14 A·0.49875^1.5 = 4.931 A.
    [Fact]
    public void Ampacity_OfThinWire_GoesWithTheDiameterToThreeHalves() => Assert.Equal(4.931, Most(Cable, WireSize.Awg(24), 90, 30), 0.001);

    // The estimate below the tables against the physics of air: from 18 AWG on, the thinner a wire, the more it keeps of its
    // current, so the estimate is at most what air allows, and at 28 AWG not less than two thirds of it.
    [Theory]
    [InlineData(20)]
    [InlineData(22)]
    [InlineData(24)]
    [InlineData(26)]
    [InlineData(28)]
    public void ThinWires_CarryAtLeastTheEstimate_ByThePhysicsOfAir(int gauge)
    {
        double byAir = 14 * InAir(gauge) / InAir(18), estimated = Most(Cable, WireSize.Awg(gauge), 90, 30);
        Assert.InRange(estimated, 0.66 * byAir, byAir);
    }

    // That physics itself is held to published currents of single wires in free air, with their insulation on: FAA AC 43.13-1B
    // Figure 11-4a, 140 K above 60 °C: 21.5 A in 20 AWG and 16.2 A in 22 AWG of 1.47 mm and 1.27 mm, copper of 9.88 and
    // 16.2 Ω/1000 ft (Table 11-9); NEC Table 310.17, 90 °C in 30 °C: 35 A in 14 AWG of 2.82 mm. All from memory but the ohms.
    [Theory]
    [InlineData(9.88, 1.47, 200, 60, 21.5)]
    [InlineData(16.2, 1.27, 200, 60, 16.2)]
    [InlineData(2.575, 2.82, 90, 30, 35)]
    public void PhysicsOfAir_MeetsPublishedCurrentsOfSingleWires(double ohmsPer1000Feet, double outerMillimeters, double hot, double air, double amperes)
    {
        double ohmsPerMeter = ohmsPer1000Feet / 304.8 * (1 + (0.00393 * (hot - 20)));
        Assert.Equal(amperes, StillAir.Ampacity(ohmsPerMeter, outerMillimeters * 1e-3, hot, air), 0.05 * amperes);
    }

    // HyperPhysics, from a handbook: single wires in a chassis, a rule of thumb by current density. 18 AWG 16 A, 22 AWG 7 A.
    [Theory]
    [InlineData(16, 22)]
    [InlineData(18, 16)]
    [InlineData(22, 7)]
    public void Ampacity_InACable_IsNotAboveASingleWireInAChassis(int gauge, double amperes) =>
        Assert.InRange(Most(Cable, WireSize.Awg(gauge), 90, 30), 0.75 * amperes, amperes);

    // Copper-clad aluminum of 62.9 % IACS carries √0.629 of copper's current: heat goes by I²·ρ (its coefficient differs a little).
    [Fact]
    public void CopperCladAluminum_CarriesLess()
    {
        var clad = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.CopperCladAluminum10);
        double share = Amperes(Cable, clad, 60, 40) / Most(Cable, WireSize.Awg(18), 60, 40);
        Assert.Equal(Math.Sqrt(0.629), share, 0.002);
    }

    [Fact]
    public void WiresInParallel_CarryAsOftenAsMuch() => Assert.Equal(
        2 * Most(Cable, WireSize.Awg(18), 60, 40), Amperes(Cable, Copper(WireSize.Awg(18)).InParallel(2), 60, 40), 1e-9);

    [Fact]
    public void NoCooler_NoCurrent()
    {
        Assert.Equal(0, Most(Cable, WireSize.Awg(18), 60, 60));
        Assert.Equal(0, Most(Cable, WireSize.Awg(18), 60, 75));
    }

    // What it carries is what heats it to that temperature: the two answers are one formula, asked from either end.
    [SeededProperty(MaxTest = 300)]
    public void Ampacity_HeatsToTheTemperatureItWasAskedFor(byte rise, byte ambient, byte gauge, byte conductors)
    {
        var wire = Copper(WireSize.Awg(10 + (gauge % 19)));
        InstallationMethod installationMethod = InstallationMethod.InCableOrRaceway(1 + (conductors % 60));
        double air = (ambient / 5.0) - 10, hot = air + 0.5 + (rise / 4.0);
        SelfHeating heat = installationMethod.Heat(wire, ElectricCurrent.FromAmperes(Amperes(installationMethod, wire, hot, air)), Temperature.FromDegreesCelsius(air));
        Assert.Equal(hot, heat.ConductorTemperature!.Value.DegreesCelsius, 1e-6);
    }

    [SeededProperty(MaxTest = 200)]
    public void Ampacity_FallsInWarmerAirThinnerWireAndLargerBundles(byte ambient, byte gauge)
    {
        int thin = 11 + (gauge % 18);
        double air = ambient / 5.0;
        double most = Most(Cable, WireSize.Awg(thin), 70, air);
        Assert.True(Most(Cable, WireSize.Awg(thin), 70, air + 1) < most);
        Assert.True(Most(InstallationMethod.InCableOrRaceway(4), WireSize.Awg(thin), 70, air) < most);
        Assert.True(Most(Cable, WireSize.Awg(thin - 1), 70, air) > most);
    }

    [Fact]
    public void Ampacity_RefusesWhatNothingIsSaidOf()
    {
        Assert.Throws<ArgumentNullException>(() => Cable.Ampacity(null!, Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(40)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Most(Cable, WireSize.Awg(29), 60, 40));
        Assert.Throws<ArgumentOutOfRangeException>(() => Most(Cable, WireSize.Awg(8), 60, 40));
        Assert.Throws<ArgumentOutOfRangeException>(() => Most(Cable, WireSize.Awg(18), 400, 40));
    }

    // NEC 240.4(D): 15, 20 and 30 A in 14, 12 and 10 AWG copper and 15 A in 12 AWG aluminum or copper-clad aluminum (seen in a
    // page that quotes it); 7 A and 10 A in 18 and 16 AWG, with continuous loads of 5.6 A and 8 A, from memory. 22 and 20 AWG: 5 A
    // fuses, FAA AC 43.13-1B Table 11-3. From 14 AWG on the load is that of NEC Table 310.16, 60 °C column, from memory, for sizes of that table.
    [Theory]
    [InlineData("22 AWG", 5, null)]
    [InlineData("20 AWG", 5, null)]
    [InlineData("18 AWG", 7, 5.6)]
    [InlineData("16 AWG", 10, 8.0)]
    [InlineData("14 AWG", 15, 15.0)]
    [InlineData("12 AWG", 20, 20.0)]
    [InlineData("10 AWG", 30, 30.0)]
    public void SmallConductors_AreProtectedAsTheCodeSays(string size, double protection, double? continuous)
    {
        Conductor wire = Copper(WireSize.Parse(size));
        Assert.Equal(protection, wire.NecLargestProtection!.Value.Amperes);
        Assert.Equal(continuous, wire.NecLargestContinuousLoad?.Amperes);
        Assert.Equal(2 * protection, wire.InParallel(2).NecLargestProtection!.Value.Amperes);
    }

    // NEC 2023, 240.4(D)(3), 14 AWG copper-clad aluminum: 10 A, 8 A continuously, from memory. A thinner one may not have more than copper.
    [Theory]
    [InlineData(20, 5, null)]
    [InlineData(18, 7, 5.6)]
    [InlineData(16, 10, 8.0)]
    [InlineData(14, 10, 8.0)]
    [InlineData(12, 15, 15.0)]
    [InlineData(10, 25, 25.0)]
    public void SmallConductors_OfAluminumAreProtectedLower_AndNeverHigherThanCopper(int gauge, double protection, double? continuous)
    {
        foreach (ConductorMaterial material in new[] { ConductorMaterial.Aluminum, ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15 })
        {
            var wire = new Conductor(WireSize.Awg(gauge), Stranding.Solid, material);
            Assert.Equal(protection, wire.NecLargestProtection!.Value.Amperes);
            Assert.Equal(continuous, wire.NecLargestContinuousLoad?.Amperes);
            Assert.True(protection <= Copper(WireSize.Awg(gauge)).NecLargestProtection!.Value.Amperes);
        }
    }

    [Fact]
    public void SmallConductors_OfOtherMaterialsAndSizesAreNotNamed()
    {
        // The US code binds sizes of its own gauge: 1.5 mm² lies between 16 AWG and 14 AWG, and goes by a table of its own.
        Assert.All(new[] { "1.5 mm2", "2.5 mm2", "1.6 mm wire", "10 kcmil" }, size => Assert.Null(Copper(WireSize.Parse(size)).NecLargestProtection));
        Assert.All(new[] { "1.5 mm2", "2.5 mm2", "1.6 mm wire", "10 kcmil" }, size => Assert.Null(Copper(WireSize.Parse(size)).NecLargestContinuousLoad));
        Assert.All(new[] { 8, 24 }, gauge => Assert.Null(Copper(WireSize.Awg(gauge)).NecLargestProtection));
        Assert.Null(new Conductor(WireSize.Awg(14), Stranding.Solid, ConductorMaterial.CopperCladSteel40).NecLargestProtection);
    }

    // A bare wire, so that the air is all there is: insulation only widens the surface.
    private static double InAir(int gauge)
    {
        Conductor wire = Copper(WireSize.Awg(gauge));
        return StillAir.Ampacity(wire.ResistancePerLengthAt(Temperature.FromDegreesCelsius(90)).OhmsPerMeter, wire.Size.SolidDiameter.Meters, 90, 30);
    }

    private static double Most(InstallationMethod installationMethod, WireSize size, double highest, double ambient) => Amperes(installationMethod, Copper(size), highest, ambient);

    private static double Amperes(InstallationMethod installationMethod, Conductor conductor, double highest, double ambient) =>
        installationMethod.Ampacity(conductor, Temperature.FromDegreesCelsius(highest), Temperature.FromDegreesCelsius(ambient)).Amperes;

    private static Conductor Copper(WireSize size) => new(size, Stranding.Solid, ConductorMaterial.AnnealedCopper);
}
