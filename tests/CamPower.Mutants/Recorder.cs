using System;
using System.Collections.Generic;
using System.Linq;
using Xunit.Abstractions;

namespace CamPower.Mutants;

/// <summary>Notes which mutants each test reaches, and which are reached between the tests.</summary>
internal sealed class Recorder : IDisposable
{
    private readonly bool[] _now = new bool[MutantSwitch.Most];

    public Recorder() => MutantSwitch.Record(_now);

    /// <summary>What each test reached when it ran last, by its identifier.</summary>
    public Dictionary<string, int[]> OfTest { get; } = new(StringComparer.Ordinal);

    /// <summary>What was reached outside of tests: where tests are found, and where data are made that they share.</summary>
    public HashSet<int> Outside { get; } = [];

    public void Starts() => Outside.UnionWith(Taken());

    public void Ends(ITestCase test) => OfTest[test.UniqueID] = Taken();

    public void Dispose() => MutantSwitch.Record(null);

    private int[] Taken()
    {
        int[] taken = [.. Enumerable.Range(0, _now.Length).Where(i => _now[i])];
        Array.Clear(_now);
        return taken;
    }
}
