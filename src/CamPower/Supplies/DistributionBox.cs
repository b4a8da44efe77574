using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Loads;
using UnitsNet;

namespace CamPower;

/// <summary>A supply with one or more numbered outputs: a distribution box, or an adapter with its one lead.</summary>
/// <remarks>Immutable. The limit of each output and the rating of the supply bind separately. Several supplies in one
/// enclosure are a box each, with outputs numbered from 1, in one <see cref="CamPower.Cabinet"/>.</remarks>
/// <example>
/// <code>
/// DistributionBox box = DistributionBox.OfEqualOutputs("yard box", supply, outputs: 18, ElectricCurrent.FromAmperes(1.1));
/// DistributionBox adapter = DistributionBox.Adapter("office adapter", small);
/// </code>
/// </example>
public sealed class DistributionBox
{
    private const double LeastDiodeVolts = 1e-3, MostDiodeVolts = 2;

    /// <summary>Describes a box.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="supply">The supply in it.</param>
    /// <param name="outputs">Its outputs, numbered from 1 without a gap.</param>
    /// <param name="terminals">The wire that the terminals of its outputs take; null where it is not stated.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, there is no output, or the numbers do not run from
    /// 1.</exception>
    public DistributionBox(string name, Supply supply, IEnumerable<BoxOutput> outputs, TerminalRange? terminals = null)
    {
        Name = Require.Name(name, nameof(name));
        Supply = Require.NotNull(supply, nameof(supply));
        Outputs = Require.Items(outputs, nameof(outputs));
        Terminals = terminals;
        if (Outputs.Count == 0) throw new ArgumentException("A box needs at least one output.", nameof(outputs));
        if (Outputs.Where((output, index) => output.Number != index + 1).Any())
        {
            throw new ArgumentException("The outputs must be numbered from 1 without a gap.", nameof(outputs));
        }
    }

    private DistributionBox(DistributionBox box)
    {
        Name = box.Name;
        Supply = box.Supply;
        Outputs = box.Outputs;
        Terminals = box.Terminals;
        Enclosure = box.Enclosure;
        Cabinet = box.Cabinet;
        Receptacle = box.Receptacle;
        IsAdapter = box.IsAdapter;
        Battery = box.Battery;
        BatteryProtection = box.BatteryProtection;
        BackupTime = box.BackupTime;
        FedFrom = box.FedFrom;
        InputStarting = box.InputStarting;
        InputInrush = box.InputInrush;
        Reserve = box.Reserve;
        DiodeDrop = box.DiodeDrop;
    }

    /// <summary>Name on the site.</summary>
    public string Name { get; private init; }

    /// <summary>The supply in it; with a <see cref="Reserve"/>, the main one of the two, behind its diode.</summary>
    public Supply Supply { get; private init; }

    /// <summary>Its outputs, numbered from 1.</summary>
    public IReadOnlyList<BoxOutput> Outputs { get; private init; }

    /// <summary>The wire that the terminals of its outputs take, or null where it is not stated.</summary>
    public TerminalRange? Terminals { get; }

    /// <summary>The case around it, its own or that of its cabinet; null where none is stated: the air around its supply is then as
    /// warm as its surroundings.</summary>
    public Enclosure? Enclosure { get; private init; }

    /// <summary>The cabinet that it shares with other boxes, or null where it is alone.</summary>
    public Cabinet? Cabinet { get; private init; }

    /// <summary>The receptacle that it is plugged into, or null where none is stated.</summary>
    public Receptacle? Receptacle { get; private init; }

    /// <summary>Whether it is an adapter: a supply whose only output is its own lead.</summary>
    public bool IsAdapter { get; private init; }

    /// <summary>The battery on the terminals of its supply; null where it has none.</summary>
    public Battery? Battery { get; private init; }

    /// <summary>Protective device at the terminal of the battery; <see cref="ProtectiveDevice.None"/> where there is none, null where it is
    /// not stated.</summary>
    public ProtectiveDevice? BatteryProtection { get; private init; }

    /// <summary>How long every device must run on the battery; null where no time is wanted. [h]</summary>
    public Duration? BackupTime { get; private init; }

    /// <summary>The junction at which its input is connected, where it is a converter; null where it is fed from the mains.</summary>
    public string? FedFrom { get; private init; }

    /// <summary>When the input of a converter turns on and drops out; null where it is not stated, and of a box on the mains.</summary>
    public Starting? InputStarting { get; private init; }

    /// <summary>What the input of a converter draws in the first moments when power comes; null where it is not stated, and of a box on the
    /// mains.</summary>
    public Inrush? InputInrush { get; private init; }

