using System;
using System.Collections.Generic;
using CamPower.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Sites;

/// <summary>Every guarded argument of supplies, devices, conditions and sites.</summary>
public class InvalidSiteInputTests
{
    private static readonly ElectricCurrent Ampere = ElectricCurrent.FromAmperes(1);

    private static readonly Derating Generic = Derating.GenericEnclosed;

    private static readonly DcOutput Output = new(Volts(12), Ampere, Ratio.Zero);

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(20);

    private static readonly Condition Day = Condition.Day(At());

    private static readonly SiteRun Run = new(RunOrigin.Output(BoxName, 1), "end", Runs.OfOhms(1));

    // What is called, the parameter that the exception names, the value as it is shown.
    private static readonly Dictionary<string, (Action Call, string Parameter, string Shown)> Cases = new()
    {
        ["supply of no voltage"] = (() => Dc(0), "nominal", "0 V"),
        ["supply of negative voltage"] = (() => Dc(-12.5), "nominal", "-12.5 V"),
        ["supply over 1 MV"] = (() => Dc(1000000.5), "nominal", "1000000.5 V"),
        ["supply of no current"] = (() => Dc(amperes: 0), "ratedCurrent", "0 A"),
        ["negative tolerance"] = (() => Dc(percent: -0.5), "tolerance", "-0.005"),
        ["tolerance above half"] = (() => Dc(percent: 50.5), "tolerance", "0.505"),
        ["set under the trim"] = (() => Trimmed(Range(11, 14), 10.5), "setPoint", "10.5 V"),
        ["set over the trim"] = (() => Trimmed(Range(11, 14), 14.5), "setPoint", "14.5 V"),
        ["set over 1 MV"] = (() => Trimmed(Range(11, 1e300), 1e250), "setPoint", "1E+250 V"),
        ["derating share above 1"] = (() => _ = new Derating(new(Point(20, 1.5), Point(30, 1))), "ambient", "1.5"),
        ["share above 5"] = (() => Point(20, 5.5), "share", "5.5"),
        ["negative derating share"] = (() => Point(20, -0.5), "share", "-0.5"),
        ["derating under absolute zero"] = (() => _ = new Derating(new(Point(-273.5, 1), Point(20, 1))), "ambient", "-273.5 °C"),
        ["derating beyond all heat"] = (() => _ = new Derating(new(Point(20, 1), Point(1000.5, 1))), "ambient", "1000.5 °C"),
        ["derating of a negative line"] = (() => _ = new Derating(Generic.Ambient, Line(-90.5, 115)), "lineVoltage", "-90.5 V"),
        ["derating under the sea"] = (() => _ = new AltitudeDerating(Length.FromMeters(-500.5), TemperatureDelta.Zero), "above", "-500.5 m"),
        ["derating that cools"] = (() => _ = new AltitudeDerating(Length.Zero, TemperatureDelta.FromKelvins(-1.5)), "perThousandMeters", "-1.5 K"),
        ["derated above Everest"] = (() => Dc().DeratedCurrentAt(Warm, altitude: Length.FromMeters(9000.5)), "altitude", "9000.5 m"),
        ["derated at no line"] = (() => Dc().DeratedCurrentAt(Warm, lineVoltage: Volts(0)), "lineVoltage", "0 V"),
        ["air no warmer above Everest"] = (() => AltitudeDerating.Generic.RiseAt(Length.FromMeters(9000.5)), "altitude", "9000.5 m"),
        ["source of no resistance"] = (() => With(source: ElectricResistance.Zero), "sourceResistance", "0 Ω"),
        ["source of no resistance, AC"] = (() => _ = new AcOutput(Volts(24), Ampere, Ratio.Zero, ElectricResistance.Zero), "sourceResistance", "0 Ω"),
        ["more ripple than voltage"] = (() => With(ripple: Ratio.FromPercent(150)), "ripple", "1.5"),
        ["negative capacitance"] = (() => With(capacitance: ElectricCapacitance.FromFarads(-1)), "capacitance", "-1 F"),
        ["no inrush"] = (() => _ = new SupplyInput(inrushCurrent: ElectricCurrent.Zero), "inrushCurrent", "0 A"),
        ["no efficiency"] = (() => _ = new SupplyInput(efficiency: ByLoad(0.5, 0)), "efficiency", "0"),
        ["no power factor"] = (() => _ = new SupplyInput(powerFactor: ByLoad(0.5, 0)), "powerFactor", "0"),
        ["efficiency at negative load"] = (() => _ = new SupplyInput(efficiency: ByLoad(-0.5, 1)), "efficiency", "-0.5"),
        ["asked at negative load"] = (() => new SupplyInput().EfficiencyAt(Ratio.FromPercent(-50)), "load", "-0.5"),
        ["terminal range upside down"] = (() => _ = new TerminalRange(WireSize.SquareMillimeters(2.5), WireSize.SquareMillimeters(1.5)), "largest", "1.5 mm²"),
        ["condition at no line"] = (() => Day.WithLineVoltage(Volts(0)), "lineVoltage", "0 V"),
        ["site above Everest"] = (() => _ = new Site("s", [Day], [Box()], [Run], [], altitude: Length.FromMeters(9000.5)), "altitude", "9000.5 m"),
        ["output number 0"] = (() => _ = new BoxOutput(0, Ampere), "number", "0"),
        ["output of no current"] = (() => _ = new BoxOutput(1, ElectricCurrent.Zero), "limit", "0 A"),
        ["box of no outputs"] = (() => Box(outputs: 0), "outputs", "0"),
        ["box of too many outputs"] = (() => Box(outputs: 1001), "outputs", "1001"),
        ["run from output 0"] = (() => RunOrigin.Output(BoxName, 0), "number", "0"),
        ["share that does not exist"] = (() => _ = new Condition("c", (LoadComponents)16, At()), "on", "16"),
        ["more of what does not exist"] = (() => Day.With((LoadComponents)32), "on", "32"),
        ["negative shares"] = (() => _ = new Condition("c", (LoadComponents)(-1), At()), "on", "-1"),
        ["label over 1 GW"] = (() => _ = new LabelDraw(Volts(1e200), ElectricCurrent.FromAmperes(1e200), InputStage.Switching), "current", "1E+200 A"),
        ["label over 1 GA"] = (() => _ = new LabelDraw(Volts(1e-3), ElectricCurrent.FromAmperes(1e10), InputStage.Linear), "current", "10000000000 A"),
    };

