namespace CamPower;

/// <summary>Verdict on the numbers of an output and a power-limit class.</summary>
public enum PowerLimitVerdict
{
    /// <summary>Too little is declared, or the tolerance of the supply decides.</summary>
    Unknown,

    /// <summary>No number speaks against it. Whether it is of the class only its listing says.</summary>
    WithinNumbers,

    /// <summary>Some number is above the limit of the class: it cannot be of it.</summary>
    Exceeds,
}
