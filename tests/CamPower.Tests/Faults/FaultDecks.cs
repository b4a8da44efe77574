namespace CamPower.Tests.Faults;

/// <summary>Decks of faults.</summary>
internal static class FaultDecks
{
    internal static DeckFolder All { get; } = new("tests/CamPower.Tests/Faults/Ngspice");
}
