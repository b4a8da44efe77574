using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Benchmarks;

/// <summary>Sites of any size in the four given conditions, one camera on each output; every camera is up.</summary>
internal static class MadeUpSite
{
    internal const double SetVolts = 13;

    private const double OutputAmperes = 1.1;

    private static readonly Surroundings Hot = new(Temperature.FromDegreesCelsius(45), Temperature.FromDegreesCelsius(45), Temperature.FromDegreesCelsius(40));
    private static readonly Surroundings Mild = new(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(15));
    private static readonly VoltageRange Accepted = new(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2));

    /// <summary>What most sites declare: no protection, no overload behavior, nothing of the cables' insulation, of heat or of inrush.</summary>
    internal static Site Sparse(SiteSize size) => Of(size, box => DistributionBox.OfEqualOutputs(
        box, Supply(size, new DcOutput(ElectricPotential.FromVolts(SetVolts), Rated(size), Ratio.FromPercent(1))), size.Outputs, ElectricCurrent.FromAmperes(OutputAmperes)),
        Cable.Pair(WireSize.Awg(16), Stranding.ClassB, ConductorMaterial.AnnealedCopper), installationMethod: null, Camera(null, inrush: null));

    /// <summary>Everything that can be declared of protection, overload, source, cables, installation method, enclosures and inrush.</summary>
    internal static Site Declared(SiteSize size)
    {
        var fuse = new Fuse("F 1.6 A", ElectricCurrent.FromAmperes(1.6), FuseCharacteristic.IecQuickActing, ElectricPotential.FromVolts(250),
            ElectricCurrent.FromAmperes(1500), ElectricResistance.FromMilliohms(60), JouleIntegral.FromAmpereSquaredSeconds(2.2));
        var output = new DcOutput(ElectricPotential.FromVolts(SetVolts), Rated(size), Ratio.FromPercent(1), ripple: Ratio.FromPercent(0.5),
            sourceResistance: ElectricResistance.FromMilliohms(5), overload: OverloadBehavior.ConstantCurrent(1.2 * Rated(size)),
            capacitance: ElectricCapacitance.FromMicrofarads(4700));
        var full = new ShareCurve<Ratio>(new(Ratio.FromPercent(20), Ratio.FromPercent(82)), new(Ratio.FromPercent(100), Ratio.FromPercent(88)));
        var input = new SupplyInput(new VoltageRange(ElectricPotential.FromVolts(90), ElectricPotential.FromVolts(264)), ElectricCurrent.FromAmperes(30), full, full);
        var enclosure = new Enclosure(Length.FromMeters(1), Length.FromMeters(1), Length.FromMeters(0.4), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        var terminals = new TerminalRange(WireSize.Awg(24), WireSize.Awg(12));
        return Of(size,
            box => DistributionBox.OfEqualOutputs(box, Supply(size, output, input), size.Outputs, ElectricCurrent.FromAmperes(OutputAmperes), fuse, terminals).WithEnclosure(enclosure),
            Cable.Pair(WireSize.Awg(16), Stranding.ClassB, ConductorMaterial.AnnealedCopper, insulation: Insulation.Pvc70), InstallationMethod.LargeBundle,
            Camera(true, new Inrush(ElectricCurrent.FromAmperes(5), Duration.FromMilliseconds(0.2))));
    }

    private static ElectricCurrent Rated(SiteSize size) => OutputAmperes * size.Outputs * ElectricCurrent.FromAmperes(1);

    private static Supply Supply(SiteSize size, DcOutput output, SupplyInput? input = null) =>
        new(FormattableString.Invariant($"{Rated(size).Amperes:G4} A"), output, Derating.GenericEnclosed, input);

    private static Device Camera(bool? softStart, Inrush? inrush) => new("dome", DeviceKind.Camera,
        new ComponentDraw(Load.ConstantPower(Power.FromWatts(3.6)), infrared: Load.ConstantPower(Power.FromWatts(4.8)), startUp: Load.ConstantPower(Power.FromWatts(0.4))),
        Accepted, starting: new Starting(ElectricPotential.FromVolts(9), ElectricPotential.FromVolts(8), softStart), inrush: inrush);

    private static Site Of(SiteSize size, Func<string, DistributionBox> box, Cable cable, InstallationMethod? installationMethod, Device camera)
    {
        var random = new Random(1);
        IEnumerable<int> all = Enumerable.Range(0, size.Count);
        var runs = all.Select(i => new SiteRun(RunOrigin.Output($"box {i / size.Outputs}", (i % size.Outputs) + 1), $"post {i}",
            new CableRun(cable, Length.FromFeet(30 + (200 * random.NextDouble()))), installationMethod: installationMethod));
        var site = new Site("made up", [Condition.Day(Hot), Condition.Night(Mild), Condition.NightWithMotion(Mild), Condition.ColdStart(Mild)],
            Enumerable.Range(0, size.Boxes).Select(b => box($"box {b}")), runs, all.Select(i => new SiteDevice($"camera {i}", camera, $"post {i}")));
        if (site.Assess().Devices.Any(d => d.Worst.State != DeviceState.Up)) throw new InvalidOperationException("Every camera is meant to be up.");
        return site;
    }
}
