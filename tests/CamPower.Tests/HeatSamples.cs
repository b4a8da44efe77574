using System.Collections.Generic;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>One of each public type of the heat of a box.</summary>
internal static class HeatSamples
{
    internal static IEnumerable<object> All()
    {
        var enclosure = new Enclosure(Length.FromMillimeters(300.5), Length.FromMillimeters(400.5), Length.FromMillimeters(75.5), EnclosureWall.PaintedSteel,
            EnclosureFaces.OnWall, Area.FromSquareMeters(0.1), Power.FromWatts(2.5), isVentilated: true);
        HeatedEnclosure heated = HeatedEnclosure.Of(enclosure, Power.FromWatts(12.5), Temperature.FromDegreesCelsius(30.5), Irradiance.FromWattsPerSquareMeter(850.5));
        BoxInCondition box = new Site("shed", [Condition.Day(new Surroundings(heated.Ambient, heated.Ambient, heated.Ambient))],
            [SmallSite.Box(SmallSite.Dc().WithEfficiency(0.85)).WithEnclosure(enclosure)], [], []).Assess().Boxes[0].Worst;
        return [box, box.Losses!, enclosure, new Cabinet("cabinet", enclosure), enclosure.Wall, heated, .. heated.Breaches, new Surroundings(heated.Ambient, heated.Ambient, heated.Ambient, Irradiance.FromWattsPerSquareMeter(850.5))];
    }
}
