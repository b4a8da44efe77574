using UnitsNet;

namespace CamPower.Commissioning;

/// <summary>The meter that a reading is taken with.</summary>
/// <remarks>Immutable. A current is read with a clamp, or on the display of the box: nothing is lost in the meter.</remarks>
/// <example>
/// <code>
/// var meter = new Meter("bench meter", new MeterRange(Ratio.FromPercent(0.5), 2, 0.01), new MeterRange(Ratio.FromPercent(2), 5, 0.01),
///     new MeterRange(Ratio.FromPercent(1), 3, 0.1), leads: ElectricResistance.FromOhms(0.2));
/// </code>
/// </example>
public sealed class Meter
{
    /// <summary>Describes a meter.</summary>
    /// <param name="name">What it is called. Not empty.</param>
    /// <param name="volts">Its accuracy for voltage. [V]</param>
    /// <param name="amperes">Its accuracy for current. [A]</param>
    /// <param name="ohms">Its accuracy for resistance. [Ω]</param>
    /// <param name="leads">What its leads add to a resistance, at least 0; null for nothing, because they are zeroed. [Ω]</param>
    /// <param name="contacts">The most that the contacts of its tips add to a resistance, at least 0; null for nothing. [Ω]</param>
    /// <exception cref="System.ArgumentNullException">A reference is null.</exception>
    /// <exception cref="System.ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A resistance is negative or not finite.</exception>
    public Meter(string name, MeterRange volts, MeterRange amperes, MeterRange ohms, ElectricResistance? leads = null,
        ElectricResistance? contacts = null)
    {
        Name = Require.Name(name, nameof(name));
        Volts = Require.NotNull(volts, nameof(volts));
        Amperes = Require.NotNull(amperes, nameof(amperes));
        Ohms = Require.NotNull(ohms, nameof(ohms));
        Leads = leads ?? ElectricResistance.Zero;
        Contacts = contacts ?? ElectricResistance.Zero;
        LeadOhms = Require.NotNegative(Leads.Ohms, nameof(leads), "Ω");
        ContactOhms = Require.NotNegative(Contacts.Ohms, nameof(contacts), "Ω");
    }

    /// <summary>A usual handheld meter with its leads zeroed: ±(0.5 % + 2) of 10 mV, ±(2 % + 5) of 10 mA, ±(1 % + 3) of 0.1 Ω, and up to
    /// 0.1 Ω at its tips. Common practice, no source.</summary>
    public static Meter Handheld { get; } = new(
        "handheld meter",
        new MeterRange(Ratio.FromPercent(0.5), 2, 0.01),
        new MeterRange(Ratio.FromPercent(2), 5, 0.01),
        new MeterRange(Ratio.FromPercent(1), 3, 0.1),
        contacts: ElectricResistance.FromOhms(0.1));

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Its accuracy for voltage.</summary>
    public MeterRange Volts { get; }

    /// <summary>Its accuracy for current.</summary>
    public MeterRange Amperes { get; }

    /// <summary>Its accuracy for resistance.</summary>
    public MeterRange Ohms { get; }

    /// <summary>What its leads add to a resistance. [Ω]</summary>
    public ElectricResistance Leads { get; }

    /// <summary>The most that the contacts of its tips add to a resistance. [Ω]</summary>
    public ElectricResistance Contacts { get; }

    /// <summary>The name; never throws.</summary>
    public override string ToString() => Name;

    internal double LeadOhms { get; }

    internal double ContactOhms { get; }

    /// <summary>Its accuracy for a kind of reading.</summary>
    internal MeterRange RangeFor(ReadingKind kind) => kind switch
    {
        ReadingKind.OutputCurrent => Amperes,
        ReadingKind.PairResistance or ReadingKind.LoopResistance or ReadingKind.JunctionLoopResistance => Ohms,
        _ => Volts,
    };
}
