using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Tests.Circuits.Networks.Ngspice;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>A sample of the networks of both poles simulated again, and compared with the committed answers and with the package.</summary>
public class NetworkSimulationTests
{
    // Both the simulator's own stopping rule and a change of its version lie inside this share of the source voltage.
    private const double Agreement = 1e-9;

    // Prime to the shapes and to the shares of the collapse load, so that the sample holds all of both.
    private const int EverySo = 7;

    private static readonly Dictionary<string, NgspiceCase> Sample = NgspiceCases.All()
        .Where((_, i) => i % EverySo == 0).ToDictionary(c => c.Name, StringComparer.Ordinal);

    private static readonly Dictionary<string, double> Committed = ReadOrRegenerate();

    public static TheoryData<string> Names => [.. Sample.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOneAndThePackages(string name)
    {
        NgspiceCase c = Sample[name];
        double tolerance = Agreement * c.Network.Sources.Max(s => s.Voltage.Volts);
        foreach ((string node, double volts) in Simulated(c))
        {
            Assert.InRange(volts - Committed[NgspiceFiles.Key(name, NgspiceNetlist.Node(c.Network, node))], -tolerance, tolerance);
            Assert.InRange(volts - c.Solution.VoltageAt(node).Volts, -tolerance, tolerance);
        }
    }

    [Fact]
    public void Sample_HoldsEveryShape() => Assert.All(
        Tests.Circuits.Networks.RandomNetworks.Shapes, shape => Assert.Contains(Sample.Keys, name => name.StartsWith(shape + " ", StringComparison.Ordinal)));

    private static IEnumerable<(string Node, double Volts)> Simulated(NgspiceCase c)
    {
        string[] nodes = [.. c.Nodes];
        IReadOnlyList<double>? volts = Simulator.SolveText(c.Deck(), [.. nodes.Select(node => NgspiceNetlist.Node(c.Network, node))]);
        Assert.NotNull(volts);
        return nodes.Zip(volts);
    }

    private static Dictionary<string, double> ReadOrRegenerate()
    {
        if (GeneratedPage.IsRegenerating)
        {
            var results = new StringBuilder();
            foreach (NgspiceCase c in NgspiceCases.All())
            {
                foreach ((string node, double volts) in Simulated(c)) results.Append(NgspiceFiles.Line(c.Name, NgspiceNetlist.Node(c.Network, node), volts));
            }

            File.WriteAllText(RepositoryFiles.PathOf(NgspiceFiles.Decks), string.Concat(NgspiceCases.All().Select(c => c.Deck())));
            File.WriteAllText(RepositoryFiles.PathOf(NgspiceFiles.Results), results.ToString());
        }

        return NgspiceFiles.Read();
    }
}
