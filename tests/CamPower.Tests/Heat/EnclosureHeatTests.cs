using System;
using System.Linq;
using CamPower.Heat;
using CamPower.Tests.Quantities;
using CamPower.Tests.Working;
using UnitsNet;

namespace CamPower.Tests.Heat;

/// <summary>The temperature in an enclosure against published examples and rules, and against another computation.</summary>
public class EnclosureHeatTests
{
    // Source: AirTable, whose densities are those of 1 bar; sea level is 1.01325 bar. Sutherland's law stays within 1.5 %.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Air_IsThatOfTheTable(int row)
    {
        var (kelvins, viscosity, conductivity, diffusivity, prandtl) = AirTable.Rows[row];
        var air = new AirProperties(kelvins, altitudeMeters: 0);
        AssertWithin(viscosity, air.KinematicViscosity * 1.01325, 0.01);
        AssertWithin(conductivity, air.Conductivity, 0.012);
        AssertWithin(diffusivity, air.Diffusivity * 1.01325, 0.015);
        AssertWithin(prandtl, air.Prandtl, 0.015);
    }

    // Incropera and others, 6th edition, Example 9.2, from memory: a glass fire screen 0.71 m high and 1.02 m wide at 232 °C in a
    // room of 23 °C loses, black, 2355 W by radiation. By convection 7.0 W/(m²·K) with the correlation for all Rayleigh numbers;
    // the turbulent one that is used here is the careful one, and at most a fifth below it.
    [Fact]
    public void Film_OfTheFireScreen_IsThatOfTheExample()
    {
        var screen = new Enclosure(Length.FromMeters(1.02), Length.FromMeters(0.71), Length.FromMeters(0.1), Wall(emissivity: 1), EnclosureFaces.Front);
        var film = new Film(screen, 273 + 23, 232 - 23, altitudeMeters: 0);
        Assert.Equal(2355, 0.71 * 1.02 * film.Radiation * film.Rise, 2.0);
        Assert.InRange(film.Side, 0.8 * 7.0, 7.0);
    }

    // Holman, Heat Transfer, Table 7-2, from memory: simplified equations for air near room temperature, h in W/(m²·K) from the
    // rise and the height: 1.42 (ΔT/H)^¼, turbulent 1.31 ΔT^⅓. They lie above the correlations used here, by a tenth.
    [Theory]
    [InlineData(0.5, 5, false)]
    [InlineData(0.5, 15, false)]
    [InlineData(1.8, 15, true)]
    public void Film_OfASide_IsCloseToTheSimplifiedEquations(double height, double rise, bool isTurbulent)
    {
        var box = new Enclosure(Length.FromMeters(0.4), Length.FromMeters(height), Length.FromMeters(0.4), EnclosureWall.PaintedSteel, EnclosureFaces.FreeInAir);
        double simplified = isTurbulent ? 1.31 * Math.Cbrt(rise) : 1.42 * Math.Pow(rise / height, 0.25);
        Assert.InRange(new Film(box, 300, rise, altitudeMeters: 0).Side / simplified, 0.88, 1.0);
    }

    // Incropera and others, 6th edition, Example 9.3, from memory: a long duct 0.75 m wide and 0.3 m high at 45 °C in air of 15 °C;
    // 4.23, 5.47 and 2.07 W/(m²·K) from sides, top and bottom, 246 W/m in all.
    [Fact]
    public void Films_OfTheLongDuct_AreAsInTheExample()
    {
        const double meters = 99;
        var duct = new Enclosure(Length.FromMeters(0.75), Length.FromMeters(0.3), Length.FromMeters(meters), Wall(emissivity: 0.01),
            EnclosureFaces.Top | EnclosureFaces.Bottom | EnclosureFaces.Left | EnclosureFaces.Right);
        double radiated = 0.01 * 5.67e-8 * (Math.Pow(318.15, 4) - Math.Pow(288.15, 4)) * 2.1 * meters;
        HeatedEnclosure heated = HeatedEnclosure.Of(duct, Power.FromWatts((246 * meters) + radiated), Celsius(15));
        Assert.Equal(45, heated.Skin.DegreesCelsius, 0.3);
        AssertWithin(4.23, heated.Outside.Side, 0.015);
        AssertWithin(5.47, heated.Outside.Top, 0.015);
        AssertWithin(2.07, heated.Outside.Bottom, 0.015);
    }

