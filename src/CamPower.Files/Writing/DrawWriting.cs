using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Writing;

/// <summary>From the shares of a draw to entries.</summary>
internal static class DrawWriting
{
    internal static DrawEntry Entry(ShareDraw draw) => new()
    {
        Base = Entry(draw.Base),
        Infrared = OptionalEntry(draw.Infrared),
        Motor = draw.HasMotor ? Entry(draw.Motor) : null,
        Heater = OptionalEntry(draw.Heater),
        StartUp = OptionalEntry(draw.StartUp),
    };

    private static ShareEntry? OptionalEntry(Load load) => ReferenceEquals(load, Load.None) ? null : Entry(load);

    // A share of zero is written only where it was given in a unit of its own, or where there is nothing else.
    private static ShareEntry Entry(Load load)
    {
        var entry = new ShareEntry();
        if (load.PowerShare.Value != 0 || load.PowerShare.Unit != PowerUnit.Watt) Add(load.PowerShare);
        if (load.CurrentShare.Value != 0 || load.CurrentShare.Unit != ElectricCurrentUnit.Ampere) Add(load.CurrentShare);
        if (load.ResistanceShare is ElectricResistance resistance) Add(resistance);
        if (entry.Count == 0) Add(load.PowerShare);
        return entry;

        void Add(IQuantity quantity) => entry.Add(new Written<IQuantity>(quantity));
    }
}
