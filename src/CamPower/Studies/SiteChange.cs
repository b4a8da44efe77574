using System;
using System.Collections.Generic;

namespace CamPower;

/// <summary>One change to a site: what to do to which part, and what it costs.</summary>
/// <remarks>Immutable. <see cref="Remedy"/> and <see cref="SiteRepair"/> hold those that were tried.</remarks>
/// <example><code>Site changed = remedy.Changes[0].ApplyTo(site);</code></example>
public sealed class SiteChange
{
    private readonly Func<Site, Site> _apply;

    internal SiteChange(string text, double cost, IReadOnlyCollection<string> parts, Func<Site, Site> apply,
        (string Added, string Like)? twin = null)
    {
        Text = text;
        Cost = cost;
        Parts = parts;
        _apply = apply;
        Twin = twin;
    }

    /// <summary>What to do, in a sentence.</summary>
    public string Text { get; }

    /// <summary>What it costs: parts and work, in the unit of the price list.</summary>
    public double Cost { get; }

    /// <summary>What it changes: two changes to one part do not go together.</summary>
    internal IReadOnlyCollection<string> Parts { get; }

    /// <summary>The box that a second one is like, by the name of that one; null where no box is added.</summary>
    internal (string Added, string Like)? Twin { get; }

    /// <summary>The site with this change.</summary>
    /// <param name="site">The site that it was found for, with or without other changes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="site"/> is null.</exception>
    /// <exception cref="ArgumentException">The site lacks what is changed.</exception>
    public Site ApplyTo(Site site) => _apply(Require.NotNull(site, nameof(site)));

    /// <summary>What to do; never throws.</summary>
    public override string ToString() => Text;
}
