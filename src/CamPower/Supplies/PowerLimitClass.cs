namespace CamPower;

/// <summary>A class of outputs whose current and power are limited, so that lighter rules hold for the wiring behind them.</summary>
/// <remarks>Each is a listing of the product as tested, faults inside it included. A calculation can show that an output does not meet the
/// class. It cannot show that it does. The two standards of limited power sources have different tables: a claim that names neither is
/// refuted only where both are.</remarks>
public enum PowerLimitClass
{
    /// <summary>A limited power source of a standard that is not stated: IEC 60950-1 or IEC 62368-1.</summary>
    LimitedPowerSource,

    /// <summary>A Class 2 power source: NEC (NFPA 70) Chapter 9, Table 11(A) for alternating and 11(B) for direct current.</summary>
    Class2,

    /// <summary>A limited power source of IEC 60950-1, 2.5, Tables 2B and 2C.</summary>
    LimitedPowerSourceIec60950,

    /// <summary>A limited power source of IEC 62368-1, Annex Q, Tables Q.1 and Q.2.</summary>
    LimitedPowerSourceIec62368,
}
