using CamPower.Tests.Faults;

namespace CamPower.Simulation;

/// <summary>The decks of faults, simulated again and compared with the committed answers.</summary>
public class FaultSimulationTests
{
    private static readonly bool Regenerated = LiveDecks.RegenerateWhenAsked(FaultDecks.All);

    public static TheoryData<string> Names => [.. FaultDecks.All.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name) => LiveDecks.AssertCommitted(FaultDecks.All, name, Regenerated);
}
