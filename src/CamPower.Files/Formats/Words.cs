using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>The words of a site file.</summary>
internal static class Words
{
    internal static WordFormat<ConductorMaterial> Material { get; } = new("a material", Named(m => m.Name,
        ConductorMaterial.AnnealedCopper, ConductorMaterial.HardDrawnCopper, ConductorMaterial.Aluminum,
        ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15,
        ConductorMaterial.CopperCladSteel21, ConductorMaterial.CopperCladSteel30, ConductorMaterial.CopperCladSteel40));

    internal static WordFormat<Stranding> Stranding { get; } = new("a stranding", Named(s => s.Name,
        CamPower.Stranding.Solid, CamPower.Stranding.ClassB, CamPower.Stranding.Flexible,
        CamPower.Stranding.IecClass1, CamPower.Stranding.IecClass2, CamPower.Stranding.IecClass5));

    internal static InsulationFormat Insulation { get; } = new(new("an insulation",
        ("PVC 70 C", CamPower.Insulation.Pvc70), ("PVC 90 C", CamPower.Insulation.Pvc90), ("XLPE or EPR", CamPower.Insulation.CrossLinked),
        ("rubber 60 C", CamPower.Insulation.Rubber60)));

    internal static InstallationMethodFormat InstallationMethod { get; } = new();
    internal static NameFormat Name { get; } = new();
    internal static YesNoFormat YesNo { get; } = new();
    internal static WordFormat<PublishedTable> Table { get; } = new("a table of resistances", Named(t => t.Name, PublishedTable.All));
    internal static WordFormat<Cable> UsualCable { get; } = new("a usual cable", Named(c => c.Name!, [.. CableCatalog.All]));
    internal static WordFormat<Joint> UsualJoint { get; } = new("a usual joint", Named(j => j.Name, [.. JointCatalog.All]));
    internal static WordFormat<Connector> UsualConnector { get; } = new("a usual connector", Named(c => c.Name, [.. Connector.Usual]));

    internal static WordFormat<DeviceKind> DeviceKind { get; } = new("a kind of device",
        ("camera", CamPower.DeviceKind.Camera), ("recorder", CamPower.DeviceKind.Recorder), ("other", CamPower.DeviceKind.Other));

    internal static WordFormat<CurrentKind> Current { get; } = new("a kind of current", ("DC", CurrentKind.Dc), ("AC", CurrentKind.Ac));

    internal static WordFormat<InputStage> Stage { get; } = new("an input stage",
        ("unknown", InputStage.Unknown), ("switching", InputStage.Switching), ("linear", InputStage.Linear));

    /// <summary>A rectifier, as whether it takes half-waves alone.</summary>
    internal static WordFormat<bool> Rectifier { get; } = new("a rectifier", ("full-wave", false), ("half-wave", true));

    internal static WordFormat<bool?> SoftStart { get; } = new("a soft start",
        ("unknown", null), ("no", false), ("yes", true));

    internal static WordFormat<LoadComponents> Components { get; } = new("a component of the draw",
        ("infrared", LoadComponents.Infrared), ("motor", LoadComponents.Motor), ("heater", LoadComponents.Heater),
        ("startUp", LoadComponents.StartUp));

    /// <summary>The conditions that the library gives, each as what makes it from the temperatures.</summary>
    internal static WordFormat<Func<Surroundings, Condition>> GivenConditions { get; } = new("a given condition", Given(
        Condition.Day, Condition.Night, at => Condition.NightWithMotion(at), Condition.ColdStart))
    {
        Hint = "A condition of your own has \"name\" and \"on\" in place of \"given\"",
    };

    internal static WordFormat<Func<string, ElectricCurrent, ElectricCurrent?, CircuitBreaker>> BreakerType { get; } = new(
        "a type of breaker", ("B", CircuitBreaker.TypeB), ("C", CircuitBreaker.TypeC), ("D", CircuitBreaker.TypeD));

    internal static WordFormat<Derating> Derating { get; } = new("a derating", ("generic enclosed", CamPower.Derating.GenericEnclosed));

    internal static WordFormat<OverloadBehavior> Overload { get; } = new(
        "an overload behavior", ("unlimited", OverloadBehavior.Unlimited))
    {
        Hint = "A supply with a limit has its current, as in { \"hiccup\": \"26 A\", \"pulse\": \"100 ms\", \"period\": \"1.2 s\" }; "
            + "other forms are constantCurrent, foldback and shutdown",
    };

    internal static WordFormat<BatteryChemistry> Chemistry { get; } = new("a battery chemistry",
        Named(c => c.Name, BatteryChemistry.ValveRegulatedLeadAcid, BatteryChemistry.LithiumIronPhosphate));

    internal static WordFormat<PowerLimitClass> PowerLimit { get; } = new("a power-limit class",
        ("limited power source", PowerLimitClass.LimitedPowerSource),
        ("limited power source (IEC 60950-1)", PowerLimitClass.LimitedPowerSourceIec60950),
        ("limited power source (IEC 62368-1)", PowerLimitClass.LimitedPowerSourceIec62368), ("Class 2", PowerLimitClass.Class2));

    internal static WordFormat<ShareCurve<Temperature>> Thermal { get; } = new(
        "an ambient curve", ("generic resettable", ResettableFuse.GenericThermal));

    internal static WordFormat<FuseCharacteristic> Characteristic { get; } = new("a fuse characteristic", Named(c => c.Name,
        FuseCharacteristic.IecQuickActing, FuseCharacteristic.IecQuickActingTo100Milliamperes,
        FuseCharacteristic.IecTimeLag, FuseCharacteristic.IecTimeLagTo100Milliamperes,
        FuseCharacteristic.UlFast, FuseCharacteristic.UlTimeDelay, FuseCharacteristic.Blade));

    internal static WordFormat<EnclosureWall> Wall { get; } = new("a wall of an enclosure", Named(w => w.Name,
        EnclosureWall.PaintedSteel, EnclosureWall.GalvanizedSteel, EnclosureWall.NewGalvanizedSteel, EnclosureWall.Plastic));

    internal static WordFormat<EnclosureFaces> Face { get; } = new("a face",
        ("top", EnclosureFaces.Top), ("bottom", EnclosureFaces.Bottom), ("front", EnclosureFaces.Front),
        ("back", EnclosureFaces.Back), ("left", EnclosureFaces.Left), ("right", EnclosureFaces.Right));

    internal static WordFormat<EnclosureFaces> Mounting { get; } = new("a way to mount an enclosure",
        ("on a wall", EnclosureFaces.OnWall), ("in a row on a wall", EnclosureFaces.InRowOnWall),
        ("on the floor", EnclosureFaces.OnFloor), ("free in air", EnclosureFaces.FreeInAir));

    private static (string, T)[] Named<T>(Func<T, string> name, params T[] values) => [.. values.Select(v => (name(v), v))];

    private static (string, Func<Surroundings, Condition>)[] Given(params Func<Surroundings, Condition>[] makers) =>
        Named(make => make(Parts.StandIn.Surroundings).Name, makers);
}
