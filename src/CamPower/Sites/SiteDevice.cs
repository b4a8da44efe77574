using System;

namespace CamPower;

/// <summary>A device on a site.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SiteDevice
{
    /// <summary>Places a device.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="model">What it is.</param>
    /// <param name="at">Name of the junction that it is connected to. Not empty.</param>
    /// <param name="leadsReversed">Whether its leads were seen or measured to be reversed: positive on its negative terminal.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    public SiteDevice(string name, Device model, string at, bool leadsReversed = false)
    {
        Name = Require.Name(name, nameof(name));
        Model = Require.NotNull(model, nameof(model));
        At = Require.Name(at, nameof(at));
        LeadsReversed = leadsReversed;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; }

    /// <summary>Model of the device.</summary>
    public Device Model { get; }

    /// <summary>Name of the junction that it is connected to.</summary>
    public string At { get; }

    /// <summary>Whether its leads were seen or measured to be reversed: positive on its negative terminal.</summary>
    /// <remarks>On direct current nothing is worked out for such a device, for it does not run. Alternating current has no
    /// polarity.</remarks>
    public bool LeadsReversed { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>The same device at another junction.</summary>
    internal SiteDevice MovedTo(string at) => new(Name, Model, at, LeadsReversed);
}
