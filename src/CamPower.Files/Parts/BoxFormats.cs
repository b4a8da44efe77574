using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Boxes, their outputs, and the receptacles that they are plugged into.</summary>
internal static class BoxFormats
{
    // Not below any lower edge.
    private const double MostMultiple = 100;

    private static readonly ObjectFormat<CircuitBreaker> BreakerFormat = new(o =>
    {
        var name = o.Required("name", "The name by which receptacles refer to it.", Words.Name, x => x.Name);
        var rating = o.Required("rating", "Its rated current.", Quantities.Current, x => x.Rating);
        var type = o.OfForm("type", "Its type, which states the band in which it trips at once.", Words.BreakerType, TypeOf);
        var from = o.OfForm("instantaneousFrom", "Lower edge of the band in which it trips at once, over its rated current.",
            Quantities.Plain, x => TypeOf(x) is null ? x.InstantaneousFrom : null);
        var to = o.OfForm("instantaneousTo", "Upper edge of that band, over its rated current.", Quantities.Plain,
            x => TypeOf(x) is null ? x.InstantaneousTo : null).Else(MostMultiple);
        var residual = o.Optional("residualCurrent", "Rated residual operating current; left out where it has no residual-current device.",
            Quantities.Current, x => x.ResidualCurrent);
        o.OneOf(new Form(type), new Form(from, to));
        return at => from.IsGiven(at) || to.IsGiven(at)
            ? new CircuitBreaker(name[at], rating[at], from[at], to[at], residual[at])
            : type[at](name[at], rating[at], residual[at]);
    });

    /// <summary>The breakers of the receptacles' circuits.</summary>
    internal static PartList<CircuitBreaker> Breakers { get; } = new("breaker", BreakerFormat, x => x.Name) { MayBeLeftOut = true };

    private static readonly ObjectFormat<RuntimePoint> Runtime = new(o =>
    {
        var load = o.Required("load", "Power that it gives.", Quantities.Power, p => p.Load);
        var runtime = o.Required("runtime", "How long it gives that power.", Quantities.Duration, p => p.Runtime);
        return at => new RuntimePoint(load[at], runtime[at]);
    });

    private static readonly ObjectFormat<UninterruptibleSupply> UninterruptibleFormat = new(o =>
    {
        var name = o.Required("name", "The name by which receptacles refer to it.", Words.Name, x => x.Name);
        var apparent = o.Required("apparentPower", "The apparent power that it is rated for.", Quantities.ApparentPower,
            x => x.ApparentPower);
        var power = o.Required("power", "The power that it is rated for.", Quantities.Power, x => x.Power);
        var runtimes = o.Required("runtimes", "How long it runs with a new battery: points in rising load and falling time.",
            new ListFormat<RuntimePoint>(Runtime, "there must be at least one runtime"), x => x.Runtimes)
            .Else(StandIn.Runtimes);
        var crest = o.Optional("crestFactor", "The largest peak over the RMS current that it gives at its rating.", Quantities.Plain,
            x => x.CrestFactor);
        var backupTime = o.Optional("backupTime", "How long it must carry its boxes; left out where no time is wanted.",
            Quantities.Duration, x => x.BackupTime);

        // The stand-in of a point that is wrong need not be in order with the others.
        return at => new UninterruptibleSupply(name[at], apparent[at], power[at], at[runtimes].HasError ? StandIn.Runtimes : runtimes[at],
            crest[at], backupTime[at]);
    });

    /// <summary>The uninterruptible supplies before receptacles.</summary>
    internal static PartList<UninterruptibleSupply> Uninterruptibles { get; } =
        new("uninterruptible supply", UninterruptibleFormat, x => x.Name) { MayBeLeftOut = true };