    /// <summary>The second supply of its outputs, behind a diode of its own; null where there is none.</summary>
    public Supply? Reserve { get; private init; }

    /// <summary>The most that is lost in the diode of each supply; null where there is one supply. [V]</summary>
    public ElectricPotential? DiodeDrop { get; private init; }

    /// <summary>A box whose outputs are all alike.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="supply">The supply in it.</param>
    /// <param name="outputs">How many outputs, from 1 to 1000.</param>
    /// <param name="limit">The current that each may carry all the time, above 0. [A]</param>
    /// <param name="protection">What interrupts an overcurrent at each; <see cref="ProtectiveDevice.None"/> where there is nothing, null
    /// where it is not stated.</param>
    /// <param name="terminals">The wire that their terminals take; null where it is not stated.</param>
    /// <param name="claimedClass">The power-limit class that the label or data sheet claims for each; null where it claims none.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or <paramref name="claimedClass"/> is none of those
    /// there are.</exception>
    public static DistributionBox OfEqualOutputs(string name, Supply supply, int outputs, ElectricCurrent limit,
        ProtectiveDevice? protection = null, TerminalRange? terminals = null, PowerLimitClass? claimedClass = null) => new(
        name, supply,
        Enumerable.Range(1, (int)Require.Within(outputs, 1, 1000, nameof(outputs), ""))
            .Select(n => new BoxOutput(n, limit, protection, claimedClass)),
        terminals);

    /// <summary>An adapter: one output, whose limit is the rating of the supply.</summary>
    /// <param name="name">Name on the site. Not empty.</param>
    /// <param name="supply">The supply.</param>
    /// <param name="protection">What interrupts an overcurrent in its lead; <see cref="ProtectiveDevice.None"/> where there is nothing,
    /// null where it is not stated.</param>
    /// <param name="claimedClass">The power-limit class that its label claims; null where it claims none.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="claimedClass"/> is not a defined value.</exception>
    public static DistributionBox Adapter(string name, Supply supply, ProtectiveDevice? protection = null,
        PowerLimitClass? claimedClass = null) => new(
        name, supply, [new BoxOutput(1, Require.NotNull(supply, nameof(supply)).Output.RatedCurrent, protection, claimedClass)],
        terminals: null) { IsAdapter = true };

    /// <summary>The same box, its supply set to another voltage.</summary>
    /// <param name="setPoint">The voltage that it is adjusted to, inside the trim range of its supply. [V]</param>
    /// <exception cref="ArgumentException">Its supply has no trim range.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setPoint"/> is outside the trim range.</exception>
    public DistributionBox WithSetPoint(ElectricPotential setPoint) => With(Supply.WithSetPoint(setPoint));

    /// <summary>What numbers can say of an output and a power-limit class: refuted, not refuted, or unknown.</summary>
    /// <param name="outputNumber">Number of the output, from 1.</param>
    /// <param name="limitClass">The class, whether or not the output claims it.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such output, or <paramref name="limitClass"/> is none of those there
    /// are.</exception>
    /// <example>
    /// <code>
    /// PowerLimitVerdict verdict = box.AssessPowerLimit(1, PowerLimitClass.Class2).Verdict;
    /// </code>
    /// </example>
    public PowerLimitAssessment AssessPowerLimit(int outputNumber, PowerLimitClass limitClass) => new(
        this, Outputs[(int)Require.Within(outputNumber, 1, Outputs.Count, nameof(outputNumber), "") - 1],
            Require.Known(limitClass, nameof(limitClass)));

    /// <summary>The same box in an enclosure of its own, which makes it warmer inside than around it.</summary>
    /// <param name="enclosure">The enclosure.</param>
    /// <exception cref="ArgumentNullException"><paramref name="enclosure"/> is null.</exception>
    /// <example>
    /// <code>
    /// DistributionBox onThePole = box.WithEnclosure(new Enclosure(
    ///     Length.FromMillimeters(300), Length.FromMillimeters(400), Length.FromMillimeters(150),
    ///     EnclosureWall.PaintedSteel, EnclosureFaces.OnWall));
    /// </code>
    /// </example>
    public DistributionBox WithEnclosure(Enclosure enclosure) =>
        new(this) { Enclosure = Require.NotNull(enclosure, nameof(enclosure)), Cabinet = null };

