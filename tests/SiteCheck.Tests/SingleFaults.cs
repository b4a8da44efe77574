using System.Collections.Generic;
using System.Linq;

namespace SiteCheck.Tests;

/// <summary>The yard as designed with one thing wrong each time. What must be found stands here by hand.</summary>
/// <remarks>
/// By hand: V = (Vs + √(Vs² − 4·R·P))/2 with Vs = 12.87 V in the yard box, 11.76 V at the dock, 11.64 V in the office; loops from 1/58 Ω·mm²/m,
/// 2 % for the lay of stranded ones, 0.00393 per kelvin, and 50 mΩ of the yard box's electronic limits. Each is certain to carry 1.26 A and to open above 1.54 A. A generic resettable
/// fuse of 1.10 A holds 0.935 A at the 35 °C of the night (docs/sources.md: its curve). The dock camera takes 22 W, 1.97 A, in a night with motion, and 2.15 A at a cold start; its
/// adapter holds 3.6 A.
/// The adapters have no protective device: 1.4 A of the office's at 74 V, or 9 A of the dock's at 12 V, may heat a poor contact, and a second camera behind one goes dark with the first.
/// A row is "rule: about".
/// </remarks>
internal static class SingleFaults
{
    // A transformer of 8 Ω: 12.36 V/8 Ω = 1.5 A in a short, which 20 AWG carries for ever.
    private const string OfficeOnAc =
        """
        boxes/office adapter/supply/output = "AC"
        boxes/office adapter/supply/sourceResistance = "8 ohm"
        boxes/office adapter/supply/overload = "unlimited"
        boxes/office adapter/supply/capacitance = nothing
        """;

    // Ten nickel-cadmium cells that float at 13 V and are never above 13.13 V: the cameras accept 13.2 V. Their voltage falls by 0.3 V, so that the
    // slipway's foot keeps its 10.8 V. Sound by itself. 13.13 V over 12 mΩ are 1094 A.
    private static string Battery(string fuse = "battery fuse", string exponent = "1.1", string backupTime = "2 h", string coldest = "-10 C", string current = "1 A",
        string floating = "1.3 V", string rate = "0.2", string empty = "1.27 V", string cutOff = "1.1 V") => $$"""
        protectiveDevices/+ = { "name": "weak battery fuse", "fuse": { "characteristic": "IEC 60127-2 T", "ratedCurrent": "3.15 A", "voltageRating": "250 V", "breakingCapacity": "1500 A", "coldResistance": "20 mohm", "dcVoltageRating": "63 V", "minimumMeltingIntegral": "500 A2s" } }
        protectiveDevices/+ = { "name": "battery fuse", "fuse": { "characteristic": "ISO 8820-3 type C", "ratedCurrent": "30 A", "voltageRating": "32 V", "breakingCapacity": "2000 A", "coldResistance": "2 mohm", "dcVoltageRating": "32 V" } }
        protectiveDevices/+ = { "name": "small battery fuse", "fuse": { "characteristic": "ISO 8820-3 type C", "ratedCurrent": "30 A", "voltageRating": "32 V", "breakingCapacity": "1000 A", "coldResistance": "2 mohm", "dcVoltageRating": "32 V" } }
        boxes/yard box/supply/charging = { "rise": "0 V", "current": "{{current}}", "followsTemperature": true }
        boxes/yard box/battery = { "name": "ten cells", "cells": 10, "capacity": "40 Ah", "ratedOver": "5 h", "resistance": "12 mohm", "protection": "{{fuse}}", "backupTime": "{{backupTime}}", "chemistry": { "name": "nickel-cadmium", "source": "data sheet of the cells", "charge": [{ "charge": "0 %", "voltage": "{{empty}}", "resistance": "150 %" }, { "charge": "100 %", "voltage": "1.3 V", "resistance": "100 %" }], "capacity": [{ "at": "-20 C", "share": "70 %" }, { "at": "25 C", "share": "100 %" }, { "at": "50 C", "share": "100 %" }], "resistance": [{ "at": "-20 C", "share": "200 %" }, { "at": "25 C", "share": "100 %" }, { "at": "50 C", "share": "100 %" }], "rateExponent": {{exponent}}, "cutOff": "{{cutOff}}", "float": "{{floating}}", "floatPerKelvin": "0 V", "chargeFactor": 1.3, "coldestCharging": "{{coldest}}", "highestCharging": "1.45 V", "highestChargingRate": {{rate}} } }
        """;

    // A second supply like that of the yard, set lower, behind diodes that are transistors.
    private static string Reserve(string setPoint = "12.6 V", string ratedCurrent = "20 A", string limit = "26 A") => $$"""
        boxes/yard box/reserve = { "diodeDrop": "20 mV", "supply": { "name": "reserve supply", "output": "DC", "nominal": "12 V", "ratedCurrent": "{{ratedCurrent}}", "tolerance": "1 %", "derating": "generic enclosed", "trim": { "lowest": "11 V", "highest": "14 V" }, "setPoint": "{{setPoint}}", "sourceResistance": "15 mohm", "overload": { "hiccup": "{{limit}}", "pulse": "100 ms", "period": "1.5 s" }, "capacitance": "6600 uF", "input": { "voltage": { "lowest": "90 V", "highest": "264 V" }, "efficiency": [{ "at": "10 %", "share": "76 %" }, { "at": "100 %", "share": "86 %" }] } } }
        """;

