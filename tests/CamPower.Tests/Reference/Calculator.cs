using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.RegularExpressions;
using CamPower.Conductors;
using CamPower.Supplies;
using CamPower.Tests.Backup;
using CamPower.Tests.Mains;
using CamPower.Tests.Protection;
using CamPower.Tests.Supplies;
using UnitsNet;

namespace CamPower.Tests.Reference;

/// <summary>
/// Computes what the inventory says of a row through the library's members, in SI. It never sees the row: it cannot give
/// back the printed value. An expression is numbers with units and calls of library members, joined by * and /.
/// </summary>
internal static class Calculator
{
    internal static double Evaluate(string expression)
    {
        double value = 1;
        char with = '*';
        foreach ((string term, char next) in Terms(expression))
        {
            value = with == '*' ? value * Term(term) : value / Term(term);
            with = next;
        }

        return value;
    }

    private static double Term(string term)
    {
        Match call = Regex.Match(term, @"^([A-Za-z.0-9]+)\((.*)\)$");
        return call.Success ? Call(call.Groups[1].Value, [.. Arguments(call.Groups[2].Value)]) : Literal(term);
    }

    private static double Call(string member, string[] a) => member switch
    {
        "Conductor.ResistancePerLengthAt" => Wire(a).ResistancePerLengthAt(Degrees(a[3])).OhmsPerMeter,
        "Conductor.ResistanceAt" => Wire(a).ResistanceAt(Length.FromMeters(Evaluate(a[4])), Degrees(a[3])).Ohms,
        "Conductor.MassPerLength" => Wire(a).MassPerLength!.Value.KilogramsPerMeter,
        "InstallationMethod.Ampacity" => InstallationMethod.InCableOrRaceway((int)Number(a[0])).Ampacity(Wire(a[1..]), Degrees(a[4]), Degrees(a[5])).Amperes,
        "Cable.LoopResistancePerLengthAt" => Pair(a).LoopResistancePerLengthAt(Degrees(a[3])).OhmsPerMeter,
        "CableRun.LoopResistanceAt" => new CableRun(Pair(a), oneWayLength: Length.FromMeters(Evaluate(a[4]))).LoopResistanceAt(Degrees(a[3])).Ohms,
        "WireSize.SolidDiameter" => Size(a[0]).SolidDiameter.Meters,
        "WireSize.Area" => Size(a[0]).Area.SquareMeters,
        "Stranding.LayFactor" => Lay(a[0]).LayFactor,
        "ConductorMaterial.ResistivityAt" => Material(a[0]).ResistivityAt(Degrees(a[1])).OhmMeters,
        "ConductorMaterial.TemperatureCoefficientAt20C" => Material(a[0]).TemperatureCoefficientAt20C,
        "ConductorMaterial.Density" => Material(a[0]).Density!.Value.KilogramsPerCubicMeter,
        "ConductorMaterial.SpecificHeat" => Material(a[0]).SpecificHeat!.Value.JoulesPerKilogramKelvin,
        "Conductor.AtIecMaximum" => Conductor.AtIecMaximum(Size(a[2]), Lay(a[1]), Material(a[0])).ResistancePerLengthAt(Degrees("20")).OhmsPerMeter,
        "Conductor.CoatedAtIecMaximum" => Conductor.CoatedAtIecMaximum(Size(a[1]), Lay(a[0])).ResistancePerLengthAt(Degrees("20")).OhmsPerMeter,
        "Conductor.NecCoatedCopper" => Conductor.NecCoatedCopper(Size(a[1]), Lay(a[0])).ResistancePerLengthAt(Degrees(a[2])).OhmsPerMeter,
        "ConductorMaterial.GrowthPerKelvin" => Slope(Material(a[0])) / Material(a[0]).ResistivityAt(Degrees(a[1])).OhmMeters,
        "ConductorMaterial.InferredZero" => (Material(a[0]).ResistivityAt(Degrees("0")).OhmMeters / Slope(Material(a[0]))),
        "LinearResistance.Over" => LinearResistance.FromOhmsPerMeter(Evaluate(a[0])).Over(Length.FromMeters(Evaluate(a[1]))).Ohms,
        "LinearResistance.OhmsPerKilometer" => LinearResistance.FromOhmsPer1000Feet(Evaluate(a[0]) / SiUnits.Factor("ohm/kft")).OhmsPerKilometer,
        "Celsius.Of" => Celsius.Of(Temperature.FromDegreesFahrenheit(Number(a[0].Replace(" °F", string.Empty, StringComparison.Ordinal)))),
        "CameraChain.Feed" => Chain(PerLength(Evaluate(a[1])), Length.FromMeters(Evaluate(a[2])), Drawing(a[3]), (int)Number(a[4]))
            .Feed(Volts(a[0]), Degrees("20")).Taps[(int)Number(a[5]) - 1].LoadVoltage.Volts,
        "CableRun.LongestLength" => new CableRun(PerLength(Evaluate(a[1]) / 2), Length.Zero)
            .LongestLength(Drawing(a[2]), Volts(a[0]), AtLeast(a[3]), Degrees("20")).Value.Meters,
        "CableRun.MostLoopResistance" => new CableRun(PerLength(1), Length.Zero)
            .LongestLength(Drawing(a[1]), Volts(a[0]), AtLeast(a[2]), Degrees("20")).AtLimit.LoopResistance.Ohms,
        "CableRun.SmallestArea" => Sized(a).SmallestArea(Drawing(a[5]), Volts(a[4]), AtLeast(a[6]), Degrees(a[2])).Value.SquareMeters,
        "CableRun.SmallestSize" => ReferenceRow.Gauge(
            Sized(a).SmallestSize(WireSizeSeries.Awg, Drawing(a[5]), Volts(a[4]), AtLeast(a[6]), Degrees(a[2])).Value.ToString().Split(' ')[0]),
        "Battery.TimeAt" => Batteries.Of(Number(a[0]), Number(a[1]), Number(a[2])).TimeAt(ElectricCurrent.FromAmperes(Number(a[3])), Degrees("25")).Seconds,
        "Battery.RechargeTime" => Batteries.Of(Number(a[0])).RechargeTime(Ratio.FromPercent(100), Amperes(a[1])).Seconds,
        "Battery.CutOff" => BatteryCatalog.Generic12Volt[0].CutOff.Volts,
        "BatteryChemistry.CellSizeFactor" => 1 / BatteryChemistry.ValveRegulatedLeadAcid.Capacity.ShareAt(Degrees(a[0]))!.Value.DecimalFractions,
        "BatteryRun.Used" => Batteries.Used(Number(a[0]), Number(a[1]), Number(a[2]), Number(a[3])),
        "Derating.ShareAt" => Derating.GenericEnclosed.ShareAt(Degrees(a[0])).DecimalFractions,
        "Supply.DeratedCurrentAt" => Rated(Evaluate(a[0])).DeratedCurrentAt(Degrees(a[1])).Amperes,
        "Receptacle.MaximumCurrent" => Receptacles.Rated(Evaluate(a[0])).MaximumCurrent.Amperes,
        "LineDraw.Current" => Receptacles.Plugged(Evaluate(a[0])).Assess().StudyReceptacles()[0].Worst.Current!.Value.Amperes,
        "Fuse.OpeningAt.Earliest" => Opening(a).Earliest!.Value.Seconds,
        "Fuse.OpeningAt.Latest" => Opening(a).Latest!.Value.Seconds,
        "Fuse.IecLowBreakingCapacity" => Fuse.IecLowBreakingCapacity(Amperes(a[0])).Amperes,
        "ResettableFuse.HoldCurrentAt" => SmallDevices.Typical(Literal(a[0])).HoldCurrentAt(Degrees(a[1])).Amperes,
        "ResettableFuse.TripCurrentAt" => SmallDevices.Typical(Literal(a[0])).TripCurrentAt(Degrees(a[1])).Amperes,
        "Insulation.FactorFor" => Sheath(a[1], a[2]).FactorFor(Material(a[0]))!.Value * 1e6,
        "Insulation.SmallestArea" => Insulation.Pvc70.SmallestArea(Material(a[0]), Amperes(a[1]), Duration.FromSeconds(Literal(a[2])))!.Value.SquareMeters,
        "Insulation.WithstandTime" => Insulation.Pvc70.WithstandTime(Pair(["copper", "solid", a[0]]).Outgoing, Amperes(a[1]))!.Value.Seconds,
        "PowerLimitFigure.Limit" => LimitedOutputs.LimitOf(
            Named<PowerLimitClass>(a[0]), Named<PowerLimiting>(a[1]), Named<PowerLimitQuantity>(a[2]), Named<CurrentKind>(a[3]), Literal(a[4])),
        "RunResult.LoadVoltage" => Fed(a).LoadVoltage.Volts,
        "RunResult.Current" => Fed(a).Current.Amperes,
        "RunResult.Drop" => Fed(a).Drop.Volts,
        "RunResult.DropRatio" => Fed(a).DropRatio.DecimalFractions,
        "RunResult.LoadPower" => (double)Fed(a).LoadPower.Watts,
        "RunResult.SourcePower" => (double)Fed(a).SourcePower.Watts,
        "RunResult.Loss" => (double)Fed(a).Loss.Watts,
        "RunResult.MaximumPower" => (double)Fed(a).MaximumPower!.Value.Watts,
        _ => throw new ArgumentException($"'{member}' is no member that a reference row is computed with.", nameof(member)),
    };

