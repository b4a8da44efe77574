using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Checks;

/// <summary>Words that several rules on faults share.</summary>
internal static class FaultRuleText
{
    /// <summary>The protective device of an output with its name, after "its".</summary>
    internal static string Protection(OutputFaults output) => $"protective device ({output.Output.Protection})";

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

    /// <summary>Why it is not certain to operate, after how it operates: an installation method is not stated.</summary>
    internal static string NotStated(Overcurrent fault) =>
        fault.Opening.Verdict == OperatingVerdict.MayOperate && fault.Missing.HasFlag(FaultData.InstallationMethod)
            ? " (installation method not stated)"
            : string.Empty;

    /// <summary>Verdict on the conductors in words, after "the conductors".</summary>
    internal static string Withstand(Overcurrent fault) => fault.WithstandVerdict switch
    {
        WithstandVerdict.Withstands => "withstand it",
        WithstandVerdict.HotterThanInService => "get hotter than their limit in service",
        WithstandVerdict.DoesNotWithstand => "may not withstand it",
        WithstandVerdict.NoConductor => "do not carry it",
        _ => "may not withstand it: insulation, installation method or overload behavior is not stated",
    };
}
