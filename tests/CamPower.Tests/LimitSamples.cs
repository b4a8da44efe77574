using System.Collections.Generic;
using CamPower.Tests.Circuits;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type of inverse questions, profiles and chains.</summary>
internal static class LimitSamples
{
    internal static IEnumerable<object> All()
    {
        Load nine = Load.ConstantPower(Power.FromWatts(9.5));
        Temperature twenty = Temperature.FromDegreesCelsius(20.5);
        var from = ElectricPotential.FromVolts(12.5);
        VoltageLimit accepted = VoltageLimit.AtLeast(ElectricPotential.FromVolts(10.5)).And(VoltageLimit.DropAtMost(Ratio.FromPercent(12.5)));
        var run = new CableRun(Runs.Eighteen, oneWayLength: Length.FromMeters(20.5));
        var chain = new CameraChain(new ChainLink(run, nine));
        ChainResult fed = chain.Feed(from, twenty);
        VoltageProfile profile = fed.Profile();
        return
        [
            accepted, VoltageLimit.AtLeast(from), VoltageLimit.DropAtMost(Ratio.FromPercent(2.5)),
            run.LongestLength(nine, from, accepted, twenty), run.SmallestArea(nine, from, accepted, twenty), run.SmallestSize(WireSizeSeries.Awg, nine, from, accepted, twenty),
            run.LargestPower(nine, from, accepted, twenty), run.NeededSourceVoltage(nine, accepted, twenty), run.HighestTemperature(nine, from, accepted),
            run.LongestLength(nine, from, VoltageLimit.AtLeast(ElectricPotential.FromVolts(13)), twenty),
            chain, chain.Links[0], fed, fed.Taps[0], profile, profile.Points[0],
        ];
    }
}
