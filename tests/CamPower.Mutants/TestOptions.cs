using System;
using System.Collections.Generic;
using Xunit.Abstractions;

namespace CamPower.Mutants;

/// <summary>How xunit finds and runs tests here: every row of a theory is a test of its own, and one runs after the other.</summary>
internal sealed class TestOptions : ITestFrameworkDiscoveryOptions, ITestFrameworkExecutionOptions
{
    private readonly Dictionary<string, object?> _values = new(StringComparer.Ordinal)
    {
        ["xunit.discovery.PreEnumerateTheories"] = true,
        ["xunit.execution.DisableParallelization"] = true,
        ["xunit.execution.SynchronousMessageReporting"] = true,
    };

    public TValue GetValue<TValue>(string name) => _values.GetValueOrDefault(name) is TValue value ? value : default!;

    public void SetValue<TValue>(string name, TValue value) => _values[name] = value;
}
