using System.Linq;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>Supplies and what their sheets say.</summary>
internal static class SupplyFormats
{
    private static readonly Format<Derating> Derating = new NamedOrFullFormat<Derating>(Words.Derating, new ObjectFormat<Derating>(o =>
    {
        var ambient = o.Required("ambient", "Share of the rating that is left in warm air: points in rising temperature.",
            CurveFormats.Of(Quantities.Temperature), d => d.Ambient).Else(CamPower.Derating.GenericEnclosed.Ambient);
        var line = o.Optional("lineVoltage",
            "Share of the rating that is left at each input voltage: points in rising voltage, over its whole range.",
            CurveFormats.Of(Quantities.Voltage), d => d.LineVoltage);
        var altitude = o.Optional("altitude", "By how much warmer the air counts at altitude.", Altitude(), d => d.Altitude);
        return at => new Derating(ambient[at], line[at], altitude[at]);
    }));

    private static readonly Format<OverloadBehavior> Overload = new NamedOrFullFormat<OverloadBehavior>(Words.Overload, OverloadInFull());

    private static readonly ObjectFormat<SupplyInput> Input = new(o =>
    {
        var voltage = o.Optional("voltage", "The voltage that it accepts; RMS if alternating.", DeviceFormats.VoltageRange, i => i.Voltage);
        var inrush = o.Optional("inrushCurrent", "The peak current as it is switched on cold.", Quantities.Current, i => i.InrushCurrent);
        var efficiency = o.Optional("efficiency", "Power out over power in, against the load as a share of the rated current.",
            CurveFormats.Of(Quantities.Share), i => i.Efficiency);
        var powerFactor = o.Optional("powerFactor", "Power in over apparent power in, against the load as a share of the rated current.",
            CurveFormats.Of(Quantities.Share), i => i.PowerFactor);
        var integral = o.Optional("inrushIntegral", "The I2t of that inrush.", Quantities.JouleIntegral, i => i.InrushIntegral);
        var warm = o.Optional("warmInrushCurrent", "The peak current as it is switched on again while its inrush limiter is warm.",
            Quantities.Current, i => i.WarmInrushCurrent);
        var leakage = o.Optional("leakageCurrent", "Its current to protective earth in service.", Quantities.Current,
            i => i.LeakageCurrent);
        var standby = o.Optional("standbyPower", "Power in without any load.", Quantities.Power, i => i.StandbyPower);
        var crest = o.Optional("crestFactor", "Peak over RMS of its input current in service.", Quantities.Plain, i => i.CrestFactor);
        return at => new SupplyInput(voltage[at], inrush[at], efficiency[at], powerFactor[at],
            at[inrush].HasError ? null : integral[at], warm[at], leakage[at], standby[at], crest[at]);
    });

