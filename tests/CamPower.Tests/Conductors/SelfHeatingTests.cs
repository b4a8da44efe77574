using System;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Tests.Reference;
using FsCheck;
using UnitsNet;

namespace CamPower.Tests.Conductors;

/// <summary>The estimate of self-heating against published corrections and currents that it was not made from.</summary>
public class SelfHeatingTests
{
    private static readonly InstallationMethod Cable = InstallationMethod.InCableOrRaceway(currentCarryingConductors: 2);

    private static readonly Conductor Eighteen = Copper(WireSize.Awg(18));

    public static TheoryData<string, string, string> AmbientCorrections => ReferenceData.Theory((_, r) =>
        r.Quantity.StartsWith("Ambient correction, 90 °C conductor", StringComparison.Ordinal));

    public static TheoryData<string, string, string> IecCurrents => ReferenceData.Theory((_, r) =>
        r.Quantity.StartsWith("Current capacity PVC copper", StringComparison.Ordinal) && !r.Quantity.Contains(" 6 mm2", StringComparison.Ordinal));

    // NEC 310.15(B)(1): at the hot end of each band of ambient temperature the current times the correction heats the conductor
    // to the same 90 °C. The model knows 14 A at 30 °C alone. Half a unit in the last digit of the factor is about 1 K.
    [Theory]
    [MemberData(nameof(AmbientCorrections))]
    public void Heat_AtThePublishedCorrection_ReachesTheSameTemperature(string id, string figure, string source)
    {
        ReferenceRow row = ReferenceData.Row(id);
        double ambient = double.Parse(Regex.Match(row.Quantity, @"-(\d+) °C$").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        double celsius = Hot(Cable, Eighteen, 14 * row.Number, ambient);
        Assert.True(Math.Abs(celsius - 90) < 1.1, $"{figure}: {celsius} °C. {source}");
    }

    // IEC 60364-5-52 Table B.52.2, method B2, from memory: 40 K of rise. Other cables, another country: within a quarter of the rise.
    [Theory]
    [MemberData(nameof(IecCurrents))]
    public void Heat_AtIecCurrents_IsOfTheSameSize(string id, string figure, string source)
    {
        ReferenceRow row = ReferenceData.Row(id);
        Conductor conductor = Copper(WireSize.Parse(Regex.Match(row.Quantity, @"([\d.]+ mm2)").Value));
        double rise = Hot(Cable, conductor, row.Number, 30) - 30;
        Assert.True(rise is > 30 and < 50, $"{figure}: {rise} K. {source}");
    }

    // NEC Table 310.16, 90 °C column, 30 °C: 14 A in 18 AWG (seen), 18 A in 16 AWG (seen), 25 A in 14 AWG (seen in a worked example).
    // FAA AC 43.13-1B Table 11-9, 105 °C wire in 70 °C: 2.5 A in 24 AWG, 4 A in 20 AWG.
    [Theory]
    [InlineData("NEC", 18, 14, 30, 90)]
    [InlineData("NEC", 16, 18, 30, 90)]
    [InlineData("NEC", 14, 25, 30, 90)]
    [InlineData("FAA", 24, 2.5, 70, 105)]
    [InlineData("FAA", 20, 4, 70, 105)]
    public void Heat_AtAPublishedCurrent_ReachesThePublishedTemperature(string table, int gauge, double amperes, double ambient, double hot) =>
        Assert.Equal(hot, Hot(table == "NEC" ? Cable : InstallationMethod.LargeBundle, Copper(WireSize.Awg(gauge)), amperes, ambient), 1e-9);

    // By hand: θ = 60/(14²·0.026711) = 11.461 K·m/W; at 7 A 11.764 K as at 20 °C; 20 + (10 + 11.764)/(1 − 0.046233) = 42.82 °C.
    [Fact]
    public void Heat_AtHalfTheCurrent_IsAsWorkedByHand()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(7), Temperature.FromDegreesCelsius(30));
        Assert.Equal(42.82, heat.ConductorTemperature!.Value.DegreesCelsius, 0.005);
        Assert.Equal(12.82, heat.Rise!.Value.Kelvins, 0.005);
        Assert.Equal(0.00393 * 12.82 / (1 + (0.00393 * 10)), heat.ResistanceGrowth!.Value.DecimalFractions, 1e-5);
        Assert.True(heat.Matters);
    }

    // By hand: 17 AWG lies midway between 18 and 16 AWG, so θ = √(11.461·11.022) = 11.239 K·m/W; r₂₀ is 5.064 Ω/1000 ft (NBS
    // Handbook 100); at 10 A 18.673 K as at 20 °C; 20 + (10 + 18.673)/(1 − 0.073385) = 50.94 °C.
    [Fact]
    public void Heat_BetweenTwoPublishedSizes_GoesStraightInLogarithms() => Assert.Equal(50.94, Hot(Cable, Copper(WireSize.Awg(17)), 10, 30), 0.02);

    // NEC 310.15(C)(1): 0.80, 0.70 and 0.50 of the current for 4 to 6, 7 to 9 and 10 to 20 conductors.
    [Theory]
    [InlineData(3, 14)]
    [InlineData(4, 11.2)]
    [InlineData(6, 11.2)]
    [InlineData(7, 9.8)]
    [InlineData(10, 7)]
    [InlineData(20, 7)]
    [InlineData(21, 6.3)]
    [InlineData(40, 5.6)]
    [InlineData(41, 4.9)]
    [InlineData(1000, 4.9)]
    public void Bundling_LowersTheCurrentForTheSameTemperature(int conductors, double amperes) =>
        Assert.Equal(90, Hot(InstallationMethod.InCableOrRaceway(conductors), Eighteen, amperes, 30), 1e-9);

    [Fact]
    public void Heat_OfNoCurrent_IsTheAmbient()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.Zero, Temperature.FromDegreesCelsius(41.5));
        Assert.Equal(41.5, heat.ConductorTemperature!.Value.DegreesCelsius, 1e-12);
        Assert.False(heat.Matters);
    }

    // One camera on 18 AWG does not warm it by half a degree; two amperes in a thin wire of a large bundle are another matter.
    [Fact]
    public void Matters_SaysWhen()
    {
        Assert.False(Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(1), Temperature.FromDegreesCelsius(40)).Matters);
        Conductor thin = Copper(WireSize.Awg(24));
        Assert.True(InstallationMethod.LargeBundle.Heat(thin, ElectricCurrent.FromAmperes(2), Temperature.FromDegreesCelsius(40)).Matters);
        Assert.False(InstallationMethod.LargeBundle.Heat(thin, ElectricCurrent.FromAmperes(2), Temperature.FromDegreesCelsius(40), mattersFrom: Ratio.FromPercent(20)).Matters);
    }

    [Fact]
    public void Heat_WithoutASteadyTemperature_IsAnAnswer()
    {
        foreach (double amperes in new[] { 25.0, 40, 4000 })
        {
            SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(30));
            Assert.Null(heat.ConductorTemperature);
            Assert.Null(heat.Rise);
            Assert.Null(heat.ResistanceGrowth);
            Assert.True(heat.Matters);
        }
    }

    [Fact]
    public void Wires_InParallel_ShareTheCurrent()
    {
        Assert.Equal(Hot(Cable, Eighteen, 7, 30), Hot(Cable, Eighteen.InParallel(2), 14, 30), 1e-9);
        Assert.True(Hot(Cable, Eighteen.InParallel(2), 14, 30) < Hot(Cable, Eighteen, 14, 30));
    }

    [Fact]
    public void Covers_ThePublishedSizesAndThinOnesDownTo28Awg()
    {
        Assert.True(Cable.Covers(WireSize.Awg(18)) && Cable.Covers(WireSize.Awg(10)) && Cable.Covers(WireSize.SquareMillimeters(1.5)));
        Assert.True(Cable.Covers(WireSize.Awg(19)) && Cable.Covers(WireSize.Awg(28)));
        Assert.False(Cable.Covers(WireSize.Awg(29)) || Cable.Covers(WireSize.Awg(9)) || Cable.Covers(default));
        Assert.True(Cable.IsEstimatedAt(WireSize.Awg(19)) && !Cable.IsEstimatedAt(WireSize.Awg(18)) && !Cable.IsEstimatedAt(WireSize.Awg(29)));
        Assert.True(InstallationMethod.LargeBundle.Covers(WireSize.Awg(24)) && InstallationMethod.LargeBundle.IsEstimatedAt(WireSize.Awg(25)));
    }

    [Fact]
    public void Laying_OfOneSizeOrOneTwice_IsRefused()
    {
        (WireSize Size, double Amperes) one = (WireSize.Awg(18), 14), two = (WireSize.Awg(16), 18);
        Assert.Throws<ArgumentException>(() => Lay(one));
        Assert.Throws<ArgumentException>(() => Lay(one, two, one));
        Assert.Equal(90, Hot(Lay(two, one), Copper(WireSize.Awg(18)), 14, 30), 1e-9);

        static InstallationMethod Lay(params (WireSize Size, double Amperes)[] points) => new("mine", points.ToDictionary(p => p.Size, p => ElectricCurrent.FromAmperes(p.Amperes)), Temperature.FromDegreesCelsius(90), Temperature.FromDegreesCelsius(30),
            new Citation("mine", CitationKind.Declared));
    }

    // The heat that the current makes at the temperature reached is what the rise drives out, so rise/(I²·r(T)) is the same at any current.
    [SeededProperty(MaxTest = 300)]
    public void Heat_IsInBalance(byte tenths, byte ambient, bool clad)
    {
        double amperes = 0.1 + (tenths / 20.0);
        ConductorMaterial material = clad ? ConductorMaterial.CopperCladAluminum10 : ConductorMaterial.AnnealedCopper;
        var conductor = new Conductor(WireSize.SquareMillimeters(1.5), Stranding.ClassB, material);
        Temperature air = Temperature.FromDegreesCelsius((ambient / 4.0) - 10);
        SelfHeating heat = Cable.Heat(conductor, ElectricCurrent.FromAmperes(amperes), air);
        if (heat.ConductorTemperature is not Temperature hot) return;

        double watts = amperes * amperes * conductor.ResistancePerLengthAt(hot).OhmsPerMeter;
        SelfHeating other = Cable.Heat(Copper(WireSize.SquareMillimeters(1.5)), ElectricCurrent.FromAmperes(5), Temperature.FromDegreesCelsius(30));
        double otherWatts = 25 * other.Conductor.ResistancePerLengthAt(other.ConductorTemperature!.Value).OhmsPerMeter;
        Assert.Equal(other.Rise!.Value.Kelvins / otherWatts, heat.Rise!.Value.Kelvins / watts, 1e-6 * other.Rise!.Value.Kelvins / otherWatts);
    }

    [SeededProperty(MaxTest = 300)]
    public void Heat_RisesWithTheCurrent(byte tenths)
    {
        double amperes = tenths / 20.0;
        Assert.True(Hot(Cable, Eighteen, amperes, 30) < Hot(Cable, Eighteen, amperes + 0.05, 30));
        Assert.True(Hot(Cable, Eighteen, amperes, 30) <= Hot(InstallationMethod.InCableOrRaceway(12), Eighteen, amperes, 30));
    }

    // An independent integration, fourth-order Runge-Kutta, of C·dT/dt = I²·r(T) − (T − Ta)/θ. By hand: θ of 18 AWG in a cable is
    // 60/(14²·0.026711 Ω/m) = 11.461 K·m/W (above); C = 8890 × 390 × 0.8231e-6 m² = 2.8537 J/(K·m); r₂₀ = 6.385 Ω/1000 ft. Rising, steady and running away.
    [Theory]
    [InlineData(5, 30, 30, 60)]
    [InlineData(14, 30, 60, 20)]
    [InlineData(20, 30, 30, 30)]
    [InlineData(25, 30, 40, 15)]
    [InlineData(23.1, 30, 30, 10)]
    public void TemperatureAfter_IsThatOfTheIntegration(double amperes, double air, double start, double seconds)
    {
        const double Theta = 11.461, Capacity = 2.8537, OhmsPerMeter = 6.385 / 304.8;
        double celsius = start, step = seconds / 500;
        for (int i = 0; i < 500; i++)
        {
            double k1 = Rate(celsius), k2 = Rate(celsius + (step / 2 * k1)), k3 = Rate(celsius + (step / 2 * k2)), k4 = Rate(celsius + (step * k3));
            celsius += step / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
        }

        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(air));
        Temperature from = Temperature.FromDegreesCelsius(start);
        Assert.Equal(celsius - start, heat.TemperatureAfter(Duration.FromSeconds(seconds), from)!.Value.DegreesCelsius - start, 2e-4 * (celsius - start));

        // And back: it is there after that time.
        Assert.Equal(seconds, heat.TimeTo(heat.TemperatureAfter(Duration.FromSeconds(seconds), from)!.Value, from)!.Value.Seconds, 1e-9 * seconds);

        double Rate(double t) => ((amperes * amperes * OhmsPerMeter * (1 + (0.00393 * (t - 20)))) - ((t - air) / Theta)) / Capacity;
    }

    // No heat leaves in a moment: as long as IEC 60949 says, t = (K·S/I)²·ln((θf + β)/(θi + β)) with K = 226 and β = 234.5: 0.8231 mm² at
    // 300 A from 70 °C to 160 °C: 0.38445 × ln(394.5/304.5) = 0.09955 s. Its rounded constants are good to half a per cent.
    [Fact]
    public void TimeTo_OfAShortMoment_IsAdiabatic()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(300), Temperature.FromDegreesCelsius(30));
        Assert.Equal(0.09955, heat.TimeTo(Temperature.FromDegreesCelsius(160), from: Temperature.FromDegreesCelsius(70))!.Value.Seconds, 0.0006);
    }

    // After one time constant 63.2 % of the rise are done, after ten all of it; it never gets beyond where it settles.
    [Fact]
    public void TimeConstant_IsThatOfTheRise()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(10), Temperature.FromDegreesCelsius(30));
        double rise = heat.Rise!.Value.Kelvins;
        Assert.Equal(rise * (1 - Math.Exp(-1)), heat.TemperatureAfter(heat.TimeConstant!.Value, heat.Ambient)!.Value.DegreesCelsius - 30, 1e-9);
        Assert.Equal(rise, heat.TemperatureAfter(10 * heat.TimeConstant!.Value, heat.Ambient)!.Value.DegreesCelsius - 30, 1e-4 * rise);
        Assert.Null(heat.TimeTo(Temperature.FromDegreesCelsius(30 + rise + 0.01), heat.Ambient));
        Assert.Equal(0, heat.TimeTo(Temperature.FromDegreesCelsius(35), Temperature.FromDegreesCelsius(36))!.Value.Seconds);
    }

    [Fact]
    public void Runaway_HasNoTimeConstantButATime()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(40), Temperature.FromDegreesCelsius(30));
        Assert.Null(heat.TimeConstant);
        Assert.True(heat.TimeTo(Temperature.FromDegreesCelsius(160), heat.Ambient)!.Value.Seconds is > 1 and < 60);
        Assert.Null(heat.TemperatureAfter(Duration.FromMinutes(10), heat.Ambient));
    }

    // Copper-clad steel has no density here: nothing is guessed.
    [Fact]
    public void WithoutAHeatCapacity_NoTimeIsTold()
    {
        var steel = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.CopperCladSteel40);
        SelfHeating heat = Cable.Heat(steel, ElectricCurrent.FromAmperes(3), Temperature.FromDegreesCelsius(30));
        Assert.NotNull(heat.ConductorTemperature);
        Assert.Null(heat.TimeConstant);
        Assert.Null(heat.TimeTo(Temperature.FromDegreesCelsius(31), heat.Ambient));
        Assert.Null(heat.TemperatureAfter(Duration.FromSeconds(1), heat.Ambient));
    }

    [Fact]
    public void ImpossibleTimes_AreRefused()
    {
        SelfHeating heat = Cable.Heat(Eighteen, ElectricCurrent.FromAmperes(3), Temperature.FromDegreesCelsius(30));
        Quantities.Refusal.AssertNames(() => heat.TemperatureAfter(Duration.FromSeconds(-1.5), heat.Ambient), "time", "-1.5 s");
        Quantities.Refusal.AssertNames(() => heat.TemperatureAfter(Duration.FromSeconds(1), Temperature.FromDegreesCelsius(29.5)), "from", "29.5 °C");
        Quantities.Refusal.AssertNames(() => heat.TimeTo(Temperature.FromDegreesCelsius(250.5), heat.Ambient), "limit", "250.5 °C");
    }

    private static double Hot(InstallationMethod installationMethod, Conductor conductor, double amperes, double ambient) => installationMethod
        .Heat(conductor, ElectricCurrent.FromAmperes(amperes), Temperature.FromDegreesCelsius(ambient)).ConductorTemperature?.DegreesCelsius ?? double.PositiveInfinity;

    private static Conductor Copper(WireSize size) => new(size, Stranding.Solid, ConductorMaterial.AnnealedCopper);
}
