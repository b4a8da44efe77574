using System;
using CamPower.Heat;
using UnitsNet;

namespace CamPower.Tests.Heat;

/// <summary>The range of the model of an enclosure includes its ends: 200 K outside, 400 K inside, of the table of air that it was held against.</summary>
public class ModelRangeTests
{
    // Nothing is lost, so that the inside is the air around.
    [Theory]
    [InlineData(200 - 273.15, true)]
    [InlineData(200 - 273.16, false)]
    [InlineData(400 - 273.15, true)]
    [InlineData(400 - 273.14, false)]
    public void TheEndsOfTheTable_AreInside(double celsius, bool isInside) =>
        Assert.Equal(isInside, HeatedEnclosure.Of(Painted(sunlit: 0), Power.Zero, Temperature.FromDegreesCelsius(celsius)).Breaches.Count == 0);

    // A film that carries nothing has no convection: none of air that stands still on a wall as warm as it.
    [Fact]
    public void AFilmThatCarriesNothing_OnlyRadiates()
    {
        var film = new Film(Painted(sunlit: 0), 293.15, 0, altitudeMeters: 0);
        Assert.Equal((0.0, 0.0, 0.0), (film.Side, film.Top, film.Bottom));
        // 4·ε·σ·T³ is what radiation comes to between walls as good as equally warm.
        Assert.Equal(4 * 0.9 * 5.670374419e-8 * Math.Pow(293.15, 3), film.Radiation, 1e-6);
    }

    // 0.6 · 900 W/m² · 0.12 m² = 64.8 W (painted steel, EnclosureWall).
    [Fact]
    public void TheSun_IsToldOnlyWhereItShines()
    {
        Enclosure enclosure = Painted(sunlit: 0.12);
        Temperature air = Temperature.FromDegreesCelsius(30);
        Assert.EndsWith(": 12.5 W lost in it, 64.8 W from the sun", HeatedEnclosure.Of(enclosure, Power.FromWatts(12.5), air, Irradiance.FromWattsPerSquareMeter(900)).ToString(), StringComparison.Ordinal);
        Assert.EndsWith(": 12.5 W lost in it", HeatedEnclosure.Of(enclosure, Power.FromWatts(12.5), air).ToString(), StringComparison.Ordinal);
    }

    private static Enclosure Painted(double sunlit) => new(Length.FromMeters(0.4), Length.FromMeters(0.5), Length.FromMeters(0.2), EnclosureWall.PaintedSteel,
        EnclosureFaces.OnWall, sunlit > 0 ? Area.FromSquareMeters(sunlit) : null);
}
