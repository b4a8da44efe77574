using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Tests.Circuits.Alternating;
using CamPower.Tests.Circuits.Alternating.Ngspice;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>The transients of alternating current, simulated again and compared with the committed answers.</summary>
public class AlternatingSimulationTests
{
    private static readonly IReadOnlyDictionary<(string Case, string Value), double> Committed = ReadOrRegenerate();

    public static TheoryData<string> Names => [.. AlternatingCases.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name)
    {
        IReadOnlyDictionary<(string Case, string Value), double> committed = Committed;
        foreach ((string value, double number) in Simulated(AlternatingCases.All.Single(c => c.Name == name)))
        {
            Assert.Equal(committed[(name, value)], number, 1e-3 * number);
        }
    }

    [Fact]
    public void LiveRings_AreTheCommittedOnes()
    {
        IReadOnlyDictionary<(string Case, string Value), double> committed = Committed;
        foreach (JoinedCase of in JoinedCase.All)
        {
            foreach ((string value, double number) in JoinedCase.Values.Zip(Simulated(of))) Assert.Equal(committed[(of.Name, value)], number, 1e-3 * number);
        }
    }

    private static IReadOnlyList<double> Simulated(JoinedCase of) =>
        Simulator.Values(RepositoryFiles.PathOf(AlternatingDecks.PathOf(of.Name)), JoinedCase.Values);

    private static IEnumerable<(string Value, double Number)> Simulated(AlternatingCase of)
    {
        IReadOnlyList<string> values = AlternatingDecks.ValuesOf(of);
        return values.Zip(Simulator.Values(RepositoryFiles.PathOf(AlternatingDecks.PathOf(of.Name)), values));
    }

    private static IReadOnlyDictionary<(string Case, string Value), double> ReadOrRegenerate()
    {
        if (GeneratedPage.IsRegenerating)
        {
            var lines = new StringBuilder();
            foreach (AlternatingCase of in AlternatingCases.All)
            {
                File.WriteAllText(RepositoryFiles.PathOf(AlternatingDecks.PathOf(of.Name)), AlternatingDecks.Of(of));
                IReadOnlyDictionary<(string Case, string Value), double> committed = Committed;
        foreach ((string value, double number) in Simulated(of)) lines.Append(AlternatingDecks.Line(of.Name, value, number));
            }

            foreach (JoinedCase of in JoinedCase.All)
            {
                File.WriteAllText(RepositoryFiles.PathOf(AlternatingDecks.PathOf(of.Name)), AlternatingDecks.Joined(of));
                foreach ((string value, double number) in JoinedCase.Values.Zip(Simulated(of))) lines.Append(AlternatingDecks.Line(of.Name, value, number));
            }

            File.WriteAllText(RepositoryFiles.PathOf(AlternatingDecks.Results), lines.ToString());
        }

        return AlternatingDecks.Read();
    }
}
