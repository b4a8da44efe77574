using System;
using CamPower.Checks;

namespace CamPower;

/// <summary>A check that a person must do on site: look, pull or measure.</summary>
/// <remarks>Immutable. A <see cref="Rule"/> finds its answers in the data of a site; an inspection has no answer until a person has done
/// it.</remarks>
/// <example>
/// <code>
/// foreach (Inspection item in InspectionList.Standard.Items) Console.WriteLine($"[ ] {item.Look}\n    {item.Why} {item.Caution}");
/// </code>
/// </example>
public sealed class Inspection
{
    /// <summary>States an inspection.</summary>
    /// <param name="id">Identifier in words: lowercase letters, digits and hyphens.</param>
    /// <param name="look">What to do and what the result should be. Not empty.</param>
    /// <param name="why">What happens otherwise. Not empty.</param>
    /// <param name="caution">What to take care of during the inspection. Not empty.</param>
    /// <param name="source">Source of the requirement.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, or the identifier has characters other than lowercase letters, digits and
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

    /// <summary>The inspection: an action and its expected result.</summary>
    public string Look { get; }

    /// <summary>What happens otherwise.</summary>
    public string Why { get; }

    /// <summary>What to take care of during the inspection.</summary>
    public string Caution { get; }

    /// <summary>Source of the requirement.</summary>
    public Citation Source { get; }

    /// <summary>The identifier; never throws.</summary>
    public override string ToString() => Id;
}
