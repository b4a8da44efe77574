using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using CamPower.Studies;
using CamPower.Tests.Sites;
using UnitsNet;

namespace CamPower.Tests.Studies;

/// <summary>A comparison of two sites sees every member of every part: whoever adds one adds it to the comparison too.</summary>
public class ComparedPartTests
{
    private static readonly Temperature Zero = Temperature.FromDegreesCelsius(0);

    // What a member is set to where the site states nothing, or something else. Types of CamPower that are not here are not looked into.
    private static readonly object[] Samples =
    [
        SmallSite.Range(3, 30), SmallSite.Starts(9, 8), new Inrush(ElectricCurrent.FromAmperes(20), Duration.FromMilliseconds(2)),
        AcStage.FullWave(), new LabelDraw(SmallSite.Volts(12), ElectricCurrent.FromAmperes(1), InputStage.Unknown), JouleIntegral.FromAmpereSquaredSeconds(3),
        new Connector("plug", Sources.CommonBarrel), new TerminalRange(WireSize.Awg(22), WireSize.Awg(12)), new EnergyPrice(0.3, "EUR"),
        new Surroundings(Zero, Zero, Zero), RunOrigin.Output("another", 7), Runs.OfOhms(77), InstallationMethod.LargeBundle, OverloadBehavior.Unlimited,
        new Derating(Falling(50)), Falling(90),
        new ShareCurve<Ratio>(new(Ratio.Zero, Ratio.FromPercent(70)), new(Ratio.FromPercent(100), Ratio.FromPercent(80))),
        new Enclosure(Length.FromMillimeters(300), Length.FromMillimeters(400), Length.FromMillimeters(150), EnclosureWall.Plastic, EnclosureFaces.Front),
        EnclosureWall.NewGalvanizedSteel, BatteryChemistry.LithiumIronPhosphate, FuseCharacteristic.Blade,
        new Receptacle("receptacle", SmallSite.Volts(120), ElectricCurrent.FromAmperes(15)), CircuitBreaker.TypeC("breaker", ElectricCurrent.FromAmperes(16)),
        new UninterruptibleSupply("unit", ElectricApparentPower.FromVoltamperes(300), Power.FromWatts(200), [Runtime(50, 25), Runtime(100, 10)]),
        new List<RuntimePoint> { Runtime(90, 11) }, new SupplyInput(),
        new Battery("battery", BatteryChemistry.ValveRegulatedLeadAcid, 6, ElectricCharge.FromAmpereHours(7), Duration.FromHours(20), ElectricResistance.FromMilliohms(25)),
        new Fuse("fuse", ElectricCurrent.FromAmperes(2), FuseCharacteristic.IecQuickActing, SmallSite.Volts(250), ElectricCurrent.FromAmperes(35), ElectricResistance.FromMilliohms(50)),
        new ResettableFuse("resettable", ElectricCurrent.FromAmperes(1), ElectricCurrent.FromAmperes(2), ElectricCurrent.FromAmperes(5), Duration.FromSeconds(5),
            ElectricResistance.FromOhms(0.1), ElectricResistance.FromOhms(0.2), ResettableFuse.GenericThermal, SmallSite.Volts(16)),
        new ElectronicLimit("limit", ElectricCurrent.FromAmperes(1), Ratio.Zero, Duration.FromSeconds(1), ElectricResistance.FromOhms(0.1), SmallSite.Volts(30)),
        new DcOutput(SmallSite.Volts(24), ElectricCurrent.FromAmperes(3), Ratio.FromPercent(1)),
        new AcOutput(SmallSite.Volts(24), ElectricCurrent.FromAmperes(3), Ratio.FromPercent(1)), SmallSite.Dc(volts: 13),
        new Cabinet("cabinet", new Enclosure(Length.FromMillimeters(310), Length.FromMillimeters(400), Length.FromMillimeters(150), EnclosureWall.Plastic, EnclosureFaces.Front)),
    ];

    // Their own members are looked into: the comparison must tell two that differ in one.
    private static readonly HashSet<Type> LookedInto =
    [
        typeof(Receptacle), typeof(CircuitBreaker), typeof(UninterruptibleSupply), typeof(Enclosure), typeof(Cabinet), typeof(Battery), typeof(Fuse),
        typeof(ResettableFuse), typeof(ElectronicLimit), typeof(SupplyInput), typeof(Starting), typeof(Inrush), typeof(Connector), typeof(DcOutput), typeof(AcOutput), typeof(Supply),
    ];

