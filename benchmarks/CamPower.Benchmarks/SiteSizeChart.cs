using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using CamPower.Reports;
using CamPower.Reports.Charts;
using OxyPlot;
using OxyPlot.Axes;

namespace CamPower.Benchmarks;

/// <summary>Draws the results of <see cref="SiteSizeBenchmarks"/>: the time an output, against boxes and against the outputs of one box.</summary>
/// <remarks>Where the time grows as the site does, a line lies level.</remarks>
internal static class SiteSizeChart
{
    private const string Results = "BenchmarkDotNet.Artifacts/results/CamPower.Benchmarks.SiteSizeBenchmarks-report-brief.json";
    private const int OutputsOfABox = 4;

    private static readonly (string Method, string Name)[] Series =
    [
        (nameof(SiteSizeBenchmarks.Declared), "solved and checked, all declared"),
        (nameof(SiteSizeBenchmarks.Sparse), "solved and checked, as most sites declare"),
        (nameof(SiteSizeBenchmarks.RawKernel), "the bare closed form"),
    ];

    /// <summary>Reads the results below the current folder and writes the pictures into a folder.</summary>
    internal static void Draw(string folder)
    {
        using JsonDocument results = JsonDocument.Parse(File.ReadAllText(Results));
        Result[] all = [.. results.RootElement.GetProperty("Benchmarks").EnumerateArray().Select(Read)];
        Write("site-by-boxes", "Time an output against boxes", $"boxes of {OutputsOfABox} outputs", s => s.Outputs == OutputsOfABox, s => s.Boxes);
        Write("site-by-outputs", "Time an output against outputs of one box", "outputs", s => s.Boxes == 1, s => s.Outputs);

        void Write(string file, string title, string axis, Func<SiteSize, bool> isShown, Func<SiteSize, int> along)
        {
            Chart chart = Of(title, axis, [.. all.Where(r => isShown(r.Size)).OrderBy(r => r.Size.Count)], along);
            File.WriteAllText(Path.Combine(folder, file + ".svg"), chart.ToSvg() + "\n");
        }
    }

    private static Result Read(JsonElement benchmark) => new(
        benchmark.GetProperty("Method").GetString()!,
        SiteSize.Parse(benchmark.GetProperty("Parameters").GetString()!.Split('=')[1]),
        benchmark.GetProperty("Statistics").GetProperty("Median").GetDouble());

    private static Chart Of(string title, string axis, IReadOnlyList<Result> results, Func<SiteSize, int> along)
    {
        PlotModel model = ChartFrame.Of(title);
        double[] times = [.. results.Select(r => r.MicrosecondsAnOutput)];
        model.Axes.Add(ChartFrame.LogAxis(AxisPosition.Bottom, axis, 1, results.Max(r => along(r.Size))));
        model.Axes.Add(ChartFrame.LogAxis(AxisPosition.Left, "µs an output", Decade(Math.Floor, times.Min()), Decade(Math.Ceiling, times.Max())));
        model.Legends.Add(ChartFrame.LegendBelow());
        for (int i = 0; i < Series.Length; i++)
        {
            IEnumerable<Result> own = results.Where(r => r.Method == Series[i].Method);
            model.Series.Add(ChartFrame.Line(i, Series[i].Name, own.Select(r => new DataPoint(along(r.Size), r.MicrosecondsAnOutput)), hasMarkers: true));
        }

        IEnumerable<string> words = results.Select(r => FormattableString.Invariant($"{r.Method} {r.Size}: {r.MicrosecondsAnOutput:G3} µs an output."));
        return new Chart(title, string.Join(" ", words), model, ChartFrame.HeightWithLegend(model));
    }

    private static double Decade(Func<double, double> round, double value) => Math.Pow(10, round(Math.Log10(value)));

    private sealed record Result(string Method, SiteSize Size, double Nanoseconds)
    {
        public double MicrosecondsAnOutput => Nanoseconds / 1000 / Size.Count;
    }
}
