using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Repository;
using Xunit.Abstractions;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>The solver against a general circuit simulator, ngspice 39, on networks made from a fixed seed.</summary>
public class NgspiceTests(ITestOutputHelper output)
{
    // The simulator stops when a step is below 1e-10 of the voltage. Its step is then its error where Newton's
    // method converges as a square, and near the fold times 1/√(1 − share of collapse).
    private const double Agreement = 1e-9;

    [Fact]
    public void Decks_FromTheSeed_AreTheCommittedOnes() =>
        GeneratedPage.AssertCurrent(NgspiceFiles.Decks, string.Concat(NgspiceCases.All().Select(c => c.Deck())));

    [Fact]
    public void Solve_EveryCase_AgreesWithTheSimulator()
    {
        Dictionary<string, double> simulated = NgspiceFiles.Read();
        int compared = 0;
        double worst = 0;
        foreach (NgspiceCase c in NgspiceCases.All())
        {
            double scale = c.Network.Sources.Max(s => s.Voltage.Volts);
            foreach (string node in c.Nodes)
            {
                double expected = simulated[NgspiceFiles.Key(c.Name, NgspiceNetlist.Node(c.Network, node))];
                double difference = Math.Abs(expected - c.Solution.VoltageAt(node).Volts) / scale;
                Assert.True(difference <= Agreement, FormattableString.Invariant($"{c.Name}, {node}: {expected} V simulated, off by {difference:G2}"));
                worst = Math.Max(worst, difference);
                compared++;
            }
        }

        output.WriteLine(FormattableString.Invariant($"{compared} voltages, worst {worst:G2} of the source voltage"));
        Assert.Equal(simulated.Count, compared);
    }
}