    // ISO 6946, Table 1 and Annex A, from memory: still air at a wall of emissivity 0.9 has 0.13 m²·K/W, of which radiation at 20 °C
    // is 5.7 × 0.9 and convection 2.5 W/(m²·K), for temperature differences of a few kelvins. A wall of 0.5 m, 3 K warmer.
    [Fact]
    public void Film_OfAPaintedWall_IsThatOfIso6946()
    {
        var film = new Film(Painted(), 293.15, 3, altitudeMeters: 0);
        Assert.Equal(5.13, film.Radiation, 0.15);
        AssertWithin(2.5, film.Side, 0.2);
        AssertWithin(1 / 0.13, film.Side + film.Radiation, 0.07);
    }

    // The rule of thumb of sheet steel enclosures: losses over 5.5 W/(m²·K) and the effective area of VDE 0660-500 and
    // IEC 60890 (1.4·W·(H + D) + 1.8·D·H on a wall), both from memory. The rule is of air that something stirs; still air is
    // hotter, and covered faces are taken to give off nothing here, so the model lies above the rule, by less than two thirds.
    [Theory]
    [InlineData(300, 400, 150, 15)]
    [InlineData(400, 500, 200, 30)]
    [InlineData(600, 600, 250, 60)]
    [InlineData(600, 800, 300, 150)]
    [InlineData(800, 1200, 300, 300)]
    public void Rise_LiesOnTheCarefulSideOfTheRuleOfThumb(double width, double height, double depth, double watts)
    {
        var enclosure = new Enclosure(Length.FromMillimeters(width), Length.FromMillimeters(height), Length.FromMillimeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
        double w = width / 1000, h = height / 1000, d = depth / 1000;
        double rule = watts / (5.5 * ((1.4 * w * (h + d)) + (1.8 * d * h)));
        Assert.InRange(Rise(enclosure, watts) / rule, 1.0, 1.67);
    }

    [Theory]
    [InlineData(300, 400, 150, 15, EnclosureFaces.OnWall, "painted steel", 25, 0)]
    [InlineData(300, 400, 150, 60, EnclosureFaces.OnWall, "painted steel", 45, 0)]
    [InlineData(500, 700, 250, 120, EnclosureFaces.FreeInAir, "galvanized steel", -20, 0)]
    [InlineData(300, 300, 200, 25, EnclosureFaces.InRowOnWall, "plastic", 30, 0)]
    [InlineData(300, 400, 150, 15, EnclosureFaces.OnWall, "painted steel", 35, 80)]
    [InlineData(500, 700, 250, 60, EnclosureFaces.FreeInAir, "plastic", 40, 200)]
    public void Inside_IsThatOfFaceByFaceInTime(double width, double height, double depth, double watts, EnclosureFaces free, string wall, double ambient, double solar)
    {
        EnclosureWall sheet = new[] { EnclosureWall.PaintedSteel, EnclosureWall.GalvanizedSteel, EnclosureWall.Plastic }.Single(w => w.Name == wall);
        var lit = Area.FromSquareMeters(width * height / 1e6);
        var enclosure = new Enclosure(Length.FromMillimeters(width), Length.FromMillimeters(height), Length.FromMillimeters(depth), sheet, free, lit);
        var sun = Irradiance.FromWattsPerSquareMeter(solar / lit.SquareMeters / sheet.SolarAbsorptance.DecimalFractions);
        HeatedEnclosure heated = HeatedEnclosure.Of(enclosure, Power.FromWatts(watts), Celsius(ambient), sun);
        Assert.Equal(solar, (double)heated.SolarGain.Watts, 1e-9);
        double other = new FaceByFace(enclosure, watts, ambient, solar).InsideCelsius();
        AssertWithin(other - ambient, heated.Rise.Kelvins, 0.04);
    }

    // By hand: without losses the skin is as warm as what is in it; 0.6·1000·0.12 = 72 W leave by the outside film alone.
    [Fact]
    public void SunAlone_WarmsTheInsideAsMuchAsTheSkin()
    {
        HeatedEnclosure heated = HeatedEnclosure.Of(Painted(sunlit: 0.12), Power.Zero, Celsius(30), Irradiance.FromWattsPerSquareMeter(1000));
        Assert.Equal(72, (double)heated.SolarGain.Watts, 1e-9);
        Assert.Equal(heated.Skin.DegreesCelsius, heated.Inside.DegreesCelsius, 1e-12);
        Assert.Equal(72, heated.Enclosure.FreeArea.SquareMeters * heated.Outside.Coefficient * heated.Rise.Kelvins, 1e-9);
    }

    // ISO 2533, from memory: 79 495 Pa at 2000 m, 0.7846 of sea level. Laminar convection goes with the root of it, 0.886;
    // the rise lies between what it would be and what it would be without any radiation.
    [Fact]
    public void ThinAir_IsHotterInside()
    {
        Length high = Length.FromMeters(2000);
        Assert.Equal(0.7846, new AirProperties(300, 0).KinematicViscosity / new AirProperties(300, 2000).KinematicViscosity, 1e-4);
        double thick = HeatedEnclosure.Of(Painted(), Power.FromWatts(30), Celsius(20)).Rise.Kelvins, thin = HeatedEnclosure.Of(Painted(), Power.FromWatts(30), Celsius(20), altitude: high).Rise.Kelvins;
        Assert.InRange(thin / thick, 1.02, 1 / 0.886);
        Refused("altitude", () => HeatedEnclosure.Of(Painted(), Power.Zero, Celsius(20), altitude: Length.FromMeters(9001)));
    }

    [Fact]
    public void NothingLostAndNoSun_IsTheAirAround()
    {
        HeatedEnclosure heated = HeatedEnclosure.Of(Painted(sunlit: 0.12), Power.Zero, Celsius(31.5));
        Assert.Equal(31.5, heated.Inside.DegreesCelsius);
        Assert.Equal(0, heated.Rise.Kelvins);
    }

    // 15 W through 3 mm of 0.2 W/(m·K) and 0.36 m²: 15·0.015/0.36 = 0.625 K.
    [Fact]
    public void PlasticSheet_AddsItsOwnResistance()
    {
        var plastic = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.5), Length.FromMeters(0.2), EnclosureWall.Plastic, EnclosureFaces.Front | EnclosureFaces.Left | EnclosureFaces.Right | EnclosureFaces.Bottom);
        Assert.Equal(0.41, plastic.FreeArea.SquareMeters, 1e-12);
        HeatedEnclosure heated = HeatedEnclosure.Of(plastic, Power.FromWatts(15), Celsius(20));
        Assert.Equal(15 * 0.015 / 0.41, heated.SheetRise, 1e-12);

