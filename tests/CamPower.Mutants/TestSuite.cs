using System;
using System.Collections.Generic;
using CamPower.Tests;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>The tests of CamPower.Tests, run in this process one after the other.</summary>
internal sealed class TestSuite : IDisposable
{
    private const string Tests = "CamPower.Tests.";

    private readonly XunitTestFramework _framework = new(new NullMessageSink());

    public TestSuite()
    {
        using var found = new DiscoveredTests();
        using ITestFrameworkDiscoverer discoverer = _framework.GetDiscoverer(new ReflectionAssemblyInfo(typeof(PublicSurfaceTests).Assembly));
        discoverer.Find(includeSourceInformation: false, found, new TestOptions());
        Cases = found.Wait();
    }

    public IReadOnlyList<IXunitTestCase> Cases { get; }

    /// <summary>The room that a test belongs to: the first part of its namespace below CamPower.Tests.</summary>
    public static string RoomOf(ITestCase test)
    {
        string name = test.TestMethod.TestClass.Class.Name;
        return name.StartsWith(Tests, StringComparison.Ordinal) ? name[Tests.Length..].Split('.')[0] : "";
    }

    /// <summary>Starts test cases; what becomes of them is told by the answer.</summary>
    public TestRun Start(IEnumerable<IXunitTestCase> cases, bool endAtFailure)
    {
        var run = new TestRun(endAtFailure);
        _framework.GetExecutor(typeof(PublicSurfaceTests).Assembly.GetName()).RunTests(cases, run, new TestOptions());
        return run;
    }

    public void Dispose() => _framework.Dispose();
}
