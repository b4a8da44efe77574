using System;
using System.IO;
using System.Linq;

namespace CamPower.Files.Fleets;

/// <summary>One site read, assessed and checked; whatever goes wrong is its answer, so that the others go on.</summary>
internal static class DocumentCheck
{
    internal static CheckedSite Of(string name, Func<SiteFileResult> read, RuleSet rules)
    {
        string? siteName = null;
        try
        {
            SiteFileResult result = read();
            if (!result.TryGetSite(out Site? site)) return new CheckedSite(name, null, [], [.. result.Errors.Select(e => e.ToString())]);
            siteName = site.Name;
            return new CheckedSite(name, siteName, rules.Check(site.Assess()), []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new CheckedSite(name, null, [], [e.Message]);
        }
#pragma warning disable CA1031 // A rule of somebody else's may throw anything. The site says so and the fleet goes on.
        catch (Exception e) when (e is not OutOfMemoryException)
#pragma warning restore CA1031
        {
            return new CheckedSite(name, siteName, [], [$"The check failed: {e.GetType().Name}: {e.Message}"]);
        }
    }
}