    private static readonly ObjectFormat<Receptacle> ReceptacleFormat = new(o =>
    {
        var name = o.Required("name", "The name by which boxes refer to it.", Words.Name, x => x.Name);
        var voltage = o.Required("voltage", "The nominal voltage of the line; RMS.", Quantities.Voltage, x => x.Voltage);
        var rating = o.Required("rating", "The current that it is rated for.", Quantities.Current, x => x.Rating);
        var share = o.Optional("share", "Share of its rating that may be loaded continuously; 80 % where it is left out.", Quantities.Share,
            x => x.Share);
        var breaker = o.Optional("breaker", "Name of the breaker of its circuit; left out where it is not stated.", Breakers.Reference,
            x => x.Breaker);
        var uninterruptible = o.Optional("uninterruptible", "Name of the uninterruptible supply whose output it is.",
            Uninterruptibles.Reference, x => x.Uninterruptible);
        return at => new Receptacle(name[at], voltage[at], rating[at], share[at], breaker[at], uninterruptible[at]);
    });

    private static readonly ObjectFormat<BoxOutput> Output = new(o =>
    {
        var limit = o.Required("limit", "The current that it may carry all the time.", Quantities.Current, x => x.Limit);
        var protection = o.Optional("protection", "Name of its protective device, or none; left out where it is not stated.",
            ProtectionFormats.Devices.Reference, x => x.Protection);
        var claimed = o.Optional("claimedClass", "Power-limit class that its label claims.", Words.PowerLimit, x => x.ClaimedClass);
        return at => new BoxOutput(at.Index + 1, limit[at], protection[at], claimed[at]);
    });

    /// <summary>The receptacles that boxes are plugged into.</summary>
    internal static PartList<Receptacle> Receptacles { get; } = new("receptacle", ReceptacleFormat, x => x.Name) { MayBeLeftOut = true };

    // Read onto a substitute box.
    private static readonly ObjectFormat<DistributionBox> Feed = new(o =>
    {
        var junction = o.Required("junction", "Name of the junction where the run ends that feeds it.", Words.Name, b => b.FedFrom!);
        var starting = o.Optional("starting", "When its input turns on and drops out.", DeviceFormats.Starting, b => b.InputStarting);
        var inrush = o.Optional("inrush", "What its input draws in the first moments; left out where it is not stated.",
            DeviceFormats.Inrush, b => b.InputInrush);
        return at => StandIn.Converter.WithFeed(junction[at], starting[at], inrush[at]);
    });

    // Read onto a substitute box.
    private static readonly ObjectFormat<DistributionBox> Reserve = new(o =>
    {
        var supply = o.Required("supply", "The second supply.", SupplyFormats.Supply, b => b.Reserve!);
        var drop = o.Required("diodeDrop", "The most that is lost in the diode of each supply.", Quantities.Voltage,
            b => b.DiodeDrop!.Value).Else(StandIn.DiodeDrop);
        return at =>
        {
            Supply reserve = supply[at];
            if (reserve.Output is DcOutput { OpenVoltage: null }) return StandIn.OfOneOutput(reserve).WithReserve(reserve, drop[at]);
            at[supply].ErrorOnce("a reserve gives a regulated direct voltage");
            return StandIn.OfOneOutput(StandIn.Box.Supply).WithReserve(StandIn.Box.Supply, StandIn.DiodeDrop);
        };
    });

