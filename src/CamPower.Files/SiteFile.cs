using System;
using System.Collections.Generic;
using System.IO;
using System.Text;
using CamPower.Files.Formats;
using CamPower.Files.Parts;
using CamPower.Files.Schedules;

namespace CamPower.Files;

/// <summary>Reads and writes site files: JSON with quantities as people write them.</summary>
/// <remarks>Stateless; every member may be called from many threads at once, in any culture.</remarks>
/// <example>
/// <code>
/// SiteFileResult result = SiteFile.Read(File.ReadAllText("yard.json"));
/// if (result.TryGetSite(out Site? site)) Console.WriteLine(site.Assess().Devices.Count);
/// else foreach (SiteFileError error in result.Errors) Console.WriteLine(error);
/// </code>
/// </example>
public static class SiteFile
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The JSON Schema of site files, draft 2020-12, generated from the types that the reader follows.</summary>
    /// <remarks>It says which members there are and how each is written. What only the whole file can tell, such as a
    /// reference to nothing, is for <see cref="Read(string)"/> to find.</remarks>
    public static string Schema => SiteFormat.Schema.Value;

    /// <summary>Reads a site from the text of a file, within the limits of <see cref="SiteFileOptions.Default"/>.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The site, or every error of the file. What a file holds never throws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="json"/> is null.</exception>
    public static SiteFileResult Read(string json) => Read(json, SiteFileOptions.Default);

    /// <summary>Reads a site from the text of a file.</summary>
    /// <param name="json">The text.</param>
    /// <param name="options">The limits.</param>
    /// <returns>The site, or every error of the file. What a file holds never throws.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static SiteFileResult Read(string json, SiteFileOptions options)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(options);
        return ReadText(json, csv: null, options);
    }

    private static SiteFileResult ReadText(string json, string? csv, SiteFileOptions options)
    {
        if (json.Length > options.MaxBytes) return TooLarge(options);
        try
        {
            return Read(StrictUtf8.GetBytes(json), options, csv);
        }
        catch (EncoderFallbackException e)
        {
            var before = new SourceText(Encoding.UTF8.GetBytes(json[..e.Index]));
            return OneError(before, before.Bytes.Length, "this is not JSON: half of a surrogate pair is alone here");
        }
    }

    /// <summary>Reads a site from a stream of UTF-8, within the limits of <see cref="SiteFileOptions.Default"/>.</summary>
    /// <param name="utf8Json">The stream, read from its position to its end, and left open.</param>
    /// <returns>The site, or every error of the file. What a file holds never throws.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="utf8Json"/> is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static SiteFileResult Read(Stream utf8Json) => Read(utf8Json, SiteFileOptions.Default);

    /// <summary>Reads a site from a stream of UTF-8.</summary>
    /// <param name="utf8Json">The stream, read from its position to its end or to the limit, and left open.</param>
    /// <param name="options">The limits.</param>
    /// <returns>The site, or every error of the file. What a file holds never throws.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static SiteFileResult Read(Stream utf8Json, SiteFileOptions options)
    {
        ArgumentNullException.ThrowIfNull(utf8Json);
        ArgumentNullException.ThrowIfNull(options);
        return Read(Bytes(utf8Json, options), options);
    }

    /// <summary>Writes a site as the text of a file: indented, lines ended by LF, the same text for the same site.</summary>
    /// <param name="site">The site. Reading the text gives it back, each quantity with its number and unit.</param>
    /// <returns>The text. Cables and models are in the order of their first use, equal ones once; a cable without a
    /// name is named by its conductors.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <exception cref="ArgumentException">Two cables, or two models, that differ have the same name; or a name is no
    /// valid Unicode or holds a control or direction character.</exception>
    /// <exception cref="NotSupportedException">The format cannot express a part: a material, stranding or unit that it
    /// does not know. The message names it.</exception>
    public static string Write(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return SiteFormat.Text(site);
    }

    /// <summary>Reads a site file with a schedule.</summary>
    internal static SiteFileResult Read(string json, string csv, SiteFileOptions options)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(csv);
        if (csv.Length > options.MaxBytes) return TooLarge(options, "schedule");
        return ReadText(json, csv, options);
    }

    /// <inheritdoc cref="Read(string, string, SiteFileOptions)"/>
    internal static SiteFileResult Read(Stream utf8Json, Stream utf8Csv, SiteFileOptions options)
    {
        ArgumentNullException.ThrowIfNull(utf8Json);
        ArgumentNullException.ThrowIfNull(utf8Csv);
        byte[] csv = Bytes(utf8Csv, options);
        if (csv.Length > options.MaxBytes) return TooLarge(options, "schedule");
        try
        {
            return Read(Bytes(utf8Json, options), options, StrictUtf8.GetString(csv));
        }
        catch (DecoderFallbackException)
        {
            return OneError(new SourceText(default), 0, "the schedule is not UTF-8; save it as CSV UTF-8");
        }
    }

    private static byte[] Bytes(Stream stream, SiteFileOptions options)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[16 * 1024];
        for (int read; bytes.Length <= options.MaxBytes && (read = stream.Read(buffer)) > 0;) bytes.Write(buffer, 0, read);
        return bytes.ToArray();
    }

    /// <summary>Reads a site from UTF-8 in memory.</summary>
    internal static SiteFileResult Read(ReadOnlyMemory<byte> utf8, SiteFileOptions options, string? csv = null)
    {
        if (utf8.Length > options.MaxBytes) return TooLarge(options);
        // Some editors write a byte-order mark before the text: it is not part of it.
        ReadOnlyMemory<byte> text = utf8[(utf8.Span.StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0)..];
        var reading = new SiteReading(new SourceText(text), options.MaxDepth);
        Place? root = JsonTree.Read(reading);
        if (root is not null && csv is not null) ScheduleReading.Add(csv, root);
        Site? site = root is null ? null : SiteFormat.Read(root);
        IReadOnlyList<SiteFileError> errors = reading.Errors();
        return new SiteFileResult(errors.Count == 0 ? site : null, errors);
    }

    private static SiteFileResult TooLarge(SiteFileOptions options, string what = "file") => OneError(new SourceText(default), 0,
        FormattableString.Invariant($"the {what} is too large: more than {options.MaxBytes} bytes are not read"));

    private static SiteFileResult OneError(SourceText source, int offset, string message)
    {
        var reading = new SiteReading(source, maxDepth: 1);
        reading.Add(message, offset);
        return new SiteFileResult(null, reading.Errors());
    }
}
