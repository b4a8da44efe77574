using System;
using System.Diagnostics;
using System.Globalization;
using System.IO;
using System.Threading.Tasks;

namespace CamPower.Mutants;

/// <summary>A worker, seen from the program that asks it; started when it is first needed, and again after it ended.</summary>
internal sealed class WorkerProcess : IDisposable
{
    // A test that computes without end is noticed by the worker; this is for one that waits without end.
    private static readonly TimeSpan MostSilence = TimeSpan.FromHours(1);

    private const string Ended = "killed by the end of the process";

    private Process? _process;

    /// <summary>A process of its own for one mutant, so that everything is made with the mutant on.</summary>
    public static string TryAlone(Mutant mutant)
    {
        using var worker = new WorkerProcess { _process = Start(mutant.Id.ToString(CultureInfo.InvariantCulture)) };
        return worker.Answer() ?? Ended;
    }

    /// <summary>The tests that reach it, in a process that goes on living.</summary>
    /// <returns>One line: killed, survived, unreached, alone or contaminated, and the test.</returns>
    public string Try(Mutant mutant)
    {
        Prepare();
        _process!.StandardInput.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{mutant.Id} {mutant.Room}"));
        string answer = Answer() ?? Ended;
        // A process that gives up has said so before it has ended.
        if (answer is Ended or Worker.Endless) Dispose();
        return answer;
    }

    /// <summary>Starts the worker, unless it runs, and waits until it has run the tests on the sound library.</summary>
    public void Prepare()
    {
        if (_process is { HasExited: false }) return;
        Dispose();
        _process = Start();
        if (Answer() is not "ready ") throw new InvalidOperationException("The worker does not start: run the tests by themselves.");
    }

    public void Dispose()
    {
        if (_process is null) return;
        if (!_process.HasExited) _process.Kill(entireProcessTree: true);
        _process.Dispose();
        _process = null;
    }

    private static Process Start(params string[] mutant)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(MutatedLibrary.RunFolder, "CamPower.Mutants.dll"), "worker", .. mutant])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // A mutant that takes all the memory there is gets an end as well: 2 GiB.
        start.Environment["DOTNET_GCHeapHardLimit"] = "0x80000000";
        Process process = Process.Start(start)!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        return process;
    }

    // Null when it ended without an answer, or had to be ended.
    private string? Answer()
    {
        while (true)
        {
            Task<string?> line = _process!.StandardOutput.ReadLineAsync();
            if (!line.Wait(MostSilence))
            {
                _process.Kill(entireProcessTree: true);
                return null;
            }

            if (line.Result?.StartsWith("note ", StringComparison.Ordinal) != true) return line.Result;
            Console.Error.WriteLine(line.Result);
        }
    }
}
