using CamPower.Tests.Faults;

namespace CamPower.Tests.Backup;

/// <summary>Decks of discharges.</summary>
internal static class BackupDecks
{
    internal static DeckFolder All { get; } = new("tests/CamPower.Tests/Backup/Ngspice");
}
