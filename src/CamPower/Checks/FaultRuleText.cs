using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Words that several rules on faults share.</summary>
internal static class FaultRuleText
{
    /// <summary>The protective device of an output with its name, after "its".</summary>
    internal static string Protection(OutputFaults output) => $"{KindOf(output.Output.Protection)} ({output.Output.Protection})";

    /// <summary>What a protective device is called on site.</summary>
    internal static string KindOf(ProtectiveDevice? device) => device switch
    {
        Fuse => "fuse",
        ResettableFuse => "resettable fuse",
        ElectronicLimit => "electronic limit",
        _ => "protective device",
    };

    /// <summary>Whether it is stated that an output has no protective device.</summary>
    internal static bool IsUnprotected(OutputFaults output) => output.Output.Protection is { IsNone: true };

    /// <summary>The output that a finding is about, or the box of several.</summary>
    internal static Subject About(List<OutputFaults> outputs) =>
        outputs.Count == 1 ? Subject.Of(outputs[0].Box, outputs[0].Output) : Subject.Of(outputs[0].Box);

    /// <summary>Of which outputs a finding holds as well, as a sentence after a space; nothing where it is about one.</summary>
    internal static string Others(List<OutputFaults> outputs) => outputs.Count == 1
        ? string.Empty
        : $" The same at outputs {NumberRows.Text(outputs.Select(o => o.Output.Number))}.";

    /// <summary>The place of a fault after "at": with an article, unless it is a name.</summary>
    internal static string Place(ShortCircuit fault) =>
        fault.Place is "terminals" or "far end" || fault.Place.StartsWith("change of cable", StringComparison.Ordinal)
            ? $"the {fault.Place}"
            : fault.Place;

    /// <summary>An I²t to three digits, without an exponent where it is large.</summary>
    internal static string Integral(JouleIntegral integral)
    {
        double value = integral.AmpereSquaredSeconds, unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(value, 1))) - 2);
        return unit > 1
            ? FormattableString.Invariant($"{Math.Round(value / unit) * unit:0} A²·s")
            : FormattableString.Invariant($"{value:G3} A²·s");
    }

    /// <summary>What a protective device does that nothing is certain to make open, after its name.</summary>
    internal static string Lasting(Overcurrent fault)
    {
        OpeningTimes opening = fault.Opening;
        bool mayBeNever = opening.Verdict == OperatingVerdict.MayOperate && opening.EarliestSeconds >= 60
            && double.IsInfinity(opening.LatestSeconds);
        return mayBeNever
            ? $"carries this for {OpeningTimes.Text(opening.EarliestSeconds)} or more and may never open"
            : opening.ToString();
    }

    /// <summary>Verdict on the conductors in words, after "the conductors".</summary>
    internal static string Withstand(Overcurrent fault) => fault.WithstandVerdict switch
    {
        WithstandVerdict.Withstands => "withstand it",
        WithstandVerdict.HotterThanInService => "get hotter than allowed in service, which ages their insulation",
        WithstandVerdict.DoesNotWithstand => "may not withstand it",
        WithstandVerdict.NoConductor => "do not carry it",
        _ => "may not withstand it: insulation, installation method or overload behavior is not stated",
    };
}
