namespace CamPower;

/// <summary>The kind of thing that a finding is about.</summary>
public enum SubjectKind
{
    /// <summary>A camera, a recorder or another load.</summary>
    Device,

    /// <summary>A run of cable.</summary>
    Run,

    /// <summary>An output of a box.</summary>
    Output,

    /// <summary>A box or an adapter.</summary>
    Box,

    /// <summary>A receptacle that boxes are plugged into.</summary>
    Receptacle,

    /// <summary>A cabinet with the boxes in it.</summary>
    Cabinet,

    /// <summary>The site as a whole.</summary>
    Site,

    /// <summary>The circuit breaker of receptacles.</summary>
    Breaker,
}
