using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CamPower.Circuits;
using CamPower.Tests.Circuits.Networks;
using UnitsNet;

namespace CamPower.Tests.Working;

/// <summary>The working of a network is arithmetic that a reader can do again: here it is done again.</summary>
public class NetworkDerivationTests
{
    private static readonly Dictionary<string, DcNetwork> Examples = new()
    {
        ["more is more"] = KnownNetworks.MoreIsMore(6),
        ["back-feed"] = new DcNetworkBuilder()
            .AddSource("strong", "a+", "-", ElectricPotential.FromVolts(13.8), ElectricResistance.FromOhms(0.1))
            .AddSource("weak", "b+", "-", ElectricPotential.FromVolts(12))
            .AddBranch("tie", "a+", "b+", ElectricResistance.FromOhms(0.5))
            .AddLoad("camera_1 50%", "b+", "-", Load.ConstantPower(Power.FromWatts(9))).Build("-"),
        ["reference at the positive"] = new DcNetworkBuilder()
            .AddSource("supply", "+", "-", ElectricPotential.FromVolts(24), ElectricResistance.FromOhms(0.1))
            .AddBranch("out", "+", "c", ElectricResistance.FromOhms(2)).AddBranch("dead end", "c", "d", ElectricResistance.FromOhms(1))
            .AddLoad("label", "c", "-", Load.LargerOf(Power.FromWatts(9), ElectricCurrent.FromAmperes(0.1))).Build("+"),
        ["no load"] = new DcNetworkBuilder()
            .AddSource("supply", "+", "-", ElectricPotential.FromVolts(24)).AddBranch("out", "+", "c", ElectricResistance.FromOhms(2)).Build("-"),
        ["too much"] = KnownNetworks.MoreIsMore(600),
        ["too much current"] = new DcNetworkBuilder()
            .AddSource("supply", "+", "-", ElectricPotential.FromVolts(12)).AddBranch("out", "+", "c", ElectricResistance.FromOhms(2))
            .AddLoad("lamp", "c", "-", Load.ConstantCurrent(ElectricCurrent.FromAmperes(7))).Build("-"),
    };

