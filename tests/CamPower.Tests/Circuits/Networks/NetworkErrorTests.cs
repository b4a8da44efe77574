using System;
using System.Collections.Generic;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>A description that no network can have is refused, and the message names the element.</summary>
public class NetworkErrorTests
{
    [Fact]
    public void Build_WithoutSource_IsRefused() =>
        Refused("at least one source", () => new DcNetworkBuilder().AddBranch("a", "x", "y", Ohms(1)).Build("x"));

    [Fact]
    public void Build_Island_NamesItsNode() =>
        Refused("Node 'far +' floats", () => Supply().AddBranch("island", "far +", "far -", Ohms(1)).Build("s-"));

    // A load does not hold a node at a voltage.
    [Fact]
    public void Build_NodeBehindALoadOnly_NamesTheNode() => Refused("Node 'a' floats", () => Supply()
        .AddBranch("stub", "a", "b", Ohms(1)).AddLoad("camera", "s+", "a", Load.None).Build("s-"));

    [Fact]
    public void Build_LoadAtUnknownNode_NamesBoth() =>
        Refused("no node 'c+', which load 'camera' names", () => Supply().AddLoad("camera", "c+", "s-", Load.None).Build("s-"));

    [Fact]
    public void Build_UnknownReference_NamesIt() => Refused("no node 'earth'", () => Supply().Build("earth"));

    [Fact]
    public void Build_IdealSourcesInParallel_NamesTheSecond() => Refused("Source 'second' closes a loop", () => Supply()
        .AddSource("second", "s+", "s-", Volts(12)).Build("s-"));

    [Fact]
    public void Build_IdealSourcesJoinedByZeroOhms_NamesTheSecond() => Refused("Source 'second' closes a loop", () => Supply()
        .AddSource("second", "t+", "s-", Volts(13)).AddBranch("bar", "s+", "t+", Ohms(0)).Build("s-"));

    [Fact]
    public void Build_ShortedIdealSource_NamesIt() => Refused("Source 'supply' closes a loop", () => Supply()
        .AddBranch("short", "s+", "s-", Ohms(0)).Build("s-"));

    [Fact]
    public void Build_BranchesWithoutResistanceInParallel_NamesTheSecond() => Refused("Branch 'two' closes a loop", () => Supply()
        .AddBranch("one", "s+", "a", Ohms(0)).AddBranch("two", "a", "s+", Ohms(0)).Build("s-"));

    // With a resistance the same two are a network.
    [Fact]
    public void Build_SourcesInParallelWithResistance_IsANetwork() => Assert.True(Supply()
        .AddSource("second", "s+", "s-", Volts(13), Ohms(0.1)).Build("s-").Solve().HasOperatingPoint);

    [Fact]
    public void Add_NameTaken_NamesIt()
    {
        Refused("The name 'supply' is taken", () => Supply().AddBranch("supply", "s+", "a", Ohms(1)).Build("s-"));
        Refused("The name 'supply' is taken", () => Supply().AddLoad("supply", "s+", "s-", Load.None).Build("s-"));
        Refused("The name 'run -' is taken", () => Supply().AddBranch("run -", "s-", "x", Ohms(1))
            .AddRun("run", Runs.OfOhms(1.25), "s+", "c+", "s-", "c-", Temperature.FromDegreesCelsius(20)).Build("s-"));
    }

    [Fact]
    public void Add_BothEndsAtOneNode_NamesTheElement()
    {
        Refused("'bent' has both ends at node 'a'", () => Supply().AddBranch("bent", "a", "a", Ohms(1)).Build("s-"));
        Refused("'camera' has both ends at node 's+'", () => Supply().AddLoad("camera", "s+", "s+", Load.None).Build("s-"));
        Refused("'bad' has both ends at node 's+'", () => Supply().AddSource("bad", "s+", "s+", Volts(1)).Build("s-"));
    }

    // Every call that throws, on its own builder: it still prints, and builds, what it did before.
    [Fact]
    public void Add_ThatThrows_AddsNothing()
    {
        Temperature twenty = Temperature.FromDegreesCelsius(20);
        Action<DcNetworkBuilder>[] calls =
        [
            b => b.AddRun("run", Runs.OfOhms(1), "s+", "c+", "s-", "s-", twenty),
            b => b.AddRun("taken", Runs.OfOhms(1), "s+", "c+", "s-", "c-", twenty),
            b => b.AddRun("run", Runs.OfOhms(1e9), "s+", "c+", "s-", "c-", twenty),
            b => b.AddRun("run", Runs.OfOhms(1), "s+", "c+", "s-", null!, twenty),
            b => b.AddSource("second", "x", "y", Volts(12), Ohms(-1)),
            b => b.AddBranch("supply", "x", "y", Ohms(1)),
            b => b.AddLoad("supply", "x", "y", Load.None),
        ];
        foreach (Action<DcNetworkBuilder> call in calls)
        {
            DcNetworkBuilder builder = Supply().AddBranch("taken -", "s-", "t", Ohms(1));
            Assert.ThrowsAny<ArgumentException>(() => call(builder));
            Assert.Equal("network so far: 1 sources, 1 branches, 0 loads", builder.ToString());
            Assert.Equal(["s+", "s-", "t"], builder.Build("s-").NodeNames);
            builder.AddBranch("run +", "s+", "c+", Ohms(1)).AddBranch("run -", "s-", "c-", Ohms(1)).AddBranch("second", "s+", "x", Ohms(1)).Build("s-");
        }
    }