    /// <summary>A supply.</summary>
    internal static ObjectFormat<Supply> Supply { get; } = new(o =>
    {
        var name = o.Required("name", "Name of the supply.", Words.Name, s => s.Name);
        var output = o.Required("output", "Direct or alternating current.", Words.Current, s => s.Output.Kind);
        var nominal = o.Required("nominal", "Nominal output voltage; RMS if alternating.", Quantities.Voltage, s => s.Output.Nominal);
        var ratedCurrent = o.Required("ratedCurrent", "Rated output current in a cool room.", Quantities.Current,
            s => s.Output.RatedCurrent);
        var tolerance = o.Required("tolerance", "How far the output may be off its set point, line and load regulation included.",
            Quantities.Share, s => s.Output.Tolerance).Else(Ratio.Zero);
        var derating = o.Required("derating",
            "What is left of the rating in warm air, at another input voltage or at altitude: by name or in full.", Derating,
            s => s.Derating);
        var trim = o.Optional("trim", "How far the output can be adjusted.", DeviceFormats.VoltageRange, s => Dc(s)?.Trim);
        var setPoint = o.Optional("setPoint", "The voltage that it is adjusted to, inside the trim range.", Quantities.Voltage, SetPoint);
        var ratedPower = o.Optional("ratedPower", "Rated output power; nominal voltage times rated current where it is left out.",
            Quantities.Power, s => Dc(s)?.RatedPower);
        var ripple = o.Optional("ripple", "RMS ripple at mains frequency or its double, over the output voltage.", Quantities.Share,
            s => Dc(s)?.Ripple);
        var resistance = o.Optional("sourceResistance", "Resistance behind the terminals in a fault.", Quantities.Resistance,
            StatedResistance);
        var overload = o.Optional("overload", "What it does in overload.", Overload, StatedOverload);
        var capacitance = o.Optional("capacitance", "Capacitance across the terminals of a DC output.", Quantities.Capacitance,
            s => Dc(s)?.Capacitance);
        var rise = o.Optional("rise", "How long it takes from nothing to its voltage when it is switched on.", Quantities.Duration,
            s => s.Output.Rise);
        var charging = o.Optional("charging", "How it charges a battery; left out where it charges none.", BatteryFormats.OfSupply,
            s => Dc(s) is { ChargingCurrent: not null } charger ? charger : null);
        var open = o.Optional("openVoltage",
            "Voltage without any load, of an unregulated DC supply or of a transformer; its nominal voltage is that at the rated current.",
            Quantities.Voltage, s => Dc(s)?.OpenVoltage ?? Ac(s)?.OpenVoltage).Parameter("open");
        var frequency = o.Optional("frequency", "Frequency of the mains of a transformer.", Quantities.Frequency, s => Ac(s)?.Frequency);
        var input = o.Optional("input", "The side that takes power in.", Input, s => s.Input);
        (Member Member, string OnAc, string? Unregulated)[] notOnEvery =
        [
            (trim, "an AC output cannot be adjusted", "an unregulated output cannot be adjusted"),
            (setPoint, "an AC output cannot be adjusted", "an unregulated output cannot be adjusted"),
            (ratedPower, "only a DC output has a rated power beside its current", "an unregulated output is rated by its current alone"),
            (ripple, "only a DC output has ripple", null),
            (capacitance, "only a DC output has a capacitance", null),
            (charging, "only a DC output charges a battery", "an unregulated output cannot charge a battery"),
        ];
        return at =>
        {
            bool isAc = output[at] == CurrentKind.Ac, isUnregulated = !isAc && open.IsGiven(at);
            foreach ((Member member, string onAc, string? unregulated) in notOnEvery.Where(m => m.Member.IsGiven(at)))
            {
                if ((isAc ? onAc : isUnregulated ? unregulated : null) is string wrong) at[member].ErrorOnce(wrong);
            }

            if (frequency.IsGiven(at) && !at[output].HasError && !(isAc && open.IsGiven(at)))
            {
                at[frequency].ErrorOnce("only a transformer with an openVoltage has a frequency");
            }

            if (isUnregulated) return new Supply(name[at], Unregulated(at), derating[at], input[at]);
            bool isTrimSound = !at[trim].HasError;
            SupplyOutput made = isAc
                ? Transformer(new AcOutput(nominal[at], ratedCurrent[at], tolerance[at], resistance[at], overload[at], rise[at]),
                    IsRatingSound(at) ? open[at] : null, frequency[at])
                : Charger(new DcOutput(nominal[at], ratedCurrent[at], tolerance[at], isTrimSound ? trim[at] : null,
                    isTrimSound ? setPoint[at] : null, ripple[at], resistance[at], overload[at], capacitance[at], ratedPower[at],
                    rise[at]), charging[at]);
            return new Supply(name[at], made, derating[at], input[at]);
        };

        bool IsRatingSound(Place at) => !at[nominal].HasError && !at[ratedCurrent].HasError;

        DcOutput Unregulated(Place at) => open[at] is ElectricPotential volts && IsRatingSound(at)
            ? DcOutput.OfUnregulated(volts, nominal[at], ratedCurrent[at], tolerance[at], ripple[at], resistance[at], overload[at],
                capacitance[at], rise[at])
            : StandIn.Output;
    });

    private static AcOutput Transformer(AcOutput output, ElectricPotential? open, Frequency? frequency) =>
        open is ElectricPotential volts ? output.WithOpenVoltage(volts, frequency) : output;

    // What follows from the plate of a transformer is not stated beside it.
    private static ElectricResistance? StatedResistance(Supply supply) =>
        Ac(supply)?.WindingResistance is ElectricResistance winding && Number.IsSame(winding, supply.Output.SourceResistance!.Value)
            ? null
            : supply.Output.SourceResistance;

