using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using CamPower.Circuits;
using CamPower.Tests.Repository;

namespace CamPower.Tests.Circuits.Alternating.Ngspice;

/// <summary>The cases of alternating current as transients of ngspice, and what it once answered to them.</summary>
/// <remarks>The conductors of a run are apart, half of its loop each, and every input floats on them. Measured is the last of sixty periods.</remarks>
internal static class AlternatingDecks
{
    internal const string Folder = "tests/CamPower.Tests/Circuits/Alternating/Ngspice", Results = Folder + "/results.csv";

    private const int Periods = 60;

    private const string Letters = "abcdefgh";

    internal static string PathOf(string name) => $"{Folder}/{name}.cir";

    /// <summary>What a deck measures: the winding's current, and of each device current, crest at its terminals, highest and lowest voltage of
    /// its capacitor.</summary>
    internal static IReadOnlyList<string> ValuesOf(AlternatingCase of) =>
        [.. Measures(of).Select(m => m.Name)];

    internal static string Line(string name, string value, double number) => FormattableString.Invariant($"{name};{value};{number:E9}\n");

    internal static IReadOnlyDictionary<(string Case, string Value), double> Read() => File.ReadLines(RepositoryFiles.PathOf(Results))
        .Select(line => line.Split(';')).ToDictionary(cells => (cells[0], cells[1]), cells => double.Parse(cells[2], CultureInfo.InvariantCulture));

    /// <summary>What the package says of the same.</summary>
    internal static double Answer(AlternatingCase of, AlternatingSolution solution, string value)
    {
        if (value == "rmsw") return solution.Amperes;
        AlternatingState state = solution.Devices[Letters.IndexOf(value[^1], StringComparison.Ordinal)];
        return value[..^1] switch
        {
            "rms" => state.RmsAmperes,
            "crest" => state.CrestVolts,
            "top" => state.HighestVolts,
            "valley" => state.ValleyVolts,
            "volts" => state.RmsVolts,
            _ => throw new ArgumentOutOfRangeException(nameof(value), value, "Not measured."),
        };
    }

