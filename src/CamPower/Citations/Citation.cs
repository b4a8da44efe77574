using System;
using System.Text;

namespace CamPower;

/// <summary>Where a constant, a limit or a formula comes from.</summary>
/// <remarks>Immutable. The citations that the package itself uses are in <see cref="Sources"/>.</remarks>
/// <example><code>var mine = new Citation("Data sheet of the dome", CitationKind.Declared, locator: "p. 3");</code></example>
public sealed class Citation
{
    /// <summary>Creates a citation.</summary>
    /// <param name="title">The publication, or what kind of knowledge it is. Not empty.</param>
    /// <param name="kind">How far it can be trusted.</param>
    /// <param name="edition">The edition or year, if the publication has one.</param>
    /// <param name="locator">The table, clause or page.</param>
    /// <exception cref="ArgumentNullException"><paramref name="title"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public Citation(string title, CitationKind kind, string? edition = null, string? locator = null)
    {
        Title = Require.Name(title, nameof(title));
        Kind = kind;
        Edition = edition;
        Locator = locator;
    }

    /// <summary>The publication, or what kind of knowledge it is.</summary>
    public string Title { get; }

    /// <summary>The edition or year, or null.</summary>
    public string? Edition { get; }

    /// <summary>The table, clause or page, or null.</summary>
    public string? Locator { get; }

    /// <summary>Kind of the source: how far it can be trusted.</summary>
    public CitationKind Kind { get; }

    /// <summary>Title, edition, locator and, where it matters, the kind, in one line; never throws.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Title);
        if (Edition is not null) text.Append(" (").Append(Edition).Append(')');
        if (Locator is not null) text.Append(", ").Append(Locator);
        if (Kind == CitationKind.FromMemory) text.Append(" [from memory]");
        return text.ToString();
    }
}
