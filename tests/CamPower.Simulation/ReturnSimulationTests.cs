using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Assessment.Returns;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>The decks of the sites whose return currents divide, simulated again and compared with the committed answers.</summary>
public class ReturnSimulationTests
{
    private static readonly bool Regenerated = RegenerateWhenAsked();

    public static TheoryData<string> Names => [.. ReturnDecks.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name)
    {
        Assert.Equal(GeneratedPage.IsRegenerating, Regenerated);
        Dictionary<string, double> committed = ReturnDecks.Read(name);
        Assert.Equal(ReturnDecks.NodesOf(name).Count, committed.Count);
        foreach ((string node, double volts) in Simulated(name)) Assert.Equal(committed[node], volts, 1e-9);
    }

    private static IEnumerable<(string Node, double Volts)> Simulated(string name)
    {
        IReadOnlyList<string> nodes = ReturnDecks.NodesOf(name);
        IReadOnlyList<double>? volts = Simulator.Solve(ReturnDecks.PathOf(name), nodes);
        Assert.NotNull(volts);
        return nodes.Zip(volts);
    }

    private static bool RegenerateWhenAsked()
    {
        if (!GeneratedPage.IsRegenerating) return false;
        IEnumerable<string> lines = ReturnDecks.Names.SelectMany(name => Simulated(name).Select(x => ReturnDecks.Line(name, x.Node, x.Volts)));
        File.WriteAllText(RepositoryFiles.PathOf(ReturnDecks.Results), string.Concat(lines));
        return true;
    }
}
