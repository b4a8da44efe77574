using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Security.Cryptography;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>How long each test takes on the sound library, measured once and kept in a file; and which fail on it, and so tell nothing.</summary>
internal sealed class TestTimes
{
    // Most tests take a few milliseconds; the properties that take longer kill little that the others leave.
    private const double QuickSeconds = 0.25;

    private readonly Dictionary<string, double> _seconds;

    private TestTimes(Dictionary<string, double> seconds) => _seconds = seconds;

    /// <summary>Beside the folder of the run, so that the next run finds it, unless the tests or the library have changed by then.</summary>
    public static string Path { get; } = System.IO.Path.GetFullPath(System.IO.Path.Combine(AppContext.BaseDirectory, "..",
        $"test-times-{HashOf(typeof(Tests.PublicSurfaceTests))[..8]}-{HashOf(typeof(Cable))[..8]}.txt"));

    public static TestTimes Read() => new(File.ReadLines(Path).Select(l => l.Split('\t')).ToDictionary(
        f => f[0], f => double.Parse(f[1], CultureInfo.InvariantCulture), StringComparer.Ordinal));

    /// <summary>Runs everything on the sound library and keeps the times; what fails gets none.</summary>
    /// <returns>The names of the tests that failed.</returns>
    public static IReadOnlyList<string> Measure(TestSuite suite)
    {
        using TestRun run = suite.Start(suite.Cases, endAtFailure: false);
        if (!run.EndsWithin(TimeSpan.MaxValue)) throw new InvalidOperationException("Never.");
        foreach (ITestCase failed in run.Failed) run.Seconds[failed.UniqueID] = double.NaN;
        File.WriteAllLines(Path, run.Seconds.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Key}\t{s.Value}")));
        return [.. run.Failed.Select(f => f.DisplayName).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>It passes on the sound library; one that is not known there counts as sound.</summary>
    public bool IsSound(IXunitTestCase test) => !double.IsNaN(SecondsOf(test));

    public bool IsQuick(IXunitTestCase test) => SecondsOf(test) < QuickSeconds;

    public double SecondsOf(IXunitTestCase test) => _seconds.GetValueOrDefault(test.UniqueID);

    /// <summary>More than any tests take that come to an end: several times what they took, and the compiler's time.</summary>
    public TimeSpan LimitOf(IEnumerable<IXunitTestCase> tests) => TimeSpan.FromSeconds(60 + (5 * tests.Sum(SecondsOf)));

    private static string HashOf(Type type) => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(type.Assembly.Location)));
}
