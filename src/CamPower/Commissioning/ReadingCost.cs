namespace CamPower.Commissioning;

/// <summary>What a reading costs against one at the open box: the way to the device, the ladder, the box switched off. Common practice, no
/// source.</summary>
internal static class ReadingCost
{
    private const double AtBox = 1, BoxOff = 1.5, AtDevice = 4, Linked = 5, Covered = 0.5;

    internal static double Of(ReadingPoint point)
    {
        double cost = point.Kind switch
        {
            ReadingKind.LoopResistance or ReadingKind.JunctionLoopResistance => Linked,
            ReadingKind.PlugVoltage or ReadingKind.JunctionVoltage => AtDevice,
            ReadingKind.PairResistance => BoxOff,
            _ => AtBox,
        };
        return point.State == ReadingState.InfraredForced ? cost + Covered : cost;
    }
}
