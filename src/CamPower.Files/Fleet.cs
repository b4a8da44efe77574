using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Threading;
using System.Threading.Tasks;
using CamPower.Files.Fleets;

namespace CamPower.Files;

/// <summary>Many sites, read from a stream or a folder and checked on all cores.</summary>
/// <remarks>Stateless. Sites come back in the order of the documents, one by one, while later ones are being checked: who
/// enumerates them sees the progress, and holds no more than it keeps.</remarks>
/// <example>
/// <code>
/// var summary = new FleetSummary();
/// foreach (CheckedSite site in Fleet.Check(Fleet.ReadLines(stream), RuleSet.Standard)) summary.Add(site);
/// Console.WriteLine(summary);
/// </code>
/// </example>
public static class Fleet
{
    // So many that a slow site seldom keeps the others waiting, so few that memory does not count.
    private const int DocumentsACore = 16;

    /// <summary>The documents of a stream with one site file a line (JSON Lines). Each is named after its line: <c>line 17</c>.</summary>
    /// <param name="utf8Lines">The stream, read while the documents are enumerated, and left open. Empty lines are
    /// passed over.</param>
    /// <param name="options">Limits of a site file; null for <see cref="SiteFileOptions.Default"/>. Of a longer line no more is
    /// kept.</param>
    /// <exception cref="ArgumentNullException"><paramref name="utf8Lines"/> is null.</exception>
    /// <exception cref="IOException">The stream cannot be read (when enumerated).</exception>
    public static IEnumerable<SiteDocument> ReadLines(Stream utf8Lines, SiteFileOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(utf8Lines);
        return LineReader.Read(utf8Lines, (options ?? SiteFileOptions.Default).MaxBytes)
            .Select((line, i) => (Line: line, Name: FormattableString.Invariant($"line {i + 1}")))
            .Where(numbered => !IsBlank(numbered.Line))
            .Select(numbered => new SiteDocument(numbered.Name, numbered.Line));
    }

    /// <summary>The documents of a folder: its files <c>*.json</c>, by name in ordinal order, those of folders inside it not.</summary>
    /// <param name="path">The folder. Each file is opened when its site is checked; one that cannot be opened is an error
    /// of its site.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is null or empty.</exception>
    /// <exception cref="IOException">The folder cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be read.</exception>
    public static IEnumerable<SiteDocument> ReadFolder(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return Directory.GetFiles(path, "*.json").Order(StringComparer.Ordinal).Select(SiteDocument.OfFile);
    }

    /// <summary>Reads, assesses and checks sites on all cores.</summary>
    /// <param name="documents">The documents, enumerated on the caller's thread, a few ahead of what is given back.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="options">Limits of a site file; null for <see cref="SiteFileOptions.Default"/>.</param>
    /// <param name="cancellationToken">Stops it: sites that have not begun are not checked.</param>
    /// <returns>The sites in the order of the documents, as they are done. One that cannot be read or checked says why, and
    /// the others go on. Who stops enumerating stops it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="documents"/> or <paramref name="rules"/> is null.</exception>
    /// <exception cref="OperationCanceledException">It was stopped (when enumerated).</exception>
    public static IEnumerable<CheckedSite> Check(IEnumerable<SiteDocument> documents, RuleSet rules, SiteFileOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(documents);
        ArgumentNullException.ThrowIfNull(rules);
        return CheckInOrder(documents, rules, options, cancellationToken);
    }

    // A window over the documents: the first of it is waited for while the others are being checked.
    private static IEnumerable<CheckedSite> CheckInOrder(IEnumerable<SiteDocument> documents, RuleSet rules, SiteFileOptions? options,
        CancellationToken cancellationToken)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        CancellationToken stopped = stop.Token;
        var window = new Queue<Task<CheckedSite>>();
        try
        {
            foreach (SiteDocument document in documents)
            {
                window.Enqueue(Task.Run(() => document.Check(rules, options), stopped));
                if (window.Count >= DocumentsACore * Environment.ProcessorCount) yield return First();
            }

            while (window.Count > 0) yield return First();
        }
        finally
        {
            stop.Cancel();
        }

        CheckedSite First()
        {
            cancellationToken.ThrowIfCancellationRequested();
            return window.Dequeue().GetAwaiter().GetResult();
        }
    }

    private static bool IsBlank(byte[] line) => Array.TrueForAll(line, b => b is (byte)' ' or (byte)'\t' or (byte)'\r');
}