    private static OverloadBehavior? StatedOverload(Supply supply) =>
        Ac(supply)?.OpenVoltage is not null && ReferenceEquals(supply.Output.Overload, OverloadBehavior.Unlimited)
            ? null
            : supply.Output.Overload;

    private static AcOutput? Ac(Supply supply) => supply.Output as AcOutput;

    private static DcOutput Charger(DcOutput output, DcOutput? charger) =>
        charger is null ? output : output.WithCharging(
            charger.ChargingRise!.Value, charger.ChargingCurrent!.Value, charger.FollowsTemperature);

    private static ObjectFormat<AltitudeDerating> Altitude() => new(o =>
    {
        var above = o.Required("above", "The height up to which nothing changes.", Quantities.Length, a => a.Above);
        var rise = o.Required("perThousandMeters", "By how much warmer the air counts for every 1000 m above that.", Quantities.Rise,
            a => a.PerThousandMeters);
        return at => new AltitudeDerating(above[at], rise[at]);
    });

    private static ObjectFormat<OverloadBehavior> OverloadInFull() => new(o =>
    {
        var constant = Limit("constantCurrent", "The current that it holds.",
            b => b is { ShortCircuitCurrent: null, Pulse: null } ? b.Limit : null);
        var foldback = Limit("foldback", "The current at which it begins to fold back.",
            b => b.ShortCircuitCurrent is null ? null : b.Limit);
        var shortCircuit = o.OfForm("shortCircuit", "The current into a short at its terminals.", Quantities.Current,
            b => b.ShortCircuitCurrent).Else(StandIn.LowCurrent);
        var hiccup = Limit("hiccup", "The current of each pulse by which it tries again.", b => b.Period is null ? null : b.Limit);
        var pulse = o.OfForm("pulse", "How long a pulse lasts.", Quantities.Duration, b => b.Period is null ? null : b.Pulse)
            .Else(StandIn.ShortTime);
        var period = o.OfForm("period", "From one pulse to the next.", Quantities.Duration, b => b.Period).Else(StandIn.LongTime);
        var shutdown = Limit("shutdown", "The largest current until it shuts down and must be restarted.",
            b => b is { Pulse: not null, Period: null } ? b.Limit : null);
        var within = o.OfForm("within", "The longest time until it has shut down.", Quantities.Duration,
            b => b.Period is null ? b.Pulse : null).Else(StandIn.LongTime);
        var tolerance = o.Optional("tolerance", "How far its currents may be off.", Quantities.Share,
            b => b.Tolerance.DecimalFractions > 0 ? b.Tolerance : null);
        o.OneOf(new Form(constant), new Form(foldback, shortCircuit), new Form(hiccup, pulse, period), new Form(shutdown, within));
        return at => tolerance[at] is Ratio share ? Stated(at).WithTolerance(share) : Stated(at);

        OverloadBehavior Stated(Place at)
        {
            if (constant.IsGiven(at)) return OverloadBehavior.ConstantCurrent(constant[at]);
            if (foldback.IsGiven(at)) return OverloadBehavior.Foldback(foldback[at], shortCircuit[at]);
            if (hiccup.IsGiven(at)) return OverloadBehavior.Hiccup(hiccup[at], pulse[at], period[at]);
            return shutdown.IsGiven(at) ? OverloadBehavior.Shutdown(shutdown[at], within[at]) : OverloadBehavior.Unlimited;
        }

        Member<ElectricCurrent> Limit(string member, string description, System.Func<OverloadBehavior, ElectricCurrent?> get) =>
            o.OfForm(member, description, Quantities.Current, get).Else(StandIn.HighCurrent).Parameter("limit");
    }) { Else = OverloadBehavior.Unlimited };

    private static DcOutput? Dc(Supply supply) => supply.Output as DcOutput;

    // Left out where it is the nominal voltage, in number and unit.
    private static ElectricPotential? SetPoint(Supply supply) =>
        Dc(supply) is DcOutput dc && !Number.IsSame(dc.SetPoint, dc.Nominal) ? dc.SetPoint : null;
}
