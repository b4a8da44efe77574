using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;

namespace CamPower.Files;

/// <summary>The result of reading a site file: the site, or every error of the file.</summary>
/// <remarks>Immutable. There is a site exactly where there is no error.</remarks>
public sealed class SiteFileResult
{
    internal SiteFileResult(Site? site, IReadOnlyList<SiteFileError> errors)
    {
        Site = site;
        Errors = errors;
    }

    /// <summary>The site, or null where the file has an error.</summary>
    public Site? Site { get; }

    /// <summary>Every error of the file, in the order of the file; empty where there is a site.</summary>
    public IReadOnlyList<SiteFileError> Errors { get; }

    /// <summary>Gives the site, or says that there is none.</summary>
    /// <param name="site">The site, or null.</param>
    public bool TryGetSite([NotNullWhen(true)] out Site? site)
    {
        site = Site;
        return site is not null;
    }

    /// <summary>The name of the site, or the errors, one a line; never throws.</summary>
    public override string ToString() => Site?.Name ?? string.Join('\n', Errors);
}
