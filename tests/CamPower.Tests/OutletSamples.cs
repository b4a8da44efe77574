using System.Collections.Generic;
using CamPower.Mains;
using CamPower.Tests.Mains;

namespace CamPower.Tests;

/// <summary>One of each public type of outlets and of what boxes take from them.</summary>
internal static class OutletSamples
{
    internal static IEnumerable<object> All()
    {
        OutletAssessment outlet = Outlets.Plugged(amperes: 2.5).Assess().StudyOutlets()[0];
        return [outlet, outlet.Outlet, outlet.Worst, outlet.Worst.Draws[0]];
    }
}
