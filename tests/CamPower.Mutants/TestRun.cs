using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Threading;
using Xunit.Abstractions;

namespace CamPower.Mutants;

/// <summary>What xunit tells of one run: how long each test took, and what failed. It may end at the first failure.</summary>
internal sealed class TestRun(bool endAtFailure, Recorder? recorder = null) : IMessageSink, IDisposable
{
    private readonly ManualResetEventSlim _finished = new();

    /// <summary>The seconds of each test case, by its identifier.</summary>
    public Dictionary<string, double> Seconds { get; } = new(StringComparer.Ordinal);

    /// <summary>The test cases that failed, in order.</summary>
    public List<ITestCase> Failed { get; } = [];

    public bool OnMessage(IMessageSinkMessage message)
    {
        switch (message)
        {
            case ITestCaseStarting:
                recorder?.Starts();
                break;
            case ITestFailed failed:
                Failed.Add(failed.TestCase);
                return !endAtFailure;
            case ITestCaseFinished finished:
                recorder?.Ends(finished.TestCase);
                Seconds[finished.TestCase.UniqueID] = (double)finished.ExecutionTime;
                break;
            case ITestAssemblyFinished:
                _finished.Set();
                break;
        }

        return !(endAtFailure && Failed.Count > 0);
    }

    /// <summary>Waits for the end; false when the process has by then computed for longer than the limit.</summary>
    /// <remarks>Time of the processor, not of the clock: a busy machine makes nothing look endless.</remarks>
    public bool EndsWithin(TimeSpan limit)
    {
        TimeSpan start = Computed();
        while (!_finished.Wait(TimeSpan.FromMilliseconds(200)))
        {
            if (Computed() - start > limit) return false;
        }

        return true;
    }

    public void Dispose() => _finished.Dispose();

    private static TimeSpan Computed()
    {
        using var self = Process.GetCurrentProcess();
        return self.TotalProcessorTime;
    }
}
