namespace CamPower.Assessment;

/// <summary>Which end of its tolerance every supply, and every protective device, is taken at.</summary>
internal enum SupplyLevel
{
    /// <summary>The lowest voltage and the greatest resistance: where devices go dark.</summary>
    Lowest,

    /// <summary>The highest voltage and the least resistance: where they see too much.</summary>
    Highest,
}
