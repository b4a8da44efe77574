using System;
using System.Linq;
using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace CamPower.Benchmarks;

/// <summary>16 cameras on a box that runs on its battery through a day, and a night on to the end.</summary>
/// <remarks>The baseline is one assessment of the same site, in both conditions. What a run allocates is its points and events: a hundred of
/// them, each with the voltages of all devices.</remarks>
[MemoryDiagnoser, MedianColumn]
public class BatteryBenchmarks
{
    private const int Cameras = 16;
    private const string BoxName = "box";

    private Site _site = null!;
    private Condition _day = null!, _night = null!;

    /// <summary>How the cameras are wired: each on an output of its own, four behind each other on an output, or four on one negative.</summary>
    [Params("own outputs", "chains of four", "shared negatives")]
    public string Wiring { get; set; } = string.Empty;

    [GlobalSetup]
    public void MakeUpSite()
    {
        var mild = new Surroundings(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(10));
        _day = new Condition("day", LoadComponents.None, mild, duration: Duration.FromHours(12));
        _night = new Condition("night", LoadComponents.Infrared, mild, duration: Duration.FromHours(12));
        var output = new DcOutput(ElectricPotential.FromVolts(13.65), ElectricCurrent.FromAmperes(20), Ratio.FromPercent(1));
        var battery = new Battery("12 V, 400 Ah", BatteryChemistry.ValveRegulatedLeadAcid, cells: 6, ElectricCharge.FromAmpereHours(400),
            Duration.FromHours(20), ElectricResistance.FromMilliohms(1.5));
        DistributionBox box = DistributionBox.OfEqualOutputs(BoxName, new Supply("charger", output, Derating.GenericEnclosed), Cameras, ElectricCurrent.FromAmperes(4))
            .WithBattery(battery);
        var dome = new Device("dome", DeviceKind.Camera,
            new ComponentDraw(Load.ConstantPower(Power.FromWatts(3.6)), infrared: Load.ConstantPower(Power.FromWatts(4.8))),
            new VoltageRange(ElectricPotential.FromVolts(9), ElectricPotential.FromVolts(15)),
            starting: new Starting(ElectricPotential.FromVolts(9.5), ElectricPotential.FromVolts(9), softStart: true));
        _site = new Site("made up", [_day, _night], [box], Enumerable.Range(0, Cameras).Select(RunTo),
            Enumerable.Range(0, Cameras).Select(i => new SiteDevice($"camera {i}", dome, at: $"post {i}")));
        BatteryRun run = RunOnBattery();
        if (run.Length < Duration.FromHours(24) || run.DropOuts.Any(d => d.After < Duration.FromHours(24)))
        {
            throw new InvalidOperationException($"The battery is meant to last for a day and a night: {run}.");
        }
    }

    [Benchmark(Baseline = true)]
    public SiteAssessment Assess() => _site.Assess();

    [Benchmark]
    public BatteryRun RunOnBattery() => _site.RunOnBattery(BoxName, _day, _night);

    private SiteRun RunTo(int camera)
    {
        var run = new CableRun(Cable.Pair(WireSize.Awg(14), Stranding.ClassB, ConductorMaterial.AnnealedCopper), Length.FromMeters(10 + (2 * (camera % 4))));
        bool isFirst = camera % 4 == 0;
        RunOrigin from = isFirst || Wiring != "chains of four" ? RunOrigin.Output(BoxName, camera + 1) : RunOrigin.Junction($"post {camera - 1}");
        string? returnAt = isFirst || Wiring != "shared negatives" ? null : $"post {camera - (camera % 4)}";
        return new SiteRun(from, $"post {camera}", run, returnAt);
    }
}
