using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Faults;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>Runs the decks of a folder again.</summary>
internal static class LiveDecks
{
    public static void AssertCommitted(DeckFolder decks, string name, bool regenerated)
    {
        Assert.Equal(GeneratedPage.IsRegenerating, regenerated);
        foreach ((string value, double number) in Simulated(decks, name)) Assert.Equal(decks.Read(name, value), number, 1e-6 * number);
    }

    public static bool RegenerateWhenAsked(DeckFolder decks)
    {
        if (!GeneratedPage.IsRegenerating) return false;
        IEnumerable<string> lines = decks.Names.SelectMany(name => Simulated(decks, name).Select(x => DeckFolder.Line(name, x.Value, x.Number)));
        File.WriteAllText(RepositoryFiles.PathOf(decks.Results), string.Concat(lines));
        return true;
    }

    private static IEnumerable<(string Value, double Number)> Simulated(DeckFolder decks, string name)
    {
        IReadOnlyList<string> values = decks.ValuesOf(name);
        return values.Zip(Simulator.Values(decks.PathOf(name), values));
    }
}