    private static readonly Dictionary<string, (Action Call, string Parameter)> Unknown = new()
    {
        ["kind of a device"] = (() => Camera(new ComponentDraw(Load.None), kind: (DeviceKind)7), "kind"),
    };

    private static readonly Dictionary<string, Action> Missing = new()
    {
        ["name of a supply"] = () => _ = new Supply(null!, Output, Generic),
        ["derating of a supply"] = () => _ = new Supply("s", Output, null!),
        ["output of a supply"] = () => _ = new Supply("s", null!, Generic),
        ["ambient of a derating"] = () => _ = new Derating(null!),
        ["points"] = () => _ = new ShareCurve<Temperature>(null!),
        ["one point"] = () => _ = new ShareCurve<Temperature>(Point(0, 1), null!),
        ["name of a box"] = () => _ = new DistributionBox(null!, Dc(), [new BoxOutput(1, Ampere)]),
        ["supply of a box"] = () => _ = new DistributionBox("b", null!, [new BoxOutput(1, Ampere)]),
        ["outputs of a box"] = () => _ = new DistributionBox("b", Dc(), null!),
        ["one output"] = () => _ = new DistributionBox("b", Dc(), [null!]),
        ["supply of an adapter"] = () => DistributionBox.Adapter("a", null!),
        ["box of an origin"] = () => RunOrigin.Output(null!, 1),
        ["junction of an origin"] = () => RunOrigin.Junction(null!),
        ["origin of a run"] = () => _ = new SiteRun(null!, "end", Runs.OfOhms(1)),
        ["end of a run"] = () => _ = new SiteRun(RunOrigin.Junction("a"), null!, Runs.OfOhms(1)),
        ["cable of a run"] = () => _ = new SiteRun(RunOrigin.Junction("a"), "end", null!),
        ["name of a device"] = () => _ = new SiteDevice(null!, Camera(Load.None), "end"),
        ["model of a device"] = () => _ = new SiteDevice("d", null!, "end"),
        ["place of a device"] = () => _ = new SiteDevice("d", Camera(Load.None), null!),
        ["name of a site"] = () => _ = new Site(null!, [Day], [Box()], [Run], []),
        ["conditions"] = () => _ = new Site("s", null!, [Box()], [Run], []),
        ["boxes"] = () => _ = new Site("s", [Day], null!, [Run], []),
        ["runs"] = () => _ = new Site("s", [Day], [Box()], null!, []),
        ["devices"] = () => _ = new Site("s", [Day], [Box()], [Run], null!),
        ["one condition"] = () => _ = new Site("s", [null!], [Box()], [Run], []),
        ["one box"] = () => _ = new Site("s", [Day], [null!], [Run], []),
        ["one run"] = () => _ = new Site("s", [Day], [Box()], [null!], []),
        ["one device"] = () => _ = new Site("s", [Day], [Box()], [Run], [null!]),
        ["site to assess"] = () => SiteQuestions.Assess(null!),
    };

