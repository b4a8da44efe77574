using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Assessment;

/// <summary>Solves the currents of the video shields of a group in one condition.</summary>
internal static class ShieldSolver
{
    /// <summary>Every shield of the group, with the current of the devices that are up.</summary>
    /// <remarks>
    /// The returns are a linear network, so what each box adds to a shield is found apart, from the currents that its
    /// devices really draw. A DC box adds its ripple's share of that, an AC box all of it; nothing says how the mains
    /// voltages of two boxes lie to each other, so these are added without regard to sign.
    /// </remarks>
    internal static ShieldInCondition[] ShieldsIn(Condition condition, MeshedCircuit circuit, DeviceInCondition[] devices)
    {
        IReadOnlyList<VideoLink> links = circuit.Group.Links;
        if (Array.Exists(devices, d => d.State == DeviceState.NoOperatingPoint)) return Unknown(links, condition);

        double[] dc = new double[links.Count], mains = new double[links.Count];
        bool declared = true;
        foreach (DistributionBox box in circuit.Group.Feeds.Select(f => f.Box).Distinct())
        {
            var dcOutput = box.Supply.Output as DcOutput;
            bool isDc = dcOutput is not null;
            double swing = isDc ? dcOutput!.Ripple?.DecimalFractions ?? 0 : 1;
            declared &= !isDc || dcOutput!.Ripple is not null;
            double[]? shares = circuit.ShieldAmperes(
                devices.Select((d, i) => ReferenceEquals(circuit.Group.Devices[i].Box, box) ? d.AmperesDrawn : 0));
            if (shares is null) return Unknown(links, condition);
            for (int i = 0; i < shares.Length; i++)
            {
                if (isDc) dc[i] += shares[i];
                mains[i] += Math.Abs(shares[i]) * swing;
            }
        }

        return [.. links.Select((link, i) => new ShieldInCondition(link, condition, dc[i], declared ? mains[i] : null))];
    }

    private static ShieldInCondition[] Unknown(IReadOnlyList<VideoLink> links, Condition condition) =>
        [.. links.Select(link => new ShieldInCondition(link, condition))];
}
