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
        Output = new(supply.Output.Kind),
        Nominal = new(supply.Output.Nominal),
        RatedCurrent = new(supply.Output.RatedCurrent),
        Tolerance = new(supply.Output.Tolerance),
        Derating = Entry(supply.Derating),
        Trim = ModelWriting.Entry((supply.Output as DcOutput)?.Trim),
        SetPoint = supply.Output is DcOutput dc && !IsSame(dc.SetPoint, dc.Nominal) ? new(dc.SetPoint) : null,
        Ripple = supply.Output is DcOutput { Ripple: Ratio ripple } ? new(ripple) : null,
    };

    private static DeratingEntry Entry(Derating derating)
    {
        if (ReferenceEquals(derating, Derating.GenericEnclosed)) return new DeratingEntry { Named = derating };
        var entry = new DeratingEntry();
        entry.AddRange(derating.Ambient.Points.Select(p => new DeratingPointEntry { Ambient = new(p.At), Share = new(p.Share) }));
        return entry;
    }

    // The same number in the same unit.
    private static bool IsSame<T>(T a, T b) where T : IQuantity => a.Unit.Equals(b.Unit) && ((double)a.Value).Equals((double)b.Value);
}