    public static TheoryData<string> Impossible => [.. Cases.Keys];

    public static TheoryData<string> Names => [.. Unknown.Keys];

    public static TheoryData<string> References => [.. Missing.Keys];

    [Theory]
    [MemberData(nameof(Impossible))]
    public void ImpossibleInput_IsRefusedByNameAndValue_InEveryCulture(string name)
    {
        (Action call, string parameter, string shown) = Cases[name];
        Cultures.ForEach(_ =>
        {
            var thrown = Assert.Throws<ArgumentOutOfRangeException>(call);
            Assert.Equal(parameter, thrown.ParamName);
            Assert.Contains(", but is " + shown + ".", thrown.Message, StringComparison.Ordinal);
        });
        Cultures.AssertSame(() => Assert.Throws<ArgumentOutOfRangeException>(call).Message);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ValueOfNoName_IsRefused(string name)
    {
        (Action call, string parameter) = Unknown[name];
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(call);
        Assert.Equal(parameter, thrown.ParamName);
        Assert.StartsWith(parameter + " must be one of ", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(References))]
    public void MissingReference_IsRefused(string name) => Assert.Throws<ArgumentNullException>(Missing[name]);

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void EmptyName_IsRefused(string name)
    {
        Assert.Throws<ArgumentException>(() => new Supply(name, Output, Generic));
        Assert.Throws<ArgumentException>(() => DistributionBox.Adapter(name, Dc()));
        Assert.Throws<ArgumentException>(() => DistributionBox.OfEqualOutputs(name, Dc(), 2, Ampere));
        Assert.Throws<ArgumentException>(() => RunOrigin.Output(name, 1));
        Assert.Throws<ArgumentException>(() => RunOrigin.Junction(name));
        Assert.Throws<ArgumentException>(() => new SiteRun(RunOrigin.Junction("a"), name, Runs.OfOhms(1)));
        Assert.Throws<ArgumentException>(() => new SiteDevice(name, Camera(Load.None), "end"));
        Assert.Throws<ArgumentException>(() => new SiteDevice("d", Camera(Load.None), name));
        Assert.Throws<ArgumentException>(() => new Site(name, [Day], [Box()], [Run], []));
    }

    [Fact]
    public void OtherImpossibleThings_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => Trimmed(null, 12));
        Assert.Throws<ArgumentException>(() => Dc(kind: CurrentKind.Ac).WithSetPoint(Volts(12)));
        Assert.Throws<ArgumentException>(() => new ShareCurve<Temperature>(Point(0, 1)));
        Assert.Throws<ArgumentException>(() => new ShareCurve<Temperature>(Point(0, 1), Point(0, 0.5)));
        Assert.Throws<ArgumentException>(() => new ShareCurve<Temperature>(Point(0, 1), Point(20, 1), Point(10, 0.5)));
        Assert.Throws<ArgumentException>(() => new DistributionBox("b", Dc(), []));
        Assert.Throws<ArgumentException>(() => new DistributionBox("b", Dc(), [new BoxOutput(2, Ampere)]));
        Assert.Throws<ArgumentException>(() => new DistributionBox("b", Dc(), [new BoxOutput(1, Ampere), new BoxOutput(3, Ampere)]));
        Assert.Throws<ArgumentException>(() => new DistributionBox("b", Dc(), [new BoxOutput(2, Ampere), new BoxOutput(1, Ampere)]));
        Assert.Throws<ArgumentException>(() => new Site("s", [], [Box()], [Run], []));
    }

    private static SharePoint<Temperature> Point(double celsius, double share) => new(Temperature.FromDegreesCelsius(celsius), Ratio.FromDecimalFractions(share));

    private static ShareCurve<ElectricPotential> Line(double lowest, double highest) =>
        new(new(Volts(lowest), Ratio.FromDecimalFractions(0.5)), new(Volts(highest), Ratio.FromDecimalFractions(1)));

    private static ShareCurve<Ratio> ByLoad(double load, double share) => new(
        new(Ratio.FromDecimalFractions(load), Ratio.FromDecimalFractions(share)), new(Ratio.FromDecimalFractions(load + 1), Ratio.FromDecimalFractions(1)));

    private static DcOutput With(ElectricResistance? source = null, Ratio? ripple = null, ElectricCapacitance? capacitance = null) =>
        new(Volts(12), Ampere, Ratio.Zero, ripple: ripple, sourceResistance: source, capacitance: capacitance);

    private static DcOutput Trimmed(VoltageRange? trim, double setPoint) => new(Volts(12), Ampere, Ratio.Zero, trim, Volts(setPoint));
}
