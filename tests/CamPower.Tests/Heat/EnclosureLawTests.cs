using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace CamPower.Tests.Heat;

/// <summary>What holds for every enclosure, whatever is lost in it.</summary>
[Properties(Arbitrary = [typeof(EnclosureLawTests)], MaxTest = 500)]
public class EnclosureLawTests
{
    public static Arbitrary<EnclosureCase> Cases() => (
        from w in Gen.Choose(50, 1500)
        from h in Gen.Choose(50, 1500)
        from d in Gen.Choose(50, 800)
        from free in Gen.Choose(1, 63)
        from emissivity in Gen.Choose(2, 100)
        from resistance in Gen.Choose(0, 50)
        from milliwatts in Gen.Choose(1, 200_000)
        from sun in Gen.Choose(0, 1120)
        from ambient in Gen.Choose(-40, 60)
        select new EnclosureCase(w / 1000.0, h / 1000.0, d / 1000.0, (EnclosureFaces)free, emissivity / 100.0, resistance / 1000.0, milliwatts / 1000.0, sun, ambient)).ToArbitrary();

    // What goes through each film and the sheet is what is lost and, outside, what the sun adds.
    [SeededProperty]
    public void HeatIn_IsHeatOut(EnclosureCase c)
    {
        HeatedEnclosure heated = c.Heated();
        double area = heated.Enclosure.FreeArea.SquareMeters, solar = (double)heated.SolarGain.Watts;
        Close(c.Watts, area * heated.InsideFilm.Coefficient * heated.InsideFilm.Rise);
        Close(c.Watts + solar, area * heated.Outside.Coefficient * heated.Outside.Rise);
        Close(heated.Rise.Kelvins, heated.Inside.DegreesCelsius - c.Ambient);
        Assert.True(heated.Inside.DegreesCelsius > heated.Skin.DegreesCelsius && heated.Skin.DegreesCelsius > c.Ambient);
    }

    [SeededProperty]
    public void MoreHeat_IsHotter(EnclosureCase c) => Hotter(c with { Watts = c.Watts * 1.01 }, c);

    [SeededProperty]
    public void MoreSun_IsHotter(EnclosureCase c) => Hotter(c with { Sun = c.Sun + 10 }, c);

    [SeededProperty]
    public void WarmerAir_IsHotterInside(EnclosureCase c) => Hotter(c with { Ambient = c.Ambient + 1 }, c);

    [SeededProperty]
    public void LessEmissivity_IsHotter(EnclosureCase c) => Hotter(c with { Emissivity = c.Emissivity * 0.99 }, c);

    [SeededProperty]
    public void MoreSheet_IsHotter(EnclosureCase c) => Hotter(c with { Resistance = c.Resistance + 0.01 }, c);

    // Twice as long in every direction, with the same heat. The sunlit area stays.
    [SeededProperty]
    public void Larger_IsCooler(EnclosureCase c) => Hotter(c, c with { W = 2 * c.W, H = 2 * c.H, D = 2 * c.D });

    // A face more that is free.
    [SeededProperty]
    public void CoveredFace_IsHotter(EnclosureCase c)
    {
        foreach (EnclosureFaces face in new[] { EnclosureFaces.Front, EnclosureFaces.Left, EnclosureFaces.Top, EnclosureFaces.Bottom })
        {
            if (c.Free.HasFlag(face) && c.Free != face) Hotter(c with { Free = c.Free & ~face }, c);
        }
    }

    // Each film lets through more for every kelvin as it warms: twice the heat is less than twice the rise of still films, and
    // more than the 4/5 power that convection alone would give with a sheet of no resistance. Radiation of warmer walls lies between.
    [SeededProperty]
    public void TwiceTheHeat_IsLessThanTwiceTheRise(EnclosureCase c)
    {
        EnclosureCase cold = c with { Sun = 0 }, twice = cold with { Watts = 2 * c.Watts };
        Assert.InRange(twice.Heated().Rise.Kelvins / cold.Heated().Rise.Kelvins, Math.Pow(2, 0.25), 2);
    }

    private static void Hotter(EnclosureCase hot, EnclosureCase cool) =>
        Assert.True(hot.Heated().Rise.Kelvins + hot.Ambient > cool.Heated().Rise.Kelvins + cool.Ambient, $"{hot} is no hotter than {cool}");

    private static void Close(double expected, double actual) => Assert.True(Math.Abs(expected - actual) <= 1e-9 * Math.Max(1e-3, Math.Abs(expected)), $"{expected:R} and {actual:R}");

    /// <summary>An enclosure and what heats it, in SI units; the sun strikes 0.01 m².</summary>
    public sealed record EnclosureCase(double W, double H, double D, EnclosureFaces Free, double Emissivity, double Resistance, double Watts, double Sun, double Ambient)
    {
        internal HeatedEnclosure Heated()
        {
            var wall = new EnclosureWall("wall", Ratio.FromDecimalFractions(Emissivity), Ratio.FromPercent(60), ThermalResistance.FromSquareMeterKelvinsPerWatt(Resistance));
            var enclosure = new Enclosure(Length.FromMeters(W), Length.FromMeters(H), Length.FromMeters(D), wall, Free, Area.FromSquareMeters(0.01));
            return HeatedEnclosure.Of(enclosure, Power.FromWatts(Watts), Temperature.FromDegreesCelsius(Ambient), Irradiance.FromWattsPerSquareMeter(Sun));
        }
    }
}
