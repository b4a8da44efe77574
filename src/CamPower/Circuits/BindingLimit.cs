namespace CamPower;

/// <summary>Limit of an answer.</summary>
public enum BindingLimit
{
    /// <summary>The lowest voltage that the load accepts.</summary>
    LowestVoltage,

    /// <summary>The largest drop that is accepted.</summary>
    LargestDrop,

    /// <summary>The run collapses while the voltage is still above every accepted limit: a little further there is no operating
    /// point.</summary>
    Collapse,

    /// <summary>The end of the materials' range of temperature.</summary>
    TemperatureRange,

    /// <summary>The smallest size of the series is already large enough, or the largest is too small.</summary>
    SeriesEnd,

    /// <summary>Nothing physical: the end of what is calculated with, such as 1 GW, 1 MV or 1000 km.</summary>
    CalculatedRange,
}
