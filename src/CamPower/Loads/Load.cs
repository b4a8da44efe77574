using System;
using UnitsNet;

namespace CamPower;

/// <summary>What a device draws at a moment: a component of constant power, one of constant current, one of constant resistance.</summary>
/// <remarks>
/// Immutable. At a terminal voltage V it draws P/V + I₀ + G·V. A switching input is constant power, a linear
/// regulator constant current, a heater constant resistance. A load whose input stage is unknown draws the
/// larger of P/V and I₀ instead (<see cref="LargerOf"/>).
/// </remarks>
/// <example>
/// <code>
/// Load camera = Load.ConstantPower(Power.FromWatts(9));
/// Load withHeater = camera + Load.ConstantResistance(ElectricResistance.FromOhms(24));
/// </code>
/// </example>
public sealed class Load
{
    /// <summary>The most that a load may draw. [A]</summary>
    internal const double MostAmperes = 1e9;

    /// <summary>The most that a load may draw. [W]</summary>
    internal const double MostWatts = 1e9;

    private const double MostOhms = 1e12, LeastOhms = 1e-9;

    private Load(Power power, ElectricCurrent current, ElectricResistance? resistance, bool isLargerOf = false)
    {
        PowerComponent = power;
        CurrentComponent = current;
        ResistanceComponent = resistance;
        Watts = (double)power.Watts;
        Amperes = current.Amperes;
        Siemens = resistance is ElectricResistance r ? 1 / r.Ohms : 0;
        IsLargerOf = isLargerOf;
    }

    /// <summary>No load at all.</summary>
    public static Load None { get; } = new(Power.Zero, ElectricCurrent.Zero, null);

    /// <summary>The component of constant power. [W]</summary>
    public Power PowerComponent { get; }

    /// <summary>The component of constant current. [A]</summary>
    public ElectricCurrent CurrentComponent { get; }

    /// <summary>The component of constant resistance, or null for none. [Ω]</summary>
    public ElectricResistance? ResistanceComponent { get; }

    /// <summary>Whether it draws the larger of its power and current components instead of their sum.</summary>
    public bool IsLargerOf { get; }

    internal double Watts { get; }

    internal double Amperes { get; }

    internal double Siemens { get; }

    /// <summary>A load that draws the same power at every voltage, as a switching input does.</summary>
    /// <param name="power">From 0 to 1 GW. [W]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="power"/> is outside that range.</exception>
    public static Load ConstantPower(Power power) => new(Checked(power, nameof(power)), ElectricCurrent.Zero, null);

    /// <summary>A load that draws the same current at every voltage, as a linear regulator does.</summary>
    /// <param name="current">From 0 to 1 GA. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="current"/> is outside that range.</exception>
    public static Load ConstantCurrent(ElectricCurrent current) => new(Power.Zero, Checked(current, nameof(current)), null);

    /// <summary>A load of constant resistance, as a heater is.</summary>
    /// <param name="resistance">From 1 nΩ to 1 TΩ. [Ω]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resistance"/> is outside that range.</exception>
    public static Load ConstantResistance(ElectricResistance resistance)
    {
        Require.Within(resistance.Ohms, LeastOhms, MostOhms, nameof(resistance), "Ω");
        return new Load(Power.Zero, ElectricCurrent.Zero, resistance);
    }

    /// <summary>A load that draws the larger of P/V and a current, at each voltage: a label whose input stage is not known.</summary>
    /// <param name="power">From 0 to 1 GW. [W]</param>
    /// <param name="current">From 0 to 1 GA. [A]</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Load LargerOf(Power power, ElectricCurrent current) =>
        new(Checked(power, nameof(power)), Checked(current, nameof(current)), null, isLargerOf: true);

