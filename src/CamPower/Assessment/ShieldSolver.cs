using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>What the video shields of a group carry in one condition.</summary>
internal static class ShieldSolver
{
    /// <summary>Every shield of the group; devices whose supply gives AC put their whole current on it at mains frequency.</summary>
    /// <remarks>
    /// The returns are a linear network, so the shares that devices on DC and on AC supplies add to a shield are found
    /// apart: each kind's currents alone. Ripple is a share of the DC currents, and scales with them.
    /// </remarks>
    internal static ShieldInCondition[] ShieldsIn(Condition condition, MeshedCircuit circuit, Load[] loads)
    {
        double[] dc = circuit.ShieldAmperes(SupplyLevel.Lowest, Only(circuit, loads, CurrentKind.Dc));
        double[] ac = circuit.ShieldAmperes(SupplyLevel.Lowest, Only(circuit, loads, CurrentKind.Ac));
        double? ripple = Ripple(circuit.Group);
        IReadOnlyList<VideoLink> links = circuit.Group.Links;
        return [.. links.Select((link, i) => new ShieldInCondition(link, condition, dc[i], ac[i], ripple))];
    }

    private static Load[] Only(MeshedCircuit circuit, Load[] loads, CurrentKind kind) =>
        [.. loads.Select((load, i) => circuit.Group.Devices[i].Box.Supply.Output == kind ? load : Load.None)];

    // Known only where every DC supply of the group declares it; the largest counts.
    private static double? Ripple(FeedGroup group)
    {
        double largest = 0;
        foreach (Supply supply in group.Feeds.Select(f => f.Box.Supply).Where(s => s.Output == CurrentKind.Dc))
        {
            if (supply.Ripple is not UnitsNet.Ratio ripple) return null;
            if (ripple.DecimalFractions > largest) largest = ripple.DecimalFractions;
        }

        return largest;
    }
}
