using System.Collections.Generic;
using CamPower.Mains;
using CamPower.Tests.Mains;

namespace CamPower.Tests;

/// <summary>One of each public type of receptacles and of what boxes take from them.</summary>
internal static class ReceptacleSamples
{
    internal static IEnumerable<object> All()
    {
        ReceptacleAssessment receptacle = Receptacles.Plugged(amperes: 2.5).Assess().StudyReceptacles()[0];
        BreakerAssessment breaker = Breakers.Together(Breakers.B16, 30.5);
        EnergyAssessment energy = Breakers.On(Breakers.B16).Assess().StudyEnergy();
        return
        [
            receptacle, receptacle.Receptacle, receptacle.Worst, receptacle.Worst.Draws[0], breaker, breaker.Breaker, breaker.Cold,
            energy, energy.InConditions[0], new EnergyPrice(0.305, "EUR"),
        ];
    }
}
