using System;
using System.Linq;
using CamPower.Conductors;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Tests.Conductors;

/// <summary>What the reference rows do not hold already: heat, hard-drawn copper against annealed, the user's own.</summary>
public class ConductorMaterialTests
{
    private static readonly ConductorMaterial[] Given =
    [
        ConductorMaterial.AnnealedCopper, ConductorMaterial.HardDrawnCopper, ConductorMaterial.Aluminum,
        ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15,
        ConductorMaterial.CopperCladSteel21, ConductorMaterial.CopperCladSteel30, ConductorMaterial.CopperCladSteel40,
    ];

    // IEC 60949: K = √(σ·(β + 20)/ρ₂₀), 226 for copper and 148 A·s^½/mm² for aluminum (seen in summaries, S08-011 and S08-012;
    // β 234.5 and 228). Density times specific heat must give the same to the table's three digits, and half a per cent for
    // copper's 0.39, which is a rounded figure.
    [Theory]
    [InlineData("annealed copper", 226, 234.5, 0.6)]
    [InlineData("aluminum", 148, 228, 0.5)]
    public void HeatOfAVolume_GivesTheStandardsShortCircuitConstant(string name, double k, double beta, double allowed)
    {
        ConductorMaterial material = Given.Single(m => m.Name == name);
        double heat = material.Density!.Value.KilogramsPerCubicMeter * material.SpecificHeat!.Value.JoulesPerKilogramKelvin;
        Assert.Equal(k, Math.Sqrt(heat * (beta + 20) / material.ResistivityAt20C.OhmMeters) * 1e-6, allowed);
    }

    // By hand: 10 % copper is 26.76 % of the mass; 0.2676·390 + 0.7324·924.9 = 781.8; at 15 % 36.72 %, 728.5.
    [Theory]
    [InlineData("copper-clad aluminum 10 %", 781.8)]
    [InlineData("copper-clad aluminum 15 %", 728.5)]
    public void SpecificHeat_OfCladAluminum_GoesByMass(string name, double byHand) =>
        Assert.Equal(byHand, Given.Single(m => m.Name == name).SpecificHeat!.Value.JoulesPerKilogramKelvin, 0.1);

    // A limit that the library itself states is accepted in whatever unit it is read.
    [Fact]
    public void ValidRange_ReadInAnyUnit_IsAccepted()
    {
        foreach (ConductorMaterial material in Given)
        {
            var run = new CableRun(Cable.Pair(WireSize.Awg(18), Stranding.Solid, material), Length.FromMeters(1));
            foreach (TemperatureUnit unit in Temperature.Units)
            {
                Temperature from = material.ValidFrom.ToUnit(unit), to = material.ValidTo.ToUnit(unit);
                Assert.Equal(material.ResistivityAt(material.ValidFrom).OhmMeters, material.ResistivityAt(from).OhmMeters);
                Assert.Equal(material.ResistivityAt(material.ValidTo).OhmMeters, material.ResistivityAt(to).OhmMeters);
                Assert.True(run.LoopResistanceAt(from) < run.LoopResistanceAt(to));
            }
        }
    }

    [Fact]
    public void CopperCladSteel_HasItsGradesConductivity_AndNoHeat()
    {
        ConductorMaterial[] steels = [ConductorMaterial.CopperCladSteel21, ConductorMaterial.CopperCladSteel30, ConductorMaterial.CopperCladSteel40];
        Assert.Equal([21, 30, 40], steels.Select(m => Math.Round(100 / 58e6 / m.ResistivityAt20C.OhmMeters, 9)));
        Assert.All(steels, m => Assert.True(m.Density is null && m.SpecificHeat is null && !m.IsCopperCladAluminum));
    }

    [Fact]
    public void Names_AreAllDifferent_AndOnlyCladAluminumLooksLikeCopper()
    {
        Assert.Distinct(Given.Select(m => m.Name));
        Assert.Equal([ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15], Given.Where(m => m.IsCopperCladAluminum));
        Assert.Distinct(new[] { Stranding.Solid, Stranding.ClassB, Stranding.Flexible, Stranding.IecClass1, Stranding.IecClass2, Stranding.IecClass5 }.Select(s => s.Name));
    }

    [Fact]
    public void AUsersOwn_KeepsWhatItWasGiven()
    {
        var silver = new ConductorMaterial("silver", ElectricResistivity.FromOhmMeters(1.59e-8), 0.0038, Temperature.FromDegreesCelsius(-50),
            Temperature.FromDegreesCelsius(200), new Citation("Kuphaldt", CitationKind.Textbook), Density.FromKilogramsPerCubicMeter(10490));
        Assert.Equal(10490, silver.Density!.Value.KilogramsPerCubicMeter);
        Assert.Null(silver.SpecificHeat);
        Assert.False(silver.IsCopperCladAluminum);
    }

    [Fact]
    public void LayFactors_AreBetweenOneAndTheirClaim()
    {
        Assert.Equal(1, Stranding.IecClass1.LayFactor);
        Assert.Equal(Stranding.ClassB.LayFactor, Stranding.IecClass2.LayFactor);
        Assert.Equal(CitationKind.CommonPractice, ConductorConstants.FlexibleLay.Source.Kind);
        Assert.InRange(Stranding.Flexible.LayFactor, 1.02, 1.05);
    }
}
