using System;

namespace CamPower.Heat;

/// <summary>The still air on one side of the free faces of an enclosure: natural convection and radiation.</summary>
/// <remarks>
/// The same for both sides: the lid gives off heat upward outside and takes it from below inside, the bottom the other way.
/// Inside, what is in the enclosure is taken to be as warm as its air.
/// </remarks>
internal readonly struct Film
{
    private const double AsGoodAsEqual = 1e-13;

    private readonly Enclosure _enclosure;

    internal Film(Enclosure enclosure, double coldKelvins, double rise, double altitudeMeters)
    {
        _enclosure = enclosure;
        ColdKelvins = coldKelvins;
        Rise = rise;
        double warm = coldKelvins + rise;
        Radiation = enclosure.Wall.EmissivityShare * HeatConstants.StefanBoltzmann.Value * ((warm * warm) + (coldKelvins * coldKelvins)) * (
            warm + coldKelvins);
        if (!(rise > 0)) return;
        Air = new AirProperties(coldKelvins + (rise / 2), altitudeMeters);
        Side = Convection.Vertical(Air, rise, enclosure.HeightMeters);
        Top = Convection.WarmSideUp(Air, rise, enclosure.LidLengthMeters);
        Bottom = Convection.WarmSideDown(Air, rise, enclosure.LidLengthMeters);
    }

    /// <summary>Temperature of its cold side. [K]</summary>
    internal double ColdKelvins { get; }

    /// <summary>Temperature difference between its two sides. [K]</summary>
    internal double Rise { get; }

    /// <summary>The air half-way between.</summary>
    internal AirProperties Air { get; }

    internal double Side { get; }

    internal double Top { get; }

    internal double Bottom { get; }

    internal double Radiation { get; }

    /// <summary>Mean film coefficient of the free faces. [W/(m²·K)]</summary>
    internal double Coefficient => Radiation
        + (((_enclosure.SideSquareMeters * Side) + (_enclosure.TopSquareMeters * Top)
            + (_enclosure.BottomSquareMeters * Bottom)) / _enclosure.FreeSquareMeters);

    private double Watts => _enclosure.FreeSquareMeters * Coefficient * Rise;

    /// <summary>The film that carries an amount of heat.</summary>
    /// <remarks>
    /// The heat grows with the rise, and radiation alone is at least A·ε·σ·rise⁴, so the rise lies between nothing and
    /// the fourth root of that. Regula falsi between the two, with the weight of an end that stays halved (Illinois).
    /// </remarks>
    internal static Film Carrying(Enclosure enclosure, double coldKelvins, double watts, double altitudeMeters)
    {
        if (!(watts > 0)) return new Film(enclosure, coldKelvins, 0, altitudeMeters);
        double black = enclosure.FreeSquareMeters * enclosure.Wall.EmissivityShare * HeatConstants.StefanBoltzmann.Value;
        double low = 0, high = Math.Sqrt(Math.Sqrt(watts / black));
        double lacking = -watts, surplus = new Film(enclosure, coldKelvins, high, altitudeMeters).Watts - watts;
        double kept = 0;
        while (true)
        {
            double middle = low + ((high - low) * lacking / (lacking - surplus));
            if (!(middle > low && middle < high)) middle = low + ((high - low) / 2);
            var film = new Film(enclosure, coldKelvins, middle, altitudeMeters);
            double error = film.Watts - watts;
            if (Math.Abs(error) <= AsGoodAsEqual * watts || middle <= low || middle >= high) return film;
            if (error < 0)
            {
                low = middle;
                lacking = error;
                if (kept > 0) surplus /= 2;
                kept = 1;
            }
            else
            {
                high = middle;
                surplus = error;
                if (kept < 0) lacking /= 2;
                kept = -1;
            }
        }
    }
}
