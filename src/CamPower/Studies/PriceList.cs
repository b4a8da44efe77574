using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Studies;
using UnitsNet;

namespace CamPower;

/// <summary>What is sold, and what parts and work cost: remedies choose from it, and are ranked by it.</summary>
/// <remarks>Immutable: <see cref="With"/> and <see cref="WithWork"/> return another list. Replace the neutral prices by your own.</remarks>
/// <example>
/// <code>
/// PriceList mine = PriceList.Neutral.With("16 AWG pair", 0.85).WithWork(aVisit: 40, pullingAMeter: 2.5);
/// </code>
/// </example>
public sealed class PriceList
{
    private readonly Dictionary<string, double> _named;

    /// <summary>States what is sold. Its prices are those of <see cref="Neutral"/> until they are replaced.</summary>
    /// <param name="unit">What prices are counted in, such as "EUR". Not empty.</param>
    /// <param name="sizes">The conductor sizes that are sold as pairs.</param>
    /// <param name="supplyRatings">The rated currents that supplies are sold in, each above 0. [A]</param>
    /// <param name="protectiveDevices">The protective devices that are sold for outputs.</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="unit"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A size is the default value, or a rating is not above 0.</exception>
    public PriceList(string unit, IEnumerable<WireSize> sizes, IEnumerable<ElectricCurrent> supplyRatings,
        IEnumerable<ProtectiveDevice> protectiveDevices)
    {
        Unit = Require.Name(unit, nameof(unit));
        Sizes = Require.NotNull(sizes, nameof(sizes)).OrderBy(s => s).ToList().AsReadOnly();
        SupplyRatings = Require.NotNull(supplyRatings, nameof(supplyRatings)).OrderBy(r => r.Amperes).ToList().AsReadOnly();
        ProtectiveDevices = Require.Items(protectiveDevices, nameof(protectiveDevices));
        foreach (WireSize size in Sizes) Require.Positive(size.SquareMeters, nameof(sizes), "m²");
        foreach (ElectricCurrent rating in SupplyRatings) Require.Positive(rating.Amperes, nameof(supplyRatings), "A");
        _named = new Dictionary<string, double>(StringComparer.Ordinal);
        Visit = StudyConstants.NeutralVisit.Value;
        PullingAMeter = StudyConstants.NeutralPulling.Value;
    }

    private PriceList(PriceList other, Dictionary<string, double> named)
    {
        Unit = other.Unit;
        Sizes = other.Sizes;
        SupplyRatings = other.SupplyRatings;
        ProtectiveDevices = other.ProtectiveDevices;
        Visit = other.Visit;
        PullingAMeter = other.PullingAMeter;
        _named = named;
    }

    /// <summary>Usual sizes, supplies and protective devices, at prices in points.</summary>
    /// <remarks>Common practice, no source: points compare changes with each other and are no money. A point is about what pulling a meter
    /// of cable costs. The resettable fuses are <see cref="ResettableFuse.Generic16Volt"/>; the electronic limits open within 5 ms, are off
    /// by 10 % at most and have 50 mΩ.</remarks>
    public static PriceList Neutral { get; } = new("points",
        [
            .. new[] { 24, 22, 20, 18, 16, 14, 12, 10 }.Select(WireSize.Awg),
            .. new[] { 0.5, 0.75, 1, 1.5, 2.5, 4, 6 }.Select(WireSize.SquareMillimeters),
        ],
        [.. new double[] { 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12.5, 15, 20, 25, 30, 40 }.Select(a => ElectricCurrent.FromAmperes(a))],
        [
            .. new[] { 0.5, 0.8, 1.1, 1.4, 1.8, 2.5, 3.5, 5 }.Select(ElectronicLimitOf),
            .. ResettableFuse.Generic16Volt,
        ]);

    /// <summary>What prices are counted in.</summary>
    public string Unit { get; }

    /// <summary>The conductor sizes that are sold as pairs, the smallest first.</summary>
    public IReadOnlyList<WireSize> Sizes { get; }

    /// <summary>The rated currents that supplies are sold in, the smallest first. [A]</summary>
    public IReadOnlyList<ElectricCurrent> SupplyRatings { get; }

    /// <summary>The protective devices that are sold for outputs.</summary>
    public IReadOnlyList<ProtectiveDevice> ProtectiveDevices { get; }

    /// <summary>The work of one change, whatever it is. [<see cref="Unit"/>]</summary>
    public double Visit { get; private init; }

    /// <summary>The work of pulling a meter of cable. [<see cref="Unit"/>]</summary>
    public double PullingAMeter { get; private init; }