    private static string Unit(string apparentPower, string power, string backupTime) => $$"""
        uninterruptibleSupplies = [{ "name": "yard unit", "apparentPower": "{{apparentPower}}", "power": "{{power}}", "crestFactor": 3, "backupTime": "{{backupTime}}", "runtimes": [{ "load": "100 W", "runtime": "40 min" }, { "load": "400 W", "runtime": "30 min" }] }]
        receptacles = [{ "name": "yard receptacle", "voltage": "120 V", "rating": "15 A", "uninterruptible": "yard unit" }]
        boxes/yard box/receptacle = "yard receptacle"
        boxes/yard box/supply/input/crestFactor = 1.5
        """;

    private static string Breaker(string inrush, string warm, string leakage) => $$"""
        breakers = [{ "name": "dock breaker", "rating": "10 A", "type": "B", "residualCurrent": "30 mA" }]
        receptacles = [{ "name": "dock receptacle", "voltage": "120 V", "rating": "15 A", "breaker": "dock breaker" }]
        boxes/dock adapter/receptacle = "dock receptacle"
        boxes/dock adapter/supply/input/inrushCurrent = "{{inrush}}"
        boxes/dock adapter/supply/input/warmInrushCurrent = "{{warm}}"
        boxes/dock adapter/supply/input/leakageCurrent = "{{leakage}}"
        """;

