using System.IO;
using System.Text;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using CamPower.Files;

namespace CamPower.Benchmarks;

/// <summary>The site file of 32 cameras on two boxes, read and written.</summary>
/// <remarks>The baseline is the bare parse of the same bytes: the ratio is the price of units, checks, places and the site itself.</remarks>
[MemoryDiagnoser, MedianColumn]
public class SiteFileBenchmarks
{
    private Site _site = null!;
    private byte[] _utf8 = null!;

    [GlobalSetup]
    public void WriteFile()
    {
        _site = MadeUpSite.Declared(new SiteSize(Boxes: 2, Outputs: 16));
        _utf8 = Encoding.UTF8.GetBytes(SiteFile.Write(_site));
    }

    [Benchmark(Baseline = true)]
    public JsonElement ParseAlone()
    {
        using JsonDocument document = JsonDocument.Parse(_utf8);
        return document.RootElement;
    }

    [Benchmark]
    public Site? Read() => SiteFile.Read(new MemoryStream(_utf8)).Site;

    [Benchmark]
    public string Write() => SiteFile.Write(_site);
}
