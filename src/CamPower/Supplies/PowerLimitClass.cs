namespace CamPower;

/// <summary>A class of outputs whose current and power are limited, so that lighter rules hold for the wiring behind them.</summary>
/// <remarks>Either is a listing of the product as tested, faults inside it included. Numbers can refute it and never prove it.</remarks>
public enum PowerLimitClass
{
    /// <summary>A limited power source: IEC 62368-1 Annex Q, formerly 2.5 of IEC 60950-1.</summary>
    LimitedPowerSource,

    /// <summary>A Class 2 power source: NEC (NFPA 70) Chapter 9, Table 11(A) for alternating and 11(B) for direct current.</summary>
    Class2,
}
