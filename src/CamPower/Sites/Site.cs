using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;
using UnitsNet;

namespace CamPower;

/// <summary>An installation: boxes, runs and devices, and the conditions that they must survive.</summary>
/// <remarks>Immutable plain data. Solving it is <c>Assess</c>.</remarks>
/// <example>
/// <code>
/// var site = new Site("boat shed", [Condition.Night(cool)], [box],
///     [new SiteRun(RunOrigin.Output("box", 1), "door", run)], [new SiteDevice("door camera", dome, at: "door")]);
/// </code>
/// </example>
public sealed class Site
{
    /// <summary>Describes a site.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="conditions">The conditions that it must survive; at least one.</param>
    /// <param name="boxes">Its boxes and adapters.</param>
    /// <param name="runs">Its runs.</param>
    /// <param name="devices">Its devices; the inputs of converters are added by themselves.</param>
    /// <param name="videoLinks">The shields of its video cables, where they carry return current; null for none.</param>
    /// <param name="bonds">The bonds between grounds and boxes; null for none.</param>
    /// <param name="altitude">Its height above the sea, from -500 m to 9000 m; null where it does not matter: no supply is derated by it
    /// then. [m]</param>
    /// <param name="ties">Outputs that are joined; null for none.</param>
    /// <param name="energyPrice">What a kilowatt-hour from the mains costs; null where it is not stated.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, there is no condition, or the parts do not make up a site: a
    /// name is used twice, something names what is not there, a run is not fed by one box. The message lists every such error; the inner
    /// <see cref="AggregateException"/> holds an exception for each, with the place as its parameter: "runs[3].From".</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="altitude"/> is outside its range.</exception>
    public Site(string name, IEnumerable<Condition> conditions, IEnumerable<DistributionBox> boxes, IEnumerable<SiteRun> runs,
        IEnumerable<SiteDevice> devices, IEnumerable<VideoLink>? videoLinks = null, IEnumerable<GroundBond>? bonds = null,
        Length? altitude = null, IEnumerable<OutputTie>? ties = null, EnergyPrice? energyPrice = null)
    {
        Name = Require.Name(name, nameof(name));
        Conditions = Require.Items(conditions, nameof(conditions));
        Boxes = Require.Items(boxes, nameof(boxes));
        Runs = Require.Items(runs, nameof(runs));
        Devices = WithConverterInputs(Require.Items(devices, nameof(devices)));
        VideoLinks = Require.Items(videoLinks ?? [], nameof(videoLinks));
        Bonds = Require.Items(bonds ?? [], nameof(bonds));
        Ties = Require.Items(ties ?? [], nameof(ties));
        if (Conditions.Count == 0) throw new ArgumentException("A site needs at least one condition.", nameof(conditions));
        Index = new SiteIndex(this);
        SiteError[] errors = [.. new SiteStructure(this).Errors()];
        if (errors.Length > 0)
        {
            throw new ArgumentException($"The parts do not make up a site: {string.Join("; ", errors.AsEnumerable())}.",
                nameof(runs), new AggregateException(errors.Select(e => e.Exception)));
        }

        Cabinets = Boxes.Select(b => b.Cabinet).OfType<Cabinet>().Distinct().ToList().AsReadOnly();
        Altitude = altitude;
        EnergyPrice = energyPrice;
        AltitudeMeters = altitude is Length height ? AltitudeDerating.MetersOf(height, nameof(altitude)) : 0;
        Feeds = FeedGroup.AllOf(this);
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>The conditions that it must survive.</summary>
    public IReadOnlyList<Condition> Conditions { get; }

    /// <summary>Its boxes and adapters.</summary>
    public IReadOnlyList<DistributionBox> Boxes { get; }

    /// <summary>The cabinets that its boxes are in, in the order of these.</summary>
    public IReadOnlyList<Cabinet> Cabinets { get; }

    /// <summary>Its runs.</summary>
    public IReadOnlyList<SiteRun> Runs { get; }

    /// <summary>Its devices; the inputs of converters come last, each under the name of its box.</summary>
    public IReadOnlyList<SiteDevice> Devices { get; }

    /// <summary>The shields of its video cables, where they carry return current.</summary>
    public IReadOnlyList<VideoLink> VideoLinks { get; }

    /// <summary>The bonds between grounds and boxes.</summary>
    public IReadOnlyList<GroundBond> Bonds { get; }

    /// <summary>Outputs that are joined.</summary>
    public IReadOnlyList<OutputTie> Ties { get; }

    /// <summary>Its height above the sea; null where it does not matter: no supply is derated by it then. [m]</summary>
    public Length? Altitude { get; }

    /// <summary>What a kilowatt-hour from the mains costs; null where it is not stated.</summary>
    public EnergyPrice? EnergyPrice { get; }

    internal double AltitudeMeters { get; }

    /// <summary>Where each name of its parts leads.</summary>
    internal SiteIndex Index { get; }

    /// <summary>What its used outputs feed: one output a group, or several whose returns meet.</summary>
    internal IReadOnlyList<FeedGroup> Feeds { get; }

    /// <summary>The same site with another box in the place of the one of its name.</summary>
    /// <param name="box">The other box.</param>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    /// <exception cref="ArgumentException">No box has that name, or a run starts at an output that the other box does not have.</exception>
    /// <example>
    /// <code>
    /// Site raised = site.With(box.WithSetPoint(ElectricPotential.FromVolts(13.2)));
    /// </code>
    /// </example>
    public Site With(DistributionBox box)
    {
        DistributionBox replaced = BoxNamed(Require.NotNull(box, nameof(box)).Name, nameof(box));

        // What another converter gives changes what its input draws, and what those before it do.
        bool isConverter = box.FedFrom is not null || replaced.FedFrom is not null;
        return With(boxes: Boxes.Select(b => ReferenceEquals(b, replaced) ? box : b),
            devices: isConverter ? Devices.Where(d => d.Model.Kind != DeviceKind.Converter) : null);
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>The same site with other parts in the place of its own; those that are not given stay.</summary>
    internal Site With(IEnumerable<Condition>? conditions = null, IEnumerable<DistributionBox>? boxes = null,
        IEnumerable<SiteRun>? runs = null, IEnumerable<SiteDevice>? devices = null,
        IEnumerable<VideoLink>? videoLinks = null, IEnumerable<GroundBond>? bonds = null, IEnumerable<OutputTie>? ties = null) => new(
        Name, conditions ?? Conditions, boxes ?? Boxes, runs ?? Runs, devices ?? Devices,
        videoLinks ?? VideoLinks, bonds ?? Bonds, Altitude, ties ?? Ties, EnergyPrice);

    // Those of a site that this one was made of are kept: what is behind them may be solved already.
    private IReadOnlyList<SiteDevice> WithConverterInputs(IReadOnlyList<SiteDevice> devices)
    {
        DistributionBox[] converters = [.. Boxes.Where(b => b.FedFrom is not null)];
        if (converters.Length == 0 && devices.All(d => d.Model.Kind != DeviceKind.Converter)) return devices;
        Dictionary<string, SiteDevice> known = devices.Where(d => d.Model.Kind == DeviceKind.Converter)
            .ToDictionary(d => d.Name, StringComparer.Ordinal);
        return Array.AsReadOnly([.. devices.Where(d => d.Model.Kind != DeviceKind.Converter), .. converters.Select(box =>
            known.TryGetValue(box.Name, out SiteDevice? input)
                ? input
                : new SiteDevice(box.Name, box.InputModel(new Dictionary<Condition, Load>()), box.FedFrom!))]);
    }

    /// <summary>The box of a name.</summary>
    internal DistributionBox BoxNamed(string name, string parameter) =>
        Index.Box(Require.Name(name, parameter)) ?? throw new ArgumentException($"The site {Name} has no box named {name}.", parameter);
}
