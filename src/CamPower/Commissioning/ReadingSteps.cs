using System;
using System.Linq;
using CamPower.Sites;

namespace CamPower.Commissioning;

/// <summary>What to do for a reading, and what keeps it safe. The only place of these texts.</summary>
/// <remarks>None of them lets anybody read at energized mains, open a battery circuit under load, or work alone on a ladder.</remarks>
internal static class ReadingSteps
{
    private const string Ladder = "Have a second person hold the ladder.";

    internal static ExpectedReading Expect(ReadingModel model, ReadingPoint point, Meter meter)
    {
        SupplyOutput supply = model.BoxOf(point).Supply.Output;
        double counts = meter.RangeFor(point.Kind).LimitOf(0);
        double volts = CommissioningConstants.ImpossibleVoltage.Value * supply.HighestVolts;
        (double, double) impossible = ReadingWords.UnitOf(point.Kind) switch
        {
            "V" => (supply.Kind == CurrentKind.Dc ? -volts : -counts, volts),
            "A" => (-counts, CommissioningConstants.ImpossibleCurrent.Value * supply.RatedAmperes),
            _ => (-counts, double.PositiveInfinity),
        };
        return new ExpectedReading(model.Of(point), meter, impossible, StepOf(model, point), SafetyOf(model, point));
    }

    /// <summary>What to do, and where the leads go.</summary>
    private static string StepOf(ReadingModel model, ReadingPoint point)
    {
        DistributionBox box = model.BoxOf(point);
        OutputFeed? feed = model.FeedOf(point);
        string output = feed is null ? string.Empty : RunOrigin.NameOf(box.Name, feed.Output.Number);
        return point.State switch
        {
            ReadingState.Dead =>
                $"{Off(box)} Unplug every device on {output}. Take its wires off the terminals. Read between the two wires.",
            ReadingState.FarEndLinked => $"{Link(point)} Read between the two loose wires of {output}.",
            ReadingState.LinkRemoved => $"Take every link out. Read between the two loose wires of {output} again.",
            ReadingState.Unloaded =>
                $"Check that the wires of every output are off. Switch {box.Name} on. Read at its {Kind(box)} supply terminals.",
            ReadingState.DeviceUnplugged => $"{PutBack(box, output)} {Where(point, box, output)}",
            ReadingState.Running => $"{Connect(point, feed)} {Where(point, box, output)}",
            _ => $"{Cover(feed, box)} {Where(point, box, output)}",
        };
    }

    /// <summary>What keeps it safe.</summary>
    private static string SafetyOf(ReadingModel model, ReadingPoint point)
    {
        DistributionBox box = model.BoxOf(point);
        return point.State switch
        {
            ReadingState.Dead => Disconnected(box) + "Prove the output dead, 0 V, before you touch a wire.",
            ReadingState.FarEndLinked => $"The box stays off while a link is in. {Ladder}",
            ReadingState.LinkRemoved => "Do not switch the box on before this pair reads open.",
            ReadingState.Unloaded => "Keep the cover of the mains side closed. Read at the extra-low voltage terminals alone.",
            ReadingState.DeviceUnplugged when point.Kind != ReadingKind.OutputCurrent => $"{Accepts(model, point, box)}{Ladder}",
            _ => point.Kind switch
            {
                ReadingKind.OutputCurrent => "Leave the circuit closed: use a clamp around one wire, or the display of the box.",
                ReadingKind.SupplyVoltage => "Keep the cover of the mains side closed. Read at the extra-low voltage terminals alone.",
                _ => $"Do not bridge the contacts with the tips. {Ladder}",
            },
        };
    }

    private static string Off(DistributionBox box) => box.FedFrom is not null
        ? $"Switch {box.Name} off, and the box that feeds it."
        : box.IsAdapter
        ? $"Unplug {box.Name} from its receptacle."
        : $"Switch {box.Name} off and pull its mains plug, or have it isolated.";

    private static string Disconnected(DistributionBox box) => box.Battery is null
        ? string.Empty
        : "Disconnect the battery only after every output is switched off and every device is unplugged. ";

    private static string Link(ReadingPoint point) => point.Kind == ReadingKind.LoopResistance
        ? $"Link the two wires at the plug of {point.Name}, the device still unplugged."
        : $"Link the two wires at {point.Name}, every device still unplugged.";

    private static string PutBack(DistributionBox box, string output) =>
        $"Switch {box.Name} off, put the wires of {output} back, every device unplugged. Switch it on.";

    private static string Connect(ReadingPoint point, OutputFeed? feed) => point.Kind == ReadingKind.PlugVoltage
        ? $"Connect {point.Name} and wait until every device on the output runs, as by day."
        : feed is null ? "Wait until every device runs, as by day." : "Wait until every device on the output runs, as by day.";

    private static string Cover(OutputFeed? feed, DistributionBox box) => feed is null
        ? $"Cover the light sensors of all devices on {box.Name} until their illuminators are on."
        : "Cover the light sensors of all devices on the output until their illuminators are on.";

    private static string Where(ReadingPoint point, DistributionBox box, string output) => point.Kind switch
    {
        ReadingKind.SupplyVoltage => $"Read at the {Kind(box)} supply terminals of {box.Name}.",
        ReadingKind.OutputVoltage => $"Read at the terminals of {output}.",
        ReadingKind.OutputCurrent => $"Read the current of {output}.",
        ReadingKind.PlugVoltage => $"Read at the plug of {point.Name}{Leads(box)}.",
        _ => $"Read at {point.Name}{Leads(box)}.",
    };

    private static string Leads(DistributionBox box) =>
        box.Supply.Output.Kind == CurrentKind.Dc ? ", the red lead on the positive contact" : string.Empty;

    private static string Kind(DistributionBox box) => box.Supply.Output.Kind == CurrentKind.Dc ? "DC" : "low-voltage AC";

    // A device is connected to what it accepts, the right way round, and to nothing else.
    private static string Accepts(ReadingModel model, ReadingPoint point, DistributionBox box)
    {
        if (point.Kind != ReadingKind.PlugVoltage) return string.Empty;
        bool isDc = box.Supply.Output.Kind == CurrentKind.Dc;
        return model.Site.Index.Device(point.Name)!.Model.InputFor(box.Supply.Output.Kind) is VoltageRange accepted
            ? FormattableString.Invariant(
                $"Connect it only if the reading is {(isDc ? "positive and " : "")}at most {accepted.HighestVolts:0.##} V. ")
            : $"Do not connect it: it does not accept {(isDc ? "direct" : "alternating")} current. ";
    }
}
