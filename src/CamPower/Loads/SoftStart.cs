namespace CamPower;

/// <summary>Whether an input ramps its draw up, so that the rail can follow it past the unstable voltage.</summary>
public enum SoftStart
{
    /// <summary>Not declared: taken as none.</summary>
    Unknown,

    /// <summary>The draw jumps to its start value when the input turns on.</summary>
    No,

    /// <summary>The draw ramps up.</summary>
    Yes,
}
