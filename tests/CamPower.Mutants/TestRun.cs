using System;
using System.Collections.Generic;
using System.Threading;
using Xunit.Abstractions;

namespace CamPower.Mutants;

/// <summary>What xunit tells of one run: how long each test took, and what failed. It may end at the first failure.</summary>
internal sealed class TestRun(bool endAtFailure, Recorder? recorder = null) : IMessageSink, IDisposable
{
    private readonly ManualResetEventSlim _finished = new();
    private volatile Running? _running;

    /// <summary>The seconds of each test case, by its identifier.</summary>
    public Dictionary<string, double> Seconds { get; } = new(StringComparer.Ordinal);

    /// <summary>The test cases that failed, in order.</summary>
    public List<ITestCase> Failed { get; } = [];

    public bool OnMessage(IMessageSinkMessage message)
    {
        switch (message)
        {
            case ITestCaseStarting starting:
                recorder?.Starts();
                _running = new Running(starting.TestCase, Environment.CpuUsage.TotalTime);
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

    /// <summary>Waits for the end; false when a test has by then computed for longer than its limit.</summary>
    /// <remarks>Time of the processor, not of the clock: a busy machine makes nothing look endless.</remarks>
    public bool Ends(Func<ITestCase, TimeSpan> limitOf)
    {
        while (!_finished.Wait(TimeSpan.FromMilliseconds(200)))
        {
            if (_running is Running running && Environment.CpuUsage.TotalTime - running.Since > limitOf(running.Test)) return false;
        }

        return true;
    }

    public void Dispose() => _finished.Dispose();

    private sealed record Running(ITestCase Test, TimeSpan Since);
}
