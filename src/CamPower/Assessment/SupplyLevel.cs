namespace CamPower.Assessment;

/// <summary>Which end of its tolerance every supply is taken at.</summary>
internal enum SupplyLevel
{
    /// <summary>The lowest voltage: where devices go dark.</summary>
    Lowest,

    /// <summary>The highest voltage: where they see too much.</summary>
    Highest,
}
