using System.Collections.Generic;
using BenchmarkDotNet.Attributes;

namespace CamPower.Benchmarks;

/// <summary>A site of 32 cameras on two boxes in the four given conditions: solved, and checked by every rule.</summary>
/// <remarks>The baseline is the bare closed form, once for each camera and condition: the price of everything else is the ratio.</remarks>
[MemoryDiagnoser, MedianColumn]
public class SiteBenchmarks
{
    private Site _site = null!;
    private SiteAssessment _assessment = null!;
    private RawRuns _raw = null!;

    /// <summary>The site declares all that it can, of protection, overload, source, cables and enclosure; or only what most sites do.</summary>
    [Params(false, true)]
    public bool DeclaresAll { get; set; }

    [GlobalSetup]
    public void MakeUpSite()
    {
        var size = new SiteSize(Boxes: 2, Outputs: 16);
        _site = DeclaresAll ? MadeUpSite.Declared(size) : MadeUpSite.Sparse(size);
        _assessment = _site.Assess();
        _raw = new RawRuns(_site);
    }

    [Benchmark(Baseline = true)]
    public double RawKernel() => _raw.Sum();

    [Benchmark]
    public SiteAssessment Assess() => _site.Assess();

    [Benchmark]
    public IReadOnlyList<Finding> Check() => RuleSet.Standard.Check(_assessment);

    [Benchmark]
    public IReadOnlyList<Finding> AssessAndCheck() => RuleSet.Standard.Check(_site.Assess());
}