    /// <summary>The same box in a cabinet, which it shares with the other boxes that refer to it.</summary>
    /// <param name="cabinet">The cabinet.</param>
    /// <exception cref="ArgumentNullException"><paramref name="cabinet"/> is null.</exception>
    /// <example><code>DistributionBox beside = box.WithCabinet(cabinet);</code></example>
    public DistributionBox WithCabinet(Cabinet cabinet) =>
        new(this) { Enclosure = Require.NotNull(cabinet, nameof(cabinet)).Enclosure, Cabinet = cabinet };

    /// <summary>The same box under another name: a site may have several of one in a catalog.</summary>
    /// <param name="name">The name. Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <example><code>DistributionBox yardBox = BoxCatalog.Generic[1].WithName("yard box");</code></example>
    public DistributionBox WithName(string name) => new(this) { Name = Require.Name(name, nameof(name)) };

    /// <summary>The same box plugged into a receptacle; several may be plugged into one.</summary>
    /// <param name="receptacle">The receptacle.</param>
    /// <exception cref="ArgumentNullException"><paramref name="receptacle"/> is null.</exception>
    /// <exception cref="InvalidOperationException">It is a converter.</exception>
    /// <example>
    /// <code>
    /// var receptacle = new Receptacle("office receptacle", ElectricPotential.FromVolts(120), ElectricCurrent.FromAmperes(15));
    /// DistributionBox plugged = box.WithReceptacle(receptacle);
    /// </code>
    /// </example>
    public DistributionBox WithReceptacle(Receptacle receptacle) =>
        FedFrom is null
            ? new(this) { Receptacle = Require.NotNull(receptacle, nameof(receptacle)) }
            : throw new InvalidOperationException($"{Name} is fed from a run, not from a receptacle.");

    /// <summary>The same box with a battery at the supply terminals. The supply charges the battery; in an outage the battery feeds the
    /// devices.</summary>
    /// <param name="battery">The battery.</param>
    /// <param name="protection">What interrupts an overcurrent at its terminal; <see cref="ProtectiveDevice.None"/> where there is nothing,
    /// null where it is not stated.</param>
    /// <param name="backupTime">How long every device must run on it, above 0; null where no time is wanted. [h]</param>
    /// <remarks>In a fault the battery counts: nothing but its resistance limits its current. The supply alone counts too, for a battery
    /// may be dead, or its fuse open.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="battery"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="backupTime"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The supply gives alternating current or is unregulated, or the box is a
    /// converter or has a reserve.</exception>
    /// <example><code>DistributionBox backed = box.WithBattery(battery, terminalFuse, backupTime: Duration.FromHours(8));</code></example>
    public DistributionBox WithBattery(Battery battery, ProtectiveDevice? protection = null, Duration? backupTime = null)
    {
        Require.NotNull(battery, nameof(battery));
        if (backupTime is Duration time) Require.Positive(time.Seconds, nameof(backupTime), "s");
        if (Supply.Output is DcOutput { OpenVoltage: not null })
        {
            throw new InvalidOperationException($"The supply of {Name} is unregulated: it cannot charge a battery.");
        }

        if (FedFrom is not null) throw new InvalidOperationException($"{Name} is fed from a run: put the battery before the run.");
        if (Reserve is not null) throw new InvalidOperationException($"{Name} has a reserve: a diode keeps its supply from a battery.");
        return Supply.Output is DcOutput
            ? new DistributionBox(this) { Battery = battery, BatteryProtection = protection, BackupTime = backupTime }
            : throw new InvalidOperationException($"The supply of {Name} gives alternating current: it cannot charge a battery.");
    }

    /// <summary>The same box as a converter, step-down or step-up: its supply is fed from a junction where a run of another box
    /// ends.</summary>
    /// <param name="junction">Name of the junction. Not empty.</param>
    /// <param name="starting">When its input turns on and drops out; null where it is not stated.</param>
    /// <param name="inrush">What its input draws in the first moments when power comes; null where it is not stated.</param>
    /// <remarks>The supply must state the input voltage that it accepts, and its efficiency. Towards the run its input is a device of the
    /// name of the box that draws constant power: what its outputs give over its efficiency. Towards its own outputs it is a supply. Where
    /// its input is not up, nothing behind it is. Its output is not isolated from its input.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="junction"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="junction"/> is empty.</exception>
    /// <exception cref="InvalidOperationException">Its supply gives alternating current, is unregulated, or does not state input voltage
    /// and efficiency; or the box is plugged into a receptacle or has a battery.</exception>
    /// <example>
    /// <code>
    /// DistributionBox stepDown = DistributionBox.Adapter("mast converter", converter).WithFeed("mast");
    /// </code>
    /// </example>
    public DistributionBox WithFeed(string junction, Starting? starting = null, Inrush? inrush = null)
    {
        Require.Name(junction, nameof(junction));
        return FeedError is string error
            ? throw new InvalidOperationException($"{Name} cannot be fed from a run: {error}.")
            : new DistributionBox(this) { FedFrom = junction, InputStarting = starting, InputInrush = inrush };
    }

