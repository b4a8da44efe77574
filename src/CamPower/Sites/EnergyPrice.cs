using System;

namespace CamPower;

/// <summary>What a kilowatt-hour from the mains costs.</summary>
/// <remarks>Immutable. One price for the whole year: tariffs by the hour, standing charges and taxes are not known here.</remarks>
/// <example><code>var price = new EnergyPrice(perKilowattHour: 0.30, currency: "EUR");</code></example>
public sealed class EnergyPrice
{
    private const double Most = 1e9;

    /// <summary>States a price.</summary>
    /// <param name="perKilowattHour">Price of a kilowatt-hour, from 0 to 10⁹, in the currency.</param>
    /// <param name="currency">The currency as it is printed, such as "EUR". Not empty.</param>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="currency"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="perKilowattHour"/> is outside its range.</exception>
    public EnergyPrice(double perKilowattHour, string currency)
    {
        PerKilowattHour = Require.Within(perKilowattHour, 0, Most, nameof(perKilowattHour), string.Empty);
        Currency = Require.Name(currency, nameof(currency));
    }

    /// <summary>Price of a kilowatt-hour, in the currency.</summary>
    public double PerKilowattHour { get; }

    /// <summary>The currency as it is printed.</summary>
    public string Currency { get; }

    /// <summary>The price in the invariant culture; never throws.</summary>
    public override string ToString() => FormattableString.Invariant($"{PerKilowattHour:0.####} {Currency}/kWh");
}