    private static Supply Rated(double amperes) => new(
        "enclosed supply", new DcOutput(Volts("12 V"), ElectricCurrent.FromAmperes(amperes), Ratio.Zero), Derating.GenericEnclosed);

    // Growth of resistivity per kelvin, from the member itself at two temperatures.
    private static double Slope(ConductorMaterial material) =>
        (material.ResistivityAt(Degrees("100")).OhmMeters - material.ResistivityAt(Degrees("0")).OhmMeters) / 100;

    private static Conductor Wire(string[] a) => new(Size(a[2]), Lay(a[1]), Material(a[0]));

    private static Cable Pair(string[] a) => Cable.Pair(Size(a[2]), Lay(a[1]), Material(a[0]));

    // Source, loop resistance, load: the resistance as a joint at the end of no cable at all.
    private static RunResult Fed(string[] a) =>
        Runs.OfOhms(Evaluate(a[1])).Feed(Drawing(a[2]), from: ElectricPotential.FromVolts(Evaluate(a[0])), conductorAt: Degrees("20"));

    private static CameraChain Chain(Cable cable, Length oneWayLength, Load load, int count) =>
        new([.. Enumerable.Repeat(new ChainLink(cable, oneWayLength, load), count)]);

    // A pair by the resistance of one conductor; where a source counts the whole length of the wire, half of what it gives.
    private static Cable PerLength(double ohmsPerMeter) => Cable.Pair(WireSize.SquareMillimeters(1), Stranding.Solid, Made(ohmsPerMeter * 1e-6, 0));