    /// <summary>The same box on two supplies in parallel, each through a diode: when one fails, the other feeds its outputs.</summary>
    /// <param name="reserve">The second supply, of a regulated direct voltage. Set it lower than the main one, so that it rests.</param>
    /// <param name="diodeDrop">The most that is lost in the diode of each, at its rated current: from 1 mV to 2 V, and less than either
    /// supply gives. A redundancy module states it. [V]</param>
    /// <remarks>The box is judged on its main supply alone: that is what remains when the reserve fails, and no device gets less while both
    /// run. What remains when the main supply fails is the business of <c>StudyReserves</c>. The largest voltage and the currents of a
    /// fault are those of both. A receptacle is that of the main supply.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="reserve"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="diodeDrop"/> is outside its range.</exception>
    /// <exception cref="InvalidOperationException">One of the two gives alternating current or is unregulated, or the box is an adapter or
    /// a converter or has a battery.</exception>
    /// <example><code>DistributionBox twice = box.WithReserve(spare, diodeDrop: ElectricPotential.FromVolts(0.5));</code></example>
    public DistributionBox WithReserve(Supply reserve, ElectricPotential diodeDrop)
    {
        if (ReserveError(Require.NotNull(reserve, nameof(reserve))) is string error)
        {
            throw new InvalidOperationException($"{Name} cannot have a reserve: {error}.");
        }

        double drop = Require.Within(diodeDrop.Volts, LeastDiodeVolts, MostDiodeVolts, nameof(diodeDrop), "V");
        double least = Math.Min(Supply.Output.LowestVolts + DropOf(Supply), reserve.Output.LowestVolts + DropOf(reserve));
        return drop < least
            ? Paired(Supply, reserve, diodeDrop)
            : throw Require.OutOfRange(
                drop, nameof(diodeDrop), "V", FormattableString.Invariant($"below {least}, the lowest voltage of a supply"));
    }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    /// <summary>Its input as a device, at its rating until what is behind it is solved.</summary>
    internal Device InputModel(IReadOnlyDictionary<Condition, Load> solved) => new(
        Supply.Name, DeviceKind.Converter, new ConverterDraw(InputLoadAt(Supply.Output.RatedAmperes), solved), Supply.Input!.Voltage,
        starting: InputStarting, inrush: InputInrush);

    /// <summary>What its input draws while its outputs give a current, no more than its limit.</summary>
    internal Load InputLoadAt(double amperes) => Load.ConstantPower(Power.FromWatts(
        Supply.InputWattsAt(Math.Min(amperes, Supply.Output.Overload?.Highest.LimitAmperes ?? double.PositiveInfinity))));

    // Far beyond any supply, and well within what a quantity of power holds.
    private const double MostInputWatts = 1e12;

    /// <summary>Why it cannot be a converter; null where it can.</summary>
    private string? FeedError => this switch
    {
        { Supply.Output: not DcOutput { OpenVoltage: null } } => "its supply must give a regulated direct voltage",
        { Supply.Input: not { Voltage: not null, Efficiency: not null } } => "its supply must state input voltage and efficiency",
        { Receptacle: not null } => "it is plugged into a receptacle",
        { Battery: not null } => "it has a battery",
        { Reserve: not null } => "it has a reserve",
        _ when !(Supply.InputWattsAt(Supply.Output.RatedAmperes) < MostInputWatts) => "its supply must need less than 1 TW at its rating",
        _ => null,
    };

    /// <summary>Why it cannot have a reserve; null where it can.</summary>
    internal string? ReserveError(Supply reserve) => this switch
    {
        { Supply.Output: not DcOutput { OpenVoltage: null } } => "its supply must give a regulated direct voltage",
        { IsAdapter: true } => "it is an adapter",
        { FedFrom: not null } => "it is fed from a run",
        { Battery: not null } => "it has a battery",
        _ => reserve.Output is DcOutput { OpenVoltage: null } ? null : "the reserve must give a regulated direct voltage",
    };

    /// <summary>What a second supply adds to the heat in the box: lost in a diode at a current, and taken in by the reserve at rest, where
    /// that is stated. [W]</summary>
    internal double ReserveWattsAt(double amperes) => Reserve is null
        ? 0
        : (DiodeDrop!.Value.Volts * amperes) + (Reserve.Input?.Efficiency is null ? 0 : Reserve.InputWattsAt(0));

