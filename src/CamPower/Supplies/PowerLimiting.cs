namespace CamPower.Supplies;

/// <summary>The two ways in which a source may be limited: each class has a table for either.</summary>
internal enum PowerLimiting
{
    /// <summary>By itself, without an overcurrent device: IEC 62368-1 Table Q.1, IEC 60950-1 Table 2B; inherently limited in the
    /// NEC.</summary>
    Inherent,

    /// <summary>Less strictly, because an overcurrent device opens: IEC 62368-1 Table Q.2, IEC 60950-1 Table 2C; not inherently limited in
    /// the NEC.</summary>
    OvercurrentDevice,
}
