using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Circuits;
using UnitsNet;

namespace CamPower.Tests.Working;

/// <summary>A derivation is arithmetic that a reader can do again: here it is done again.</summary>
public class DerivationTests
{
    private static readonly Cable Unequal = new(
        new Conductor(WireSize.Awg(18), Stranding.ClassB, ConductorMaterial.AnnealedCopper),
        new Conductor(WireSize.SquareMillimeters(1.5), Stranding.Solid, ConductorMaterial.CopperCladAluminum15));

    private static readonly CableRun Single = new(Runs.Eighteen, oneWayLength: Length.FromFeet(120));

    private static readonly CableRun Joined = new CableRun(Unequal, oneWayLength: Length.FromMeters(31.4))
        .Then(new Joint("splice", ElectricResistance.FromMilliohms(12)))
        .Then(new CableSegment(Runs.Eighteen, oneWayLength: Length.FromFeet(15)))
        .Then(new Joint("plug", ElectricResistance.Zero));

    private static readonly CableRun Tabulated = new CableRun(
            new Cable(Conductor.NecCoatedCopper(WireSize.Awg(18), Stranding.ClassB).InParallel(2),
                Conductor.AtIecMaximum(WireSize.SquareMillimeters(1.5), Stranding.IecClass5, ConductorMaterial.AnnealedCopper)), oneWayLength: Length.FromMeters(31.4))
        .Then(new CableSegment(CableCatalog.Category5e(4), oneWayLength: Length.FromFeet(15)));

    private static readonly Load Nine = Load.ConstantPower(Power.FromWatts(9));