    /// <summary>The same list with another price of one part.</summary>
    /// <param name="part">Name of a cable, supply, box, protective device, joint or connector. Not empty.</param>
    /// <param name="price">Its price, at least 0; of a cable that of a meter.</param>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="part"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="price"/> is negative or not finite.</exception>
    public PriceList With(string part, double price)
    {
        Require.NotNegative(Require.Finite(price, nameof(price), Unit), nameof(price), Unit);
        return new PriceList(this, new Dictionary<string, double>(_named, StringComparer.Ordinal)
        {
            [Require.Name(part, nameof(part))] = price,
        });
    }

    /// <summary>The same list with other prices of work.</summary>
    /// <param name="aVisit">The work of one change, whatever it is, at least 0.</param>
    /// <param name="pullingAMeter">The work of pulling a meter of cable, at least 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A price is negative or not finite.</exception>
    public PriceList WithWork(double aVisit, double pullingAMeter) => new(this, _named)
    {
        Visit = Require.NotNegative(Require.Finite(aVisit, nameof(aVisit), Unit), nameof(aVisit), Unit),
        PullingAMeter = Require.NotNegative(Require.Finite(pullingAMeter, nameof(pullingAMeter), Unit), nameof(pullingAMeter), Unit),
    };

    /// <summary>The price of a meter of cable, without the work. [<see cref="Unit"/>]</summary>
    /// <param name="cable">The cable.</param>
    /// <remarks>Where no price is stated for its name, it goes by the cross-section of all its conductors together.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="cable"/> is null.</exception>
    public double OfAMeter(Cable cable)
    {
        Require.NotNull(cable, nameof(cable));
        double squareMillimeters = 1e6 * cable.Conductors.Sum(c => c.SquareMeters);
        return Named(cable.ToString())
            ?? StudyConstants.NeutralCable.Value + (squareMillimeters * StudyConstants.NeutralSquareMillimeter.Value);
    }

    /// <summary>The price of a supply. [<see cref="Unit"/>]</summary>
    /// <param name="supply">The supply.</param>
    /// <remarks>Where no price is stated for its name, it goes by its rated current.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="supply"/> is null.</exception>
    public double Of(Supply supply) => Named(Require.NotNull(supply, nameof(supply)).Name)
        ?? StudyConstants.NeutralSupply.Value + (supply.Output.RatedAmperes * StudyConstants.NeutralAmpere.Value);

    /// <summary>The price of a box with its supply, without the protective devices. [<see cref="Unit"/>]</summary>
    /// <param name="box">The box or adapter.</param>
    /// <remarks>Where no price is stated for its name, it goes by its supply and its outputs. An adapter is its supply.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is null.</exception>
    public double Of(DistributionBox box) => Named(Require.NotNull(box, nameof(box)).Name)
        ?? Of(box.Supply) + (box.IsAdapter ? 0 : box.Outputs.Count * StudyConstants.NeutralOutput.Value);

    /// <summary>The price of a protective device. [<see cref="Unit"/>]</summary>
    /// <param name="protection">The protective device; none costs nothing.</param>
    /// <exception cref="ArgumentNullException"><paramref name="protection"/> is null.</exception>
    public double Of(ProtectiveDevice protection) => Require.NotNull(protection, nameof(protection)).IsNone
        ? 0
        : Named(protection.Name) ?? StudyConstants.NeutralProtection.Value;

    /// <summary>The price of a small part by its name: a joint or a connector. [<see cref="Unit"/>]</summary>
    /// <param name="part">Its name. Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="part"/> is empty.</exception>
    public double Of(string part) => Named(Require.Name(part, nameof(part))) ?? StudyConstants.NeutralJoint.Value;

    /// <summary>What is sold, in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"prices in {Unit}: {Sizes.Count} sizes, {SupplyRatings.Count} supply ratings, {ProtectiveDevices.Count} protective devices");

    /// <summary>An amount with the unit, as remedies print it.</summary>
    internal string Text(double amount) => $"{amount.ToString("0.##", CultureInfo.InvariantCulture)} {Unit}";

    private double? Named(string name) => _named.TryGetValue(name, out double price) ? price : null;

    private static ElectronicLimit ElectronicLimitOf(double amperes) => new(
        FormattableString.Invariant($"{amperes} A electronic limit"), ElectricCurrent.FromAmperes(amperes),
        Ratio.FromPercent(StudyConstants.NeutralLimitTolerance.Value), Duration.FromMilliseconds(StudyConstants.NeutralLimitTime.Value),
        ElectricResistance.FromMilliohms(StudyConstants.NeutralLimitResistance.Value),
        ElectricPotential.FromVolts(StudyConstants.NeutralLimitVoltage.Value));
}
