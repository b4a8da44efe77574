using System;
using System.IO;
using CamPower.Files.Parts;
using CamPower.Files.Schedules;

namespace CamPower.Files;

/// <summary>Reads and writes a site as installers keep it: a small site file, and a schedule as CSV with a row for each camera.</summary>
/// <remarks>
/// The site file has boxes, models and conditions, and may have runs and devices too. A row has the device's name, its model or its
/// watts, box, output, cable and length. Stateless; every member may be called from many threads at once, in any culture.
/// </remarks>
/// <example>
/// <code>
/// SiteFileResult result = SiteSchedule.Read(File.ReadAllText("yard.json"), File.ReadAllText("yard.csv"));
/// if (!result.TryGetSite(out Site? site)) foreach (SiteFileError error in result.Errors) Console.WriteLine(error);
/// </code>
/// </example>
public static class SiteSchedule
{
    /// <summary>Reads a site from the texts of a site file and of a schedule, within the limits of
    /// <see cref="SiteFileOptions.Default"/>.</summary>
    /// <param name="json">The text of the site file; it may leave out cables, runs and devices.</param>
    /// <param name="csv">The text of the schedule: separated by commas, semicolons or tabs, the headings in the first row.</param>
    /// <returns>The site, or every error of both. What they hold never throws.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static SiteFileResult Read(string json, string csv) => SiteFile.Read(json, csv, SiteFileOptions.Default);

    /// <summary>Reads a site from a site file and a schedule, both UTF-8 with or without a byte-order mark.</summary>
    /// <param name="utf8Json">The site file, read to its end or to the limit, and left open.</param>
    /// <param name="utf8Csv">The schedule, read to its end or to the limit, and left open.</param>
    /// <param name="options">The limits, each for either of the two; null for <see cref="SiteFileOptions.Default"/>.</param>
    /// <returns>The site, or every error of both. What they hold never throws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="utf8Json"/> or <paramref name="utf8Csv"/> is null.</exception>
    /// <exception cref="IOException">A stream cannot be read.</exception>
    public static SiteFileResult Read(Stream utf8Json, Stream utf8Csv, SiteFileOptions? options = null) =>
        SiteFile.Read(utf8Json, utf8Csv, options ?? SiteFileOptions.Default);

    /// <summary>Writes a site as a site file and a schedule. Reading both gives it back, the devices and runs of the schedule
    /// last.</summary>
    /// <param name="site">The site.</param>
    /// <returns>The site file with all that no row can say, such as a run with joints, and the schedule as RFC 4180 has it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <exception cref="ArgumentException">Two parts that differ have the same name, or a name is no valid Unicode.</exception>
    /// <exception cref="NotSupportedException">The format cannot express a part; the message names it.</exception>
    public static (string Json, string Csv) Write(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return SiteFormat.Texts(site, ScheduleWriter.RowsOf(site));
    }
}
