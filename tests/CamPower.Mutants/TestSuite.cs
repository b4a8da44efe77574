using System;
using System.Collections.Generic;
using System.Threading;
using CamPower.Tests;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>The tests of CamPower.Tests, run in this process one after the other.</summary>
internal sealed class TestSuite : IDisposable
{
    private readonly XunitTestFramework _framework = new(new NullMessageSink());

    public TestSuite()
    {
        using var found = new DiscoveredTests();
        var assembly = new ReflectionAssemblyInfo(typeof(PublicSurfaceTests).Assembly);
        using ITestFrameworkDiscoverer discoverer = _framework.GetDiscoverer(assembly);
        discoverer.Find(includeSourceInformation: false, found, new TestOptions());
        Cases = found.Wait();
    }

    public IReadOnlyList<IXunitTestCase> Cases { get; }

    /// <summary>Starts test cases; what becomes of them is told by the answer.</summary>
    public TestRun Start(IEnumerable<IXunitTestCase> cases, bool endAtFailure, Recorder? recorder = null)
    {
        var run = new TestRun(endAtFailure, recorder);
        ITestFrameworkExecutor executor = _framework.GetExecutor(typeof(PublicSurfaceTests).Assembly.GetName());

        // On a thread of its own: xunit runs tests on the one that asks, and whoever waits for the end must see one that does not end.
        new Thread(() => executor.RunTests(cases, run, new TestOptions())) { IsBackground = true }.Start();
        return run;
    }

    public void Dispose() => _framework.Dispose();
}