        // The film inside begins where the sheet ends.
        Assert.Equal(heated.Skin.Kelvins + heated.SheetRise, heated.InsideFilm.ColdKelvins, 1e-9);
        Assert.Equal(0, HeatedEnclosure.Of(Painted(), Power.FromWatts(15), Celsius(20)).SheetRise);
    }

    // Front 0.4 × 0.5, sides 0.2 × 0.5, lid 0.4 × 0.2.
    [Theory]
    [InlineData(EnclosureFaces.FreeInAir, 0.76)]
    [InlineData(EnclosureFaces.OnFloor, 0.68)]
    [InlineData(EnclosureFaces.OnWall, 0.56)]
    [InlineData(EnclosureFaces.InRowOnWall, 0.36)]
    [InlineData(EnclosureFaces.Bottom, 0.08)]
    public void FreeArea_IsThatOfTheFacesNamed(EnclosureFaces free, double squareMeters) =>
        Assert.Equal(squareMeters, Painted(free).FreeArea.SquareMeters, 1e-12);

    [Theory]
    [InlineData(400, 500, 200, false, 25, 30, "")]
    [InlineData(400, 500, 200, true, 25, 30, "vents or a fan: the model is for a sealed enclosure, which is hotter")]
    [InlineData(400, 500, 99, false, 25, 30, "shortest side of the enclosure: 0.099 m; the calculation was checked from 0.1 m up")]
    [InlineData(100, 2000, 100, false, 25, 30, "")]
    [InlineData(100, 2001, 100, false, 25, 30, "longest side of the enclosure: 2.001 m; the calculation was checked up to 2 m")]
    [InlineData(400, 500, 200, false, -80, 30, "air around the enclosure: -80 °C; the calculation was checked from -73.15 °C up")]
    public void Breaches_NameWhatIsOutsideTheRange(double width, double height, double depth, bool ventilated, double ambient, double watts, string expected)
    {
        var enclosure = new Enclosure(Length.FromMillimeters(width), Length.FromMillimeters(height), Length.FromMillimeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, isVentilated: ventilated);
        HeatedEnclosure heated = HeatedEnclosure.Of(enclosure, Power.FromWatts(watts), Celsius(ambient));
        Assert.Equal(expected, string.Join("|", heated.Breaches));
        Assert.All(heated.Breaches, b => Assert.Same(Sources.EnclosureRange, b.Source));
    }

    [Fact]
    public void Breaches_NameAnInsideBeyondTheTableOfAir()
    {
        HeatedEnclosure heated = HeatedEnclosure.Of(Painted(), Power.FromWatts(400), Celsius(45));
        ValidityBreach breach = Assert.Single(heated.Breaches);
        Assert.Equal("air in the enclosure", breach.What);
        Assert.Equal(heated.Inside.DegreesCelsius, Assert.IsType<Temperature>(breach.Value).DegreesCelsius, 1e-9);
        Assert.Equal(126.85, Assert.IsType<Temperature>(breach.Limit).DegreesCelsius, 1e-9);
    }

    [Theory]
    [InlineData("painted steel", 30, 35, 0)]
    [InlineData("plastic", 30, -35, 900)]
    [InlineData("plastic", 0, 20, 900)]
    [InlineData("painted steel", 0, 20, 0)]
    public void Explain_WorksOutTheInside(string wall, double watts, double ambient, double sun)
    {
        EnclosureWall sheet = wall == "plastic" ? EnclosureWall.Plastic : EnclosureWall.PaintedSteel;
        var enclosure = new Enclosure(Length.FromMeters(0.4), Length.FromMeters(0.5), Length.FromMeters(0.2), sheet, EnclosureFaces.OnWall, Area.FromSquareMeters(0.2));
        HeatedEnclosure heated = HeatedEnclosure.Of(enclosure, Power.FromWatts(watts), Celsius(ambient), Irradiance.FromWattsPerSquareMeter(sun));
        Derivation derivation = heated.Explain();
        Steps.AssertEvaluate(derivation);
        Steps.AssertRenders(derivation);
        if (watts + sun > 0) Assert.Equal(heated.Inside.DegreesCelsius, derivation.Steps.Last(s => s.Unit == "°C").Value, 1e-9);
        Assert.Contains(FormattableString.Invariant($"{heated.Inside.DegreesCelsius:0.0} °C inside"), derivation.Conclusion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, -273.15)]
    [InlineData(1e-12, -273.15)]
    [InlineData(1e15, -273.15)]
    [InlineData(1e15, 1000)]
    [InlineData(1e-300, 20)]
    public void Inside_IsFiniteAtTheEndsOfEveryRange(double watts, double ambient)
    {
        HeatedEnclosure heated = HeatedEnclosure.Of(Painted(sunlit: 0.5), Power.FromWatts(watts), Celsius(ambient), Irradiance.FromWattsPerSquareMeter(2000));
        Assert.True(double.IsFinite(heated.Inside.DegreesCelsius) && heated.Inside.DegreesCelsius >= ambient);
        Assert.True(double.IsFinite(HeatedEnclosure.Of(Painted(), Power.FromWatts(watts), Celsius(ambient)).Inside.DegreesCelsius));
    }

    [Fact]
    public void ImpossibleInput_IsRefusedByName()
    {
        Length meter = Length.FromMeters(1);
        Ratio half = Ratio.FromPercent(50);
        EnclosureWall wall = EnclosureWall.PaintedSteel;
        Refused("emissivity", () => new EnclosureWall("x", Ratio.Zero, half));
        Refused("solarAbsorptance", () => new EnclosureWall("x", half, Ratio.FromPercent(101)));
        Refused("resistance", () => new EnclosureWall("x", half, half, ThermalResistance.FromSquareMeterKelvinsPerWatt(-1)));
        Refused("width", () => new Enclosure(Length.Zero, meter, meter, wall, EnclosureFaces.OnWall));
        Refused("height", () => new Enclosure(meter, Length.FromMeters(101), meter, wall, EnclosureFaces.OnWall));
        Refused("depth", () => new Enclosure(meter, meter, Length.FromMeters(-1), wall, EnclosureFaces.OnWall));
        Refused("freeFaces", () => new Enclosure(meter, meter, meter, wall, EnclosureFaces.None));
        Refused("freeFaces", () => new Enclosure(meter, meter, meter, wall, (EnclosureFaces)64));
        Refused("sunlitArea", () => new Enclosure(meter, meter, meter, wall, EnclosureFaces.OnWall, Area.FromSquareMeters(6.1)));
        Refused("otherHeat", () => new Enclosure(meter, meter, meter, wall, EnclosureFaces.OnWall, otherHeat: Power.FromWatts(-1)));
        Refused("losses", () => HeatedEnclosure.Of(Painted(), Power.FromWatts(-1), Celsius(20)));
        Refused("ambient", () => HeatedEnclosure.Of(Painted(), Power.FromWatts(1), Celsius(-274)));
        Refused("sun", () => HeatedEnclosure.Of(Painted(), Power.FromWatts(1), Celsius(20), Irradiance.FromWattsPerSquareMeter(2001)));
        Refused("sun", () => new Surroundings(Celsius(20), Celsius(20), Celsius(20), Irradiance.FromWattsPerSquareMeter(-1)));
        Assert.Throws<ArgumentNullException>(() => HeatedEnclosure.Of(null!, Power.Zero, Celsius(20)));
    }

    private static void Refused(string parameter, Func<object> make) => Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(make).ParamName);

    private static double Rise(Enclosure enclosure, double watts) => HeatedEnclosure.Of(enclosure, Power.FromWatts(watts), Celsius(30)).Rise.Kelvins;

    private static Enclosure Painted(EnclosureFaces free = EnclosureFaces.OnWall, double? sunlit = null) => new(
        Length.FromMeters(0.4), Length.FromMeters(0.5), Length.FromMeters(0.2), EnclosureWall.PaintedSteel, free,
        sunlit is double area ? Area.FromSquareMeters(area) : null);

    private static EnclosureWall Wall(double emissivity) => new("test sheet", Ratio.FromDecimalFractions(emissivity), Ratio.Zero);

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static void AssertWithin(double expected, double actual, double share) =>
        Assert.True(Math.Abs(actual - expected) <= share * Math.Abs(expected), FormattableString.Invariant($"{actual} is not within {share:P1} of {expected}"));

    // The sun is a step of the calculation where it shines: 0.12 m² of it.
    [Theory]
    [InlineData(0, false)]
    [InlineData(800, true)]
    public void Sunlight_IsAStepWhereItShines(double sun, bool isStep)
    {
        var lit = new Enclosure(Length.FromMeters(0.3), Length.FromMeters(0.4), Length.FromMeters(0.15), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall, Area.FromSquareMeters(0.12));
        Derivation explained = HeatedEnclosure.Of(lit, Power.FromWatts(10), Temperature.FromDegreesCelsius(30), Irradiance.FromWattsPerSquareMeter(sun)).Explain();
        Assert.Equal(isStep, explained.Steps.Any(s => s.Symbol == "S"));
    }
}
