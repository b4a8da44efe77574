using System;
using System.Linq;
using CamPower.Tests.Reference;
using UnitsNet;

namespace CamPower.Tests.Conductors;

public class CableTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    private static readonly Conductor Wire = new(WireSize.Awg(24), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    // 8.42 Ω/100 m is one 24 AWG conductor (computed from IACS): four pairs ganged carry 16.84/4.
    [Theory]
    [InlineData(1, 16.84)]
    [InlineData(2, 8.42)]
    [InlineData(4, 4.21)]
    public void GangedPairs_ShareTheCurrent(int pairs, double loop) =>
        Assert.Equal(loop, Cable.GangedPairs(Wire, pairs).LoopResistancePerLengthAt(Twenty).OhmsPer100Meters, 0.005);

    // The positive doubled, but not the negative: 8.42/2 + 8.42.
    [Fact]
    public void InParallel_OnOnePoleOnly_HalvesThatPole()
    {
        var cable = new Cable(Wire.InParallel(2), Wire);
        Assert.Equal(12.63, cable.LoopResistancePerLengthAt(Twenty).OhmsPer100Meters, 0.008);
        Assert.Equal(2, cable.Outgoing.Count);
        Assert.StartsWith("2 × 24 AWG", cable.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void InParallel_OfParallelWires_Multiplies_AndKeepsTheBasis()
    {
        Conductor limit = Conductor.AtIecMaximum(WireSize.SquareMillimeters(1), Stranding.IecClass2, ConductorMaterial.AnnealedCopper);
        Conductor six = limit.InParallel(2).InParallel(3);
        Assert.Equal(6, six.Count);
        Assert.Same(limit.Basis, six.Basis);
        Assert.Equal(18.1 / 6, six.ResistancePerLengthAt(Twenty).OhmsPerKilometer, 1e-9);
    }

    // A jacket printed 60 °C says nothing of a fault, so there is no factor k; PVC of 70 °C has one (IEC 60364-4-43: 115).
    [Fact]
    public void Insulation_MayBeARatingOnly()
    {
        Insulation printed = new Cable(Wire, Wire, insulation: Insulation.Rated(Temperature.FromDegreesCelsius(60))).Insulation!;
        Assert.Equal(60, printed.HighestInService.DegreesCelsius, 1e-12);
        Assert.Null(printed.HighestInFault);
        Assert.Null(printed.FactorFor(ConductorMaterial.AnnealedCopper));
        Assert.Null(printed.WithstandOf(Wire));
        Assert.Null(printed.WithstandTime(Wire, ElectricCurrent.FromAmperes(10)));
        Assert.Null(printed.SmallestArea(ConductorMaterial.AnnealedCopper, ElectricCurrent.FromAmperes(10), Duration.FromSeconds(1)));
        Assert.Equal(115, new Cable(Wire, Wire, insulation: Insulation.Pvc70).Insulation!.FactorFor(ConductorMaterial.AnnealedCopper)!.Value, 0.5);
        Assert.Null(new Cable(Wire, Wire).Insulation);
    }

    [Fact]
    public void Catalog_NamesEachConstructionOnce_WithItsSource()
    {
        Assert.True(CableCatalog.All.Count >= 20);
        Assert.Distinct(CableCatalog.All.Select(c => c.ToString()));
        Assert.All(CableCatalog.All, c =>
        {
            Assert.NotNull(c.Source);
            Assert.Contains(c.Source!.Kind, new[] { CitationKind.CommonPractice, CitationKind.FromMemory });
            Assert.False(string.IsNullOrEmpty(c.Name));
            Assert.InRange(c.LoopResistancePerLengthAt(Twenty).OhmsPer100Meters, 1, 30);
        });
    }

    // The sizes are the trade's: a pair of 18 AWG beside the coax, 22 to 24 AWG in ready-made leads (common practice, S15-021 and S15-022).
    [Fact]
    public void Catalog_HoldsTheUsualSizes()
    {
        Assert.Equal(WireSize.Awg((int)ReferenceData.Row("S15-021").Number), CableCatalog.CoaxWithPair18.Outgoing.Size);
        Assert.Equal("22-24", ReferenceData.Row("S15-022").Value);
        Assert.All(CableCatalog.All.Where(c => c.IsPreTerminated), c => Assert.True(c.Outgoing.Size >= WireSize.Awg(24) && c.Outgoing.Size <= WireSize.Awg(22)));
        Assert.Equal(3, CableCatalog.All.Count(c => c.IsPreTerminated));
    }

    // Center 10.15 ± 0.5 % Ω/1000 ft (computed, S06-032); shield 2.6 ± 0.5 (from memory, S06-033); steel center 44 ± 5 (from memory, S06-034).
    [Fact]
    public void Catalog_CoaxResistances_AreThoseOfItsConstruction()
    {
        Assert.Equal(10.15, CableCatalog.CoaxWithPair18.Coax!.Outgoing.ResistancePerLengthAt(Twenty).OhmsPer1000Feet, 0.05);
        Assert.Equal(2.6, CableCatalog.CoaxWithPair18.Coax!.Return.ResistancePerLengthAt(Twenty).OhmsPer1000Feet, 1e-9);
        Assert.InRange(CableCatalog.SteelCoaxWithPair18.Coax!.Outgoing.ResistancePerLengthAt(Twenty).OhmsPer1000Feet, 39, 49);
        double shieldArea = CableCatalog.CoaxWithPair18.Coax!.Return.Size.Area.SquareMillimeters;
        Assert.Equal(1 / 58.0 / shieldArea, CableCatalog.CoaxWithPair18.Coax!.Return.ResistancePerLengthAt(Twenty).OhmsPerMeter, 0.02 / 58 / shieldArea);
    }

    // A coax in the bundle carries no supply current: the loop is that of the pair alone.
    [Fact]
    public void Coax_IsNoPartOfTheLoop() => Assert.Equal(
        CableCatalog.Pair18.LoopResistancePerLengthAt(Twenty), CableCatalog.CoaxWithPair18.LoopResistancePerLengthAt(Twenty));

    // Common practice, no source: what holds is the order, that both poles count, and that nothing is hidden.
    [Fact]
    public void Joints_CountBothPoles_AndSayThatNoSourceBacksThem()
    {
        Joint[] joints = [JointCatalog.Crimps, JointCatalog.TwistOns, JointCatalog.ScrewTerminals, JointCatalog.GelSplices, JointCatalog.BarrelConnector];
        Assert.Equal(joints, joints.OrderBy(j => j.LoopResistance.Ohms));
        Assert.All(joints, j => Assert.Equal(CitationKind.CommonPractice, j.Source!.Kind));
        Assert.Equal(0.060, JointCatalog.BarrelConnector.LoopResistance.Ohms, 1e-12);
        CableRun run = new CableRun(CableCatalog.Pair18, oneWayLength: Length.Zero).Then(JointCatalog.BarrelConnector);
        Assert.Equal(0.060, run.LoopResistanceAt(Twenty).Ohms, 1e-12);
    }
}
