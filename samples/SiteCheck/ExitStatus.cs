namespace SiteCheck;

/// <summary>What the program tells the shell.</summary>
internal enum ExitStatus
{
    /// <summary>Notes at most.</summary>
    Fine = 0,

    /// <summary>Cautions.</summary>
    Cautions = 1,

    /// <summary>Failures or danger.</summary>
    Failures = 2,

    /// <summary>A file or a command line that cannot be read, or a file that cannot be written.</summary>
    Unusable = 3,
}