    /// <summary>The same box on its reserve alone, behind its diode: the main supply has failed.</summary>
    internal DistributionBox OnReserve() => new(this)
    {
        Supply = Reserve!.BehindDiode(DiodeDrop!.Value.Volts, beside: null), Reserve = null, DiodeDrop = null, Receptacle = null,
    };

    /// <summary>How warm the air around it is: a converter is where its run ends, at a camera or in a cabinet, so that the warmer of both
    /// counts. [°C]</summary>
    internal double AirIn(Surroundings at) => FedFrom is null ? at.BoxCelsius : Math.Max(at.BoxCelsius, at.CameraCelsius);

    /// <summary>The most that its outputs ever have: of the supply, or of the full battery without it. [V]</summary>
    internal double HighestVolts => Math.Max(Supply.Output.HighestVolts, Battery?.OpenCircuitVolts(1) ?? 0);

    /// <summary>What feeds a fault of an output: the supply, beside the battery where it has one, from a new, full and warm one to one that
    /// is old, cold and at its cut-off voltage behind its fuse.</summary>
    internal SupplyOutput FaultSourceIn(double coldestCelsius, double hottestCelsius) => Battery is null
        ? Reserve is null ? Supply.Output : ((DcOutput)Supply.Output).InFaultBeside((DcOutput)Reserve.Output)
        : ((DcOutput)Supply.Output).InFaultBeside(Battery, Battery.CutOffVolts, Battery.LeastOhms(hottestCelsius),
            Battery.GreatestOhms(coldestCelsius) + FuseOhms);

    /// <summary>What may feed a fault alone: the supply where the battery is dead or its fuse open, or each of two supplies.</summary>
    internal SupplyOutput[] AloneInFault =>
        Reserve is not null ? [Supply.Output, Reserve.Output] : Battery is not null ? [Supply.Output] : [];

    /// <summary>What holds the voltage of the other outputs meanwhile: the supply, or a charged but old battery, for in its limit a supply
    /// holds nothing.</summary>
    internal SupplyOutput RailSourceIn(double celsius)
    {
        if (Battery is null) return Supply.Output;
        double ohms = Battery.ChargedOhms(celsius) + FuseOhms;
        return ((DcOutput)Supply.Output).InFaultBeside(Battery, Battery.OpenCircuitVolts(1), ohms, ohms);
    }

    /// <summary>What its supply gives to a load and its battery together, as that is charged; no more than its limit. [A]</summary>
    internal double AmperesWhileCharging(double load) => Battery is null || Supply.Output is not DcOutput { ChargingCurrent: { } charging }
        ? load
        : Math.Max(load, Math.Min(load + charging.Amperes, Supply.Output.Overload?.Highest.LimitAmperes ?? double.PositiveInfinity));

    private DistributionBox Paired(Supply main, Supply reserve, ElectricPotential drop) => new(this)
    {
        Supply = main.BehindDiode(drop.Volts, reserve), Reserve = reserve.BehindDiode(drop.Volts, main), DiodeDrop = drop,
    };

    private static double DropOf(Supply supply) => ((DcOutput)supply.Output).DiodeVolts;

    private double FuseOhms => BatteryProtection?.GreatestOhms ?? 0;

    internal DistributionBox With(Supply supply) =>
        Reserve is null ? new(this) { Supply = supply } : Paired(supply, Reserve, DiodeDrop!.Value);

    /// <summary>The same box with a supply of another rating. What an adapter gives is its rating.</summary>
    internal DistributionBox WithRating(ElectricCurrent rated)
    {
        DistributionBox rerated = With(Supply.WithRating(rated));
        return IsAdapter
            ? rerated.WithOutputs(Outputs.Select(o => new BoxOutput(o.Number, rated, o.Protection, o.ClaimedClass)))
            : rerated;
    }

    /// <summary>The same box with another protective device at some of its outputs.</summary>
    internal DistributionBox WithProtection(ProtectiveDevice protection, ICollection<int> outputs) => WithOutputs(Outputs.Select(
        o => outputs.Contains(o.Number) ? new BoxOutput(o.Number, o.Limit, protection, o.ClaimedClass) : o));

    private DistributionBox WithOutputs(IEnumerable<BoxOutput> outputs) => new(this) { Outputs = outputs.ToList().AsReadOnly() };

    /// <summary>The same box in the place of another one.</summary>
    internal DistributionBox InPlaceOf(DistributionBox other) => new(this) { Enclosure = other.Enclosure, Cabinet = other.Cabinet };
}