    /// <summary>A box or adapter.</summary>
    internal static ObjectFormat<DistributionBox> Box { get; } = new(o =>
    {
        var name = o.Required("name", "The name by which runs refer to it.", Words.Name, b => b.Name);
        var supply = o.Required("supply", "The supply in it.", SupplyFormats.Supply, b => b.Supply);
        var outputs = o.OfForm("outputs", "How many outputs it has, all alike.", Quantities.Count,
            b => HasEqualOutputs(b) ? b.Outputs.Count : null).Else(StandIn.MostOutputs);
        var outputLimit = o.OfForm("outputLimit", "The current that each output may carry all the time.", Quantities.Current,
            b => HasEqualOutputs(b) ? b.Outputs[0].Limit : null).Parameter("limit");
        var ofEach = o.Optional("outputProtection",
            "Name of the protective device of each output, or none; left out where it is not stated.", ProtectionFormats.Devices.Reference,
            b => HasEqualOutputs(b) ? b.Outputs[0].Protection : null);
        var outputList = o.OfForm("outputList", "Its outputs one by one, in the order of their numbers.",
            new ListFormat<BoxOutput>(Output, "a box needs at least one output"), b => b.IsAdapter || HasEqualOutputs(b) ? null : b.Outputs)
            .Else(StandIn.Outputs);
        var adapter = o.OfForm("adapter", "True for an adapter: its only output is its own lead.", Words.YesNo,
            b => b.IsAdapter ? true : null);
        var ofLead = o.Optional("leadProtection", "Name of the protective device in the lead, or none; left out where it is not stated.",
            ProtectionFormats.Devices.Reference, b => b.IsAdapter ? b.Outputs[0].Protection : null);
        var claimed = o.Optional("claimedClass", "Power-limit class that its label claims for each output.", Words.PowerLimit,
            b => b.IsAdapter || HasEqualOutputs(b) ? b.Outputs[0].ClaimedClass : null);
        var terminals = o.Optional("terminals", "The wire that the terminals of its outputs take.", DeviceFormats.Wires, b => b.Terminals);
        var enclosure = o.Optional("enclosure",
            "Its own case; without one and without a cabinet, its supply is as warm as its surroundings.", EnclosureFormats.Enclosure,
            b => b.Cabinet is null ? b.Enclosure : null);
        var cabinet = o.Optional("cabinet", "Name of the cabinet that it shares with other boxes.", EnclosureFormats.Cabinets.Reference,
            b => b.Cabinet);
        var receptacle = o.Optional(
            "receptacle", "Name of the receptacle that it is plugged into.", Receptacles.Reference, b => b.Receptacle);
        var battery = o.Optional("battery", "The battery on the terminals of its supply.", BatteryFormats.OfBox,
            b => b.Battery is null ? null : b);
        var feed = o.Optional("feed", "Where the input of a converter is connected; left out for a box on the mains.", Feed,
            b => b.FedFrom is null ? null : b);
        var reserve = o.Optional("reserve", "The second supply of its outputs, each of the two through a diode.", Reserve,
            b => b.Reserve is null ? null : b);
        Form[] forms = [new(outputs, outputLimit) { Optional = ofEach }, new(outputList), new(adapter) { Optional = ofLead }];
        o.OneOf(forms);
        return at =>
        {
            CheckForms(at);
            DistributionBox box = Bare(at);
            if (enclosure[at] is Enclosure around) box = box.WithEnclosure(around);
            if (cabinet[at] is Cabinet shared) box = box.WithCabinet(shared);
            if (receptacle[at] is Receptacle plug) box = box.WithReceptacle(plug);
            if (feed[at] is DistributionBox fed && Converter(at, box, fed) is DistributionBox converter) box = converter;
            if (reserve[at] is DistributionBox doubled && OnTwo(at, box, doubled) is DistributionBox twice) box = twice;
            if (battery[at] is not DistributionBox backed || feed.IsGiven(at) || reserve.IsGiven(at)) return box;
            if (Uncharged(box.Supply.Output) is not string wrong)
            {
                return box.WithBattery(backed.Battery!, backed.BatteryProtection, backed.BackupTime);
            }

            at[battery].ErrorOnce(wrong);
            return box;
        };

        static string? Uncharged(SupplyOutput by) => by switch
        {
            DcOutput { OpenVoltage: not null } => "an unregulated supply cannot charge a battery",
            DcOutput => null,
            _ => "a supply of alternating current cannot charge a battery",
        };

        // Where several forms are given, it is not known how many outputs were meant.
        bool HasSeveralForms(Place at) => forms.Count(form => form.IsBegun(at)) > 1;

        // What is wrong with a member is an error of it, unless the supply has one of its own.
        bool IsNoted(Place at, Member member, string? wrong)
        {
            if (wrong is not null && !at[supply].HasError) at[member].ErrorOnce(wrong);
            return wrong is not null;
        }

        DistributionBox? Converter(Place at, DistributionBox box, DistributionBox fed)
        {
            string? wrong = receptacle.IsGiven(at) ? "a converter is fed from a run, not from a receptacle"
                : battery.IsGiven(at) ? "a converter has no battery: put the battery before the run"
                : box.Supply.Output is not DcOutput { OpenVoltage: null } ? "the supply of a converter gives a regulated direct voltage"
                : box.Supply.Input is not { Voltage: not null, Efficiency: not null }
                    ? "the supply of a converter needs an input with voltage and efficiency"
                    : null;
            return IsNoted(at, feed, wrong) ? null : at[feed].Try(() => box.WithFeed(fed.FedFrom!, fed.InputStarting, fed.InputInrush));
        }

        DistributionBox? OnTwo(Place at, DistributionBox box, DistributionBox doubled)
        {
            string? wrong = adapter.IsGiven(at) ? "an adapter has one supply: write a box of one output"
                : feed.IsGiven(at) ? "a converter has no reserve: put the reserve before the run"
                : battery.IsGiven(at) ? "a box with a reserve has no battery: a diode keeps its supply from it"
                : box.Supply.Output is not DcOutput { OpenVoltage: null } ? "beside a reserve the supply gives a regulated direct voltage"
                : doubled.DiodeDrop < box.Supply.Output.LowestVoltage ? null
                : "the drop of the diode is not below the voltage of the supply";
            return IsNoted(at, reserve, wrong) ? null : box.WithReserve(doubled.Reserve!, doubled.DiodeDrop!.Value);
        }

        void CheckForms(Place at)
        {
            if (adapter.IsGiven(at) && !adapter[at]) at[adapter].ErrorOnce("adapter can only be true; leave it out for a box");
            if (enclosure.IsGiven(at) && cabinet.IsGiven(at)) at[enclosure].ErrorOnce("a box in a cabinet has no enclosure of its own");
            if (HasSeveralForms(at)) return;
            if (adapter[at] && terminals.IsGiven(at)) at[terminals].ErrorOnce("an adapter has no terminals, only its lead");
            if (outputList.IsGiven(at) && claimed.IsGiven(at))
            {
                at[claimed].ErrorOnce("with outputList, write claimedClass in each output, not in the box");
            }
        }

        DistributionBox Bare(Place at)
        {
            if (HasSeveralForms(at)) return new DistributionBox(name[at], supply[at], StandIn.Outputs);
            if (outputList.IsGiven(at)) return new DistributionBox(name[at], supply[at], outputList[at], terminals[at]);
            return adapter[at]
                ? DistributionBox.Adapter(name[at], supply[at], ofLead[at], claimed[at])
                : DistributionBox.OfEqualOutputs(
                    name[at], supply[at], outputs[at], outputLimit[at], ofEach[at], terminals[at], claimed[at]);
        }
    });

    private static Func<string, ElectricCurrent, ElectricCurrent?, CircuitBreaker>? TypeOf(CircuitBreaker breaker) =>
        Words.BreakerType.Values.FirstOrDefault(make => make(breaker.Name, breaker.Rating, null) is CircuitBreaker typed
            && typed.InstantaneousFrom.Equals(breaker.InstantaneousFrom) && typed.InstantaneousTo.Equals(breaker.InstantaneousTo));

    private static bool HasEqualOutputs(DistributionBox box)
    {
        BoxOutput first = box.Outputs[0];
        return !box.IsAdapter && box.Outputs.Count <= StandIn.MostOutputs && box.Outputs.All(other =>
            Number.IsSame(other.Limit, first.Limit) && ReferenceEquals(other.Protection, first.Protection)
            && other.ClaimedClass == first.ClaimedClass);
    }
}
