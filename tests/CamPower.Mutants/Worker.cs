using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>The process that loads the mutated library and runs the tests; it is asked on its input and answers on its output.</summary>
internal sealed class Worker : IDisposable
{
    /// <summary>The answer where a test computes for far longer than without a mutant: the process ends with it.</summary>
    public const string Endless = "killed by a test that does not end";

    private const int MostKillers = 50;

    // For the compiler: in a process that has just started, and in one that has run the tests before.
    private const double ColdSeconds = 20, WarmSeconds = 3;

    // What a kill costs hangs on the slowest test that had to run: the fastest go first, in a few lots.
    private static readonly double[] LotSeconds = [0.005, 0.05, 0.25, 1, double.PositiveInfinity];

    private readonly TextWriter _answers;
    private readonly TestSuite _suite;
    private readonly Recording _recording;
    private readonly Dictionary<string, List<IXunitTestCase>> _killers = new(StringComparer.Ordinal);

    private double _compilerSeconds = ColdSeconds;

    private Worker(TextWriter answers, TestSuite suite)
    {
        _answers = answers;
        _suite = suite;
        _recording = Recording.Read();
    }

    /// <summary>Without arguments: mutants one after the other, as they are asked for. With a mutant: that one alone.</summary>
    public static int Run(IReadOnlyList<string> mutant)
    {
        TextWriter answers = Console.Out;
        Console.SetOut(TextWriter.Null);
        bool alone = mutant.Count > 0;
        MutantSwitch.Clear();
        if (!File.Exists(Recording.Path)) Record(answers);
        if (alone) MutantSwitch.Set(Id(mutant[0]));
        using var worker = new Worker(answers, new TestSuite());
        if (alone) worker.TryAlone(Id(mutant[0]));
        else worker.Serve();
        return 0;
    }

    public void Dispose() => _suite.Dispose();

    private static int Id(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

    private static void Record(TextWriter answers)
    {
        using var recorder = new Recorder();
        using var suite = new TestSuite();
        foreach (string failed in Recording.Make(suite, recorder))
        {
            answers.WriteLine($"note fails on the sound library, and is left out: {failed}");
        }
    }

    private IEnumerable<IXunitTestCase> OfUse() => _suite.Cases.Where(_recording.IsOfUse);

    private void Say(string what, string about)
    {
        _answers.WriteLine($"{what} {about}");
        _answers.Flush();
    }

    private void Serve()
    {
        // What a process makes once is made while no mutant is on.
        FirstFailure([.. OfUse().Where(_recording.IsQuick)], out _);
        _compilerSeconds = WarmSeconds;
        Say("ready", "");
        while (Console.In.ReadLine() is string asked)
        {
            string[] mutant = asked.Split(' ');
            Try(Id(mutant[0]), mutant[1]);
        }
    }

    // Only tests that reach it: those that killed others of the room, then the rest.
    private void Try(int mutant, string room)
    {
        if (!_killers.TryGetValue(room, out List<IXunitTestCase>? killers)) _killers[room] = killers = [];
        IXunitTestCase[] reaching = [.. OfUse().Where(t => _recording.Reaches(t, mutant))];
        foreach (List<IXunitTestCase> tests in Lots(reaching.Except(killers)).Prepend([.. killers.Intersect(reaching)]))
        {
            while (Fails(mutant, tests) is IXunitTestCase failed)
            {
                if (Fails(-1, [failed]) is not null)
                {
                    Say("contaminated", failed.DisplayName);
                    return;
                }

                // Fails once and then passes: it fails by itself now and then, and tells nothing.
                tests.Remove(failed);
                if (Fails(mutant, [failed]) is null) continue;

                killers.Remove(failed);
                killers.Insert(0, failed);
                if (killers.Count > MostKillers) killers.RemoveAt(MostKillers);
                Say("killed", failed.DisplayName);
                return;
            }
        }

        Say(_recording.IsOnce(mutant) ? "alone" : reaching.Length == 0 ? "unreached" : "survived", $"{reaching.Length} tests");
    }

    private IEnumerable<List<IXunitTestCase>> Lots(IEnumerable<IXunitTestCase> tests) =>
        tests.GroupBy(t => LotSeconds.First(s => _recording.SecondsOf(t) < s)).OrderBy(g => g.Key).Select(g => g.ToList());

    private IXunitTestCase? Fails(int mutant, IReadOnlyList<IXunitTestCase> tests)
    {
        MutantSwitch.Set(mutant);
        IXunitTestCase? failed = FirstFailure(tests, out bool ended);
        MutantSwitch.Clear();
        if (!ended) GiveUp();
        return failed;
    }

    // The mutant has been on from the beginning and stays so. All quick tests, for they may use what it made once without reaching it.
    private void TryAlone(int mutant)
    {
        foreach (List<IXunitTestCase> some in Lots(OfUse().Where(t => _recording.IsQuick(t) || _recording.Reaches(t, mutant))))
        {
            while (FirstFailure(some, out bool ended) is var failed)
            {
                if (!ended) GiveUp();
                if (failed is null) break;
                some.Remove(failed);
                if (FirstFailure([failed], out _) is null) continue;
                Say("killed", failed.DisplayName);
                return;
            }
        }

        Say("survived", "alone");
    }

    private IXunitTestCase? FirstFailure(IReadOnlyList<IXunitTestCase> tests, out bool ended)
    {
        ended = true;
        if (tests.Count == 0) return null;
        TestRun run = _suite.Start(tests, endAtFailure: true);
        ended = run.Ends(LimitOf);
        return ended ? run.Failed.FirstOrDefault() as IXunitTestCase : null;
    }

    // More time of the processor than a test takes that comes to an end: three times what it took by the clock, and some for the compiler.
    private TimeSpan LimitOf(ITestCase test) => TimeSpan.FromSeconds(_compilerSeconds + (3 * _recording.SecondsOf(test)));

    // Tests that do not end cannot be stopped but with the process: whoever asked starts another.
    private void GiveUp()
    {
        _answers.WriteLine(Endless);
        _answers.Flush();
        Environment.Exit(0);
    }
}
