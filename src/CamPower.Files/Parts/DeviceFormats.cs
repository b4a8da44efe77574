using System;
using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Models of camera and other device, and the devices of a site.</summary>
internal static class DeviceFormats
{
    /// <summary>A range of voltages.</summary>
    internal static ObjectFormat<VoltageRange> VoltageRange { get; } = new(o =>
    {
        var lowest = o.Required("lowest", "The lowest voltage.", Quantities.Voltage, r => r.Lowest).Else(StandIn.LowVoltage);
        var highest = o.Required("highest", "The highest voltage.", Quantities.Voltage, r => r.Highest).Else(StandIn.HighVoltage);
        return at => new VoltageRange(lowest[at], highest[at]);
    }) { Else = StandIn.Range };

    /// <summary>The wires that a terminal or connector takes.</summary>
    internal static ObjectFormat<TerminalRange> Wires { get; } = new(o =>
    {
        var smallest = o.Required("smallest", "The smallest wire that they hold.", Quantities.WireSize, r => r.Smallest)
            .Else(StandIn.ThinWire);
        var largest = o.Required("largest", "The largest wire that fits.", Quantities.WireSize, r => r.Largest).Else(StandIn.ThickWire);
        return at => new TerminalRange(smallest[at], largest[at]);
    });

    private static readonly ObjectFormat<ComponentDraw> Components = new(o =>
    {
        var always = o.Required("base", "What it always draws.", Quantities.Load, d => d.Base);
        var infrared = o.Optional("infrared", "What the illuminators add.", Quantities.Load, d => IfAny(d.Infrared));
        var motor = o.Optional("motor", "What the motors add while they move.", Quantities.Load, d => d.HasMotor ? d.Motor : null);
        var heater = o.Optional("heater", "What the heater adds.", Quantities.Load, d => IfAny(d.Heater));
        var startUp = o.Optional("startUp", "What it draws above the base while it starts.", Quantities.Load, d => IfAny(d.StartUp));
        return at => new ComponentDraw(always[at], infrared[at], motor[at], heater[at], startUp[at]);
    });

    private static readonly ObjectFormat<LabelDraw> Label = new(o =>
    {
        var voltage = o.Required("voltage", "The voltage that the label states.", Quantities.Voltage, l => l.Voltage);
        var current = o.Required("current", "The current that the label states.", Quantities.Current, l => l.Current)
            .Else(ElectricCurrent.Zero);
        var stage = o.Required("stage", "What is behind the input terminals.", Words.Stage, l => l.Stage);
        return at => new LabelDraw(voltage[at], current[at], stage[at]);
    });

    /// <summary>When an input turns on and drops out.</summary>
    internal static readonly ObjectFormat<Starting> Starting = new(o =>
    {
        var turnOn = o.Required("turnOn", "Rising terminal voltage at which it starts.", Quantities.Voltage, s => s.TurnOn)
            .Else(StandIn.HighVoltage);
        var dropOut = o.Required("dropOut", "Falling terminal voltage at which it stops.", Quantities.Voltage, s => s.DropOut)
            .Else(StandIn.LowVoltage);
        var softStart = o.Required("softStart", "Whether the draw ramps up.", Words.SoftStart, s => s.HasSoftStart);
        var delay = o.Optional("delay", "How long it waits after power comes before it draws.", Quantities.Duration, s => s.Delay);
        var holdUp = o.Optional("holdUp", "How long it runs on without power.", Quantities.Duration, s => s.HoldUp);
        return at => new Starting(turnOn[at], dropOut[at], softStart[at], delay[at], holdUp[at]);
    });

    private static readonly ObjectFormat<Connector> Connector = new(o =>
    {
        var usual = o.OfForm("usual", "A connector from the catalog of the library.", Words.UsualConnector, UsualOf);
        var name = o.OfForm("name", "Its name.", Words.Name, c => UsualOf(c) is null ? c.Name : null);
        var ratedCurrent = o.OfForm("ratedCurrent", "What each of its contacts carries all the time.", Quantities.Current,
            c => UsualOf(c) is null ? c.RatedCurrent : null);
        var voltageClass = o.Optional("voltageClass", "The supply voltages that it is meant for.", VoltageRange,
            c => UsualOf(c) is null ? c.VoltageClass : null);
        var wires = o.Optional("wires", "The wire that it takes.", Wires,
            c => ReferenceEquals(c.Wires, UsualOf(c)?.Wires) ? null : c.Wires);
        o.OneOf(new Form(usual), new Form(name, ratedCurrent) { Optional = voltageClass });
        return at =>
        {
            if (!usual.IsGiven(at)) return new Connector(name[at], Sources.ConnectorRating, ratedCurrent[at], voltageClass[at], wires[at]);

            // What the file states itself replaces what the catalog says.
            Connector known = usual[at];
            return wires[at] is null ? known : new Connector(known.Name, known.Source, known.RatedCurrent, known.VoltageClass, wires[at]);
        };
    });

