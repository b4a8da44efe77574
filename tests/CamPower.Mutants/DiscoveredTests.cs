using System;
using System.Collections.Generic;
using System.Threading;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace CamPower.Mutants;

/// <summary>The test cases that xunit finds.</summary>
internal sealed class DiscoveredTests : IMessageSink, IDisposable
{
    private readonly ManualResetEventSlim _finished = new();
    private readonly List<IXunitTestCase> _cases = [];

    public bool OnMessage(IMessageSinkMessage message)
    {
        if (message is ITestCaseDiscoveryMessage { TestCase: IXunitTestCase found }) _cases.Add(found);
        if (message is IDiscoveryCompleteMessage) _finished.Set();
        return true;
    }

    /// <summary>All of them, once the search has ended.</summary>
    public IReadOnlyList<IXunitTestCase> Wait()
    {
        _finished.Wait();
        return _cases;
    }

    public void Dispose() => _finished.Dispose();
}
