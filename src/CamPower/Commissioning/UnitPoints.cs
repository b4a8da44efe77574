namespace CamPower.Commissioning;

/// <summary>Where the readings of a unit are in its list of predictions. A unit is what one output feeds, or a box.</summary>
/// <remarks>A feed has four points for each device, then six of its output, then four for each junction without a device; a box has
/// three.</remarks>
internal static class UnitPoints
{
    /// <summary>Of a device: the loop from the output, dead, with the conductors joined at the device. [Ω]</summary>
    internal const int Loop = 0;

    /// <summary>Of a device: the plug with the device unplugged. [V]</summary>
    internal const int Plug = 1;

    /// <summary>Of a device: its terminals without infrared. [V]</summary>
    internal const int Day = 2;

    /// <summary>Of a device: its terminals with infrared. [V]</summary>
    internal const int Night = 3;

    /// <summary>How many points a device has.</summary>
    internal const int OfDevice = 4;

    /// <summary>Of an output: between its conductors, dead, everything unplugged and nothing joined. [Ω]</summary>
    internal const int Insulation = 0;

    /// <summary>Of an output: its terminals without infrared. [V]</summary>
    internal const int OutputDay = 1;

    /// <summary>Of an output: its terminals with infrared. [V]</summary>
    internal const int OutputNight = 2;

    /// <summary>Of an output: its current without infrared. [A]</summary>
    internal const int AmperesDay = 3;

    /// <summary>Of an output: its current with infrared. [A]</summary>
    internal const int AmperesNight = 4;

    /// <summary>Of an output: its terminals with every device unplugged. [V]</summary>
    internal const int OutputUnplugged = 5;

    /// <summary>How many points an output has of its own.</summary>
    internal const int OfOutput = 6;

    /// <summary>Of a box: its supply without load. [V]</summary>
    internal const int Unloaded = 0;

    /// <summary>Of a box: its supply with every device and without infrared. [V]</summary>
    internal const int SupplyDay = 1;

    /// <summary>Of a box: its supply with every device and infrared. [V]</summary>
    internal const int SupplyNight = 2;

    /// <summary>How many points a box has.</summary>
    internal const int OfBox = 3;

    /// <summary>Which of the four points of a device, or of a junction without one, a point of a feed is; -1 for one of its
    /// output.</summary>
    internal static int AtEnd(int devices, int point)
    {
        int ofOutput = point - (devices * OfDevice);
        return ofOutput < 0 ? point % OfDevice : ofOutput < OfOutput ? -1 : (ofOutput - OfOutput) % OfDevice;
    }

    internal static MeterQuantity KindOf(bool isBox, int devices, int point)
    {
        if (isBox) return MeterQuantity.Volts;
        int ofOutput = point - (devices * OfDevice);
        if (ofOutput < 0 || ofOutput >= OfOutput) return AtEnd(devices, point) == Loop ? MeterQuantity.Ohms : MeterQuantity.Volts;
        return ofOutput switch
        {
            Insulation => MeterQuantity.Ohms,
            AmperesDay or AmperesNight => MeterQuantity.Amperes,
            _ => MeterQuantity.Volts,
        };
    }
}
