using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Runtime.CompilerServices;
using CamPower.Tests.Circuits;
using UnitsNet;

namespace CamPower.Tests;

/// <summary>What holds for every public type, read off the assembly, so that a new one cannot forget it.</summary>
public class PublicSurfaceTests
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Load Nine = Load.ConstantPower(Power.FromWatts(9));

    private static readonly Surroundings Mild = new(Temperature.FromDegreesCelsius(20.5), Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(20));

    private static readonly FeedCase Feasible = new(12.5, 1.25, Nine), Infeasible = new(12.5, 10.25, Nine);

    // One of each public type that has instances; PublicTypes_AreAllSampled holds that none is forgotten.
    private static readonly object[] Samples =
    [
        LinearResistance.FromOhmsPerKilometer(20.95), WireSize.Awg(18), WireSize.Awg(-1), WireSize.SquareMillimeters(1.5),
        WireSize.Kcmil(250), WireSize.Diameter(0.8), Runs.Eighteen.Outgoing.Basis, .. ConductorSamples.All(),
        ConductorMaterial.AnnealedCopper, Stranding.ClassB, Runs.Eighteen.Outgoing, Runs.Eighteen,
        new Cable(Runs.Eighteen.Outgoing, new Conductor(WireSize.SquareMillimeters(1.5), Stranding.ClassB, ConductorMaterial.CopperCladAluminum10)),
        new CableSegment(Runs.Eighteen, Length.FromMeters(30.25)), new Joint("splice", ElectricResistance.FromOhms(0.0125)), Runs.OfOhms(1.25),
        Runs.OfOhms(1.25).At(Temperature.FromDegreesCelsius(20.5)), Feasible.Feed(), Infeasible.Feed(), Point(), Start(),
        Feasible.Feed().Explain(), Feasible.Feed().Explain().Steps[0],
        Load.None, Nine, Nine + Load.ConstantCurrent(ElectricCurrent.FromAmperes(0.5)) + Load.ConstantResistance(ElectricResistance.FromOhms(24.5)),
        Load.LargerOf(Power.FromWatts(9.5), ElectricCurrent.FromAmperes(0.5)),
        new ComponentDraw(Nine, infrared: Nine), new LabelDraw(ElectricPotential.FromVolts(12.5), ElectricCurrent.FromAmperes(1.5), InputStage.Unknown),
        Mild, Condition.Night(Mild), new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2)),
        new Starting(ElectricPotential.FromVolts(9.5), ElectricPotential.FromVolts(8.5), softStart: false),
        new Device("dome", DeviceKind.Camera, new ComponentDraw(Nine), dcInput: new VoltageRange(ElectricPotential.FromVolts(10.8), ElectricPotential.FromVolts(13.2))),
        Sources.AnnealedCopper, .. SiteSamples.All(), .. NetworkSamples.All(), .. LimitSamples.All(), .. StudySamples.All(), .. BackupSamples.All(), .. AlternatingSamples.All(), .. FaultSamples.All(), .. HeatSamples.All(), .. ReceptacleSamples.All(), .. CommissioningSamples.All(),
    ];

    private static IEnumerable<Type> PublicTypes => typeof(Load).Assembly.GetExportedTypes();

    public static TheoryData<string> Structs => [.. PublicTypes.Where(t => t.IsValueType && !t.IsEnum).Select(t => t.FullName!)];

    // Users derive rules of their own: that one type is open on purpose.
    [Fact]
    public void Types_AreSealedStaticStructsEnumsOrClosedHierarchies() => Assert.All(PublicTypes.Where(t => t != typeof(Rule)), t => Assert.True(
        t.IsValueType || t.IsSealed || (t.IsAbstract && t.GetConstructors(Declared).All(c => c.IsPrivate || c.IsAssembly || c.IsFamilyAndAssembly)),
        $"{t} can be derived from."));

    [Fact]
    public void Structs_AreReadOnly() => Assert.All(PublicTypes.Where(t => t.IsValueType && !t.IsEnum), t =>
        Assert.True(t.GetCustomAttributesData().Any(a => a.AttributeType.Name == nameof(IsReadOnlyAttribute)), $"{t} is not readonly."));

    [Fact]
    public void Properties_AreGetOnly() => Assert.All(PublicTypes.SelectMany(t => t.GetProperties(Declared)), p =>
        Assert.True(p.SetMethod is null || p.SetMethod.IsPrivate, $"{p.DeclaringType}.{p.Name} can be set."));

    [Fact]
    public void Fields_AreNotPublic_ButConstants() => Assert.All(
        PublicTypes.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)),
        f => Assert.True(f.IsLiteral, $"{f.DeclaringType}.{f.Name} is a public field."));

    // No state outlives a call, in internal types either. The compiler's own caches of delegates do not count.
    [Fact]
    public void StaticFields_AreReadOnly() => Assert.All(
        typeof(Load).Assembly.GetTypes().Where(t => !IsCompilerMade(t)).SelectMany(t => t.GetFields(Declared)).Where(f => f.IsStatic && !f.FieldType.Name.Contains("CallSite", StringComparison.Ordinal)),
        f => Assert.True(f.IsInitOnly || f.IsLiteral, $"{f.DeclaringType}.{f.Name} is mutable static state."));

    [Fact]
    public void PublicTypes_AreAllSampled() => Assert.Empty(PublicTypes
        .Where(t => !t.IsEnum && !t.IsAbstract && !Samples.Any(s => s.GetType() == t || (s.GetType().IsGenericType && s.GetType().GetGenericTypeDefinition() == t))).Select(t => t.Name));

    [Fact]
    public void ToString_IsItsOwn_AndTheSameInEveryCulture() => Assert.All(Samples, s =>
    {
        string? text = s.ToString();
        Assert.False(string.IsNullOrWhiteSpace(text));
        Assert.NotEqual(s.GetType().ToString(), text);
        Cultures.AssertSame(s.ToString);
    });

    [Theory]
    [MemberData(nameof(Structs))]
    public void DefaultStruct_PrintsEqualsAndHashes(string type)
    {
        object value = Activator.CreateInstance(typeof(Load).Assembly.GetType(type)!)!, other = Activator.CreateInstance(value.GetType())!;
        Assert.False(string.IsNullOrWhiteSpace(value.ToString()));
        Assert.NotEqual(value.GetType().ToString(), value.ToString());
        Assert.Equal(value, other);
        Assert.Equal(value.GetHashCode(), other.GetHashCode());
        Assert.False(value.Equals(null));
        Cultures.AssertSame(value.ToString);
    }

    // Equality is of the numbers, and a struct differs from its default.
    [Fact]
    public void StructSamples_EqualThemselvesAndNotTheDefault() => Assert.All(Samples.Where(s => s is ValueType), s =>
    {
        object none = Activator.CreateInstance(s.GetType())!;
        Assert.True(s.Equals(s));
        Assert.False(s.Equals(none));
        Assert.False(none.Equals(s));
        Assert.True((bool)Operator(s, "op_Equality", s, s) && !(bool)Operator(s, "op_Equality", s, none) && (bool)Operator(s, "op_Inequality", s, none));
    });

    [Fact]
    public void Defaults_AreAsDocumented()
    {
        RunResult none = default;
        Assert.False(none.HasOperatingPoint);
        Assert.False(none.TryGetOperatingPoint(out OperatingPoint point));
        Assert.Equal(default, point);
        Assert.Equal(0, point.Voltage.Volts);
        Assert.Equal("no result", none.ToString());
        Assert.All(new Func<object?>[]
        {
            () => none.Run, () => none.Load, () => none.LoadVoltage, () => none.Current, () => none.Drop, () => none.DropRatio, () => none.LoadPower, () => none.Loss,
            () => none.SourcePower, () => none.MarginToCollapse, () => none.MaximumPower, () => none.UnstableVoltage, () => none.Explain(), () => none.OneWayLength, () => none.LoopLength,
            () => default(PreparedRun).Run, () => default(PreparedRun).Feed(Nine, ElectricPotential.FromVolts(12)),
        }, read => Assert.Throws<InvalidOperationException>(read));
        Assert.Equal(StartVerdict.Unknown, default(StartResult).Verdict);
        Assert.False(default(StartResult).Starts);
        Assert.Throws<InvalidOperationException>(() => default(StartResult).Starting);
        Assert.Throws<InvalidOperationException>(() => default(StartResult).Explain());
        Assert.Throws<InvalidOperationException>(() => none.Profile());
        Assert.Equal(WireSizeSeries.None, default(WireSize).Series);
        Assert.Equal("no size", default(WireSize).ToString());
        Assert.Equal(0, default(LinearResistance).OhmsPerMeter);
    }

    // What has no operating point says so with the most that the run carries: 12.5²/(4·10.25) = 3.811 W.
    [Fact]
    public void NoOperatingPoint_ThrowsWithTheMaximumPower_InEveryCulture() => Cultures.ForEach(_ =>
        Assert.All(new Func<object>[] { () => Infeasible.Feed().LoadVoltage, () => Infeasible.Feed().Current, () => Infeasible.Feed().Loss, () => Infeasible.Feed().UnstableVoltage },
            read => Assert.Contains("3.810", Assert.Throws<InvalidOperationException>(read).Message, StringComparison.Ordinal)));

    private static object Operator(object s, string name, params object[] operands) => s.GetType().GetMethod(name)!.Invoke(null, operands)!;

    private static bool IsCompilerMade(Type type) => type.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false)
        || type.Name.Contains('<', StringComparison.Ordinal) || (type.DeclaringType is { } outer && IsCompilerMade(outer));

    private static OperatingPoint Point() => Feasible.Feed().TryGetOperatingPoint(out OperatingPoint point) ? point : throw new InvalidOperationException();

    private static StartResult Start() => Runs.OfOhms(1.25).At(Temperature.FromDegreesCelsius(20))
        .Start(Nine, new Starting(ElectricPotential.FromVolts(9.5), ElectricPotential.FromVolts(8), softStart: false), ElectricPotential.FromVolts(12.5));
}