    internal static string Of(AlternatingCase of)
    {
        var text = new StringBuilder();
        double crest = of.EmfVolts * Math.Sqrt(2);
        Line($"* {of.Name}: {of.About}");
        Line($"V0 emf 0 SIN(0 {crest} {of.Hertz})");
        Line($"VW emf wind 0");
        Line(of.WindingHenries > 0 ? $"RW wind wound {of.WindingOhms}" : (FormattableString)$"RW wind line {of.WindingOhms}");
        if (of.WindingHenries > 0) Line($"LW wound line {of.WindingHenries}");
        for (int i = 0; i < of.Runs.Count; i++) AddRun(i);
        for (int i = 0; i < of.Devices.Count; i++) AddDevice(i);
        Line($".model silicon D(IS={AlternatingConstants.DiodeSaturation.Value} N={AlternatingConstants.DiodeEmission.Value} RS={AlternatingConstants.DiodeResistance.Value})");
        Line($".options method=gear reltol=1e-4 abstol=1e-9 vntol=1e-6 gmin=1e-12");
        double period = 1 / of.Hertz;
        Line($".control");
        Line($"tran {period / 1000:G6} {Periods * period:G9} {(Periods - 1) * period:G9} {period / 1500:G6} uic");
        foreach ((string name, string what) in Measures(of)) Line($"meas tran {name} {what}");
        Line($"quit");
        Line($".endc");
        Line($".end");
        return text.ToString();

        void AddRun(int i)
        {
            AlternatingRun run = of.Runs[i];
            string from = run.Parent < 0 ? "line" : $"p{run.Parent}", back = run.Parent < 0 ? "0" : $"m{run.Parent}";
            Line(run.Henries > 0 ? $"RP{i} {from} q{i} {run.Ohms / 2}" : (FormattableString)$"RP{i} {from} p{i} {run.Ohms / 2}");
            if (run.Henries > 0) Line($"LP{i} q{i} p{i} {run.Henries}");
            Line($"RM{i} m{i} {back} {run.Ohms / 2}");
        }

        void AddDevice(int i)
        {
            AlternatingDevice device = of.Devices[i];
            (char x, string plus, string minus) = (Letters[i], $"p{device.Run}", $"m{device.Run}");
            if (device.IsReversed) (plus, minus) = (minus, plus);
            Line($"VS{x} {plus} t{x} 0");
            Line($"BU{x} u{x} 0 V={(device.Diodes == 1 ? "v" : "abs(v")}(t{x})-v({minus}){(device.Diodes == 1 ? "" : ")")}");
            if (device.Siemens > 0) Line($"RH{x} t{x} {minus} {1 / device.Siemens}");
            if (device.Diodes == 0)
            {
                // Power at the RMS voltage that the deck itself finds: the resistance and inductance of the package's own answer.
                double volts = of.Solve()!.Devices[i].RmsVolts, ohms = volts * volts / device.Watts;
                double lag = Math.Sqrt(1 - (device.PowerFactor * device.PowerFactor)) / device.PowerFactor;
                Line($"RL{x} t{x} {minus} {ohms:G9}");
                if (lag > 0) Line($"LL{x} t{x} {minus} {ohms / (lag * 2 * Math.PI * of.Hertz):G9} IC={-Math.Sqrt(2) * device.Watts * lag / volts:G9}");
                return;
            }

            string low = device.Diodes == 1 ? minus : $"l{x}";
            Line($"D1{x} t{x} h{x} silicon");
            if (device.Diodes == 2)
            {
                Line($"D2{x} {minus} h{x} silicon");
                Line($"D3{x} l{x} t{x} silicon");
                Line($"D4{x} l{x} {minus} silicon");
            }

            Line($"C{x} h{x} {low} {device.Farads} IC={0.9 * crest:G6}");
            Line($"EC{x} c{x} 0 h{x} {low} 1");
            Line($"BP{x} h{x} {low} I={device.Watts}*v(c{x})/(v(c{x})^2+1e-3)");
            if (device.Diodes == 2) Line($"RG{x} l{x} 0 1e6");
            Line($"RF{x} h{x} 0 1e6");
        }

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    /// <summary>A bridge and a half-wave input whose negatives two shields join; what flows in the shields is measured.</summary>
    internal static string Joined(JoinedCase of)
    {
        double crest = of.EmfVolts * Math.Sqrt(2), period = 1 / 60.0;
        FormattableString[] lines =
        [
            $"* {of.Name}: a bridge and a half-wave input with joined negatives", $"V0 emf 0 SIN(0 {crest} 60)", $"VW emf wind 0", $"RW wind line {of.WindingOhms}",
            $"RP0 line p0 {of.LoopOhms / 2}", $"RM0 m0 0 {of.LoopOhms / 2}", $"RP1 line p1 {of.LoopOhms / 2}", $"RM1 m1 0 {of.LoopOhms / 2}",
            $"D1 p0 h0 silicon", $"D2 m0 h0 silicon", $"D3 l0 p0 silicon", $"D4 l0 m0 silicon", $"C0 h0 l0 470u IC={0.9 * crest:G6}",
            $"EC0 c0 0 h0 l0 1", $"BP0 h0 l0 I=4*v(c0)/(v(c0)^2+1e-3)", $"D5 p1 h1 silicon", $"C1 h1 m1 1000u IC={0.9 * crest:G6}",
            $"EC1 c1 0 h1 m1 1", $"BP1 h1 m1 I=4*v(c1)/(v(c1)^2+1e-3)", $"RF h0 0 1e6", $"RG h1 0 1e6", $"VR m1 s 0", $"RS s l0 {2 * of.ShieldOhms}",
            $".model silicon D(IS={AlternatingConstants.DiodeSaturation.Value} N={AlternatingConstants.DiodeEmission.Value} RS={AlternatingConstants.DiodeResistance.Value})",
            $".options method=gear reltol=1e-4 abstol=1e-9 vntol=1e-6 gmin=1e-12", $".control",
            $"tran {period / 1000:G6} {30 * period:G9} {29 * period:G9} {period / 1500:G6} uic", $"meas tran ring RMS i(VR)", $"meas tran winding RMS i(VW)", $"quit", $".endc", $".end",
        ];
        return string.Concat(lines.Select(line => line.ToString(CultureInfo.InvariantCulture) + "\n"));
    }

    private static IEnumerable<(string Name, string What)> Measures(AlternatingCase of)
    {
        yield return ("rmsw", "RMS i(VW)");
        for (int i = 0; i < of.Devices.Count; i++)
        {
            char x = Letters[i];
            yield return ($"rms{x}", $"RMS i(VS{x})");
            if (of.Devices[i].Diodes == 0)
            {
                yield return ($"volts{x}", $"RMS v(u{x})");
                continue;
            }

            yield return ($"crest{x}", $"MAX v(u{x})");
            yield return ($"top{x}", $"MAX v(c{x})");
            yield return ($"valley{x}", $"MIN v(c{x})");
        }
    }
}
