using System;
using System.Linq;
using CamPower.Circuits;
using UnitsNet;

namespace CamPower.Tests.Circuits.Networks;

/// <summary>Outputs of one box whose negatives are shared: sources that each feed a part of their own.</summary>
public class SourcesApartTests
{
    // The outputs of a box are one source to the network, however they are drawn.
    [Fact]
    public void Outputs_AreSolvedAsTheOneSourceThatTheyAre()
    {
        int none = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            DcNetwork apart = Box(new Random(seed), isOneSource: false), one = Box(new Random(seed), isOneSource: true);
            Assert.False(apart.Plan.SourcesMaySwitch);
            Assert.True(new MeshShape(apart.Circuit).SpansTheSources);
            NetworkSolution ofApart = apart.Solve(), ofOne = one.Solve();
            Assert.Equal(ofOne.HasOperatingPoint, ofApart.HasOperatingPoint);
            Assert.Equal(1, apart.MarginToCollapse()!.Value / one.MarginToCollapse()!.Value, 1e-7);
            if (!ofApart.HasOperatingPoint) none++;
            else Assert.All(apart.Loads, l => Assert.Equal(ofOne.AtLoad(l.Name).Voltage.Volts, ofApart.AtLoad(l.Name).Voltage.Volts, 1e-9));
        }

        Assert.InRange(none, 50, 350);
    }

    // A tie between two outputs lets one feed the other; a load between them returns into what the other feeds.
    [Theory]
    [InlineData("tie")]
    [InlineData("load")]
    public void SourcesThatMeet_MaySwitch(string between)
    {
        DcNetworkBuilder builder = new DcNetworkBuilder().AddSource("one", "a", "0", ElectricPotential.FromVolts(12))
            .AddSource("other", "b", "0", ElectricPotential.FromVolts(13)).AddBranch("way", "a", "c", ElectricResistance.FromOhms(1))
            .AddLoad("camera", "c", "0", Load.ConstantPower(Power.FromWatts(4)));
        Assert.False(builder.Build("0").Plan.SourcesMaySwitch);
        if (between == "tie") builder.AddBranch("tie", "c", "b", ElectricResistance.FromOhms(1));
        else builder.AddLoad("stray", "b", "c", Load.ConstantResistance(ElectricResistance.FromOhms(5)));
        Assert.True(builder.Build("0").Plan.SourcesMaySwitch);
    }

    // Each camera has a positive of its own and returns over the one before; a bond closes a ring of negatives.
    private static DcNetwork Box(Random random, bool isOneSource)
    {
        int cameras = random.Next(2, 7);
        double volts = 10 + (5 * random.NextDouble()), watts = 40 * random.NextDouble();
        var builder = new DcNetworkBuilder();
        if (isOneSource) builder.AddSource("rail", "rail", "0", ElectricPotential.FromVolts(volts));
        for (int i = 1; i <= cameras; i++)
        {
            if (isOneSource) builder.AddBranch($"output {i}", "rail", $"output {i}", ElectricResistance.Zero);
            else builder.AddSource($"output {i}", $"output {i}", "0", ElectricPotential.FromVolts(volts));
            builder.AddBranch($"out {i}", $"output {i}", $"{i} +", ElectricResistance.FromOhms(0.05 + random.NextDouble()));
            builder.AddBranch($"back {i}", i == 1 ? "0" : $"{i - 1} -", $"{i} -", ElectricResistance.FromOhms(0.05 + random.NextDouble()));
            builder.AddLoad($"camera {i}", $"{i} +", $"{i} -", Load.ConstantPower(Power.FromWatts(watts * random.NextDouble())));
        }

        return builder.AddBranch("bond", $"{cameras} -", "0", ElectricResistance.FromOhms(2)).Build("0");
    }
}
