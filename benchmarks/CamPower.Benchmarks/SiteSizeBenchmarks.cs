using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Perfolizer.Horology;

namespace CamPower.Benchmarks;

/// <summary>How the time to solve and check a site grows with its boxes, and with the outputs of one box.</summary>
/// <remarks>The baseline, measured beside it, is the bare closed form for each camera in each condition. All in one process and in short
/// rounds: it takes a few minutes.</remarks>
[Config(typeof(ShortRounds)), JsonExporterAttribute.Brief, MedianColumn]
public class SiteSizeBenchmarks
{
    private Site _sparse = null!, _declared = null!;
    private RawRuns _raw = null!;

    public static IEnumerable<SiteSize> Sizes =>
        [new(1, 4), new(10, 4), new(100, 4), new(1000, 4), new(1, 1), new(1, 10), new(1, 32), new(1, 100), new(1, 1000)];

    [ParamsSource(nameof(Sizes))]
    public SiteSize Size { get; set; }

    [GlobalSetup]
    public void MakeUpSites()
    {
        _sparse = MadeUpSite.Sparse(Size);
        _declared = MadeUpSite.Declared(Size);
        _raw = new RawRuns(_sparse);
    }

    [Benchmark(Baseline = true)]
    public double RawKernel() => _raw.Sum();

    [Benchmark]
    public IReadOnlyList<Finding> Sparse() => RuleSet.Standard.Check(_sparse.Assess());

    [Benchmark]
    public IReadOnlyList<Finding> Declared() => RuleSet.Standard.Check(_declared.Assess());

    private sealed class ShortRounds : ManualConfig
    {
        public ShortRounds() => AddJob(Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance)
            .WithWarmupCount(10).WithIterationCount(5).WithIterationTime(TimeInterval.FromMilliseconds(100)));
    }
}
