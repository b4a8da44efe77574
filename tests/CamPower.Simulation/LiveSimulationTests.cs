using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using CamPower.Tests.Circuits.Ngspice;
using CamPower.Tests.Repository;

namespace CamPower.Simulation;

/// <summary>The committed netlists simulated again, and compared with their committed answers and with the package.</summary>
public class LiveSimulationTests
{
    private static readonly IReadOnlyList<SimulatedNetwork> All = ReadOrRegenerate();

    public static TheoryData<string> Names => [.. All.Select(n => n.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void CommittedNetlist_IsThatOfItsCase(string name) =>
        GeneratedPage.AssertCurrent(NetlistOf(name), Netlist.Of(Named(name)));

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_IsTheCommittedOne(string name)
    {
        SimulatedNetwork committed = Named(name), live = Simulated(committed);
        Assert.Equal(committed.HasOperatingPoint, live.HasOperatingPoint);
        for (int i = 0; live.HasOperatingPoint && i < live.Nodes.Count; i++)
        {
            double then = committed.Nodes[i].Volts!.Value, now = live.Nodes[i].Volts!.Value;
            Assert.InRange(Math.Abs(now - then) / then, 0, LibraryAnswers.Tolerance);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void LiveAnswer_AgreesWithThePackage(string name)
    {
        SimulatedNetwork live = Simulated(Named(name));
        LibraryAnswers.AssertAgrees(live, LibraryAnswers.ByTree(live));
        if (live.Nodes.Count == 1) LibraryAnswers.AssertAgrees(live, LibraryAnswers.ByClosedForm(live));
    }

    private static SimulatedNetwork Named(string name) => All.Single(n => n.Name == name);

    private static string NetlistOf(string name) => $"{SimulatedNetworks.Folder}/{name}.cir";

    private static SimulatedNetwork Simulated(SimulatedNetwork network) =>
        network.WithVolts(Simulator.Solve(network, RepositoryFiles.PathOf(NetlistOf(network.Name))));

    private static IReadOnlyList<SimulatedNetwork> ReadOrRegenerate()
    {
        string table = RepositoryFiles.PathOf(SimulatedNetworks.Folder + "/results.csv");
        if (GeneratedPage.IsRegenerating)
        {
            IReadOnlyList<SimulatedNetwork> made = CaseMaker.Make();
            foreach (SimulatedNetwork network in made) File.WriteAllText(RepositoryFiles.PathOf(NetlistOf(network.Name)), Netlist.Of(network));
            File.WriteAllText(table, SimulatedNetworks.Write(made.Select(Simulated)));
        }

        return SimulatedNetworks.Read(File.ReadAllText(table));
    }
}