    public static IReadOnlyList<SingleFault> All { get; } =
    [
        new("the leads of a camera are swapped", "devices/gate plate/leadsReversed = true", "reversed-polarity: gate plate"),

        new("an AC adapter feeds a camera for DC",
            OfficeOnAc,
            "ac-into-dc-device: office"),
        new("a camera for AC on a DC adapter",
            """
            models/+ = { "name": "old AC camera", "kind": "camera", "ac": { "lowest": "10 V", "highest": "16 V" }, "draw": { "base": "3.6 W" }, "starting": { "turnOn": "7 V", "dropOut": "6 V", "softStart": "unknown" } }
            devices/office/model = "old AC camera"
            """,
            "dc-into-ac-device: office"),
        new("an AC camera on an AC adapter, of which nobody says what it takes there",
            """
            models/+ = { "name": "old AC camera", "kind": "camera", "ac": { "lowest": "8 V", "highest": "16 V" }, "draw": { "base": "3.6 W" }, "starting": { "turnOn": "7 V", "dropOut": "6 V", "softStart": "unknown" } }
            devices/office/model = "old AC camera"

            """ + OfficeOnAc,
            "ac-input-not-stated: office"),
        new("a bridge and a half-wave camera on one AC adapter, whose shields meet",
            """
            models/+ = { "name": "old AC camera", "kind": "camera", "ac": { "lowest": "8 V", "highest": "16 V" }, "draw": { "base": "1.5 W" }, "starting": { "turnOn": "7 V", "dropOut": "6 V", "softStart": "unknown" }, "acStage": { "rectifier": "full-wave", "capacitance": "1000 uF" } }
            models/+ = { "name": "older AC camera", "kind": "camera", "ac": { "lowest": "8 V", "highest": "16 V" }, "draw": { "base": "1 W" }, "starting": { "turnOn": "7 V", "dropOut": "6 V", "softStart": "unknown" }, "acStage": { "rectifier": "half-wave", "capacitance": "1000 uF" } }
            devices/office/model = "old AC camera"
            devices/+ = { "name": "office door", "model": "older AC camera", "at": "office" }
            videoLinks = [{ "device": "office", "ground": "monitor", "shieldResistance": "0.5 ohm" }, { "device": "office door", "ground": "monitor", "shieldResistance": "0.5 ohm" }]

            """ + OfficeOnAc,
            "rectifiers-share-a-common: office adapter", "short-may-not-be-interrupted: office adapter output 1"),

        // 72 V and 3 % are 74.2 V.
        new("72 V, for a camera that wants them",
            """
            models/+ = { "name": "mast camera", "kind": "camera", "dc": { "lowest": "50 V", "highest": "80 V" }, "draw": { "base": "3.6 W" }, "starting": { "turnOn": "45 V", "dropOut": "40 V", "softStart": "unknown" } }
            devices/office/model = "mast camera"
            boxes/office adapter/supply/nominal = "72 V"
            """,
            "voltage-above-accessible: office adapter", "short-may-not-be-interrupted: office adapter output 1"),

        // 125 V and 3 % are 128.75 V.
        new("125 V, for a camera that wants them",
            """
            models/+ = { "name": "mast camera", "kind": "camera", "dc": { "lowest": "100 V", "highest": "140 V" }, "draw": { "base": "3.6 W" }, "starting": { "turnOn": "90 V", "dropOut": "80 V", "softStart": "unknown" } }
            devices/office/model = "mast camera"
            boxes/office adapter/supply/nominal = "125 V"
            """,
            "voltage-above-extra-low: office adapter", "short-may-not-be-interrupted: office adapter output 1"),
        new("a 24 V adapter on a 12 V camera", """boxes/office adapter/supply/nominal = "24 V" """, "supply-voltage-too-high: office"),
        new("two outputs joined for more current",
            """ties = [{ "one": { "box": "yard box", "output": 15 }, "other": { "box": "yard box", "output": 16 } }]""", "outputs-tied-together: yard box output 15"),

        // 2·426 ft of 18 AWG and the limit are 5.709 Ω at 25 °C and 4.945 Ω at -10 °C, and 12.87²/(4·4.945) = 8.37 W; the camera asks for 8.4 W. By day
        // 3.6 W over 6.144 Ω leave 10.83 V.
        new("far too long and too thin", """runs/winter storage east/parts/0 = { "cable": "18 AWG pair", "length": "426 ft" }""",
            "no-operating-point: storage east", "thin-voltage-margin: storage east"),

        // 2·130 ft of 20 AWG and the limit are 2.735 Ω at 25 °C: 8.4 W leave 10.73 V.
        new("a little too thin", """runs/slipway head/parts/0/cable = "20 AWG pair" """, "undervoltage: slipway head"),

        // 2·118 ft and the limit are 2.487 Ω: 10.96 V, and 11.016 V are wanted.
        new("thin, and just short enough", """runs/slipway head/parts/0 = { "cable": "20 AWG pair", "length": "118 ft" }""", "thin-voltage-margin: slipway head"),

        // 12 V less 3 % are 11.64 V in the office, and 12.87 V in the yard box.
        new("a model that turns on late", """models/indoor dome/starting = { "turnOn": "11.8 V", "dropOut": "10.5 V", "softStart": "yes" }""",
            "unloaded-voltage-below-turn-on: office"),

        // slipway foot, 1.637 Ω at 25 °C: 10.5 W settle at 11.36 V, under 11.4 V. At -10 °C 1.423 Ω leave 11.58 V, of the 11.63 V that are wanted. The next of the bullets has 11.80 V.
        new("a model that drops out early",
            """
            models/infrared bullet/dc/lowest = "11.4 V"
            models/infrared bullet/starting = { "turnOn": "11.6 V", "dropOut": "11.4 V", "softStart": "no" }
            """,
            "settles-below-drop-out: slipway foot", "thin-voltage-margin: slipway foot"),

        // 2·320 ft of 18 AWG and the limit are 4.30 Ω at 25 °C: 7 W settle at 9.80 V, and under 12.87 − 9.80 = 3.07 V the draw pulls the voltage down.
        new("a model that turns on too early for its cable",
            """
            models/+ = { "name": "wide-input bullet", "kind": "camera", "dc": { "lowest": "3 V", "highest": "16 V" }, "draw": { "base": "4 W", "infrared": "3 W" }, "starting": { "turnOn": "2.9 V", "dropOut": "2.5 V", "softStart": "no" } }
            devices/storage east/model = "wide-input bullet"
            runs/winter storage east/parts/0 = { "cable": "18 AWG pair", "length": "320 ft" }
            """,
            "turn-on-below-unstable-voltage: storage east"),

        // 12 V and 3 % are 12.36 V, and a label promises no least load.
        new("a camera that stands less",
            """
            models/+ = { "name": "narrow dome", "kind": "camera", "dc": { "lowest": "10.8 V", "highest": "12.3 V" }, "label": { "voltage": "12 V", "current": "0.3 A", "stage": "unknown" }, "starting": { "turnOn": "9 V", "dropOut": "8 V", "softStart": "unknown" } }
            devices/office/model = "narrow dome"
            """,
            "overvoltage-at-light-load: office"),

        // 12 V and 2 % are 12.24 V; at -10 °C its 7 W lose 0.16 V on the way.
        new("a camera that stands less before it draws", """models/dock camera with pan and tilt/dc/highest = "12.2 V" """, "overvoltage-at-no-load: dock head"),

        // 13.1 V and 1 % are 13.23 V: too much for the four with a label, for the others until they draw.
        new("the yard box trimmed up by a tenth of a volt", """boxes/yard box/supply/setPoint = "13.1 V" """,
        [
            .. new[] { "gate house", "shed loft", "workshop", "sail loft" }.Select(d => "overvoltage-at-light-load: " + d),
            .. new[] { "gate plate", "slipway head", "slipway foot", "crane", "shed door", "paint store", "fuel berth", "storage east", "storage west", "mast" }
                .Select(d => "overvoltage-at-no-load: " + d),
        ]),

        // 9 A are above the 8 A of a source limited by itself, in either standard; it has no device for the other table. 14 AWG carries 9 A for ever.
        new("a claim that the numbers refute",
            """
            boxes/dock adapter/supply/overload = { "constantCurrent": "9 A" }
            boxes/dock adapter/claimedClass = "limited power source"
            """,
            "power-limit-exceeded: dock adapter output 1", "short-may-not-be-interrupted: dock adapter output 1"),

        // 1.54 A at 13.13 V are 20 VA.
        new("a claim that electronic limits keep", """boxes/yard box/claimedClass = "limited power source" """),

        // 36 A continuously in 14 AWG, which carries 25 A at 90 °C in 30 °C.
        new("a strong adapter, and nothing in its lead", """boxes/dock adapter/supply/overload = { "constantCurrent": "36 A" }""", "protection-missing: dock adapter output 1"),
        new("a limit that is not made for the voltage",
            """
            protectiveDevices/+ = { "name": "limit", "electronicLimit": { "limit": "3 A", "tolerance": "10 %", "opensWithin": "50 ms", "resistance": "10 mohm", "voltageRating": "12 V" } }
            boxes/dock adapter/leadProtection = "limit"
            """,
            "protection-voltage-rating-exceeded: dock adapter output 1"),

        // A short at the terminals: the supply pulses at 26 A, and 26 A·√(0.1/1.5) = 6.7 A RMS trip the fuse for certain, but it takes up to 3.4 s, 5 s · (5.5 A/6.7 A)²; until then the others have
        // no voltage between the pulses. At night the bullet of output 4 takes 0.94 A, and it holds 0.935 A.
        new("resettable fuses in place of the electronic limits", """boxes/yard box/outputProtection = "generic 16 V resettable fuse, 1.10 A" """,
            "short-collapses-supply-voltage: yard box", "nuisance-trip: yard box output 4"),
        new("resettable fuses that interrupt 20 A",
            """
            protectiveDevices/+ = { "name": "weak resettable fuse", "resettable": { "holdCurrent": "1.1 A", "tripCurrent": "2.2 A", "testCurrent": "8 A", "longestTimeToTrip": "2.3 s", "minimumResistance": "50 mohm", "maximumResistance": "140 mohm", "thermal": "generic resettable", "maximumVoltage": "16 V", "maximumCurrent": "20 A" } }
            boxes/yard box/outputProtection = "weak resettable fuse"
            """,
            [.. Outputs("breaking-capacity-exceeded", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14), "short-collapses-supply-voltage: yard box", "nuisance-trip: yard box"]),

        // Its fuse is timed from 8 A on, 9.06 A at 5 °C, and a short draws up to 8.77 A. 20 AWG in a large bundle is 35 K warmer than the air by 4 A:
        // 168 K by 8.77 A, on 45 °C, and PVC stands 160 °C.
        new("a cable that lies in a large bundle, behind resettable fuses",
            """
            protectiveDevices/+ = { "name": "slow resettable fuse", "resettable": { "holdCurrent": "1.1 A", "tripCurrent": "2.2 A", "testCurrent": "8 A", "longestTimeToTrip": "2.3 s", "minimumResistance": "50 mohm", "maximumResistance": "140 mohm", "thermal": "generic resettable", "maximumVoltage": "16 V", "maximumCurrent": "40 A" } }
            runs/boat shed loft/installationMethod = "large bundle"
            boxes/yard box/outputProtection = "slow resettable fuse"
            """,
            "let-through-above-conductor-withstand: yard box output 7", "short-collapses-supply-voltage: yard box", "nuisance-trip: yard box"),

        // 3.6 A are 1.14 times the fuse, and no gate says that it opens under 2.1 times.
        new("a fuse that its adapter cannot blow",
            """
            protectiveDevices/+ = { "name": "3.15 A quick fuse", "fuse": { "characteristic": "IEC 60127-2 F", "ratedCurrent": "3.15 A", "voltageRating": "250 V", "dcVoltageRating": "63 V", "breakingCapacity": "35 A", "coldResistance": "10 mohm", "rerating": { "source": "data sheet of the fuse", "points": [{ "at": "-20 C", "share": "100 %" }, { "at": "85 C", "share": "100 %" }] } } }
            boxes/dock adapter/leadProtection = "3.15 A quick fuse"
            """,
            "short-may-not-be-interrupted: dock adapter output 1"),

        // 14 AWG under PVC of 70 °C carries 16 A in 45 °C. The adapter holds 36 A, 1.8 times the fuse, which may last 10 min. At the far end the pair,
        // 0.43 Ω by 120 °C, and 64 mΩ let 11.76 V drive 24 A, 1.2 times: no limit of a blade fuse says that it opens that.
        new("an oversize fuse",
            """
            protectiveDevices/+ = { "name": "20 A blade fuse", "fuse": { "characteristic": "ISO 8820-3 type C", "ratedCurrent": "20 A", "voltageRating": "32 V", "dcVoltageRating": "32 V", "breakingCapacity": "1000 A", "coldResistance": "4 mohm", "rerating": { "source": "data sheet of the fuse", "points": [{ "at": "-20 C", "share": "100 %" }, { "at": "85 C", "share": "100 %" }] } } }
            boxes/dock adapter/leadProtection = "20 A blade fuse"
            boxes/dock adapter/supply/overload = { "constantCurrent": "36 A" }
            """,
            "protection-above-conductor-ampacity: dock adapter output 1", "let-through-above-conductor-withstand: dock adapter output 1",
            "short-may-not-be-interrupted: dock adapter output 1"),

        // An adapter that limits itself in a way that nobody declares.
        new("an adapter whose sheet says nothing of overload", "boxes/dock adapter/supply/overload = nothing", "faults-unknown: Ternfield boatyard"),

        // It may limit from 1.8 A on; whether a start is over before it opens is not known, for no duration of the start is stated.
        new("a limit that is too small",
            """
            protectiveDevices/+ = { "name": "limit", "electronicLimit": { "limit": "2 A", "tolerance": "10 %", "opensWithin": "50 ms", "resistance": "10 mohm", "voltageRating": "30 V" } }
            boxes/dock adapter/leadProtection = "limit"
            """,
            "faults-unknown: Ternfield boatyard", "nuisance-trip: dock adapter output 1"),

        // This fuse opens within the hour at 1.35 times its rating, and 3.6 A are 1.44 times; 1.97 A are 79 % of it, and 75 % is practice.
        new("a fuse loaded for hours",
            """
            protectiveDevices/+ = { "name": "2.5 A fast fuse", "fuse": { "characteristic": "UL 248-14 fast", "ratedCurrent": "2.5 A", "voltageRating": "250 V", "dcVoltageRating": "63 V", "breakingCapacity": "35 A", "coldResistance": "10 mohm", "rerating": { "source": "data sheet of the fuse", "points": [{ "at": "-20 C", "share": "100 %" }, { "at": "85 C", "share": "100 %" }] } } }
            boxes/dock adapter/leadProtection = "2.5 A fast fuse"
            """,
            "fuse-above-continuous-policy: dock adapter output 1"),

        // slipway foot takes 11 W over 1.484 Ω of cold 16 AWG and the limit: 0.961 A; the next one, fuel berth, 0.93 A.
        new("outputs of less current", """boxes/yard box/outputLimit = "0.94 A" """, "output-overloaded: yard box output 4", "protection-above-output-limit: yard box"),

        // In a large bundle 24 AWG is 35 K warmer than the air by 2.5 A, 28 AWG by 1.25 A. The camera takes 2 A; a short, 3.6 A continuously.
        new("a hair of a lead in a large bundle",
            """
            cables/+ = { "name": "28 AWG pair", "size": "28 AWG", "stranding": "solid", "material": "annealed copper", "insulation": "PVC 70 C" }
            runs/dock head/installationMethod = "large bundle"
            runs/dock head/parts/0 = { "cable": "28 AWG pair", "length": "2 ft" }
            """,
            "conductor-over-ampacity: dock adapter output 1 to dock head", "protection-missing: dock adapter output 1"),

        // A barrel plug of which nothing else is known is rated 1 A.
        new("a weak plug", """models/dock camera with pan and tilt/connector = { "usual": "common barrel plug" }""", "connector-overloaded: dock head"),

        // Class 2 is 3.15 V to 6.3 V.
        new("a plug that promises 5 V", """models/heated box camera/connector = { "usual": "EIAJ RC-5320A class 2" }""",
            "voltage-outside-connector-class: crane", "voltage-outside-connector-class: mast"),

        // 16 AWG is 1.31 mm²: neither 14 AWG nor 1.5 mm² goes in.
        new("terminals that a thick wire does not fit", """boxes/yard box/terminals/largest = "16 AWG" """,
            "terminal-wrong-size: yard box output 9 to fuel berth", "terminal-wrong-size: yard box output 10 to winter storage east",
            "terminal-wrong-size: yard box output 11 to winter storage west"),

        // 0.18 m² of bare galvanized steel are free: 48 W of sun over 7.3 W/m²K outside warm it by 36 K from 45 °C on, and its curve ends at 70 °C. The yard box and the
        // lighthouse box stand in no enclosure that is stated, the other adapter indoors.
        new("an adapter in a box in the sun",
            """
            conditions/day/sun = "1000 W/m2"
            boxes/dock adapter/enclosure = { "width": "200 mm", "height": "300 mm", "depth": "120 mm", "wall": "galvanized steel", "freeFaces": "on a wall", "sunlitArea": "0.06 m2" }
            """,
            "supply-too-hot: dock adapter", "sun-on-box-without-enclosure: yard box", "sun-on-box-without-enclosure: lighthouse box"),

        // The same with 0.03 m² in the sun: 24 W and 1.8 W of its own warm the walls by 22 K, the air inside by 2 K more: 69 °C, and a quarter of 24 K is not certain.
        new("an adapter in a box, half of it in the sun",
            """
            conditions/day/sun = "1000 W/m2"
            boxes/dock adapter/enclosure = { "width": "200 mm", "height": "300 mm", "depth": "120 mm", "wall": "galvanized steel", "freeFaces": "on a wall", "sunlitArea": "0.03 m2" }
            """,
            "thin-heat-margin: dock adapter", "sun-on-box-without-enclosure: yard box", "sun-on-box-without-enclosure: lighthouse box"),
        new("an adapter in a box, and nobody knows what it loses",
            """
            boxes/dock adapter/supply/input/efficiency = nothing
            boxes/dock adapter/enclosure = { "width": "200 mm", "height": "300 mm", "depth": "120 mm", "wall": "painted steel", "freeFaces": "on a wall" }
            """,
            "enclosure-temperature-unknown: dock adapter"),

        // 47.9 °C inside in the 45 °C of the day: a quarter of the rise more is in order, twice the rise is not.
        new("an adapter in a box flatter than any that the model was held against, with little room",
            """
            boxes/dock adapter/supply/derating = { "ambient": [{ "at": "-20 C", "share": "100 %" }, { "at": "49 C", "share": "100 %" }] }
            boxes/dock adapter/enclosure = { "width": "200 mm", "height": "300 mm", "depth": "80 mm", "wall": "painted steel", "freeFaces": "on a wall" }
            """,
            "value-outside-validated-range: dock adapter"),

        // 9.26 A at a cold start; set to 13 V a supply of 12 V and 9 A has 8.31 A, one of 11 A 10.15 A, and 80 % of that are 8.12 A.
        new("a supply that is too weak", """boxes/yard box/supply/ratedCurrent = "9 A" """, "supply-above-derated-rating: yard box"),
        new("a supply without headroom", """boxes/yard box/supply/ratedCurrent = "11 A" """, "supply-above-headroom-policy: yard box"),

        // 0.31 A and 8.8 W at 11.4 V.
        new("a second camera on a small adapter", """devices/+ = { "name": "hall", "model": "infrared dome", "at": "office" }""",
            "split-adapter-beyond-rating: office adapter", "faults-unknown: Ternfield boatyard", "short-may-not-be-interrupted: office adapter output 1"),

        // Some 2 A over half of 0.34 Ω lift the negative by 0.3 V, and 5 % of it is ripple: 15 mV. Its valley, √3 · 5 %, is a volt below: the camera accepts it here.
        new("a supply that ripples, and a camera whose shield is grounded",
            """
            models/dock camera with pan and tilt/dc = { "lowest": "9 V", "highest": "16 V" }
            boxes/dock adapter/supply/ripple = "5 %"
            videoLinks = [{ "device": "dock head", "ground": "recorder chassis", "shieldResistance": "3 ohm" }]
            bonds = [{ "ground": "recorder chassis", "box": "dock adapter", "resistance": "50 mohm" }]
            """,
            "ground-loop-hum: dock head"),

        // 10 % and √3 are 2.1 V to each side of 11.3 V and 12.2 V.
        new("a supply that ripples by a tenth", """boxes/dock adapter/supply/ripple = "10 %" """, "undervoltage: dock head", "overvoltage-at-light-load: dock head"),

        // 22 W at some 10.2 V are 2.15 A: 2.1 W in three turns of wire of 0.45 Ω.
        new("wires that were twisted together",
            """
            models/dock camera with pan and tilt/dc = { "lowest": "9 V", "highest": "16 V" }
            models/dock camera with pan and tilt/draw/startUp = "0.5 W"
            runs/dock head/parts/+ = { "joint": "twisted wires", "resistance": "0.45 ohm" }
            """,
            "joint-overloaded: dock adapter output 1 to dock head"),

        // 1.7 A of 1.45 · 1.1 A.
        new("limits set far above what the outputs may carry",
            """
            protectiveDevices/+ = { "name": "1.7 A electronic limit", "electronicLimit": { "limit": "1.7 A", "tolerance": "5 %", "opensWithin": "5 ms", "resistance": "50 mohm", "voltageRating": "30 V" } }
            boxes/yard box/outputProtection = "1.7 A electronic limit"
            """,
            "protection-above-output-limit: yard box"),

        // It gives 12.24 V / 60 mΩ into a short, and T6.3A is 2.1 times its 3 A: 1.67 times are 5 A (NEC 450.3(B), from memory). 14 AWG carries 6.3 A for ever, and 13.2 A in 45 °C nearly.
        new("an adapter without a limit behind a large fuse",
            """
            protectiveDevices/+ = { "name": "6.3 A fuse", "fuse": { "characteristic": "IEC 60127-2 T", "ratedCurrent": "6.3 A", "voltageRating": "250 V", "dcVoltageRating": "63 V", "breakingCapacity": "1500 A", "coldResistance": "10 mohm", "rerating": { "source": "data sheet of the fuse", "points": [{ "at": "-20 C", "share": "100 %" }, { "at": "85 C", "share": "100 %" }] } } }
            boxes/dock adapter/leadProtection = "6.3 A fuse"
            boxes/dock adapter/supply/overload = "unlimited"
            """,
            "supply-not-protected: dock adapter"),

        // The resistance of the shield is as it was, and nobody knows how much of the current is ripple.
        new("a camera whose shield is grounded, on a supply that states no ripple",
            """
            boxes/yard box/supply/ripple = nothing
            videoLinks = [{ "device": "gate plate", "ground": "recorder chassis", "shieldResistance": "3 ohm" }]
            bonds = [{ "ground": "recorder chassis", "box": "yard box", "resistance": "50 mohm" }]
            """,
            "ground-loop-hum-unknown: Ternfield boatyard"),

        // It draws on until 5.5 V: 22 W and more are at least 4 A there, and the adapter holds 3.6 A.
        new("a camera that holds on to a low voltage",
            """models/dock camera with pan and tilt/starting = { "turnOn": "6 V", "dropOut": "5.5 V", "softStart": "yes" }""",
            "start-beyond-supply-limit: dock adapter", "faults-unknown: Ternfield boatyard"),

        // 12 A from 11.64 V are 0.97 ohm, beside which 1 W is nothing. The adapter folds back from 1.4 A to 0.5 A: into 0.97 ohm it gives less than 1 V, and the other camera
        // runs on for 1 ms of more than 10 ms.
        new("a camera that draws an inrush beside one that cannot ride through it",
            """
            models/+ = { "name": "plain dome", "kind": "camera", "dc": { "lowest": "9 V", "highest": "14 V" }, "draw": { "base": "1 W" }, "starting": { "turnOn": "9 V", "dropOut": "8 V", "softStart": "yes", "holdUp": "1 ms" } }
            models/+ = { "name": "dome with large capacitors", "kind": "camera", "dc": { "lowest": "9 V", "highest": "14 V" }, "draw": { "base": "1 W" }, "starting": { "turnOn": "9 V", "dropOut": "8 V", "softStart": "yes", "holdUp": "1 ms" }, "inrush": { "peak": "12 A", "duration": "10 ms" } }
            devices/office/model = "plain dome"
            devices/+ = { "name": "hall", "model": "dome with large capacitors", "at": "office" }
            """,
            "inrush-below-drop-out: office", "short-may-not-be-interrupted: office adapter output 1"),
        new("a supply that is rated from 40 °C on",
            """boxes/office adapter/supply/derating = { "ambient": [{ "at": "40 C", "share": "100 %" }, { "at": "70 C", "share": "100 %" }] }""",
            "supply-too-cold: office adapter"),

        // 9.26 A of 20 A at 13.13 V: 86.4 % and a power factor of 0.927 by the curves, 152 VA, 1.27 A at 120 V; 80 % of 1.5 A are 1.2 A.
        new("a box on a small inverter",
            """
            receptacles = [{ "name": "inverter socket", "voltage": "120 V", "rating": "1.5 A" }]
            boxes/yard box/receptacle = "inverter socket"
            """,
            "receptacle-overloaded: inverter socket"),
        new("an adapter whose power factor nobody noted",
            """
            receptacles = [{ "name": "dock receptacle", "voltage": "120 V", "rating": "15 A" }]
            boxes/dock adapter/receptacle = "dock receptacle"
            boxes/dock adapter/supply/input/powerFactor = nothing
            """,
            "receptacle-load-unknown: dock receptacle"),

        new("an adapter for 120 V on a receptacle of 240 V",
            """
            receptacles = [{ "name": "hoist receptacle", "voltage": "240 V", "rating": "20 A" }]
            boxes/dock adapter/receptacle = "hoist receptacle"
            boxes/dock adapter/supply/input/voltage/highest = "132 V"
            """,
            "receptacle-voltage-outside-supply-range: dock adapter"),

        // 60 A / √2 are 42.4 A of the 30 A up to which 10 A of type B hold, whatever the 25 A of a warm start.
        new("a supply with a large inrush on a small breaker", Breaker(inrush: "60 A", warm: "25 A", leakage: "1 mA"), "start-may-trip-breaker: dock breaker"),

        // 0.5 A of the 0.4 A that are 80 % of a breaker for a door chime; its band begins at 50 A.
        new("an adapter behind the breaker of the door chime", Breaker(inrush: "40 A", warm: "42 A", leakage: "1 mA") +
            """

            breakers = [{ "name": "dock breaker", "rating": "0.5 A", "instantaneousFrom": 100, "instantaneousTo": 100 }]
            """,
            "breaker-overloaded: dock breaker"),

        // 10 mA of the 9 mA that are 30 % of 30 mA.
        new("an adapter that leaks a third of what the residual-current device is for", Breaker(inrush: "40 A", warm: "42 A", leakage: "10 mA"),
            "leakage-may-trip-residual-device: dock breaker"),
        new("an adapter on a breaker, all of it stated", Breaker(inrush: "40 A", warm: "42 A", leakage: "9 mA")),

        // 9.26 A of 20 A at 13.13 V and 86.4 %: 141 W, 152 VA.
        new("a unit that is too small for the yard box", Unit("140 VA", "400 W", "5 min"), "uninterruptible-supply-overloaded: yard unit"),
        new("a unit that runs for less than wanted", Unit("500 VA", "400 W", "45 min"), "uninterruptible-runtime-too-short: yard unit"),
        new("a unit with all that it needs", Unit("500 VA", "400 W", "20 min")),

        // Nothing runs from the second supply; it takes no more than its least loss, and the cabinet is large.
        new("24 V in the cabinet of a 12 V adapter",
            """
            cabinets = [{ "name": "office cabinet", "enclosure": { "width": "600 mm", "height": "800 mm", "depth": "300 mm", "wall": "painted steel", "freeFaces": "on a wall" } }]
            boxes/office adapter/cabinet = "office cabinet"
            boxes/+ = { "name": "intercom adapter", "adapter": true, "cabinet": "office cabinet", "supply": { "name": "24 V 1 A adapter", "output": "DC", "nominal": "24 V", "ratedCurrent": "1 A", "tolerance": "3 %", "derating": "generic enclosed", "overload": { "constantCurrent": "1.3 A" }, "input": { "efficiency": [{ "at": "10 %", "share": "80 %" }, { "at": "100 %", "share": "85 %" }] } } }
            """,
            "mixed-voltages-in-one-cabinet: office cabinet"),

        new("a model of which nobody noted when it starts", """models/indoor dome/starting = nothing""", "faults-unknown: Ternfield boatyard"),

        // 0.6 A on the output that two share.
        new("a camera more than there are outputs",
            """
            boxes/yard box/outputs = 14
            devices/+ = { "name": "gate hall", "model": "indoor dome", "at": "gate house" }
            """,
            "more-cameras-than-outputs: yard box"),
        new("a recorder on an output for cameras",
            """
            models/+ = { "name": "small recorder", "kind": "recorder", "dc": { "lowest": "10.8 V", "highest": "13.2 V" }, "draw": { "base": "4 W" }, "starting": { "turnOn": "9 V", "dropOut": "8 V", "softStart": "unknown" } }
            devices/+ = { "name": "recorder", "model": "small recorder", "at": "gate house" }
            """,
            "recorder-on-camera-output: recorder"),
        new("a ready-made lead that is extended", """cables/18 AWG pair/preTerminated = true""", "pre-terminated-cable-extended: yard box output 11 to winter storage west"),
        new("aluminum under a skin of copper",
            """
            cables/+ = { "name": "bright pair", "size": "16 AWG", "stranding": "class B stranded", "material": "copper-clad aluminum 10 %", "insulation": "PVC 70 C" }
            runs/gate house/parts/0/cable = "bright pair"
            """,
            "copper-clad-aluminum: yard box output 2 to gate house"),
        new("a tail by a table, behind a cable by its nominal resistance",
            """
            cables/+ = { "name": "tail", "insulation": "PVC 70 C", "out": { "size": "1.5 mm2", "stranding": "IEC class 5 flexible", "material": "annealed copper", "table": "IEC 60228 maximum" }, "back": { "size": "1.5 mm2", "stranding": "IEC class 5 flexible", "material": "annealed copper", "table": "IEC 60228 maximum" } }
            runs/gate house/parts/+ = { "cable": "tail", "length": "2 m" }
            """,
            "mixed-resistance-bases: yard box output 2 to gate house"),

        new("a battery with all that it needs", Battery()),
        new("a battery without a fuse", Battery(fuse: "none"), "battery-fuse-missing: yard box"),
        new("a battery whose fuse cannot interrupt 1094 A", Battery(fuse: "small battery fuse"), "battery-fuse-rating-exceeded: yard box"),

        // The box is at 5 °C on the frosty night.
        // The foot of the slipway, 190 ft away, and those that draw most: 1.1 A is the limit of an output. At 11 V less 0.3 V and 1.7 V in the cable it has
        // less than 10.8 V.
        new("a battery whose voltage falls far", Battery(empty: "1 V", cutOff: "0.9 V"),
            [.. Outputs("output-overloaded-on-battery", 1, 4, 9), "undervoltage-on-battery: yard box"]),

        // 1 A flows into 40 Ah.
        new("a battery that takes less than its charger gives", Battery(rate: "0.02"), "battery-charged-too-hard: yard box"),
        new("a battery whose fuse opens under its load", Battery(fuse: "weak battery fuse"), "battery-fuse-may-open: yard box"),
        new("a battery that may be charged from 10 °C on", Battery(coldest: "10 C"), "battery-charged-too-cold: yard box"),

        // 10 · 1.36 V are 13.6 V; 12.87 V are 5.4 % less.
        new("a supply that never fills the battery", Battery(floating: "1.36 V"), "float-voltage-wrong: yard box"),
        new("a battery for a night that lasts two hours and more", Battery(backupTime: "12 h"), "battery-backup-too-short: yard box"),
        new("a battery that lasts only while it is new", Battery(backupTime: "3.1 h"), "thin-battery-backup: yard box"),
        new("a charger that takes what the cameras need", Battery(current: "15 A", rate: "1"), "charging-above-derated-rating: yard box"),

        // Six cells of lead-acid end at 1.75 V each: 10.5 V.
        new("a battery that is cut off too late", """boxes/lighthouse box/battery/cutOff = "10 V" """, "battery-cut-off-too-low: lighthouse box"),

        // At 20 A, ten times its rating, the slow fuse may take 0.3 s (IEC 60127-2): 120 A²s. The blade fuse may melt at 20 A²s, and the charger's 6 A are left.
        // With a dead battery they take seconds to open the slow fuse, and the other output is dark: a Note. The battery gives more than the
        // slow fuse can interrupt.
        new("a battery fuse smaller than what the outputs have",
            """
            protectiveDevices/+ = { "name": "5 A battery fuse", "fuse": { "characteristic": "ISO 8820-3 type C", "ratedCurrent": "5 A", "voltageRating": "58 V", "dcVoltageRating": "58 V", "breakingCapacity": "5000 A", "coldResistance": "15 mohm", "minimumMeltingIntegral": "20 A2s" } }
            boxes/lighthouse box/outputProtection = "2 A slow fuse"
            boxes/lighthouse box/battery/protection = "5 A battery fuse"
            """,
            "battery-fuse-may-open: lighthouse box", "breaking-capacity-exceeded: lighthouse box output 1",
            "breaking-capacity-exceeded: lighthouse box output 2", "short-collapses-supply-voltage: lighthouse box"),

        // The converter hangs at the barge, where it is as hot as at the camera; it is rated up to 70 °C.
        new("a converter in the heat of its camera", """conditions/day/camera = "75 C" """, "supply-too-hot: barge converter"),

        // 92 V of 120 V: 26.5 V behind the winding become 20.3 V, and 24 V at its rating 18.4 V. 138 V of 120 V: 30.5 V before the camera draws, which accepts 30 V.
        new("a line far below that of the transformer",
            """
            receptacles = [{ "name": "chapel receptacle", "voltage": "120 V", "rating": "15 A" }]
            boxes/chapel transformer/receptacle = "chapel receptacle"
            boxes/chapel transformer/supply/input = { "efficiency": [{ "at": "10 %", "share": "70 %" }, { "at": "100 %", "share": "85 %" }], "powerFactor": [{ "at": "10 %", "share": "60 %" }, { "at": "100 %", "share": "80 %" }] }
            conditions/day/lineVoltage = "90 V"
            """,
            "undervoltage: chapel"),
        new("a line far above that of the transformer",
            """
            receptacles = [{ "name": "chapel receptacle", "voltage": "120 V", "rating": "15 A" }]
            boxes/chapel transformer/receptacle = "chapel receptacle"
            boxes/chapel transformer/supply/input = { "efficiency": [{ "at": "10 %", "share": "70 %" }, { "at": "100 %", "share": "85 %" }], "powerFactor": [{ "at": "10 %", "share": "60 %" }, { "at": "100 %", "share": "80 %" }] }
            conditions/day/lineVoltage = "140 V"
            """,
            "overvoltage-at-light-load: chapel"),

        // 13 V less 1 %: 12.87 V; 12.6 V and 1 % are 12.73 V, 12.9 V and 1 % are 13.03 V.
        new("a reserve that carries the yard", Reserve()),
        new("a reserve of 8 A", Reserve(ratedCurrent: "8 A", limit: "10 A"), "reserve-does-not-carry-load: yard box"),
        new("a reserve that is set as high as the main supply", Reserve(setPoint: "12.9 V"), "reserve-carries-in-service: yard box"),
    ];

    private static string[] Outputs(string rule, params int[] numbers) => [.. numbers.Select(number => $"{rule}: yard box output {number}")];
}