    // The parameter that is blamed is one of the method that was called.
    [Fact]
    public void Refusals_BlameAParameterThatIsThere()
    {
        DcNetwork network = Supply().AddLoad("camera", "s+", "s-", Load.None).Build("s-");
        NetworkSolution solution = network.Solve();
        Assert.Throws<ArgumentException>("node", () => solution.VoltageAt("x"));
        Assert.Throws<ArgumentException>("branch", () => solution.CurrentIn("x"));
        Assert.Throws<ArgumentException>("source", () => solution.CurrentFrom("x"));
        Assert.Throws<ArgumentException>("load", () => solution.AtLoad("x"));
        Assert.Throws<ArgumentException>("loads", () => network.WithLoads(new Dictionary<string, Load>(StringComparer.Ordinal) { ["x"] = Load.None }));
        Assert.Throws<ArgumentException>("reference", () => Supply().Build("x"));
        Assert.Throws<ArgumentException>("name", () => Supply().AddBranch("supply", "a", "b", Ohms(1)));
        Assert.Throws<ArgumentException>("to", () => Supply().AddBranch("bent", "a", "a", Ohms(1)));
        Assert.Throws<ArgumentNullException>("positiveNode", () => Supply().AddSource("x", null!, "b", Volts(1)));
        Assert.Throws<ArgumentNullException>("negativeTo", () => Supply().AddRun("x", Runs.OfOhms(1), "s+", "b", "s-", null!, Temperature.FromDegreesCelsius(20)));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => Supply().AddConductor("x", Runs.Eighteen.Outgoing, Length.FromKilometers(1e9), "a", "b", Temperature.FromDegreesCelsius(20)));
    }

    // A load may be named before the branch that makes its node.
    [Fact]
    public void AddLoad_BeforeItsNode_IsBuilt() => Assert.Equal(6, Supply().AddLoad("camera", "c", "s-", Load.ConstantResistance(Ohms(1)))
        .AddBranch("out", "s+", "c", Ohms(1)).Build("s-").Solve().AtLoad("camera").Voltage.Volts, 1e-12);

    [Theory]
    [InlineData(-1)]
    [InlineData(1e-7)]
    [InlineData(1e9)]
    public void AddBranch_ImpossibleResistance_NamesParameterValueAndRange(double ohms)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Supply().AddBranch("out", "s+", "c+", Ohms(ohms)));
        Assert.Equal("resistance", error.ParamName);
        Assert.Contains("0 or from 1E-06 Ω to 100000000 Ω", error.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Supply().AddSource("second", "s+", "s-", Volts(1), Ohms(ohms)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-12)]
    [InlineData(2e6)]
    public void AddSource_ImpossibleVoltage_NamesParameter(double volts) =>
        Assert.Equal("voltage", Assert.Throws<ArgumentOutOfRangeException>(() => Supply().AddSource("x", "a", "b", Volts(volts))).ParamName);

    [Fact]
    public void Names_NullOrEmpty_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => Supply().AddBranch(null!, "a", "b", Ohms(1)));
        Assert.Throws<ArgumentException>(() => Supply().AddBranch(" ", "a", "b", Ohms(1)));
        Assert.Throws<ArgumentNullException>(() => Supply().AddBranch("x", null!, "b", Ohms(1)));
        Assert.Throws<ArgumentNullException>(() => Supply().AddLoad("x", "a", "b", null!));
        Assert.Throws<ArgumentNullException>(() => Supply().Build(null!));
        Assert.Throws<ArgumentNullException>(() => Supply().AddRun("x", null!, "a", "b", "c", "d", Temperature.FromDegreesCelsius(20)));
        Assert.Throws<ArgumentNullException>(() => Supply().AddConductor("x", null!, Length.FromMeters(1), "a", "b", Temperature.FromDegreesCelsius(20)));
    }

    [Fact]
    public void Solution_UnknownNames_AreRefused()
    {
        DcNetwork network = Supply().Build("s-");
        NetworkSolution solution = network.Solve();
        Refused("no node 'x'", () => solution.VoltageAt("x"));
        Refused("no branch 'x'", () => solution.CurrentIn("x"));
        Refused("no source 'x'", () => solution.CurrentFrom("x"));
        Refused("no load 'x'", () => solution.AtLoad("x"));
        Refused("no load 'x'", () => network.WithLoads(new Dictionary<string, Load>(StringComparer.Ordinal) { ["x"] = Load.None }));
    }

    // What the builder is told later does not reach a network that it built before.
    [Fact]
    public void Build_ThenAddMore_LeavesTheNetworkAlone()
    {
        DcNetworkBuilder builder = Supply();
        DcNetwork network = builder.Build("s-");
        builder.AddBranch("more", "s+", "a", Ohms(1)).AddLoad("camera", "a", "s-", Load.None);
        Assert.Equal(["s+", "s-"], network.NodeNames);
        Assert.Empty(network.Branches);
        Assert.Empty(network.Loads);
        Assert.Throws<ArgumentException>(() => network.Solve().VoltageAt("a"));
    }

    private static DcNetworkBuilder Supply() => new DcNetworkBuilder().AddSource("supply", "s+", "s-", Volts(12));

    private static void Refused(string inMessage, Func<object?> act)
    {
        Assert.Contains(inMessage, Assert.ThrowsAny<ArgumentException>(act).Message, StringComparison.Ordinal);
    }

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);
}