    // Metal, make-up, temperature, one-way length: of any size, for what is asked for is the size.
    private static CableRun Sized(string[] a) =>
        new(Cable.Pair(WireSize.Awg(18), Lay(a[1]), Material(a[0])), oneWayLength: Length.FromMeters(Evaluate(a[3])));

    private static ElectricPotential Volts(string text) => ElectricPotential.FromVolts(Evaluate(text));

    private static VoltageLimit AtLeast(string text) => VoltageLimit.AtLeast(Volts(text));

    // A fuse of a class and a rated current, at a multiple of it.
    private static OpeningTimes Opening(string[] a) => SmallDevices.Fuse(SmallDevices.Characteristic(a[0]), Literal(a[1]))
        .OpeningAt(ElectricCurrent.FromAmperes(Literal(a[1]) * Number(a[2])), SmallDevices.Room);

    // An insulation of two temperatures: service and fault.
    private static Insulation Sheath(string service, string fault) => new("of the source", Degrees(service), Degrees(fault), SmallDevices.Sheet);

    private static T Named<T>(string text) where T : struct, Enum => Enum.Parse<T>(text);

    private static ElectricCurrent Amperes(string text) => ElectricCurrent.FromAmperes(Literal(text));

    private static Load Drawing(string text)
    {
        double value = Literal(text);
        return text[^1] switch
        {
            'W' => Load.ConstantPower(Power.FromWatts(value)),
            'A' => Load.ConstantCurrent(ElectricCurrent.FromAmperes(value)),
            _ => Load.ConstantResistance(ElectricResistance.FromOhms(value)),
        };
    }

