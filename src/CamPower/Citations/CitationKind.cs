namespace CamPower;

/// <summary>Kind of a source: how far a constant or formula can be trusted.</summary>
public enum CitationKind
{
    /// <summary>A published standard.</summary>
    Standard,

    /// <summary>A published handbook or a table that reproduces one.</summary>
    Handbook,

    /// <summary>A published textbook or paper, or a law of physics that any of them states.</summary>
    Textbook,

    /// <summary>A convention of the trade that no published source backs.</summary>
    CommonPractice,

    /// <summary>From a publication, but written down from memory and not checked against the print.</summary>
    FromMemory,

    /// <summary>Stated by the author of the model: a data sheet, a label, a measurement.</summary>
    Declared,
}
