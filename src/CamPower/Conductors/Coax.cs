using System;

namespace CamPower;

/// <summary>The coaxial cable that some power pairs are bundled with: its center conductor and its shield.</summary>
/// <remarks>
/// Immutable. No supply current is meant for it, but where a camera's power negative and its video shield both return
/// to the head end, the return current divides between them by their conductances.
/// </remarks>
/// <example><code>LinearResistance shield = cable.Coax!.Shield.ResistancePerLengthAt(Temperature.FromDegreesCelsius(20));</code></example>
public sealed class Coax
{
    /// <summary>Describes a coaxial cable.</summary>
    /// <param name="name">How it is called. Not empty.</param>
    /// <param name="center">The center conductor.</param>
    /// <param name="shield">The shield, as a conductor of the same resistance.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public Coax(string name, Conductor center, Conductor shield)
    {
        Name = Require.Name(name, nameof(name));
        Center = Require.NotNull(center, nameof(center));
        Shield = Require.NotNull(shield, nameof(shield));
    }

    /// <summary>How it is called.</summary>
    public string Name { get; }

    /// <summary>The center conductor.</summary>
    public Conductor Center { get; }

    /// <summary>The shield, as a conductor of the same resistance.</summary>
    public Conductor Shield { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
