using System.Collections.Generic;
using System.Linq;
using CamPower.Circuits;

namespace CamPower.Tests.Circuits.Networks.Ngspice;

/// <summary>The networks that are held against ngspice: every shape, light to near collapse, each kind of share.</summary>
internal static class NgspiceCases
{
    private static readonly double[] SharesOfCollapse = [0.2, 0.5, 0.8, 0.9, 0.99, 0.999];

    internal static IEnumerable<NgspiceCase> All() =>
        (from shape in RandomNetworks.Shapes
         from k in Enumerable.Range(0, 36)
         select Create(shape, k))
        .Append(new NgspiceCase("more draw, more voltage: little", KnownNetworks.MoreIsMore(2)))
        .Append(new NgspiceCase("more draw, more voltage: more", KnownNetworks.MoreIsMore(6)));

    private static NgspiceCase Create(string shape, int k)
    {
        double share = SharesOfCollapse[k % SharesOfCollapse.Length];
        int loads = 2 + (k * 2 / 3);
        DcNetwork network = new RandomNetworks(1000 + k).Create(shape, loads, share, mixedShares: k % 2 == 1, largerOf: k % 4 == 2);
        return new NgspiceCase(FormattableName(shape, k, share), network);
    }

    private static string FormattableName(string shape, int k, double share) =>
        System.FormattableString.Invariant($"{shape} {k}, {share * 100} % of the collapse load");
}
