using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Faults;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>The decks of faults, simulated again and compared with the committed answers.</summary>
public class FaultSimulationTests
{
    private static readonly bool Regenerated = RegenerateWhenAsked();

    public static TheoryData<string> Names => [.. FaultDecks.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name)
    {
        Assert.Equal(GeneratedPage.IsRegenerating, Regenerated);
        foreach ((string value, double number) in Simulated(name)) Assert.Equal(FaultDecks.Read(name, value), number, 1e-6 * number);
    }

    private static IEnumerable<(string Value, double Number)> Simulated(string name)
    {
        IReadOnlyList<string> values = FaultDecks.ValuesOf(name);
        return values.Zip(Simulator.Values(FaultDecks.PathOf(name), values));
    }

    private static bool RegenerateWhenAsked()
    {
        if (!GeneratedPage.IsRegenerating) return false;
        IEnumerable<string> lines = FaultDecks.Names.SelectMany(name => Simulated(name).Select(x => FaultDecks.Line(name, x.Value, x.Number)));
        File.WriteAllText(RepositoryFiles.PathOf(FaultDecks.Results), string.Concat(lines));
        return true;
    }
}
