using System;
using System.Collections.Generic;
using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to what a device draws.</summary>
internal static class DrawBuilding
{
    internal static Draw Build(DrawEntry entry, Place at) => new ShareDraw(
        Share(entry.Base, at.Member("base")) ?? Load.None,
        Share(entry.Infrared, at.Member("infrared")),
        Share(entry.Motor, at.Member("motor")),
        Share(entry.Heater, at.Member("heater")),
        Share(entry.StartUp, at.Member("startUp")));

    internal static Draw Build(LabelEntry entry, Place at) => at.Build(() => new LabelDraw(
        at.Value("voltage", entry.Voltage, StandIn.Voltage),
        at.Value("current", entry.Current, ElectricCurrent.Zero),
        at.Value("stage", entry.Stage, InputStage.Linear)));

    private static Load? Share(ShareEntry? entry, Place at)
    {
        if (entry is null || at.IsFaulty) return null;
        if (entry.Count == 0) at.Fault("a share needs at least one quantity");
        bool isText = entry.Count == 1;
        var kinds = new HashSet<string>(StringComparer.Ordinal);
        Load sum = Load.None;
        for (int i = 0; i < entry.Count; i++)
        {
            if (entry[i] is null) continue;
            IQuantity quantity = entry[i]!.Value;
            Place place = isText ? at : at.Item(i);
            if (!kinds.Add(quantity.QuantityInfo.Name)) place.Fault("a share holds at most one power, one current and one resistance");
            else sum = Sum(sum, place.BuildHere(() => place.IsFaulty ? Load.None : LoadOf(quantity)));
        }

        return sum;
    }

    // The first keeps its number and unit, even where it is zero.
    private static Load Sum(Load sum, Load more) => ReferenceEquals(sum, Load.None) ? more : sum + more;

    private static Load LoadOf(IQuantity quantity) => quantity switch
    {
        Power power => Load.ConstantPower(power),
        ElectricCurrent current => Load.ConstantCurrent(current),
        _ => Load.ConstantResistance((ElectricResistance)quantity),
    };
}
