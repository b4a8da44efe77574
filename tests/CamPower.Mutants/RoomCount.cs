namespace CamPower.Mutants;

/// <summary>What became of the mutants of a room.</summary>
internal sealed class RoomCount(string room, int notBuilt)
{
    private const double LeastShare = 0.95, MostEquivalent = 0.05;

    public string Room => room;

    /// <summary>Mutants of the room that the compiler refused.</summary>
    public int NotBuilt => notBuilt;

    public int Killed { get; set; }

    public int Survived { get; set; }

    public int Equivalent { get; set; }

    public int Tried => Killed + Survived + Equivalent;

    /// <summary>The share of those killed among all that are not listed as equivalent.</summary>
    public double Share => Killed + Survived == 0 ? 1 : (double)Killed / (Killed + Survived);

    public bool IsGood => Share >= LeastShare && Equivalent <= MostEquivalent * Tried;
}