    /// <summary>Both loads together.</summary>
    /// <param name="other">The other load.</param>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is null.</exception>
    /// <exception cref="InvalidOperationException">One is a <see cref="LargerOf"/> load: a label is a total, nothing is added to
    /// it.</exception>
    public Load Plus(Load other)
    {
        Require.NotNull(other, nameof(other));
        if (IsLargerOf || other.IsLargerOf)
        {
            throw new InvalidOperationException("A load that draws the larger of two components is a total: nothing can be added to it.");
        }

        // A component that only one of the two has keeps its number and unit.
        return new Load(
            other.Watts == 0 ? PowerComponent : Watts == 0 ? other.PowerComponent : Power.FromWatts(Watts + other.Watts),
            other.Amperes == 0 ? CurrentComponent
                : Amperes == 0 ? other.CurrentComponent : ElectricCurrent.FromAmperes(Amperes + other.Amperes),
            other.Siemens == 0 ? ResistanceComponent
                : Siemens == 0 ? other.ResistanceComponent : ElectricResistance.FromOhms(1 / (Siemens + other.Siemens)));
    }

    /// <summary>Both loads together; see <see cref="Plus"/>.</summary>
    /// <exception cref="ArgumentNullException">A load is null.</exception>
    /// <exception cref="InvalidOperationException">One is a <see cref="LargerOf"/> load.</exception>
    public static Load operator +(Load left, Load right) => Require.NotNull(left, nameof(left)).Plus(right);

    /// <summary>The current drawn at a terminal voltage. [A]</summary>
    /// <param name="terminalVoltage">Above 0. [V]</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="terminalVoltage"/> is not above 0.</exception>
    public ElectricCurrent CurrentAt(ElectricPotential terminalVoltage) =>
        ElectricCurrent.FromAmperes(AmperesAt(Require.Positive(terminalVoltage.Volts, nameof(terminalVoltage), "V")));

    /// <summary>The components in words, in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        if (IsLargerOf) return FormattableString.Invariant($"the larger of {Watts:G6} W and {Amperes:G6} A");
        string text = string.Empty;
        if (Watts > 0) text += FormattableString.Invariant($" + {Watts:G6} W");
        if (Amperes > 0) text += FormattableString.Invariant($" + {Amperes:G6} A");
        if (Siemens > 0) text += FormattableString.Invariant($" + {1 / Siemens:G6} Ω");
        return text.Length == 0 ? "no load" : text.Substring(3);
    }

    /// <summary>A load of three components. [W, A, S]</summary>
    internal static Load Of(double watts, double amperes, double siemens)
    {
        Load load = ConstantPower(Power.FromWatts(watts)) + ConstantCurrent(ElectricCurrent.FromAmperes(amperes));
        return siemens > 0 ? load + ConstantResistance(ElectricResistance.FromOhms(1 / siemens)) : load;
    }

    /// <summary>The load with another power component. [W]</summary>
    internal Load WithPower(double watts) =>
        new(Checked(Power.FromWatts(watts), nameof(watts)), CurrentComponent, ResistanceComponent, IsLargerOf);

    /// <summary>So many times the load.</summary>
    internal Load Scaled(double scale) => IsLargerOf
        ? LargerOf(Power.FromWatts(Watts * scale), ElectricCurrent.FromAmperes(Amperes * scale))
        : Of(Watts * scale, Amperes * scale, Siemens * scale);

    internal Load WithPowerScaled(double scale) => new(Power.FromWatts(Watts * scale), CurrentComponent, ResistanceComponent, IsLargerOf);

    internal Load WithoutResistance() => new(PowerComponent, CurrentComponent, null, IsLargerOf);

    internal double AmperesAt(double volts) => IsLargerOf
        ? Math.Max(Watts / volts, Amperes)
        : (Watts / volts) + Amperes + (Siemens * volts);

    /// <summary>dI/dV at a terminal voltage. [S]</summary>
    internal double SlopeAt(double volts)
    {
        double ofPower = -Watts / (volts * volts);
        if (!IsLargerOf) return ofPower + Siemens;
        return Watts > Amperes * volts ? ofPower : 0;
    }

    private static Power Checked(Power power, string parameter)
    {
        Require.Within((double)power.Watts, 0, MostWatts, parameter, "W");
        return power;
    }

    private static ElectricCurrent Checked(ElectricCurrent current, string parameter)
    {
        Require.Within(current.Amperes, 0, MostAmperes, parameter, "A");
        return current;
    }
}
