using System;
using System.Collections.Generic;
using System.Linq;
using CamPower;
using CamPower.Conductors;
using UnitsNet;

namespace Classroom.Bench;

/// <summary>One run and its load as they are entered, and the library's answer to them.</summary>
public sealed class RunEntry
{
    private readonly Dictionary<LoadKind, NumberField> _loads = new()
    {
        [LoadKind.ConstantPower] = new("9"),
        [LoadKind.ConstantCurrent] = new("0.75"),
        [LoadKind.ConstantResistance] = new("16"),
    };

    /// <summary>Gauges and cross-sections that camera power is run on, smallest first in each series.</summary>
    public static IReadOnlyList<WireSize> Sizes { get; } =
    [
        .. WireSize.Standard(WireSizeSeries.Awg).Where(s => s >= WireSize.Awg(26) && s <= WireSize.Awg(8)),
        .. WireSize.Standard(WireSizeSeries.SquareMillimeters).Where(s => s <= WireSize.SquareMillimeters(6)),
    ];

    public static IReadOnlyList<Stranding> Strandings { get; } = [Stranding.Solid, Stranding.ClassB, Stranding.Flexible];

    public static IReadOnlyList<ConductorMaterial> Materials { get; } =
    [
        ConductorMaterial.AnnealedCopper, ConductorMaterial.HardDrawnCopper, ConductorMaterial.Aluminum,
        ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15,
    ];

    public NumberField Length { get; } = new("120");

    public NumberField Temperature { get; } = new("40");

    public NumberField Supply { get; } = new("12");

    /// <summary>The lowest voltage that the camera accepts.</summary>
    public NumberField Lowest { get; } = new("10.8");

    /// <summary>The highest voltage that the camera accepts.</summary>
    public NumberField Highest { get; } = new("13.2");

    /// <summary>What the camera accepts; null while one of the two has a fault.</summary>
    public VoltageRange? Window { get; private set; }

    /// <summary>The number of the load; each kind of load keeps its own.</summary>
    public NumberField Load => _loads[LoadKind];

    public LoadKind LoadKind { get; set; }

    public WireSize Size { get; set; } = WireSize.Awg(18);

    public Stranding Stranding { get; set; } = Stranding.ClassB;

    public ConductorMaterial Material { get; set; } = ConductorMaterial.AnnealedCopper;

    public LengthScale LengthScale { get; private set; } = LengthScale.Feet;

    public TemperatureScale TemperatureScale { get; private set; } = TemperatureScale.Celsius;

    /// <summary>Shows the same length in another unit.</summary>
    public void Use(LengthScale scale)
    {
        Length.Convert(v => scale.In(LengthScale.From(v)));
        LengthScale = scale;
    }

    /// <summary>Shows the same temperature in another unit.</summary>
    public void Use(TemperatureScale scale)
    {
        Temperature.Convert(v => scale.In(TemperatureScale.From(v)));
        TemperatureScale = scale;
    }

    /// <summary>What the load gets, or null while a field has a fault. Every faulty field says so, not the first alone.</summary>
    public RunResult? Solve()
    {
        var cable = Cable.Pair(Size, Stranding, Material);
        var bare = new CableRun(cable, oneWayLength: UnitsNet.Length.Zero);
        bool solvable = Length.TryMake(v => new CableRun(cable, LengthScale.From(v)), out CableRun? run, new("Length, one way", LengthScale.Symbol, 0))
            & Load.TryMake(MakeLoad, out Load? load, LoadRange)
            & Temperature.TryMake(v => ConductorAt(bare, TemperatureScale.From(v)), out Temperature hot, TemperatureRange)
            & Supply.TryMake(v => SourceOf(bare, v), out ElectricPotential from, new("Supply voltage", "V", 0, IsAbove: true));
        Window = ReadWindow();
        return solvable && Window is not null ? run!.Feed(load!, from, conductorAt: hot) : null;
    }

    /// <summary>The run in a line, in the units that are chosen.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{Length.Text} {LengthScale.Symbol} of {Size}, {Stranding.Name} {Material.Name}, {Temperature.Text} {TemperatureScale.Symbol}, {Supply.Text} V, {Load.Text} {LoadUnit}");

    /// <summary>The unit of the load's number.</summary>
    public string LoadUnit => LoadKind switch { LoadKind.ConstantPower => "W", LoadKind.ConstantCurrent => "A", _ => "Ω" };

    private FieldRange LoadRange => new("Load", LoadUnit, 0, IsAbove: LoadKind == LoadKind.ConstantResistance);

    private FieldRange TemperatureRange => new("Conductor temperature", TemperatureScale.Symbol,
        TemperatureScale.In(Material.ValidFrom), TemperatureScale.In(Material.ValidTo));

    private static Temperature ConductorAt(CableRun bare, Temperature temperature) =>
        bare.At(temperature).Feed(CamPower.Load.None, ElectricPotential.FromVolts(1)).ConductorTemperature;

    private static ElectricPotential SourceOf(CableRun bare, double volts) =>
        bare.At(UnitsNet.Temperature.FromDegreesCelsius(20)).Feed(CamPower.Load.None, ElectricPotential.FromVolts(volts)).SourceVoltage;

    private VoltageRange? ReadWindow()
    {
        if (!Lowest.TryMake(v => ElectricPotential.FromVolts(v), out ElectricPotential lowest, new("Camera accepts from", "V", 0, IsAbove: true)))
        {
            Highest.TryMake(v => v, out double _, new("Camera accepts to", "V", 0, IsAbove: true));
            return null;
        }

        FieldRange above = new("Camera accepts to", "V", lowest.Volts, IsAbove: true);
        return Highest.TryMake(v => new VoltageRange(lowest, ElectricPotential.FromVolts(v)), out VoltageRange? window, above) ? window : null;
    }

    private Load MakeLoad(double value) => LoadKind switch
    {
        LoadKind.ConstantPower => CamPower.Load.ConstantPower(Power.FromWatts(value)),
        LoadKind.ConstantCurrent => CamPower.Load.ConstantCurrent(ElectricCurrent.FromAmperes(value)),
        _ => CamPower.Load.ConstantResistance(ElectricResistance.FromOhms(value)),
    };
}
