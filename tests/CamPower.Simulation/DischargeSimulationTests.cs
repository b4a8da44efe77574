using CamPower.Tests.Backup;

namespace CamPower.Simulation;

/// <summary>The decks of discharges, simulated again and compared with the committed answers.</summary>
public class DischargeSimulationTests
{
    private static readonly bool Regenerated = LiveDecks.RegenerateWhenAsked(BackupDecks.All);

    public static TheoryData<string> Names => [.. BackupDecks.All.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name) => LiveDecks.AssertCommitted(BackupDecks.All, name, Regenerated);
}