    // Where a constant of the library comes from is no part of a site; boxes share their cabinets; the rest are lists of parts that are looked into themselves.
    private static readonly HashSet<string> LeftOut =
    [
        "Connector.Source", "Site.Cabinets", "Site.Conditions", "Site.Boxes", "Site.Runs", "Site.Devices", "Site.VideoLinks", "Site.Bonds", "Site.Ties",
        "DistributionBox.Outputs", "DistributionBox.Supply", "SiteDevice.Model",
    ];

    [Fact]
    public void MemberThatChangesAlone_ChangesTheComparison()
    {
        Site site = Example();
        object[] parts =
        [
            site, site.Conditions[0], site.Boxes[0], site.Boxes[0].Outputs[0], site.Boxes[0].Supply, site.Boxes[0].Supply.Output, site.Runs[0], site.Devices[0],
            site.Devices[0].Model, site.VideoLinks[0], site.Bonds[0], site.Ties[0],
        ];
        var unseen = new SortedSet<string>(StringComparer.Ordinal);
        int tried = parts.Sum(part => Try(site, part, unseen));
        Assert.Empty(unseen);
        Assert.InRange(tried, 120, int.MaxValue);
    }

    // Changes each member in its place, one at a time, and looks whether the texts change; the number of members tried.
    private static int Try(Site site, object part, SortedSet<string> unseen)
    {
        int tried = 0;
        foreach ((string name, FieldInfo field) in MembersOf(part.GetType()).Where(m => !LeftOut.Contains(m.Name)))
        {
            object? before = field.GetValue(part);
            string[] texts = TextsOf(site);
            object[] others = OthersOf(field.FieldType, before);
            if (others.Length == 0) unseen.Add($"{name}: no sample");
            foreach (object other in others)
            {
                field.SetValue(part, other);
                tried++;
                if (texts.SequenceEqual(TextsOf(site), StringComparer.Ordinal)) unseen.Add(name);
                if (LookedInto.Contains(other.GetType())) tried += Try(site, other, unseen);
            }

            field.SetValue(part, before);
        }

        return tried;
    }

    private static string[] TextsOf(Site site) =>
        [.. ComparedPart.AllOf(site).SelectMany(part => part.Facts.Select(fact => $"{part.Key} {fact.Key} {fact.Value}"))];

    // Public members that hold something of their own, those of base classes too.
    private static IEnumerable<(string Name, FieldInfo Field)> MembersOf(Type type) =>
        from property in type.GetProperties(BindingFlags.Instance | BindingFlags.Public)
        let field = property.DeclaringType!.GetField($"<{property.Name}>k__BackingField", BindingFlags.Instance | BindingFlags.NonPublic)
        where field is not null
        select ($"{type.Name}.{property.Name}", field);

    private static object[] OthersOf(Type type, object? before)
    {
        Type bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare == typeof(string)) return [$"{before} and more"];
        if (bare == typeof(bool)) return [before is not true];
        if (bare == typeof(int)) return [((int?)before ?? 0) + 1];
        if (bare == typeof(double)) return [((double?)before ?? 0) + 1];
        if (bare.IsEnum) return [.. Enum.GetValues(bare).Cast<object>().Where(value => !value.Equals(before)).Take(1)];
        if (typeof(IQuantity).IsAssignableFrom(bare))
        {
            var quantity = (IQuantity)(before ?? bare.GetProperty("Zero", BindingFlags.Static | BindingFlags.Public)!.GetValue(null)!);
            return [Quantity.From((double)quantity.Value + 1, quantity.Unit)];
        }

        return [.. Samples.Where(sample => bare.IsInstanceOfType(sample) && !ReferenceEquals(sample, before))];
    }

    private static ShareCurve<Temperature> Falling(double percent) =>
        new(new(Zero, Ratio.FromPercent(100)), new(Temperature.FromDegreesCelsius(50), Ratio.FromPercent(percent)));

    private static RuntimePoint Runtime(double watts, double minutes) => new(Power.FromWatts(watts), Duration.FromMinutes(minutes));

    // Nothing that the library shares is in it, for its members are changed in their place.
    private static Site Example()
    {
        Site star = SmallSite.Star((1, SmallSite.Camera(SmallSite.Watts(5))), (1, SmallSite.Camera(SmallSite.Watts(6))));
        return new Site(star.Name, star.Conditions, star.Boxes, star.Runs, star.Devices,
            [new VideoLink("camera 1", "recorder", ElectricResistance.FromOhms(1))], [new GroundBond("recorder", SmallSite.BoxName, ElectricResistance.FromOhms(0.1))],
            ties: [new OutputTie(SmallSite.BoxName, 1, SmallSite.BoxName, 2)]);
    }
}
