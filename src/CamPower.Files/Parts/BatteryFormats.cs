using CamPower.Files.Formats;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower.Files.Parts;

/// <summary>The battery of a box, and what charges it.</summary>
internal static class BatteryFormats
{
    private static readonly ObjectFormat<BatteryChargePoint> ChargePoint = new(o =>
    {
        var charge = o.Required("charge", "State of charge.", Quantities.Share, p => p.Charge);
        var voltage = o.Required("voltage", "Open-circuit voltage of a cell.", Quantities.Voltage, p => p.OpenCircuit)
            .Parameter("openCircuit");
        var resistance = o.Required("resistance", "Resistance over that of the full cell.", Quantities.Share, p => p.Resistance);
        var polarization = o.Optional("polarization", "Voltage of a cell lost under load beside its resistance; left out for none.",
            Quantities.Voltage, p => p.Polarization);
        return at => new BatteryChargePoint(charge[at], voltage[at], resistance[at], polarization[at]);
    });

    private static readonly Format<BatteryChemistry> Chemistry = new NamedOrFullFormat<BatteryChemistry>(
        Words.Chemistry, new ObjectFormat<BatteryChemistry>(o =>
    {
        var name = o.Required("name", "Name of the chemistry.", Words.Name, c => c.Name);
        var source = o.Required("source", "Where the numbers come from: a data sheet.", Words.Name,
            c => CurveFormats.TitleOf(c.Source, "a battery"));
        var charge = o.Required("charge", "A cell at rest: points from empty to full.", new ListFormat<BatteryChargePoint>(ChargePoint),
            c => c.Charge);
        var capacity = o.Required("capacity", "Share of the rated capacity: points in rising temperature.",
            CurveFormats.Of(Quantities.Temperature), c => c.Capacity);
        var resistance = o.Required("resistance", "Resistance over that at 25 C: points in rising temperature.",
            CurveFormats.Above(Quantities.Temperature), c => c.Resistance);
        var exponent = o.Required("rateExponent", "Exponent of Peukert's law; 1 where the capacity does not depend on the current.",
            Quantities.Plain, c => c.RateExponent);
        var cutOff = o.Required("cutOff", "Voltage of a cell at which the discharge must end.", Quantities.Voltage, c => c.CutOff);
        var floating = o.Required("float", "Float voltage of a cell at 25 C.", Quantities.Voltage, c => c.Floating)
            .Parameter("floating");
        var perKelvin = o.Required("floatPerKelvin", "Change of the float voltage of a cell with each kelvin; 0 V or less.",
            Quantities.Voltage, c => c.FloatingPerKelvin).Else(ElectricPotential.Zero).Parameter("floatingPerKelvin");
        var factor = o.Required("chargeFactor", "Charge put in over charge taken out.", Quantities.Plain, c => c.ChargeFactor);
        var coldest = o.Optional("coldestCharging", "Lowest temperature at which it may be charged.", Quantities.Temperature,
            c => c.ColdestCharging);
        var lasting = o.Optional("lastingResistance", "Resistance under a load of hours over that of the data sheet; left out for 1.",
            Quantities.Plain, c => c.LastingResistance > 1 ? c.LastingResistance : null);
        var highest = o.Optional("highestCharging", "Voltage of a cell at 25 C above which it must not be charged.", Quantities.Voltage,
            c => c.HighestCharging);
        var rate = o.Optional("highestChargingRate", "The largest charging current in amperes over the capacity in ampere-hours.",
            Quantities.Plain, c => c.HighestChargingRate);
        var hottest = o.Optional("hottestCharging", "Highest temperature at which it may be charged.", Quantities.Temperature,
            c => c.HottestCharging);
        return at => new BatteryChemistry(name[at], new Citation(source[at], CitationKind.Declared), charge[at], capacity[at],
            resistance[at], exponent[at], cutOff[at], floating[at], perKelvin[at], factor[at], coldest[at], lasting[at] ?? 1, highest[at],
            rate[at], hottest[at]);
    }) { Else = BatteryChemistry.ValveRegulatedLeadAcid });

    /// <summary>The battery of a box, its fuse and the backup time: read onto a substitute box.</summary>
    internal static ObjectFormat<DistributionBox> OfBox { get; } = new(o =>
    {
        var name = o.Required("name", "Name of the battery.", Words.Name, b => b.Battery!.Name);
        var chemistry = o.Required("chemistry", "How its cells behave: by name or in full.", Chemistry, b => b.Battery!.Chemistry);
        var cells = o.Required("cells", "How many cells are in series.", Quantities.Count, b => b.Battery!.Cells);
        var capacity = o.Required("capacity", "Rated capacity when new.", Quantities.Charge, b => b.Battery!.Capacity);
        var ratedOver = o.Required("ratedOver", "The time of the discharge for which the capacity is rated.", Quantities.Duration,
            b => b.Battery!.RatedOver);
        var resistance = o.Required("resistance", "Resistance of the whole battery, new, full and at 25 C.", Quantities.Resistance,
            b => b.Battery!.Resistance);
        var cutOff = o.Optional("cutOff", "Voltage at which it is disconnected; left out for that of its chemistry.", Quantities.Voltage,
            b => OwnCutOff(b.Battery!));
        var protection = o.Optional("protection", "Name of the fuse at its terminal, or none; left out where it is not stated.",
            ProtectionFormats.Devices.Reference, b => b.BatteryProtection);
        var backupTime = o.Optional("backupTime", "How long every device must run on it; left out where no time is wanted.",
            Quantities.Duration, b => b.BackupTime);
        return at => StandIn.Box.WithBattery(
            new Battery(name[at], chemistry[at], cells[at], capacity[at], ratedOver[at], resistance[at], cutOff[at]),
            protection[at], backupTime[at]);
    });

    /// <summary>The charging members of a supply, read onto a substitute output.</summary>
    internal static ObjectFormat<DcOutput> OfSupply { get; } = new(o =>
    {
        var rise = o.Required("rise", "How far it goes above its set point, for absorption or in the cold.", Quantities.Voltage,
            s => s.ChargingRise!.Value).Else(ElectricPotential.Zero);
        var current = o.Required("current", "The most that it charges with.", Quantities.Current, s => s.ChargingCurrent!.Value);
        var follows = o.Optional("followsTemperature",
            "True where it lowers its voltage as the battery warms; left out where that is not stated.", Words.YesNo,
            s => s.FollowsTemperature);
        return at => StandIn.Output.WithCharging(rise[at], current[at], follows[at]);
    });

    private static ElectricPotential? OwnCutOff(Battery battery) =>
        Number.IsSame(battery.CutOff, battery.Cells * battery.Chemistry.CutOff) ? null : battery.CutOff;
}
