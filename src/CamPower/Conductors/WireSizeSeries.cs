namespace CamPower;

/// <summary>The series that a wire size is named in.</summary>
public enum WireSizeSeries
{
    /// <summary>No size: the default value of <see cref="WireSize"/>.</summary>
    None,

    /// <summary>American wire gauge, ASTM B258.</summary>
    Awg,

    /// <summary>Nominal cross-section in square millimeters.</summary>
    SquareMillimeters,

    /// <summary>Cross-section in thousands of circular mils, above the American wire gauge.</summary>
    Kcmil,

    /// <summary>Diameter of a bare round wire in millimeters.</summary>
    Diameter,
}
