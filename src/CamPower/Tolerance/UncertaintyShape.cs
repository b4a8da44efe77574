namespace CamPower.Tolerance;

/// <summary>How likely the values inside a range are.</summary>
public enum UncertaintyShape
{
    /// <summary>All alike: the standard deviation is the half width over √3.</summary>
    Uniform,

    /// <summary>Most in the middle, falling on a straight line to nothing at the ends: the half width over √6.</summary>
    Triangular,

    /// <summary>The normal distribution, its ends three standard deviations from the middle and cut off there.</summary>
    Normal,
}
