using System;
using System.Collections.Generic;
using CamPower.Conductors;
using UnitsNet;

namespace CamPower.Tests.Quantities;

/// <summary>Every guarded argument: what no physical thing could have is refused by name, with its value, unit and range, in any culture.</summary>
public class InvalidInputTests
{
    private static readonly Citation Source = new("test", CitationKind.Declared);

    private static readonly Conductor Wire = new(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper);

    private static readonly PreparedRun Prepared = Runs.OfOhms(1).At(Celsius(20));

    private static readonly Load Nine = Load.ConstantPower(Power.FromWatts(9));

    private static readonly VoltageLimit Limit = VoltageLimit.AtLeast(Volts(10));

    private static readonly Surroundings Mild = new(Celsius(20), Celsius(20), Celsius(20));

    // What is called, the parameter that the exception names, the value as it is shown, the unit.
    private static readonly Dictionary<string, (Action Call, string Parameter, string Shown)> Cases = new()
    {
        ["negative Ω/m"] = (() => LinearResistance.FromOhmsPerMeter(-0.5), "value", "-0.5 Ω/m"),
        ["NaN Ω/m"] = (() => LinearResistance.FromOhmsPerMeter(double.NaN), "value", "NaN Ω/m"),
        ["infinite Ω/m"] = (() => LinearResistance.FromOhmsPerMeter(double.PositiveInfinity), "value", "Infinity Ω/m"),
        ["negative Ω/km"] = (() => LinearResistance.FromOhmsPerKilometer(-1.5), "value", "-1.5 Ω/km"),
        ["negative Ω/100 m"] = (() => LinearResistance.FromOhmsPer100Meters(-1.5), "value", "-1.5 Ω/100 m"),
        ["negative Ω/1000 ft"] = (() => LinearResistance.FromOhmsPer1000Feet(-1.5), "value", "-1.5 Ω/1000 ft"),
        ["negative Ω/100 ft"] = (() => LinearResistance.FromOhmsPer100Feet(-1.5), "value", "-1.5 Ω/100 ft"),
        ["over a negative length"] = (() => LinearResistance.FromOhmsPerMeter(1).Over(Length.FromMeters(-1.5)), "length", "-1.5 m"),
        ["gauge above 44"] = (() => WireSize.Awg(45), "gauge", "45 AWG"),
        ["gauge below 4/0"] = (() => WireSize.Awg(-4), "gauge", "-4 AWG"),
        ["zero area"] = (() => WireSize.SquareMillimeters(0), "area", "0 mm²"),
        ["negative area"] = (() => WireSize.SquareMillimeters(-1.5), "area", "-1.5 mm²"),
        ["NaN area"] = (() => WireSize.SquareMillimeters(double.NaN), "area", "NaN mm²"),
        ["infinite area"] = (() => WireSize.SquareMillimeters(double.PositiveInfinity), "area", "Infinity mm²"),
        ["zero kcmil"] = (() => WireSize.Kcmil(0), "area", "0 kcmil"),
        ["infinite kcmil"] = (() => WireSize.Kcmil(double.PositiveInfinity), "area", "Infinity kcmil"),
        ["negative diameter"] = (() => WireSize.Diameter(-0.5), "millimeters", "-0.5 mm"),
        ["density of nothing"] = (() => Material(1e-8, 0.004, -50, 100, Density.FromKilogramsPerCubicMeter(0)), "density", "0 kg/m³"),
        ["negative specific heat"] = (() => Material(1e-8, 0.004, -50, 100, specificHeat: SpecificEntropy.FromJoulesPerKilogramKelvin(-1.5)), "specificHeat", "-1.5 J/(kg·K)"),
        ["table of no resistance"] = (() => TabulatedResistance.Typical("t", LinearResistance.FromOhmsPerMeter(0), Celsius(20), Source), "perLength", "0 Ω/m"),
        ["table outside the material's range"] = (() => _ = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper,
            TabulatedResistance.Maximum("t", LinearResistance.FromOhmsPerMeter(1), Celsius(250.5), Source)), "resistance", "250.5 °C"),
        ["no wires in parallel"] = (() => Wire.InParallel(0), "count", "0"),
        ["no pairs"] = (() => Cable.GangedPairs(Wire, pairs: 0), "pairs", "0"),
        ["five pairs of four"] = (() => CableCatalog.Category6(5), "pairs", "5"),
        ["point of no current"] = (() => Lying(WireSize.Awg(18), 0), "points", "0 A"),
        ["point of no size"] = (() => Lying(default, 1), "points", "0 m²"),
        ["laid in air as warm as the wire"] = (() => _ = new InstallationMethod("warm", InstallationMethod.LargeBundle.Points, Celsius(70), Celsius(70), Source), "conductor", "70 °C"),
        ["no conductors in a raceway"] = (() => InstallationMethod.InCableOrRaceway(0), "currentCarryingConductors", "0"),
        ["heat of a negative current"] = (() => InstallationMethod.LargeBundle.Heat(Wire, ElectricCurrent.FromAmperes(-1.5), Celsius(20)), "current", "-1.5 A"),
        ["heat in air too hot"] = (() => InstallationMethod.LargeBundle.Heat(Wire, ElectricCurrent.Zero, Celsius(250.5)), "ambient", "250.5 °C"),
        ["heat of a size too thin"] = (() => InstallationMethod.LargeBundle.Heat(new Conductor(WireSize.SquareMillimeters(0.075), Stranding.Solid, ConductorMaterial.AnnealedCopper),
            ElectricCurrent.Zero, Celsius(20)), "conductor", "0.075 mm²"),
        ["reading of nothing"] = (() => CableIdentification.Of(ElectricResistance.Zero, Length.FromMeters(1), Celsius(20), Ratio.FromPercent(1)), "measuredLoop", "0 Ω"),
        ["reading over nothing"] = (() => CableIdentification.Of(ElectricResistance.FromOhms(1), Length.Zero, Celsius(20), Ratio.FromPercent(1)), "oneWayLength", "0 m"),
        ["tolerance above a half"] = (() => CableIdentification.Of(ElectricResistance.FromOhms(1), Length.FromMeters(1), Celsius(20), Ratio.FromDecimalFractions(0.75)), "tolerance", "0.75"),
        ["lay below 1"] = (() => _ = new Stranding("loose", 0.98, Source), "layFactor", "0.98"),
        ["lay above 1.2"] = (() => _ = new Stranding("loose", 1.25, Source), "layFactor", "1.25"),
        ["NaN lay"] = (() => _ = new Stranding("loose", double.NaN, Source), "layFactor", "NaN"),
        ["zero resistivity"] = (() => Material(0, 0.004, -50, 100), "resistivityAt20C", "0 Ω·m"),
        ["NaN coefficient"] = (() => Material(1e-8, double.NaN, -50, 100), "temperatureCoefficientAt20C", "NaN 1/K"),
        ["range upside down"] = (() => Material(1e-8, 0.004, 100, 99.5), "validTo", "99.5 °C"),
        ["resistivity below zero in range"] = (() => Material(1e-8, 0.05, -50, 100), "temperatureCoefficientAt20C", "0.05 1/K"),
        ["conductor of no size"] = (() => _ = new Conductor(default, Stranding.Solid, ConductorMaterial.AnnealedCopper), "size", "0 m²"),
        ["pair of no size"] = (() => Cable.Pair(default, Stranding.Solid, ConductorMaterial.AnnealedCopper), "size", "0 m²"),
        ["copper too hot"] = (() => ConductorMaterial.AnnealedCopper.ResistivityAt(Celsius(250.5)), "temperature", "250.5 °C"),
        ["conductor too cold"] = (() => Wire.ResistancePerLengthAt(Celsius(-60.5)), "temperature", "-60.5 °C"),
        ["conductor of negative length"] = (() => Wire.ResistanceAt(Length.FromMeters(-1.5), Celsius(20)), "length", "-1.5 m"),
        ["cable too hot"] = (() => Runs.Eighteen.LoopResistancePerLengthAt(Celsius(250.5)), "temperature", "250.5 °C"),
        ["segment of negative length"] = (() => _ = new CableSegment(Runs.Eighteen, Length.FromMeters(-1.5)), "oneWayLength", "-1.5 m"),
        ["run of negative length"] = (() => _ = new CableRun(Runs.Eighteen, Length.FromMeters(-1.5)), "oneWayLength", "-1.5 m"),
        ["joint of negative resistance"] = (() => _ = new Joint("splice", ElectricResistance.FromOhms(-1.5)), "loopResistance", "-1.5 Ω"),
        ["run too hot"] = (() => Runs.OfOhms(1).LoopResistanceAt(Celsius(250.5)), "conductorTemperature", "250.5 °C"),
        ["prepared too cold"] = (() => Runs.OfOhms(1).At(Celsius(-60.5)), "conductorTemperature", "-60.5 °C"),
        ["fed too hot"] = (() => Runs.OfOhms(1).Feed(Nine, Volts(12), Celsius(250.5)), "conductorAt", "250.5 °C"),
        ["fed from nothing"] = (() => Prepared.Feed(Nine, Volts(0)), "from", "0 V"),
        ["fed from below zero"] = (() => Prepared.Feed(Nine, Volts(-1.5)), "from", "-1.5 V"),
        ["fed from over 1 MV"] = (() => Prepared.Feed(Nine, Volts(1000000.5)), "from", "1000000.5 V"),
        ["lowest voltage of nothing"] = (() => VoltageLimit.AtLeast(Volts(0)), "lowest", "0 V"),
        ["drop below zero"] = (() => VoltageLimit.DropAtMost(Ratio.FromPercent(-1.5)), "drop", "-1.5 %"),
        ["drop of all"] = (() => VoltageLimit.DropAtMost(Ratio.FromPercent(100.5)), "drop", "100.5 %"),
        ["longest from nothing"] = (() => Runs.OfOhms(1).LongestLength(Nine, Volts(0), Limit, Celsius(20)), "from", "0 V"),
        ["longest too hot"] = (() => Runs.OfOhms(1).LongestLength(Nine, Volts(12), Limit, Celsius(250.5)), "conductorAt", "250.5 °C"),
        ["largest from below zero"] = (() => Runs.OfOhms(1).LargestPower(Nine, Volts(-1.5), Limit, Celsius(20)), "from", "-1.5 V"),
        ["hottest from over 1 MV"] = (() => Runs.OfOhms(1).HighestTemperature(Nine, Volts(1000000.5), Limit), "from", "1000000.5 V"),
        ["needed too cold"] = (() => Runs.OfOhms(1).NeededSourceVoltage(Nine, Limit, Celsius(-60.5)), "conductorAt", "-60.5 °C"),
        ["chain from nothing"] = (() => new CameraChain(new ChainLink(Runs.OfOhms(1), Nine)).Feed(Volts(0), Celsius(20)), "from", "0 V"),
        ["chain too hot"] = (() => new CameraChain(new ChainLink(Runs.OfOhms(1), Nine)).Feed(Volts(12), Celsius(250.5)), "conductorAt", "250.5 °C"),
        ["link of negative length"] = (() => _ = new ChainLink(Runs.Eighteen, Length.FromMeters(-1.5), Nine), "oneWayLength", "-1.5 m"),
        ["profile before the source"] = (() => Prepared.Feed(Nine, Volts(12)).Profile().VoltageAt(Length.FromMeters(-1.5)), "distance", "-1.5 m"),
        ["started from nothing"] = (() => Prepared.Start(Nine, new Starting(Volts(9), Volts(8), softStart: false), Volts(0)), "from", "0 V"),
        ["negative power"] = (() => Load.ConstantPower(Power.FromWatts(-1.5)), "power", "-1.5 W"),
        ["power over 1 GW"] = (() => Load.ConstantPower(Power.FromWatts(1000000000.5)), "power", "1000000000.5 W"),
        ["negative current"] = (() => Load.ConstantCurrent(ElectricCurrent.FromAmperes(-1.5)), "current", "-1.5 A"),
        ["zero resistance"] = (() => Load.ConstantResistance(ElectricResistance.Zero), "resistance", "0 Ω"),
        ["larger of negative power"] = (() => Load.LargerOf(Power.FromWatts(-1.5), ElectricCurrent.Zero), "power", "-1.5 W"),
        ["larger of negative current"] = (() => Load.LargerOf(Power.Zero, ElectricCurrent.FromAmperes(-1.5)), "current", "-1.5 A"),
        ["current at no voltage"] = (() => Nine.CurrentAt(Volts(0)), "terminalVoltage", "0 V"),
        ["label of no voltage"] = (() => _ = new LabelDraw(Volts(0), ElectricCurrent.FromAmperes(1), InputStage.Linear), "voltage", "0 V"),
        ["label of negative current"] = (() => _ = new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(-1.5), InputStage.Linear), "current", "-1.5 A"),
        ["components that do not exist"] = (() => new ComponentDraw(Nine).LoadWith((LoadComponents)16), "components", "16"),
        ["turn-on of nothing"] = (() => _ = new Starting(Volts(0), Volts(8), softStart: false), "turnOn", "0 V"),
        ["drop-out of nothing"] = (() => _ = new Starting(Volts(9), Volts(0), softStart: false), "dropOut", "0 V"),
        ["drop-out above turn-on"] = (() => _ = new Starting(Volts(9), Volts(9.5), softStart: false), "dropOut", "9.5 V"),
        ["window from nothing"] = (() => _ = new VoltageRange(Volts(0), Volts(13.2)), "lowest", "0 V"),
        ["window upside down"] = (() => _ = new VoltageRange(Volts(13.2), Volts(10.8)), "highest", "10.8 V"),
        ["window of negative end"] = (() => _ = new VoltageRange(Volts(10.8), Volts(-1.5)), "highest", "-1.5 V"),
        ["cable below absolute zero"] = (() => _ = new Surroundings(Celsius(-273.5), Celsius(20), Celsius(20)), "cable", "-273.5 °C"),
        ["box above 1000 °C"] = (() => _ = new Surroundings(Celsius(20), Celsius(1000.5), Celsius(20)), "box", "1000.5 °C"),
        ["camera below absolute zero"] = (() => _ = new Surroundings(Celsius(20), Celsius(20), Celsius(-273.5)), "camera", "-273.5 °C"),
        ["fewer than no motors"] = (() => Condition.NightWithMotion(Mild, motorsMoving: -1), "motorsMoving", "-1 motors"),
        ["negative duration"] = (() => _ = new Condition("night", LoadComponents.None, Mild, duration: Duration.FromSeconds(-1.5)), "duration", "-1.5 s"),
        ["NaN constant"] = (() => _ = new CitedValue("constant", double.NaN, "V", Source), "value", "NaN V"),
    };

    private static readonly Dictionary<string, Action> Missing = new()
    {
        ["name of a material"] = () => _ = new ConductorMaterial(null!, ElectricResistivity.FromOhmMeters(1e-8), 0, Celsius(0), Celsius(1), Source),
        ["source of a material"] = () => _ = new ConductorMaterial("m", ElectricResistivity.FromOhmMeters(1e-8), 0, Celsius(0), Celsius(1), null!),
        ["stranding"] = () => _ = new Conductor(WireSize.Awg(18), null!, ConductorMaterial.AnnealedCopper),
        ["table of a conductor"] = () => _ = new Conductor(WireSize.Awg(18), Stranding.Solid, ConductorMaterial.AnnealedCopper, null!),
        ["source of a table"] = () => TabulatedResistance.Typical("t", LinearResistance.FromOhmsPerMeter(1), Celsius(20), null!),
        ["class"] = () => Conductor.AtIecMaximum(WireSize.SquareMillimeters(1), null!, ConductorMaterial.AnnealedCopper),
        ["metal of a class"] = () => Conductor.AtIecMaximum(WireSize.SquareMillimeters(1), Stranding.IecClass1, null!),
        ["class of coated copper"] = () => Conductor.CoatedAtIecMaximum(WireSize.SquareMillimeters(1), null!),
        ["stranding of the table"] = () => Conductor.NecCoatedCopper(WireSize.Awg(18), null!),
        ["wire of pairs"] = () => Cable.GangedPairs(null!, 2),
        ["conductor of a pair"] = () => Cable.Pair(null!),
        ["heated conductor"] = () => InstallationMethod.LargeBundle.Heat(null!, ElectricCurrent.Zero, Celsius(20)),
        ["published currents"] = () => _ = new InstallationMethod("l", null!, Celsius(90), Celsius(30), Source),
        ["one candidate"] = () => CableIdentification.Of(ElectricResistance.FromOhms(1), Length.FromMeters(1), Celsius(20), Ratio.Zero, [null!]),
        ["material"] = () => _ = new Conductor(WireSize.Awg(18), Stranding.Solid, null!),
        ["outgoing"] = () => _ = new Cable(null!, Wire),
        ["return"] = () => _ = new Cable(Wire, null!),
        ["cable of a segment"] = () => _ = new CableSegment(null!, Length.Zero),
        ["parts"] = () => _ = new CableRun(null!),
        ["one part"] = () => _ = new CableRun([null!]),
        ["next part"] = () => Runs.OfOhms(1).Then(null!),
        ["run"] = () => CableRunQuestions.At(null!, Celsius(20)),
        ["load"] = () => Prepared.Feed(null!, Volts(12)),
        ["starting"] = () => Prepared.Start(Nine, null!, Volts(12)),
        ["accepted"] = () => Runs.OfOhms(1).LongestLength(Nine, Volts(12), null!, Celsius(20)),
        ["load of a limit"] = () => Runs.OfOhms(1).HighestTemperature(null!, Volts(12), Limit),
        ["run of a limit"] = () => CableRunQuestions.LargestPower(null!, Nine, Volts(12), Limit, Celsius(20)),
        ["other limit"] = () => Limit.And(null!),
        ["links"] = () => _ = new CameraChain(null!),
        ["next link"] = () => new CameraChain(new ChainLink(Runs.OfOhms(1), Nine)).Then(null!),
        ["run of a link"] = () => _ = new ChainLink(null!, Nine),
        ["load of a link"] = () => _ = new ChainLink(Runs.OfOhms(1), null!),
        ["other load"] = () => Nine.Plus(null!),
        ["base draw"] = () => _ = new ComponentDraw(null!),
        ["condition"] = () => new ComponentDraw(Nine).In(null!),
        ["surroundings"] = () => Condition.Day(null!),
        ["draw"] = () => _ = new Device("dome", DeviceKind.Camera, null!, dcInput: new VoltageRange(Volts(10), Volts(14))),
        ["wire size text"] = () => WireSize.Parse(null!),
        ["title"] = () => _ = new Citation(null!, CitationKind.Declared),
    };

    public static TheoryData<string> Impossible => [.. Cases.Keys];

    public static TheoryData<string> References => [.. Missing.Keys];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void ImpossibleInput_IsRefusedByNameValueUnitAndRange_InEveryCulture(string name)
    {
        (Action call, string parameter, string shown) = Cases[name];
        Cultures.ForEach(_ =>
        {
            var thrown = Assert.Throws<ArgumentOutOfRangeException>(call);
            Assert.Equal(parameter, thrown.ParamName);
            Assert.StartsWith(parameter + " must be ", thrown.Message, StringComparison.Ordinal);
            Assert.Contains(", but is " + shown + ".", thrown.Message, StringComparison.Ordinal);
            Assert.Equal(shown, thrown.ActualValue);
        });
        Cultures.AssertSame(() => Assert.Throws<ArgumentOutOfRangeException>(call).Message);
    }

    [Theory]
    [MemberData(nameof(References))]
    public void MissingReference_IsRefused(string name) => Assert.Throws<ArgumentNullException>(Missing[name]);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void EmptyName_IsRefused(string name)
    {
        Assert.Throws<ArgumentException>(() => new Joint(name, ElectricResistance.Zero));
        Assert.Throws<ArgumentException>(() => new Stranding(name, 1, Source));
        Assert.Throws<ArgumentException>(() => new Citation(name, CitationKind.Declared));
        Assert.Throws<ArgumentException>(() => new CitedValue("constant", 1, name, Source));
        Assert.Throws<ArgumentException>(() => Condition.Day(Mild).With(LoadComponents.None).Name.Length == 0 ? null : new Condition(name, LoadComponents.None, Mild));
        Assert.Throws<ArgumentException>(() => new Device(name, DeviceKind.Other, new ComponentDraw(Nine), dcInput: new VoltageRange(Volts(10), Volts(14))));
    }

    [Fact]
    public void OtherImpossibleThings_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new CameraChain());
        Assert.Throws<ArgumentOutOfRangeException>(() => Runs.OfOhms(1).SmallestSize(WireSizeSeries.None, Nine, Volts(12), Limit, Celsius(20)));
        Assert.Throws<ArgumentException>(() => new CableRun(new Joint("alone", ElectricResistance.Zero)));
        Assert.Throws<ArgumentException>(() => new Device("dome", DeviceKind.Camera, new ComponentDraw(Nine)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LabelDraw(Volts(12), ElectricCurrent.FromAmperes(1), (InputStage)7));
        Assert.Throws<InvalidOperationException>(() => Nine + Load.LargerOf(Power.FromWatts(1), ElectricCurrent.FromAmperes(1)));
        Assert.Throws<InvalidOperationException>(() => new ComponentDraw(Load.LargerOf(Power.FromWatts(1), ElectricCurrent.FromAmperes(1))));
        var cold = new CableSegment(Cable.Pair(WireSize.Awg(18), Stranding.Solid, Material(1e-8, 0, -200, -100)), Length.FromMeters(1));
        Assert.Throws<ArgumentException>(() => Runs.OfOhms(1).Then(cold));
    }

    private static ConductorMaterial Material(double ohmMeters, double coefficient, double from, double to,
        Density? density = null, SpecificEntropy? specificHeat = null) =>
        new("made up", ElectricResistivity.FromOhmMeters(ohmMeters), coefficient, Celsius(from), Celsius(to), Source, density, specificHeat);

    private static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static InstallationMethod Lying(WireSize size, double amperes) => new("mine",
        new Dictionary<WireSize, ElectricCurrent> { [WireSize.Awg(10)] = ElectricCurrent.FromAmperes(40), [size] = ElectricCurrent.FromAmperes(amperes) }, Celsius(90), Celsius(30), Source);
}