    private static Stranding Lay(string text) => text switch
    {
        "solid" => Stranding.Solid,
        "class B" => Stranding.ClassB,
        "class 1" => Stranding.IecClass1,
        "class 2" => Stranding.IecClass2,
        "class 5" => Stranding.IecClass5,
        _ => throw new ArgumentException($"'{text}' is no stranding.", nameof(text)),
    };

    private static WireSize Size(string text) => text.EndsWith(" cmil", StringComparison.Ordinal)
        ? WireSize.Kcmil(Number(text[..^" cmil".Length]) / 1000)
        : WireSize.Parse(text);

    private static ConductorMaterial Material(string text) => text switch
    {
        "copper" => ConductorMaterial.AnnealedCopper,
        "cca10" => ConductorMaterial.CopperCladAluminum10,
        "cca15" => ConductorMaterial.CopperCladAluminum15,
        "hard-drawn" => ConductorMaterial.HardDrawnCopper,
        "aluminum" => ConductorMaterial.Aluminum,
        "ccs40" => ConductorMaterial.CopperCladSteel40,
        _ => Declared(text),
    };

    // "rho 10.09 ohm cmil/ft alpha 0.004041": a textbook's own constants.
    private static ConductorMaterial Declared(string text)
    {
        Match match = Regex.Match(text, @"^rho (.+?)(?: alpha (\S+))?$");
        if (!match.Success) throw new ArgumentException($"'{text}' is no material.", nameof(text));
        return Made(Literal(match.Groups[1].Value), match.Groups[2].Success ? Number(match.Groups[2].Value) : 0);
    }

    private static ConductorMaterial Made(double ohmMeters, double alpha) => new("of the source", ElectricResistivity.FromOhmMeters(ohmMeters), alpha,
        Degrees("-60"), Degrees("200"), new Citation("the source of the reference row", CitationKind.Declared));

    private static Temperature Degrees(string celsius) => Temperature.FromDegreesCelsius(Number(celsius));

    private static double Literal(string text)
    {
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        return space < 0 ? Number(text) : Number(text[..space]) * SiUnits.Factor(text[(space + 1)..]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Arguments(string text) => Split(text, ", ").Select(p => p.Part);

    private static IEnumerable<(string Part, char Next)> Terms(string text) => Split(text, " * ", " / ");

    // Cuts at the separators that stand outside parentheses.
    private static IEnumerable<(string Part, char Next)> Split(string text, params string[] separators)
    {
        int depth = 0, start = 0;
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '(') depth++;
            if (text[i] == ')') depth--;
            string? found = depth == 0 ? separators.FirstOrDefault(s => string.CompareOrdinal(text, i, s, 0, s.Length) == 0) : null;
            if (found is null) continue;
            yield return (text[start..i], found.Trim()[0]);
            start = i + found.Length;
        }

        yield return (text[start..], ' ');
    }
}
