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
            "V" => (supply.IsDc ? -volts : -counts, volts),
            "A" => (-counts, CommissioningConstants.ImpossibleCurrent.Value * supply.RatedAmperes),
            _ => (-counts, double.PositiveInfinity),
        };
        return new ExpectedReading(model.Of(point), meter, impossible, StepOf(model, point), highest => SafetyOf(model, point, highest));
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
                $"{Off(box)} Unplug every device on {output}. Check that the output reads 0 V. "
                    + "Take its wires off the terminals. Read between the two wires.",
            ReadingState.FarEndJumpered => $"{Jumper(point)} Read between the two loose wires of {output}.",
            ReadingState.JumperRemoved => $"Remove every jumper. Read between the two loose wires of {output} again.",
            ReadingState.Unloaded =>
                $"Check that the wires of every output are off. Switch {box.Name} on. Read at its {Kind(box)} supply terminals.",
            ReadingState.DeviceUnplugged => $"{PutBack(box, output)} {Where(point, box, output)}",
            ReadingState.Running => $"{Connect(point, feed)} {Where(point, box, output)}",
            _ => $"{Cover(feed, box)} {Where(point, box, output)}",
        };
    }

    /// <summary>What keeps it safe, of the highest value of the band.</summary>
    private static string SafetyOf(ReadingModel model, ReadingPoint point, double highest)
    {
        DistributionBox box = model.BoxOf(point);
        return point.State switch
        {
            ReadingState.Dead => Disconnected(box) + "Touch no wire before the output reads 0 V.",
            ReadingState.FarEndJumpered => $"Keep the box off while a jumper is on. {Ladder}",
            ReadingState.JumperRemoved => "Do not switch the box on before this pair reads open.",
            ReadingState.Unloaded => "Keep the cover of the mains side closed. Read at the low-voltage terminals only.",
            ReadingState.DeviceUnplugged when point.Kind != ReadingKind.OutputCurrent => $"{Accepts(model, point, box, highest)}{Ladder}",
            _ => point.Kind switch
            {
                ReadingKind.OutputCurrent => "Leave the circuit closed: use a clamp around one wire, or the display of the box.",
                ReadingKind.SupplyVoltage => "Keep the cover of the mains side closed. Read at the low-voltage terminals only.",
                _ => $"Do not bridge the contacts with the tips. {Ladder}",
            },
        };
    }

    private static string Off(DistributionBox box) => box.FedFrom is not null
        ? $"Switch {box.Name} off, and the box that feeds it."
        : box.IsAdapter
        ? $"Unplug {box.Name} from its receptacle."
        : $"Switch {box.Name} off and unplug it. If it is hard-wired, have a licensed electrician switch off and lock its breaker.";

    private static string Disconnected(DistributionBox box) => box.Battery is null
        ? string.Empty
        : "Disconnect the battery only after every output is switched off and every device is unplugged. ";

    private static string Jumper(ReadingPoint point) => point.Kind == ReadingKind.LoopResistance
        ? $"Jumper the two wires at the plug of {point.Name}. Leave the device unplugged."
        : $"Jumper the two wires at {point.Name}. Leave every device unplugged.";

    private static string PutBack(DistributionBox box, string output) =>
        $"Switch {box.Name} off, put the wires of {output} back and leave every device unplugged. Switch it on.";

    private static string Connect(ReadingPoint point, OutputFeed? feed) => point.Kind == ReadingKind.PlugVoltage
        ? $"Connect {point.Name}. Wait until every device on the output runs in day mode (infrared off)."
        : feed is null ? "Wait until every device runs in day mode (infrared off)."
        : "Wait until every device on the output runs in day mode (infrared off).";

    private static string Cover(OutputFeed? feed, DistributionBox box) => feed is null
        ? $"Cover the light sensors of all devices on {box.Name} until their infrared is on."
        : "Cover the light sensors of all devices on the output until their infrared is on.";

    private static string Where(ReadingPoint point, DistributionBox box, string output) => point.Kind switch
    {
        ReadingKind.SupplyVoltage => $"Read at the {Kind(box)} supply terminals of {box.Name}.",
        ReadingKind.OutputVoltage => $"Read at the terminals of {output}.",
        ReadingKind.OutputCurrent => $"Read the current of {output}.",
        ReadingKind.PlugVoltage => $"Read at the plug of {point.Name}{Leads(box)}.",
        _ => $"Read at {point.Name}{Leads(box)}.",
    };

    private static string Leads(DistributionBox box) =>
        box.Supply.Output.IsDc ? ", the red lead on the positive contact" : string.Empty;

    private static string Kind(DistributionBox box) => box.Supply.Output.IsDc ? "DC" : "low-voltage AC";

    // A device is connected to what it accepts, the right way round, and to nothing else.
    private static string Accepts(ReadingModel model, ReadingPoint point, DistributionBox box, double highest)
    {
        if (point.Kind != ReadingKind.PlugVoltage) return string.Empty;
        bool isDc = box.Supply.Output.IsDc;
        if (model.Site.Index.Device(point.Name)!.Model.InputFor(box.Supply.Output.Kind) is not VoltageRange accepted)
        {
            return $"Do not connect it: it does not accept {(isDc ? "direct" : "alternating")} current. ";
        }

        string most = FormattableString.Invariant($"{accepted.HighestVolts:0.##} V"), positive = isDc ? "positive and " : "";
        string inside = highest > accepted.HighestVolts ? ", even if the band ends higher" : "";
        return $"Connect it only if the reading is {positive}at most {most}{inside}. ";
    }
}