    private static readonly Dictionary<string, RunResult> Examples = new()
    {
        ["power"] = Feed(Single, Nine),
        ["current"] = Feed(Single, Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.3))),
        ["resistance"] = Feed(Single, Load.ConstantResistance(ElectricResistance.FromOhms(24))),
        ["no load"] = Feed(Single, Load.None),
        ["mixed"] = Feed(Single, Nine + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.3)) + Load.ConstantResistance(ElectricResistance.FromOhms(24))),
        ["joined, unequal"] = Feed(Joined, Nine),
        ["too much power"] = Feed(Joined, Load.ConstantPower(Power.FromWatts(90))),
        ["too much mixed"] = Feed(Joined, Load.ConstantPower(Power.FromWatts(90)) + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.3))),
        ["too much current"] = Feed(Joined, Nine + Load.ConstantCurrent(ElectricCurrent.FromAmperes(60))),
        ["larger of, power"] = Feed(Single, Load.LargerOf(Power.FromWatts(9), ElectricCurrent.FromAmperes(0.3))),
        ["larger of, current"] = Feed(Single, Load.LargerOf(Power.FromWatts(3), ElectricCurrent.FromAmperes(0.5))),
        ["larger of, too much power"] = Feed(Single, Load.LargerOf(Power.FromWatts(90), ElectricCurrent.FromAmperes(0.5))),
        ["larger of, too much current"] = Feed(Single, Load.LargerOf(Power.FromWatts(9), ElectricCurrent.FromAmperes(60))),
        ["larger of, current leaves too little"] = Feed(Single, Load.LargerOf(Power.FromWatts(9), ElectricCurrent.FromAmperes(7.5))),
        ["tabulated, in parallel"] = Feed(Tabulated, Nine),
        ["no resistance"] = Feed(new CableRun(Runs.Eighteen, oneWayLength: Length.Zero), Nine),
        ["cold"] = Single.Feed(Nine, from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(-31.5)),
        ["near the limit"] = Feed(Single, Load.ConstantPower(Power.FromWatts(0.9999 * (double)Feed(Single, Nine).MaximumPower!.Value.Watts))),
    };

    public static TheoryData<string> Names => [.. Examples.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Explain_EverySubstitutionGivesThePrintedValue(string name) => AssertEvaluates(Examples[name]);

    [SeededProperty(Arbitrary = [typeof(FeedCases)], MaxTest = 500)]
    public void Explain_AnyFeed_EverySubstitutionGivesThePrintedValue(FeedCase c) => AssertEvaluates(c.Feed());

    // The last voltage and current steps are the result itself, not a retelling of it.
    [Theory]
    [MemberData(nameof(Names))]
    public void Explain_ItsValuesAreTheResult(string name)
    {
        RunResult result = Examples[name];
        Derivation derivation = result.Explain();
        Assert.Equal(result.LoopResistance.Ohms, Value("R"));
        if (result.TryGetOperatingPoint(out OperatingPoint point))
        {
            Assert.Equal(point.Voltage.Volts, Value("V"));
            Assert.Equal(point.Current.Amperes, Value("I"));
            Assert.Equal(result.Drop.Volts, Value("drop"));
            Assert.Equal(result.DropRatio.Percent, Value("share"), 1e-12);
        }
        else
        {
            Assert.DoesNotContain(derivation.Steps, s => s.Symbol == "V");
            Assert.Contains("no operating point", derivation.Conclusion, StringComparison.OrdinalIgnoreCase);
        }

        double Value(string symbol) => derivation.Steps.Last(s => s.Symbol == symbol).Value;
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Explain_TextAndMarkdownHoldEveryStepInEveryCulture(string name)
    {
        Derivation derivation = Examples[name].Explain();
        string text = derivation.ToString(), markdown = derivation.ToMarkdown();
        foreach (string shown in new[] { text, markdown })
        {
            Assert.Contains(derivation.Title, shown, StringComparison.Ordinal);
            Assert.Contains(derivation.Conclusion, shown, StringComparison.Ordinal);
            Assert.All(derivation.Steps, s => Assert.Contains(s.ValueText, shown, StringComparison.Ordinal));
            Assert.All(derivation.Steps, s => Assert.Contains(s.Substitution, shown, StringComparison.Ordinal));
            Assert.All(derivation.Steps, s => Assert.Contains(s.Source.ToString(), shown, StringComparison.Ordinal));
        }

        Assert.All(derivation.Steps, s => Assert.Contains("\n   $$\n   " + s.Latex + "\n   $$\n", markdown, StringComparison.Ordinal));
        Steps.AssertRenders(derivation);
        Cultures.AssertSame(() => Examples[name].Explain().ToString());
        Cultures.AssertSame(() => Examples[name].Explain().ToMarkdown());
    }

    [Fact]
    public void Explain_JoinedRun_ShowsEveryPart()
    {
        Derivation derivation = Examples["joined, unequal"].Explain();
        Assert.Equal(["r1", "s1", "R1", "r3", "R3", "R"], derivation.Steps.Select(s => s.Symbol).Take(6));
        Assert.Contains("R(splice)", derivation.Steps[5].Formula, StringComparison.Ordinal);
    }

    // A table's figure is cited as one, no area and no lay in it; and a sum of different bases says that it is one.
    [Fact]
    public void Explain_TabulatedConductors_CiteTheirTables()
    {
        Derivation derivation = Examples["tabulated, in parallel"].Explain();
        Assert.Equal(Sources.NecTable8, derivation.Steps[0].Source);
        Assert.Equal(Sources.Iec60228, derivation.Steps[1].Source);
        Assert.Equal("rt*(1 + alpha20*(T - 20))/(1 + alpha20*(Tt - 20))/n", derivation.Steps[0].Formula);
        Assert.Equal("rt*(1 + alpha20*(T - 20))/(1 + alpha20*(Tt - 20))", derivation.Steps[1].Formula);
        Assert.Equal("rho20*k*(1 + alpha20*(T - 20))/A/n", derivation.Steps.Single(s => s.Symbol == "r2").Formula);
        Assert.Contains("mixes", derivation.Conclusion, StringComparison.Ordinal);
        Assert.DoesNotContain("mixes", Examples["joined, unequal"].Explain().Conclusion, StringComparison.Ordinal);
    }

    // By hand: 2 + 3·4 = 14, 2^3^2 = 512, −4 + 10/4 = −1.5, the root of 2.25 is 1.5.
    [Theory]
    [InlineData("2 + 3*4", 14)]
    [InlineData("(2 + 3)*4 - 1", 19)]
    [InlineData("2^3^2", 512)]
    [InlineData("(-4) + 10/4", -1.5)]
    [InlineData("sqrt(2.25)*2", 3)]
    [InlineData("max(3/2, 1.25E+1)", 12.5)]
    [InlineData("min(max(1, 4), 3)*2", 6)]
    [InlineData("8/4/2", 1)]
    public void Arithmetic_IsThatOfSchool(string text, double expected) => Assert.Equal(expected, Arithmetic.Evaluate(text));

    private static void AssertEvaluates(RunResult result) => Steps.AssertEvaluate(result.Explain());

    private static RunResult Feed(CableRun run, Load load) =>
        run.Feed(load, from: ElectricPotential.FromVolts(12), conductorAt: Temperature.FromDegreesCelsius(40));
}