    /// <summary>The format of an input's inrush.</summary>
    internal static readonly ObjectFormat<Inrush> Inrush = new(o =>
    {
        var peak = o.Required("peak", "The largest current.", Quantities.Current, i => i.Peak);
        var duration = o.OfForm("duration", "How long until it is over.", Quantities.Duration, i => i.Duration);
        var integral = o.OfForm("integral", "Its I2t.", Quantities.JouleIntegral, i => i.Duration is null ? i.Integral : null);
        o.OneOf(new Form(duration), new Form(integral));
        return at => integral.IsGiven(at) ? new Inrush(peak[at], integral[at]) : new Inrush(peak[at], duration[at]);
    }) { Else = StandIn.Inrush };

    private static readonly ObjectFormat<AcStage> AcStage = new(o =>
    {
        var rectifier = o.OfForm("rectifier", "A rectifier with a capacitor.", Words.Rectifier,
            s => s.IsRectifier ? s.IsHalfWave : null);
        var capacitance = o.Optional("capacitance", "Capacitance behind the rectifier; left out where it is not stated.",
            Quantities.Capacitance, s => s.Capacitance);
        var powerFactor = o.OfForm("powerFactor", "The power factor of a linear input: 100 % for a resistor, less where its current lags.",
            Quantities.Share, s => s.PowerFactor).Else(Ratio.FromPercent(100));
        o.OneOf(new Form(rectifier) { Optional = capacitance }, new Form(powerFactor));
        return at => !rectifier.IsGiven(at) ? CamPower.AcStage.Lagging(powerFactor[at])
            : rectifier[at] ? CamPower.AcStage.HalfWave(capacitance[at]) : CamPower.AcStage.FullWave(capacitance[at]);
    }) { Else = CamPower.AcStage.Resistive };

    private static readonly ObjectFormat<Device> Model = new(o =>
    {
        var name = o.Required("name", "The name by which devices refer to it.", Words.Name, m => m.Name);
        var kind = o.Required("kind", "What kind of device it is.", Words.DeviceKind, m => m.Kind);
        var dc = o.Optional("dc", "The DC voltage that it accepts.", VoltageRange, m => m.DcInput).Parameter("dcInput");
        var ac = o.Optional("ac", "The AC voltage that it accepts, RMS.", VoltageRange, m => m.AcInput).Parameter("acInput");
        var draw = o.OfForm("draw", "What it draws, in components: in W constant power, in A constant current, in ohm constant resistance.",
            Components, m => m.Draw as ComponentDraw);
        var label = o.OfForm("label", "What its label says it draws: a total in the worst condition.", Label, m => m.Draw as LabelDraw);
        var starting = o.Optional("starting", "When it turns on and drops out.", Starting, m => m.Starting);
        var connector = o.Optional("connector", "The connector at which it takes its power.", Connector, m => m.Connector);
        var inrush = o.Optional("inrush", "What its input draws in the first moments; left out where it is not stated.", Inrush,
            m => m.Inrush);
        var switchedInrush = o.Optional("switchedInrush",
            "What it draws above its running current in the first moments when its illuminators or motors are switched on.", Inrush,
            m => m.SwitchedInrush);
        var acStage = o.Optional(
            "acStage", "What is behind its terminals on AC; left out where it is not stated.", AcStage, m => m.AcStage);
        o.OneOf(new Form(draw), new Form(label));
        return at => new Device(
            name[at], kind[at], label.IsGiven(at) && !draw.IsGiven(at) ? label[at] : draw[at],
            at[dc].HasError ? StandIn.Range : dc[at], ac[at], starting[at], connector[at], inrush[at], switchedInrush[at], acStage[at]);
    }) { Else = new Device("stand-in", DeviceKind.Other, new ComponentDraw(Load.None), StandIn.Range) };

    /// <summary>The models of the devices.</summary>
    internal static PartList<Device> Models { get; } = new("model", Model, m => m.Name);

    /// <summary>A device on the site.</summary>
    internal static ObjectFormat<SiteDevice> Device { get; } = new(o =>
    {
        var name = o.Required("name", "Its name on the site.", Words.Name, d => d.Name);
        var model = o.Required("model", "Name of its model.", Models.Reference, d => d.Model);
        var junction = o.Required("at", "Name of the junction that it is connected to.", Words.Name, d => d.At);
        var reversed = o.Optional("leadsReversed", "True where its leads were seen or measured to be reversed.", Words.YesNo,
            d => d.LeadsReversed ? true : null);
        return at => new SiteDevice(name[at], model[at], junction[at], reversed[at] ?? false);
    });

    private static Load? IfAny(Load load) => ReferenceEquals(load, Load.None) ? null : load;

    // Of a usual one everything is as the catalog says, but perhaps the wire that it takes.
    private static Connector? UsualOf(Connector connector)
    {
        Connector? usual = CamPower.Connector.Usual.FirstOrDefault(u =>
            string.Equals(u.Name, connector.Name, StringComparison.Ordinal) && u.Source == connector.Source
            && u.RatedCurrent.Equals(connector.RatedCurrent) && u.VoltageClass == connector.VoltageClass
            && (connector.Wires is not null || u.Wires is null));
        return usual is not null || (connector.RatedCurrent is not null && connector.Source == Sources.ConnectorRating)
            ? usual
            : throw new NotSupportedException(
                $"A site file cannot express the connector '{connector}': it knows the usual ones and those with a rated current.");
    }
}
