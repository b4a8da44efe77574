using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Circuits.Ngspice;

/// <summary>The solvers against a general circuit simulator, ngspice 39, by its committed answers.</summary>
public class CommittedNetworksTests
{
    private static readonly IReadOnlyList<SimulatedNetwork> All =
        SimulatedNetworks.Read(File.ReadAllText(RepositoryFiles.PathOf(SimulatedNetworks.Folder + "/results.csv")));

    public static TheoryData<string> Names => [.. All.Select(n => n.Name)];

    public static TheoryData<string> RunNames => [.. All.Where(n => n.Nodes.Count == 1).Select(n => n.Name)];

    [Theory]
    [MemberData(nameof(RunNames))]
    public void ClosedForm_AgreesWithTheSimulator(string name) =>
        LibraryAnswers.AssertAgrees(Named(name), LibraryAnswers.ByClosedForm(Named(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void TreeSolver_AgreesWithTheSimulator(string name) =>
        LibraryAnswers.AssertAgrees(Named(name), LibraryAnswers.ByTree(Named(name)));

    [Fact]
    public void Cases_CoverWhatTheyShould()
    {
        Assert.True(All.Count(n => n.Nodes.Count == 1) >= 60);
        Assert.True(All.Count(n => n.Nodes.Count > 1) >= 30);
        Assert.True(All.Count(n => !n.HasOperatingPoint) >= 15);
        Assert.True(All.Count(n => !n.HasOperatingPoint && n.Nodes.All(m => m.Volts is not null)) >= 3, "A negative voltage is no operating point either.");
    }

    private static SimulatedNetwork Named(string name) => All.Single(n => n.Name == name);
}
