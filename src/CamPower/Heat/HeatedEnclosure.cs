using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Heat;
using UnitsNet;

namespace CamPower;

/// <summary>Temperatures of a sealed enclosure, inside and on its skin, from the losses in it and the sun.</summary>
/// <remarks>
/// Immutable. Three resistances in series: the film of still air inside, the sheet, the film of still air outside. A film is
/// natural convection and radiation; the sun heats the skin, on top of what comes from inside. All the free faces share one skin
/// temperature. Sources: <see cref="Sources.EnclosureHeatBalance"/>, <see cref="Sources.VerticalPlate"/>,
/// <see cref="Sources.HorizontalPlate"/>, <see cref="Sources.GraySurface"/>. Thin air high above the sea
/// convects less. Wind, rain, a clear sky and heat into a wall all cool and are left out. The inside temperature is a mean: under
/// the lid it is hotter, right above a supply hotter still. Good to perhaps a quarter of the rise: measure where it is near
/// a limit.
/// </remarks>
/// <example>
/// <code>
/// HeatedEnclosure heated = HeatedEnclosure.Of(enclosure, Power.FromWatts(30), ambient: Temperature.FromDegreesCelsius(35));
/// Temperature inside = heated.Inside;
/// </code>
/// </example>
public sealed class HeatedEnclosure
{
    private const double MostWatts = 1e15, StrongestSun = 2000;

    private readonly double _ambient;

    internal HeatedEnclosure(
        Enclosure enclosure, double losses, double ambientCelsius, double sunWattsPerSquareMeter, double altitudeMeters)
    {
        Enclosure = enclosure;
        LossWatts = losses;
        SunWattsPerSquareMeter = sunWattsPerSquareMeter;
        _ambient = ambientCelsius;
        double ambient = ambientCelsius - Surroundings.AbsoluteZero;
        Outside = Film.Carrying(enclosure, ambient, losses + SolarWatts, altitudeMeters);
        SheetRise = losses * enclosure.Wall.SquareMeterKelvinsPerWatt / enclosure.FreeSquareMeters;
        InsideFilm = Film.Carrying(enclosure, ambient + Outside.Rise + SheetRise, losses, altitudeMeters);
        RiseKelvins = Outside.Rise + SheetRise + InsideFilm.Rise;
        Breaches = EnclosureValidity.Breaches(enclosure, ambientCelsius, InsideCelsius).ToList().AsReadOnly();
    }

    /// <summary>The enclosure.</summary>
    public Enclosure Enclosure { get; }

    /// <summary>The heat lost in it. [W]</summary>
    public Power Losses => Power.FromWatts(LossWatts);

    /// <summary>The heat that its skin takes up from the sun. [W]</summary>
    public Power SolarGain => Power.FromWatts(SolarWatts);

    /// <summary>Temperature of the air around it. [°C]</summary>
    public Temperature Ambient => Temperature.FromDegreesCelsius(_ambient);

    /// <summary>Temperature of its skin, outside. [°C]</summary>
    public Temperature Skin => Temperature.FromDegreesCelsius(SkinCelsius);

    /// <summary>Mean temperature of the air in it. [°C]</summary>
    public Temperature Inside => Temperature.FromDegreesCelsius(InsideCelsius);

    /// <summary>How much warmer the air in it is than the air around. [K]</summary>
    public TemperatureDelta Rise => TemperatureDelta.FromKelvins(RiseKelvins);

    /// <summary>What is outside the range in which the model was held against other figures; empty where nothing is.</summary>
    /// <remarks>Sides from 100 mm to 2 m, air from 200 K (−73 °C) outside to 400 K (127 °C) inside, no vents.</remarks>
    public IReadOnlyList<ValidityBreach> Breaches { get; }

    internal double LossWatts { get; }

    internal double SunWattsPerSquareMeter { get; }

    internal double SolarWatts => Enclosure.Wall.AbsorptanceShare * SunWattsPerSquareMeter * Enclosure.SunlitSquareMeters;

    internal double AmbientCelsius => _ambient;

    internal double SkinCelsius => _ambient + Outside.Rise;

    internal double InsideCelsius => _ambient + RiseKelvins;

    internal double RiseKelvins { get; }

    /// <summary>How much warmer than worked out it may be: the share of its rise that the model is good for. [K]</summary>
    internal double UncertainKelvins => RiseKelvins * HeatConstants.ModelUncertainty.Value / 100;

    internal double SheetRise { get; }

    internal Film Outside { get; }

    internal Film InsideFilm { get; }

    /// <summary>The steady temperatures of a sealed enclosure with heat lost in it, in still air.</summary>
    /// <param name="enclosure">The enclosure. <see cref="Enclosure.OtherHeat"/> is not added here: it belongs to
    /// <paramref name="losses"/>.</param>
    /// <param name="losses">All the heat lost in it, from 0 to 10¹⁵ W. [W]</param>
    /// <param name="ambient">Temperature of the air around it, from absolute zero to 1000 °C.</param>
    /// <param name="sun">Sunlight on <see cref="Enclosure.SunlitArea"/>, square to the light, from 0 to 2000 W/m²; null for none.
    /// [W/m²]</param>
    /// <param name="altitude">Height above the sea, from -500 m to 9000 m; null for sea level. [m]</param>
    /// <exception cref="ArgumentNullException"><paramref name="enclosure"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <remarks>Outside the range of the model there is an answer too, and it says so: <see cref="HeatedEnclosure.Breaches"/>.</remarks>
    /// <example>
    /// <code>
    /// HeatedEnclosure noon = HeatedEnclosure.Of(enclosure, Power.FromWatts(30), Temperature.FromDegreesCelsius(35),
    ///     sun: Irradiance.FromWattsPerSquareMeter(1120));
    /// </code>
    /// </example>
    public static HeatedEnclosure Of(Enclosure enclosure, Power losses, Temperature ambient, Irradiance? sun = null,
        Length? altitude = null) => new(
        Require.NotNull(enclosure, nameof(enclosure)),
        Require.Within((double)losses.Watts, 0, MostWatts, nameof(losses), "W"),
        Require.Within(Celsius.Of(ambient), Surroundings.AbsoluteZero, Surroundings.Hottest, nameof(ambient), "°C"),
        Require.Within((sun ?? Irradiance.Zero).WattsPerSquareMeter, 0, StrongestSun, nameof(sun), "W/m²"),
        altitude is Length height ? AltitudeDerating.MetersOf(height, nameof(altitude)) : 0);

    /// <summary>How the temperatures were worked out.</summary>
    /// <remarks>The film coefficients are those at the temperatures found: put in, they give these again.</remarks>
    public Derivation Explain() => new(Enclosure.ToString(), HeatDerivation.Steps(this), ToString());

    /// <summary>Heat, surroundings and inside in the invariant culture; never throws.</summary>
    public override string ToString()
    {
        string sun = SolarWatts > 0 ? FormattableString.Invariant($", {SolarWatts:0.#} W from the sun") : string.Empty;
        return FormattableString.Invariant(
            $"{InsideCelsius:0.0} °C inside, {RiseKelvins:0.0} K above the air around: {LossWatts:0.##} W lost in it") + sun;
    }
}
