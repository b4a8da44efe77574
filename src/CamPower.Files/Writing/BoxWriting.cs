using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Writing;

/// <summary>From boxes and supplies to entries.</summary>
internal static class BoxWriting
{
    internal static BoxEntry Entry(DistributionBox box)
    {
        ElectricCurrent[] limits = [.. box.Outputs.Select(o => o.Limit)];
        bool areEqual = limits.All(l => IsSame(l, limits[0])) && limits.Length <= Building.StandIn.MostOutputs;
        bool isEqualBox = areEqual && !box.IsAdapter;
        return new BoxEntry
        {
            Name = box.Name,
            Supply = Entry(box.Supply),
            Adapter = box.IsAdapter ? true : null,
            Outputs = isEqualBox ? limits.Length : null,
            OutputLimit = isEqualBox ? new(limits[0]) : null,
            OutputLimits = areEqual || box.IsAdapter ? null : [.. limits.Select(l => new Formats.Written<ElectricCurrent>(l))],
        };
    }

    private static SupplyEntry Entry(Supply supply) => new()
    {
        Name = supply.Name,
        Output = new(supply.Output),
        Nominal = new(supply.Nominal),
        RatedCurrent = new(supply.RatedCurrent),
        Tolerance = new(supply.Tolerance),
        Derating = Entry(supply.Derating),
        Trim = ModelWriting.Entry(supply.Trim),
        SetPoint = IsSame(supply.SetPoint, supply.Nominal) ? null : new(supply.SetPoint),
        Ripple = supply.Ripple is UnitsNet.Ratio ripple ? new(ripple) : null,
    };

    private static DeratingEntry Entry(DeratingCurve curve)
    {
        if (ReferenceEquals(curve, DeratingCurve.GenericEnclosed)) return new DeratingEntry { Named = curve };
        var entry = new DeratingEntry();
        entry.AddRange(curve.Points.Select(p => new DeratingPointEntry { Ambient = new(p.Ambient), Share = new(p.Share) }));
        return entry;
    }

    // The same number in the same unit.
    private static bool IsSame<T>(T a, T b) where T : IQuantity => a.Unit.Equals(b.Unit) && ((double)a.Value).Equals((double)b.Value);
}
