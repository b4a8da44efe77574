using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>The process that loads the mutated library and runs the tests; it is asked on its input and answers on its output.</summary>
internal sealed class Worker : IDisposable
{
    private const int MostKillers = 20;

    private readonly TextWriter _answers;
    private readonly TestSuite _suite = new();
    private readonly Dictionary<string, List<IXunitTestCase>> _killers = new(StringComparer.Ordinal);
    private readonly TestTimes _times;

    private Worker(TextWriter answers, bool sound)
    {
        _answers = answers;
        bool isMeasured = File.Exists(TestTimes.Path);
        if (!isMeasured)
        {
            foreach (string failed in TestTimes.Measure(_suite)) Say("note", $"fails on the sound library, and is left out: {failed}");
        }

        _times = TestTimes.Read();
        // What a process makes once is made while no mutant is on.
        if (isMeasured && sound) FirstFailure([.. Sound().Where(_times.IsQuick)], out _);
    }

    /// <summary>Without arguments: mutants one after the other, as they are asked for. With a mutant and its room: that one alone.</summary>
    public static int Run(IReadOnlyList<string> mutant)
    {
        TextWriter answers = Console.Out;
        Console.SetOut(TextWriter.Null);
        bool alone = mutant.Count > 0;
        if (alone) MutantSwitch.Set(Id(mutant[0]));
        else MutantSwitch.Clear();
        using var worker = new Worker(answers, sound: !alone);
        if (alone) worker.TryAlone(mutant[1]);
        else worker.Serve();
        return 0;
    }

    public void Dispose() => _suite.Dispose();

    private static int Id(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);

    private IEnumerable<IXunitTestCase> Sound() => _suite.Cases.Where(_times.IsSound);

    private void Say(string what, string about)
    {
        _answers.WriteLine($"{what} {about}");
        _answers.Flush();
    }

    private void Serve()
    {
        Say("ready", "");
        while (Console.In.ReadLine() is string asked)
        {
            string[] mutant = asked.Split(' ');
            Try(Id(mutant[0]), mutant[1]);
        }
    }

    // Quick tests only: those that killed others of the room, those of the room, the rest.
    private void Try(int mutant, string room)
    {
        if (!_killers.TryGetValue(room, out List<IXunitTestCase>? killers)) _killers[room] = killers = [];
        ILookup<bool, IXunitTestCase> others = Sound().Where(_times.IsQuick).Except(killers).ToLookup(t => TestSuite.RoomOf(t) == room);
        foreach (List<IXunitTestCase> tests in (List<IXunitTestCase>[])[[.. killers], [.. others[true]], [.. others[false]]])
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

        Say("survived", "");
    }

    private IXunitTestCase? Fails(int mutant, IReadOnlyList<IXunitTestCase> tests)
    {
        MutantSwitch.Set(mutant);
        IXunitTestCase? failed = FirstFailure(tests, out bool ended);
        MutantSwitch.Clear();
        if (!ended) GiveUp();
        return failed;
    }

    // The whole suite, the room's own tests first; the mutant has been on from the beginning and stays so.
    private void TryAlone(string room)
    {
        ILookup<bool, IXunitTestCase> tests = Sound().ToLookup(t => TestSuite.RoomOf(t) == room);
        foreach (List<IXunitTestCase> some in (List<IXunitTestCase>[])[[.. tests[true]], [.. tests[false]]])
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

        Say("survived", "");
    }

    private IXunitTestCase? FirstFailure(IReadOnlyList<IXunitTestCase> tests, out bool ended)
    {
        ended = true;
        if (tests.Count == 0) return null;
        TestRun run = _suite.Start(tests, endAtFailure: true);
        ended = run.EndsWithin(_times.LimitOf(tests));
        return ended ? run.Failed.FirstOrDefault() as IXunitTestCase : null;
    }

    // Tests that do not end cannot be stopped but with the process: whoever asked starts another.
    private void GiveUp()
    {
        Say("killed", "by a test that does not end");
        Environment.Exit(0);
    }
}
