using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Security.Cryptography;
using Xunit.Abstractions;

namespace CamPower.Mutants;

/// <summary>How long each test takes on the sound library and which mutants it reaches, recorded once and kept in a file.</summary>
internal sealed class Recording
{
    private const string Once = "once";
    // Most tests take a few milliseconds; what all of them together take is a minute.
    private const double QuickSeconds = 0.25, MostSeconds = 5;

    private readonly Dictionary<string, (double Seconds, HashSet<int> Reached)> _tests;

    private Recording(Dictionary<string, (double Seconds, HashSet<int> Reached)> tests) => _tests = tests;

    /// <summary>Beside the folder of the run, so that the next run finds it unless the tests or the library have changed.</summary>
    public static string Path { get; } = System.IO.Path.GetFullPath(System.IO.Path.Combine(AppContext.BaseDirectory, "..",
        $"reached-{HashOf(typeof(Tests.PublicSurfaceTests))[..8]}-{HashOf(typeof(Cable))[..8]}.txt"));

    public static Recording Read() => new(File.ReadLines(Path).Select(l => l.Split('\t')).ToDictionary(
        f => f[0], f => (double.Parse(f[1], CultureInfo.InvariantCulture), NumbersIn(f[2])), StringComparer.Ordinal));

    /// <summary>Runs everything on the sound library and keeps what it tells; a test that fails takes no number of seconds.</summary>
    /// <returns>The names of the tests that failed.</returns>
    public static IReadOnlyList<string> Make(TestSuite suite, Recorder recorder)
    {
        using TestRun all = Run(suite, suite.Cases, recorder);
        Dictionary<string, int[]> cold = new(recorder.OfTest, StringComparer.Ordinal);
        using TestRun quick = Run(suite, suite.Cases.Where(t => all.Seconds.GetValueOrDefault(t.UniqueID) < QuickSeconds), recorder);
        foreach (ITestCase failed in all.Failed.Concat(quick.Failed)) all.Seconds[failed.UniqueID] = double.NaN;

        // Made once in a process: no test reaches it that ran before.
        IEnumerable<int> once = recorder.Outside.Union(cold.Values.SelectMany(r => r))
            .Except(quick.Seconds.Keys.SelectMany(t => recorder.OfTest[t]));
        File.WriteAllLines(Path, cold
            .Select(t => Line(t.Key, all.Seconds[t.Key], t.Value.Union(recorder.OfTest[t.Key]))).Append(Line(Once, 0, once)));
        return [.. all.Failed.Concat(quick.Failed).Select(f => f.DisplayName).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>It passes on the sound library, and does not take so long that every survivor would cost a minute.</summary>
    public bool IsOfUse(ITestCase test) => !(SecondsOf(test) > MostSeconds) && !double.IsNaN(SecondsOf(test));

    public bool IsQuick(ITestCase test) => SecondsOf(test) < QuickSeconds;

    public double SecondsOf(ITestCase test) => _tests.GetValueOrDefault(test.UniqueID).Seconds;

    /// <summary>A test that is not known may reach anything.</summary>
    public bool Reaches(ITestCase test, int mutant) =>
        !_tests.TryGetValue(test.UniqueID, out (double, HashSet<int> Reached) told) || told.Reached.Contains(mutant);

    /// <summary>It stands where something is made once in a process: a static member, or data that tests share.</summary>
    /// <remarks>Who uses what was made there is not recorded.</remarks>
    public bool IsOnce(int mutant) => _tests[Once].Reached.Contains(mutant);

    private static TestRun Run(TestSuite suite, IEnumerable<Xunit.Sdk.IXunitTestCase> tests, Recorder recorder)
    {
        TestRun run = suite.Start(tests, endAtFailure: false, recorder);
        if (!run.Ends(_ => TimeSpan.MaxValue)) throw new InvalidOperationException("Never.");
        return run;
    }

    private static string Line(string test, double seconds, IEnumerable<int> reached) =>
        string.Create(CultureInfo.InvariantCulture, $"{test}\t{seconds}\t{string.Join(' ', reached)}");

    private static HashSet<int> NumbersIn(string text) => [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .Select(number => int.Parse(number, NumberStyles.None, CultureInfo.InvariantCulture))];

    private static string HashOf(Type type) => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(type.Assembly.Location)));
}
