namespace CamPower;

/// <summary>What sort of thing a finding is about.</summary>
public enum SubjectKind
{
    /// <summary>A camera or other device.</summary>
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
}
