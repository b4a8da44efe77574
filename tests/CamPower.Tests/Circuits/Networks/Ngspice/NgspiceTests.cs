using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using Xunit.Abstractions;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>The solver against a general circuit simulator, ngspice 39, on networks made from a fixed seed.</summary>
public class NgspiceTests(ITestOutputHelper output)
{
    // The simulator stops when a step is below 1e-10 of the voltage. Its step is then its error where Newton's
    // method converges as a square, and near the fold times 1/√(1 − share of collapse).
    private const double Agreement = 1e-9;

    [Fact]
    public void Decks_FromTheSeed_AreTheCommittedOnes() => Assert.Equal(File.ReadAllText(Beside("decks.cir")), Decks());

    [Fact]
    public void Solve_EveryCase_AgreesWithTheSimulator()
    {
        Dictionary<string, double> simulated = Committed();
        int compared = 0;
        double worst = 0;
        foreach (NgspiceCase c in NgspiceCases.All())
        {
            double scale = c.Network.Sources.Max(s => s.Voltage.Volts);
            foreach (string node in c.Network.Nodes.Where(node => node != c.Network.Reference))
            {
                double expected = simulated[$"{c.Name};{NgspiceNetlist.Node(c.Network, node)}"];
                double difference = Math.Abs(expected - c.Solution.VoltageAt(node).Volts) / scale;
                Assert.True(difference <= Agreement, FormattableString.Invariant($"{c.Name}, {node}: {expected} V simulated, off by {difference:G2}"));
                worst = Math.Max(worst, difference);
                compared++;
            }
        }

        output.WriteLine(FormattableString.Invariant($"{compared} voltages, worst {worst:G2} of the source voltage"));
        Assert.Equal(simulated.Count, compared);
    }

    [Fact(Skip = "Writes decks.cir and results.csv anew, with ngspice: run by hand after a change of the generator.")]
    public void Rewrite()
    {
        File.WriteAllText(Beside("decks.cir"), Decks());
        var results = new StringBuilder();
        foreach (NgspiceCase c in NgspiceCases.All())
        {
            IReadOnlyDictionary<string, double> volts = NgspiceRun.Solve(c.Deck());
            Assert.NotEmpty(volts);
            foreach (KeyValuePair<string, double> node in volts)
            {
                results.Append(CultureInfo.InvariantCulture, $"{c.Name};{node.Key};{node.Value:E12}\n");
            }
        }

        File.WriteAllText(Beside("results.csv"), results.ToString());
    }

    private static string Decks() => string.Concat(NgspiceCases.All().Select(c => c.Deck()));

    private static Dictionary<string, double> Committed() => File.ReadAllLines(Beside("results.csv"))
        .Select(line => line.Split(';'))
        .ToDictionary(cells => $"{cells[0]};{cells[1]}", cells => double.Parse(cells[2], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    private static string Beside(string file)
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "CamPower.sln"))) folder = Directory.GetParent(folder)!.FullName;
        return Path.Combine(folder, "tests/CamPower.Tests/Circuits/Networks/Ngspice", file);
    }
}
