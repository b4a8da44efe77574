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

    /// <summary>Gauges and cross-sections that camera power is run on, thinnest first in each series.</summary>
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
        bool solvable = Length.TryMake(v => new CableRun(cable, LengthScale.From(v)), out CableRun? run)
            & Load.TryMake(MakeLoad, out Load? load)
            & Temperature.TryMake(v => bare.At(TemperatureScale.From(v)).Feed(CamPower.Load.None, ElectricPotential.FromVolts(1)).ConductorTemperature, out Temperature hot)
            & Supply.TryMake(v => bare.At(UnitsNet.Temperature.FromDegreesCelsius(20)).Feed(CamPower.Load.None, ElectricPotential.FromVolts(v)).SourceVoltage, out ElectricPotential from);
        return solvable ? run!.Feed(load!, from, conductorAt: hot) : null;
    }

    private Load MakeLoad(double value) => LoadKind switch
    {
        LoadKind.ConstantPower => CamPower.Load.ConstantPower(Power.FromWatts(value)),
        LoadKind.ConstantCurrent => CamPower.Load.ConstantCurrent(ElectricCurrent.FromAmperes(value)),
        _ => CamPower.Load.ConstantResistance(ElectricResistance.FromOhms(value)),
    };
}