    public static TheoryData<string> Names => [.. Examples.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Explain_Example_EverySubstitutionGivesThePrintedValue(string name) => AssertEvaluates(Examples[name].Solve().Explain());

    [Fact]
    public void Explain_RandomNetworks_EverySubstitutionGivesThePrintedValue()
    {
        int steps = 0;
        foreach (string shape in RandomNetworks.Shapes)
        {
            for (int seed = 0; seed < 12; seed++)
            {
                DcNetwork network = new RandomNetworks(seed).Create(shape, 2 + seed, 0.7, mixedShares: seed % 2 == 1, largerOf: seed % 4 == 2);
                Derivation derivation = network.Solve().Explain();
                AssertEvaluates(derivation);
                steps += derivation.Steps.Count;
            }
        }

        Assert.True(steps > 2000, $"only {steps} steps");
    }

    // Every law once: each load's voltage and current, each element, each node that carries anything, four powers.
    [Fact]
    public void Explain_SmallNetwork_HoldsEveryLaw()
    {
        NetworkSolution solution = Examples["more is more"].Solve();
        IReadOnlyList<DerivationStep> steps = solution.Explain().Steps;
        DcNetwork network = solution.Network;
        Assert.Equal((2 * network.Loads.Count) + network.Sources.Count + network.Branches.Count + network.NodeNames.Count + 4, steps.Count);
        foreach (NetworkLoad load in network.Loads)
        {
            Assert.Equal(solution.AtLoad(load.Name).Voltage.Volts, steps.First(s => s.Symbol == $"V({load.Name})").Value);
            Assert.Equal(solution.AtLoad(load.Name).Current.Amperes, steps.First(s => s.Symbol == $"I({load.Name})").Value);
        }

        Assert.All(network.NodeNames, node => Assert.Single(steps, s => s.Meaning == $"Kirchhoff's current law at {node}"));
        Assert.All(network.Branches, branch => Assert.Single(steps, s => s.Meaning == $"Kirchhoff's voltage law over {branch.Name}"));
        Assert.Equal(solution.Balance.Delivered, steps[^1].Value, 1e-12);
    }

    // The current law at a node is an equation of all that meets there: no term may be missing.
    [Fact]
    public void Explain_CurrentLaw_NamesEverythingThatMeetsThere()
    {
        DerivationStep atNode = Examples["more is more"].Solve().Explain().Steps.Single(s => s.Meaning == "Kirchhoff's current law at n1");
        string all = atNode.Symbol + " " + atNode.Formula;
        Assert.All(new[] { "I(back 1)", "I(first)", "I(heater)" }, term => Assert.Contains(term, all, StringComparison.Ordinal));
    }

    [Fact]
    public void Explain_BlockedSource_SaysThatItDeliversNothing()
    {
        NetworkSolution solution = Examples["back-feed"].Solve();
        Assert.Equal(["weak"], solution.BlockedSources);
        DerivationStep step = Assert.Single(solution.Explain().Steps, s => s.Meaning.Contains("blocked", StringComparison.Ordinal));
        Assert.True(step.Value > 12, step.ToString());
    }

    [Fact]
    public void Explain_LargeNetwork_SaysThatItLeavesThingsOut()
    {
        DcNetwork network = new RandomNetworks(3).Create("grid", 30, 0.5, mixedShares: true);
        Assert.True(network.Sources.Count + network.Branches.Count + network.Loads.Count > 40);
        NetworkSolution solution = network.Solve();
        Derivation derivation = solution.Explain();
        Assert.Equal(3, derivation.Steps.Count);
        Assert.Equal(network.Loads.Min(l => solution.AtLoad(l.Name).Voltage.Volts), derivation.Steps[0].Value);
        Assert.Contains("more than 40 elements", derivation.Conclusion, StringComparison.Ordinal);
        AssertEvaluates(derivation);
    }

    [Fact]
    public void Explain_NoOperatingPoint_SaysHowMuchThereCouldBe()
    {
        Derivation derivation = Examples["too much"].Solve().Explain();
        DerivationStep most = derivation.Steps[^1];
        Assert.Equal("P(most)", most.Symbol);
        Assert.Contains("no operating point", derivation.Conclusion, StringComparison.Ordinal);

        double share = most.Value / 602;
        Assert.True(RandomNetworks.Scale(Examples["too much"], 0.999 * share).Solve().HasOperatingPoint);
        Assert.False(RandomNetworks.Scale(Examples["too much"], 1.001 * share).Solve().HasOperatingPoint);
        Assert.Empty(Examples["too much current"].Solve().Explain().Steps);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Explain_TextAndMarkdown_AreTheSameInEveryCulture(string name)
    {
        Cultures.AssertSame(() => Examples[name].Solve().Explain().ToString());
        Cultures.AssertSame(() => Examples[name].Solve().Explain().ToMarkdown());
    }

    // In mathematics an underscore lowers what follows and a per cent sign hides it.
    [Fact]
    public void Explain_NamesWithSignsOfMathematics_AreEscaped() =>
        Assert.Contains(@"V_{\text{camera\_1 50\%}}", Examples["back-feed"].Solve().Explain().ToMarkdown(), StringComparison.Ordinal);

    private static void AssertEvaluates(Derivation derivation) => Assert.All(derivation.Steps, step =>
    {
        double evaluated = Arithmetic.Evaluate(step.Substitution);
        double printed = double.Parse(step.ValueText.Split(' ')[0], CultureInfo.InvariantCulture);
        double halfSixthDigit = printed == 0 ? 1e-12 : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - 5);
        Assert.True(Math.Abs(evaluated - printed) <= halfSixthDigit * 1.05, FormattableString.Invariant($"{step} evaluates to {evaluated:R}"));
    });
}
