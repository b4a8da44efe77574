using System;
using CamPower.Checks;

namespace CamPower;

/// <summary>Something that no number tells and only a person can answer, by looking at it, pulling at it or measuring it on site.</summary>
/// <remarks>Immutable. A <see cref="Rule"/> works its findings out of a site's data; an inspection has no answer until somebody has been
/// there.</remarks>
/// <example>
/// <code>
/// foreach (Inspection item in InspectionList.Standard.Items) Console.WriteLine($"[ ] {item.Look}\n    {item.Why} {item.Caution}");
/// </code>
/// </example>
public sealed class Inspection
{
    /// <summary>States an inspection.</summary>
    /// <param name="id">Identifier in words: small letters, digits and hyphens.</param>
    /// <param name="look">What to look at and what should be seen, in a sentence.</param>
    /// <param name="why">What happens otherwise, in a sentence.</param>
    /// <param name="caution">What to mind while looking, in a sentence.</param>
    /// <param name="source">Where the demand comes from.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or the identifier holds anything else than small letters, digits and
    /// hyphens.</exception>
    public Inspection(string id, string look, string why, string caution, Citation source)
    {
        Id = Identifier.Of(id, nameof(id));
        Look = Require.Name(look, nameof(look));
        Why = Require.Name(why, nameof(why));
        Caution = Require.Name(caution, nameof(caution));
        Source = Require.NotNull(source, nameof(source));
    }

    /// <summary>Identifier in words.</summary>
    public string Id { get; }

    /// <summary>What to look at and what should be seen.</summary>
    public string Look { get; }

    /// <summary>What happens otherwise.</summary>
    public string Why { get; }

    /// <summary>What to mind while looking.</summary>
    public string Caution { get; }

    /// <summary>Where the demand comes from.</summary>
    public Citation Source { get; }

    /// <summary>The identifier; never throws.</summary>
    public override string ToString() => Id;
}
