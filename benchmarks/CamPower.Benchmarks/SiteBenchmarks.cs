using System;
using System.Collections.Generic;
using System.Linq;
using BenchmarkDotNet.Attributes;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Benchmarks;

/// <summary>A site of 32 cameras on two boxes in the four given conditions: solved, and checked by every rule.</summary>
/// <remarks>The baseline is the bare closed form, once for each camera and condition: the price of everything else is the ratio.</remarks>
[MemoryDiagnoser, MedianColumn]
public class SiteBenchmarks
{
    private const int Cameras = 32;

    private Site _site = null!;
    private SiteAssessment _assessment = null!;
    private double[] _ohms = null!, _watts = null!;

    [GlobalSetup]
    public void MakeUpSite()
    {
        _site = MadeUpSite();
        _assessment = _site.Assess();
        _ohms = [.. _site.Conditions.SelectMany(c => _site.Runs.Select(r => r.Run.LoopResistanceAt(c.At.Cable).Ohms))];
        _watts = [.. _site.Conditions.SelectMany(c => _site.Devices.Select(d => (double)d.Model.Draw.In(c).PowerShare.Watts))];
        if (_assessment.Devices.Any(d => d.Worst.State != DeviceState.Up)) throw new InvalidOperationException("Every camera is meant to be up.");
    }

    [Benchmark(Baseline = true)]
    public double RawKernel()
    {
        double sum = 0;
        for (int i = 0; i < _ohms.Length; i++) sum += RunKernel.LoadVolts(12.87, _ohms[i], _watts[i], 0, 0);
        return sum;
    }

    [Benchmark]
    public SiteAssessment Assess() => _site.Assess();

    [Benchmark]
    public IReadOnlyList<Finding> Check() => RuleSet.Standard.Check(_assessment);

    [Benchmark]
    public IReadOnlyList<Finding> AssessAndCheck() => RuleSet.Standard.Check(_site.Assess());

    internal static Site MadeUpSite()
    {
        var random = new Random(1);
        Cable cable = Cable.Pair(WireSize.Awg(16), Stranding.ClassB, ConductorMaterial.AnnealedCopper);
        var starting = new Starting(ElectricPotential.FromVolts(9), ElectricPotential.FromVolts(8), SoftStart.Unknown);
        var model = new Device("dome", DeviceKind.Camera,
            new ShareDraw(Load.ConstantPower(Power.FromWatts(3.6)), infrared: Load.ConstantPower(Power.FromWatts(4.8)), startUp: Load.ConstantPower(Power.FromWatts(0.4))),
            dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)), starting: starting);
        var supply = new Supply("20 A", new DcOutput(ElectricPotential.FromVolts(13), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(1)), Derating.GenericEnclosed);
        DistributionBox[] boxes = [Box("east"), Box("west")];
        var hot = new Surroundings(Temperature.FromDegreesCelsius(45), Temperature.FromDegreesCelsius(45), Temperature.FromDegreesCelsius(40));
        var mild = new Surroundings(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(30), Temperature.FromDegreesCelsius(15));
        var runs = Enumerable.Range(0, Cameras).Select(i => new SiteRun(
            RunOrigin.Output(boxes[i / 16].Name, (i % 16) + 1), $"post {i}", new CableRun(cable, Length.FromFeet(30 + (200 * random.NextDouble())))));
        var devices = Enumerable.Range(0, Cameras).Select(i => new SiteDevice($"camera {i}", model, $"post {i}"));
        return new Site("made up", [Condition.Day(hot), Condition.Night(mild), Condition.NightWithMotion(mild), Condition.ColdStart(mild)], boxes, runs, devices);

        DistributionBox Box(string name) => DistributionBox.WithEqualOutputs(name, supply, outputs: 18, ElectricCurrent.FromAmperes(1.1));
    }
}
