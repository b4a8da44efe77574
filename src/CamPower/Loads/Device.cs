using System;
using CamPower.Loads;

namespace CamPower;

/// <summary>A model of camera or other device, as its data sheet describes it.</summary>
/// <remarks>Immutable. It accepts DC, AC or both, each in its own range.</remarks>
/// <example>
/// <code>
/// var dome = new Device("infrared dome", DeviceKind.Camera,
///     new ComponentDraw(Load.ConstantPower(Power.FromWatts(4)), infrared: Load.ConstantPower(Power.FromWatts(5))),
///     dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)));
/// </code>
/// </example>
public sealed class Device
{
    /// <summary>Describes a model.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="kind">What it is for.</param>
    /// <param name="draw">What it draws.</param>
    /// <param name="dcInput">The DC voltage that it accepts; null for none.</param>
    /// <param name="acInput">The AC voltage that it accepts, RMS; null for none.</param>
    /// <param name="starting">When it turns on and drops out; null when that is not known.</param>
    /// <param name="connector">The connector at which it takes its power; null where it is not stated.</param>
    /// <param name="inrush">What its input draws in the first moments when power comes; null where it is not stated.</param>
    /// <param name="switchedInrush">What it draws in the first moments when its illuminators or motors are switched on while it runs; null
    /// where it is not stated.</param>
    /// <param name="acStage">What is behind its terminals on AC; null where it is not stated, which leaves its current there
    /// unknown.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> or <paramref name="draw"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or neither input is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a defined value.</exception>
    public Device(string name, DeviceKind kind, Draw draw, VoltageRange? dcInput = null, VoltageRange? acInput = null,
        Starting? starting = null, Connector? connector = null, Inrush? inrush = null, Inrush? switchedInrush = null,
        AcStage? acStage = null)
    {
        Name = Require.Name(name, nameof(name));
        Kind = Require.Known(kind, nameof(kind));
        if (kind == DeviceKind.Converter && draw is not ConverterDraw)
        {
            throw new ArgumentOutOfRangeException(nameof(kind), kind, "A converter is a box with a feed: see DistributionBox.WithFeed.");
        }

        Draw = Require.NotNull(draw, nameof(draw));
        if (dcInput is null && acInput is null)
        {
            throw new ArgumentException("A device needs a DC input, an AC input or both.", nameof(dcInput));
        }

        DcInput = dcInput;
        AcInput = acInput;
        Starting = starting;
        Connector = connector;
        Inrush = inrush;
        SwitchedInrush = switchedInrush;
        AcStage = acStage;
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>Kind of the device.</summary>
    public DeviceKind Kind { get; }

    /// <summary>What it draws.</summary>
    public Draw Draw { get; }

    /// <summary>The DC voltage that it accepts, or null.</summary>
    public VoltageRange? DcInput { get; }

    /// <summary>The AC voltage that it accepts, RMS, or null.</summary>
    public VoltageRange? AcInput { get; }

    /// <summary>When it turns on and drops out, or null when that is not known.</summary>
    public Starting? Starting { get; }

    /// <summary>The connector at which it takes its power, or null where it is not stated.</summary>
    public Connector? Connector { get; }

    /// <summary>What its input draws in the first moments when power comes, or null where it is not stated.</summary>
    public Inrush? Inrush { get; }

    /// <summary>What it draws above its running current in the first moments when its illuminators or motors are switched on while it runs,
    /// or null where it is not stated.</summary>
    public Inrush? SwitchedInrush { get; }

    /// <summary>What is behind its terminals on AC, or null where it is not stated.</summary>
    public AcStage? AcStage { get; }

    /// <summary>The range for a kind of current, or null where the device does not accept it.</summary>
    /// <param name="current">Direct or alternating.</param>
    public VoltageRange? InputFor(CurrentKind current) => current == CurrentKind.Dc ? DcInput : AcInput;

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;
}
