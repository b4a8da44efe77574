using System;
using System.Linq;
using BenchmarkDotNet.Attributes;
using CamPower.Tolerance;

namespace CamPower.Benchmarks;

/// <summary>A million draws of a site of 32 cameras, each camera solved in each draw, on one thread.</summary>
/// <remarks>The same in C, with the same generator and formula, is draws.c beside this file.</remarks>
[SimpleJob(iterationCount: 3, warmupCount: 1)]
public class ToleranceBenchmarks
{
    internal const int Draws = 1_000_000;

    private UncertainCircuit[] _circuits = null!;
    private double[][] _limits = null!;

    [GlobalSetup]
    public void MakeUpSite()
    {
        Site site = MadeUpSite.Sparse(new SiteSize(Boxes: 2, Outputs: 16));
        var parts = new UncertainParts(site, SiteTolerance.Standard);
        _circuits = [.. site.Feeds.Select(g => UncertainCircuit.Of(g, parts, site.Conditions[1]))];
        _limits = Array.ConvertAll(_circuits, _ => (double[])[10.8]);
    }

    [Benchmark]
    public long MillionDraws()
    {
        long[][] hits = Array.ConvertAll(_limits, _ => new long[1]);
        BelowProbability.CountHits(_circuits, _limits, 0, Draws, seed: 1, hits);
        return hits.Sum(h => h[0]);
    }
}
