using System;
using CamPower.Supplies;
using UnitsNet;

namespace CamPower;

/// <summary>A battery: cells of one chemistry in series, with their rated capacity and resistance.</summary>
/// <remarks>
/// Immutable. Only its own resistance limits the short-circuit current: put a fuse at its terminal. Lead-acid batteries give off hydrogen
/// and need ventilation. Lithium batteries need their battery management. Follow the local code and the maker's instructions.
/// </remarks>
/// <example>
/// <code>
/// var battery = new Battery("12 V, 18 Ah", BatteryChemistry.ValveRegulatedLeadAcid, cells: 6, ElectricCharge.FromAmpereHours(18),
///     ratedOver: Duration.FromHours(20), resistance: ElectricResistance.FromMilliohms(15));
/// Duration atTwoAmperes = battery.TimeAt(ElectricCurrent.FromAmperes(2), Temperature.FromDegreesCelsius(25));   // 7.6 h
/// </code>
/// </example>
public sealed class Battery
{
    internal const double SecondsAnHour = 3600;

    private const double MostAmpereHours = 1e6;
    private readonly double _ohms;

    /// <summary>Describes a battery.</summary>
    /// <param name="name">Name. Not empty.</param>
    /// <param name="chemistry">How its cells behave.</param>
    /// <param name="cells">Number of cells in series, from 1 to 400.</param>
    /// <param name="capacity">Rated capacity when new, above 0, at most 1 MAh. [Ah]</param>
    /// <param name="ratedOver">The time of the discharge for which the capacity is rated, above 0; 20 h for a 20-hour rate. [h]</param>
    /// <param name="resistance">Resistance of the whole battery, new, full and at 25 °C, from 1 µΩ to 100 MΩ. [Ω]</param>
    /// <param name="cutOff">Voltage at which it is disconnected, above 0; null for that of its chemistry. [V]</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Battery(string name, BatteryChemistry chemistry, int cells, ElectricCharge capacity, Duration ratedOver,
        ElectricResistance resistance, ElectricPotential? cutOff = null)
    {
        Name = Require.Name(name, nameof(name));
        Chemistry = Require.NotNull(chemistry, nameof(chemistry));
        Cells = (int)Require.Within(cells, 1, 400, nameof(cells), "");
        double hours = Require.Positive(ratedOver.Hours, nameof(ratedOver), "h");
        double ampereHours = Require.Positive(capacity.AmpereHours, nameof(capacity), "Ah");
        AmpereSeconds = Require.Within(ampereHours, 0, MostAmpereHours, nameof(capacity), "Ah") * SecondsAnHour;
        RatedAmperes = ampereHours / hours;
        _ohms = Require.Within(resistance.Ohms, 1e-6, 1e8, nameof(resistance), "Ω");
        if (cutOff is ElectricPotential volts) Require.Positive(volts.Volts, nameof(cutOff), "V");
        CutOff = cutOff ?? Cells * Chemistry.CutOff;
        CutOffVolts = CutOff.Volts;
        Capacity = capacity;
        Resistance = resistance;
        RatedOver = ratedOver;
    }

    private Battery(Battery battery, double capacityShare, double resistanceFactor)
    {
        Name = battery.Name;
        Chemistry = battery.Chemistry;
        Cells = battery.Cells;
        AmpereSeconds = battery.AmpereSeconds * capacityShare;
        RatedAmperes = battery.RatedAmperes;
        _ohms = battery._ohms * resistanceFactor;
        CutOff = battery.CutOff;
        CutOffVolts = battery.CutOffVolts;
        Capacity = battery.Capacity * capacityShare;
        Resistance = battery.Resistance * resistanceFactor;
        RatedOver = battery.RatedOver;
    }

    /// <summary>Name.</summary>
    public string Name { get; }

    /// <summary>How its cells behave.</summary>
    public BatteryChemistry Chemistry { get; }

    /// <summary>Number of cells in series.</summary>
    public int Cells { get; }

    /// <summary>Capacity at the rated current and 25 °C. [Ah]</summary>
    public ElectricCharge Capacity { get; }

    /// <summary>The time of the discharge for which the capacity is rated. [h]</summary>
    public Duration RatedOver { get; }

    /// <summary>Resistance when full, at 25 °C. [Ω]</summary>
    public ElectricResistance Resistance { get; }

    /// <summary>Voltage at which it is disconnected. [V]</summary>
    public ElectricPotential CutOff { get; }

    /// <summary>Current of a short circuit at its terminals, full and at 25 °C: open-circuit voltage over resistance. [A]</summary>
    public ElectricCurrent ShortCircuitCurrent => ElectricCurrent.FromAmperes(OpenCircuitVolts(1) / _ohms);

    /// <summary>The same battery after some years: less capacity, and more resistance in the same proportion.</summary>
    /// <param name="capacityLeft">Share of the capacity that is left, above 0 and at most 1. [1]</param>
    /// <remarks>The rated current stays that of the new one. A battery is replaced with 80 % left (<see cref="Sources.Ieee485Aging"/>).
    /// That the resistance rises as the capacity falls is common practice, no source.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="capacityLeft"/> is outside its range.</exception>
    /// <example><code>Battery old = battery.Aged(Ratio.FromPercent(80));</code></example>
    public Battery Aged(Ratio capacityLeft)
    {
        double share = Require.Within(capacityLeft.DecimalFractions, 0, 1, nameof(capacityLeft), "");
        return new Battery(this, Require.Positive(share, nameof(capacityLeft), ""), 1 / share);
    }

    /// <summary>How long it gives a constant current, whatever its voltage. [h]</summary>
    /// <param name="current">The current, above 0. [A]</param>
    /// <param name="at">Temperature of the battery, inside the capacity curve of its chemistry.</param>
    /// <remarks>Peukert's law, t = C/I · (Ir/I)^(k-1), with the capacity C at the temperature, the rated current Ir and the exponent k.
    /// Below the rated current the capacity is the rated one. Source: <see cref="Sources.Peukert"/>.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example><code>Duration at1A = battery.TimeAt(ElectricCurrent.FromAmperes(1), Temperature.FromDegreesCelsius(25));</code></example>
    public Duration TimeAt(ElectricCurrent current, Temperature at)
    {
        double amperes = Require.Positive(current.Amperes, nameof(current), "A");
        return Duration.FromSeconds(1 / ShareASecond(amperes, CapacityShareAt(at)));
    }

    /// <summary>How long a charging current takes to put back what was taken out. [h]</summary>
    /// <param name="takenOut">Share of the capacity that was taken out, from 0 to 1. [1]</param>
    /// <param name="current">The charging current, above 0. [A]</param>
    /// <remarks>t = charge · charge factor / I: the shortest time, for a charger lowers its current towards the end. Source of the factor:
    /// that of the chemistry.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example><code>Duration back = battery.RechargeTime(Ratio.FromPercent(60), ElectricCurrent.FromAmperes(2));</code></example>
    public Duration RechargeTime(Ratio takenOut, ElectricCurrent current) => Duration.FromSeconds(
        Require.Within(takenOut.DecimalFractions, 0, 1, nameof(takenOut), "") * AmpereSeconds * Chemistry.ChargeFactor
        / Require.Positive(current.Amperes, nameof(current), "A"));

    /// <summary>How long a full battery lasts with a daily use and a daily charge; null where the charge keeps up. [d]</summary>
    /// <param name="usedADay">What the load takes a day, above 0; at more than the rated current count it by Peukert's law first.
    /// [Ah]</param>
    /// <param name="chargedADay">What is put in a day, at least 0. [Ah]</param>
    /// <param name="at">Temperature of the battery, inside the capacity curve of its chemistry.</param>
    /// <remarks>Of what is put in only the part 1/charge factor counts.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example>
    /// <code>
    /// Duration? lasts = battery.AutonomyAt(
    ///     ElectricCharge.FromAmpereHours(30), ElectricCharge.FromAmpereHours(12), Temperature.FromDegreesCelsius(5));
    /// </code>
    /// </example>
    public Duration? AutonomyAt(ElectricCharge usedADay, ElectricCharge chargedADay, Temperature at)
    {
        double lost = Require.Positive(usedADay.AmpereHours, nameof(usedADay), "Ah")
            - (Require.NotNegative(chargedADay.AmpereHours, nameof(chargedADay), "Ah") / Chemistry.ChargeFactor);
        return lost > 0 ? Duration.FromDays(AmpereSeconds / SecondsAnHour * CapacityShareAt(at) / lost) : null;
    }

    /// <summary>Float voltage of the whole battery. [V]</summary>
    /// <param name="at">Temperature of the battery, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="at"/> is not finite.</exception>
    /// <example><code>ElectricPotential onAColdNight = battery.FloatAt(Temperature.FromDegreesCelsius(-10));</code></example>
    public ElectricPotential FloatAt(Temperature at) => Cells * Chemistry.FloatAt(at);

    /// <summary>The temperature at which capacity, resistance and float voltage are stated: 25 °C.</summary>
    internal static Temperature Reference { get; } = Temperature.FromDegreesCelsius(BatteryConstants.ReferenceTemperature.Value);

    /// <summary>Name and chemistry; never throws.</summary>
    public override string ToString() => $"{Name} ({Chemistry})";

    /// <summary>Capacity with the share that age has left. [A·s]</summary>
    internal double AmpereSeconds { get; }

    internal double CutOffVolts { get; }

    /// <summary>The current at which it gives its rated capacity. [A]</summary>
    internal double RatedAmperes { get; }

    /// <summary>The same battery with a part of its capacity set aside. [1]</summary>
    internal Battery WithCapacityShare(double share) => new(this, share, resistanceFactor: 1);

    /// <summary>Open-circuit voltage at a state of charge. [V]</summary>
    internal double OpenCircuitVolts(double charge) => Cells * Chemistry.CellVoltsAt(charge);

    /// <summary>Voltage under load at a state of charge, the drop in its resistance left out. [V]</summary>
    internal double VoltsUnderLoad(double charge) => Cells * Chemistry.CellVoltsUnderLoad(charge);

    /// <summary>Resistance under a load of hours at a state of charge, with what the temperature multiplies it by. [Ω]</summary>
    internal double OhmsAt(double charge, double temperatureFactor) =>
        _ohms * Chemistry.LastingResistance * Chemistry.ResistanceAtCharge(charge) * temperatureFactor;

    /// <summary>The least resistance in a short: new, full and as warm as it gets. [Ω]</summary>
    internal double LeastOhms(double hottestCelsius) => _ohms * Math.Min(1, Chemistry.LeastResistance(hottestCelsius));

    /// <summary>The greatest resistance in a short: at the end of its life, empty and as cold as it gets. [Ω]</summary>
    internal double GreatestOhms(double coldestCelsius) =>
        _ohms * Math.Max(1, Chemistry.GreatestResistance(coldestCelsius)) * 100 / BatteryConstants.EndOfLife.Value;

    /// <summary>Resistance in a short when it is full, at the end of its life, at a temperature. [Ω]</summary>
    internal double ChargedOhms(double celsius) =>
        _ohms * Math.Max(1, Chemistry.ResistanceNear(celsius)) * 100 / BatteryConstants.EndOfLife.Value;

    /// <summary>The largest current that it may be charged with; null where that is not stated. [A]</summary>
    internal double? MostChargingAmperes => Chemistry.HighestChargingRate * AmpereSeconds / SecondsAnHour;

    private double CapacityShareAt(Temperature at)
    {
        double celsius = Require.Finite(Celsius.Of(at), nameof(at), "°C");
        ShareCurve<Temperature> capacity = Chemistry.Capacity;
        return capacity.ShareAt(celsius) ?? throw Require.OutOfRange(
            celsius, nameof(at), "°C", FormattableString.Invariant($"from {capacity.Lowest} to {capacity.Highest}"));
    }

    /// <summary>Share of its charge that a current takes in a second, with what the temperature leaves of the capacity. [1/s]</summary>
    internal double ShareASecond(double amperes, double capacityShare)
    {
        double rate = Math.Max(1, amperes / RatedAmperes);
        return amperes * Math.Pow(rate, Chemistry.RateExponent - 1) / (AmpereSeconds * capacityShare);
    }
}
