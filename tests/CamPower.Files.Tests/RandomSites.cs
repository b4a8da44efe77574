using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using CamPower.Supplies;
using UnitsNet;
using UnitsNet.Units;

namespace CamPower.Files.Tests;

/// <summary>Valid sites of every shape that the format can express, each from one number.</summary>
public static class RandomSites
{
    public static Arbitrary<Site> Sites() => Gen.Choose(0, int.MaxValue).Select(seed => new Maker(seed).Site()).ToArbitrary();

    private sealed class Maker(int seed)
    {
        private static readonly string[] OddNames = ["é", "Łódź", "with \"quotes\"", "back\\slash", "no\u00A0break", "\U0001F4F7", "it's", "<b>&", "  spaced  ", "İıßς", "مرحبا"];

        private readonly Random _random = new(seed);

        internal Site Site()
        {
            Cable[] cables = Many(1, 4, i => Cable(Name("cable", i)));
            Device[] models = Many(1, 4, i => Model(Name("model", i)));
            Cabinet[] cabinets = [.. Many(0, 2, i => new Cabinet(Name("cabinet", i), Enclosure()))];
            CircuitBreaker[] breakers = Many(1, 3, i => Breaker(Name("breaker", i)));
            UninterruptibleSupply[] units = Many(1, 2, i => Unit(Name("unit", i)));
            Receptacle[] receptacles = Many(1, 3, i => new Receptacle(Name("receptacle", i), Volts(100, 240), Amperes(1, 30), Chance(0.5) ? Ratio.FromPercent(Number(50, 100)) : null, Chance(0.5) ? Pick(breakers) : null, Chance(0.3) ? Pick(units) : null));
            DistributionBox[] boxes = Many(1, 3, i => Chance(0.4) ? Box(Name("box", i), cabinets).WithReceptacle(Pick(receptacles)) : Box(Name("box", i), cabinets));
            var runs = new List<SiteRun>();
            for (int i = 0, count = _random.Next(0, 7); i < count; i++)
            {
                DistributionBox box = Pick(boxes);
                RunOrigin from = runs.Count > 0 && Chance(0.5) ? RunOrigin.Junction(Pick(runs).To) : RunOrigin.Output(box.Name, _random.Next(1, box.Outputs.Count + 1));
                string? returnAt = from.BoxName is null && Chance(0.3) ? from.JunctionName : null;
                runs.Add(new SiteRun(from, Name("junction", i), Run(cables), returnAt, Chance(0.4) ? Lying() : null));
            }

            // Fed by another box: never by itself.
            DistributionBox last = boxes[^1];
            string[] ends = [.. runs.Where(r => r.From.BoxName is string box && box != last.Name).Select(r => r.To)];
            if (ends.Length > 0 && last.Receptacle is null && last.Battery is null && last.Reserve is null && last.Supply is { Output: DcOutput { OpenVoltage: null }, Input: { Voltage: not null, Efficiency: not null } })
            {
                boxes[^1] = last.WithFeed(Pick(ends), Chance(0.5) ? Starting() : null, Chance(0.5) ? Inrush() : null);
            }

            SiteDevice[] devices = runs.Count == 0 ? [] : Many(0, 6, i => new SiteDevice(Name("device", i), Pick(models), Pick(runs).To, Chance(0.1)));
            VideoLink[] links = [.. devices.Where(_ => Chance(0.3)).Select(d => new VideoLink(d.Name, Name("ground", _random.Next(2)), Shield()))];
            GroundBond[] bonds = [.. links.Where(_ => Chance(0.3)).Select(l => new GroundBond(l.Ground, Pick(boxes).Name, Shield())).DistinctBy(b => b.ToString())];
            return new Site(Name("site", 0), Many(1, 4, i => Condition(Name("condition", i))), boxes, runs, devices, links, bonds,
                Chance(0.4) ? Length.From(Number(-400, 8900), Pick(LengthUnit.Meter, LengthUnit.Millimeter)) : null,
                Ties(boxes), Chance(0.4) ? new EnergyPrice(Number(0, 1), Name("currency", 0)) : null);
        }

        // Two different outputs of whatever boxes, if there are two.
        private OutputTie[] Ties(DistributionBox[] boxes)
        {
            (string Box, int Output)[] outputs = [.. boxes.SelectMany(b => b.Outputs, (b, o) => (b.Name, o.Number)).OrderBy(_ => _random.Next())];
            return outputs.Length < 2 || !Chance(0.2) ? [] : [new OutputTie(outputs[0].Box, outputs[0].Output, outputs[1].Box, outputs[1].Output)];
        }

        private ElectricResistance Shield() => ElectricResistance.From(Number(0.01, 50), Pick(ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm));

        private InstallationMethod Lying() => Pick(InstallationMethod.LargeBundle, InstallationMethod.InCableOrRaceway(_random.Next(1, 60)),
            InstallationMethod.InInsulatedWall(_random.Next(1, 21)), InstallationMethod.InConduitOnWall(_random.Next(1, 21)), InstallationMethod.OnWall(_random.Next(1, 21)));

        private CableRun Run(Cable[] cables)
        {
            List<RunPart> parts = [.. Many<RunPart>(1, 3, _ => new CableSegment(Pick(cables), Length.From(Number(0, 300), Pick(LengthUnit.Meter, LengthUnit.Centimeter, LengthUnit.Millimeter, LengthUnit.Kilometer, LengthUnit.Foot, LengthUnit.Inch, LengthUnit.Yard))))];
            if (Chance(0.4)) parts.Insert(_random.Next(0, parts.Count + 1), new Joint(Name("joint", 0), ElectricResistance.From(Number(0, 50), Pick(ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm)), ratedCurrent: Chance(0.5) ? ElectricCurrent.FromAmperes(Number(1, 20)) : null));
            if (Chance(0.2)) parts.Add(Pick([.. JointCatalog.All]));
            return new CableRun([.. parts]);
        }

        private Cable Cable(string name) => _random.Next(3) switch
        {
            0 => CamPower.Cable.Pair(Size(), Lay(), Metal(), Chance(0.2), name),
            1 => new Cable(Wire(), Wire(), Chance(0.2), name, Rating()),
            _ => Usual(Pick([.. CableCatalog.All]), name),
        };

        private Cable Usual(Cable usual, string name) => new(usual.Outgoing, usual.Return, Chance(0.2), name, Rating(), usual.Coax, usual.Source);

        private Insulation? Rating() => Chance(0.3)
            ? Pick(Insulation.Rated(Temperature.From(Number(40, 110), TemperatureUnit.DegreeCelsius)), Insulation.Pvc70, Insulation.CrossLinked)
            : null;

        private Conductor Wire() => _random.Next(4) switch
        {
            0 => Conductor.AtIecMaximum(WireSize.SquareMillimeters(1.5), Pick(Stranding.IecClass1, Stranding.IecClass2, Stranding.IecClass5), ConductorMaterial.AnnealedCopper),
            1 => Conductor.CoatedAtIecMaximum(WireSize.SquareMillimeters(0.75), Stranding.IecClass5),
            2 => Conductor.NecCoatedCopper(WireSize.Awg(14), Stranding.ClassB),
            _ => new Conductor(Size(), Lay(), Metal()),
        } is var one && Chance(0.3) ? one.InParallel(_random.Next(1, 9)) : one;

        private WireSize Size() => _random.Next(4) switch
        {
            0 => WireSize.SquareMillimeters(Number(1e-5, 50)),
            1 => WireSize.Kcmil(Number(1e-3, 2000)),
            2 => WireSize.Diameter(Number(1e-5, 12)),
            _ => WireSize.Awg(_random.Next(-3, 45)),
        };

        private Stranding Lay() => Pick(Stranding.Solid, Stranding.ClassB, Stranding.Flexible, Stranding.IecClass1, Stranding.IecClass2, Stranding.IecClass5);

        private ConductorMaterial Metal() => Pick(ConductorMaterial.AnnealedCopper, ConductorMaterial.HardDrawnCopper, ConductorMaterial.Aluminum,
            ConductorMaterial.CopperCladAluminum10, ConductorMaterial.CopperCladAluminum15,
            ConductorMaterial.CopperCladSteel21, ConductorMaterial.CopperCladSteel30, ConductorMaterial.CopperCladSteel40);

        private Device Model(string name)
        {
            VoltageRange? dc = Chance(0.8) ? Range() : null;
            return new Device(name, Pick(DeviceKind.Camera, DeviceKind.Recorder, DeviceKind.Other), Chance(0.3) ? Label() : Shares(), dc, dc is null || Chance(0.3) ? Range() : null, Chance(0.5) ? Starting() : null, Chance(0.4) ? Plug() : null, Chance(0.4) ? Inrush() : null, Chance(0.4) ? Inrush() : null, Maybe(Stage));
        }

        private AcStage Stage() => _random.Next(3) switch
        {
            0 => AcStage.Lagging(Ratio.FromPercent(Number(10, 100))),
            1 => AcStage.FullWave(Chance(0.5) ? InputCapacitance() : null),
            _ => AcStage.HalfWave(Chance(0.5) ? InputCapacitance() : null),
        };

        private Inrush Inrush() => Chance(0.5) ? new(Amperes(1, 60), Time()) : new(Amperes(1, 60), JouleIntegral.FromAmpereSquaredSeconds(Number(0.01, 50)));

        private Connector Plug()
        {
            var wires = new TerminalRange(WireSize.Awg(_random.Next(20, 30)), WireSize.SquareMillimeters(Number(1, 6)));
            Connector usual = Pick([.. Connector.Usual]);
            return _random.Next(3) switch
            {
                0 => usual,
                1 => new Connector(usual.Name, usual.Source, usual.RatedCurrent, usual.VoltageClass, wires),
                _ => new Connector(Name("plug", 0), CamPower.Sources.ConnectorRating, Amperes(0.5, 5), Chance(0.5) ? Range() : null, Chance(0.5) ? wires : null),
            };
        }

        private LabelDraw Label() => new(Volts(5, 30), Amperes(0, 3), Pick(Enum.GetValues<InputStage>()));

        private ComponentDraw Shares() => new(Load(), Maybe(Load), Maybe(Load), Maybe(Load), Maybe(Load));

        private Load Load()
        {
            Load[] all = [
                CamPower.Load.ConstantPower(Power.From((decimal)_random.Next(0, 50_000) / 1000, Pick(PowerUnit.Watt, PowerUnit.Milliwatt, PowerUnit.Kilowatt))),
                CamPower.Load.ConstantCurrent(Amperes(0, 3)),
                CamPower.Load.ConstantResistance(ElectricResistance.From(Number(1, 500), Pick(ElectricResistanceUnit.Ohm, ElectricResistanceUnit.Kiloohm)))];
            return all.Where(_ => Chance(0.5)).DefaultIfEmpty(Pick(all)).Aggregate((a, b) => a + b);
        }

        private Starting Starting()
        {
            double volts = Number(3, 20);
            return new Starting(ElectricPotential.FromVolts(volts), ElectricPotential.FromMillivolts(volts * 1000 * _random.NextDouble()), Pick<bool?>(null, false, true), Chance(0.5) ? Time() : null, Chance(0.5) ? Time() : null);
        }

        private VoltageRange Range()
        {
            double volts = Number(5, 30);
            return new VoltageRange(ElectricPotential.FromVolts(volts), Chance(0.5) ? ElectricPotential.FromVolts(volts * 1.3) : ElectricPotential.FromKilovolts(volts * 0.0013));
        }

        private Condition Condition(string name) => new(name, (LoadComponents)_random.Next(0, 16), new Surroundings(Warm(), Warm(), Warm(), Chance(0.3) ? Irradiance.FromWattsPerSquareMeter(Number(0, 1200)) : null),
            Chance(0.5) ? _random.Next(0, 5) : null,
            Chance(0.5) ? Duration.From(Number(0, 100), Pick(DurationUnit.Second, DurationUnit.Minute, DurationUnit.Hour, DurationUnit.Day)) : null,
            Chance(0.3) ? Volts(80, 270) : null, Chance(0.3) ? Duration.From(Number(0, 90), Pick(DurationUnit.Hour, DurationUnit.Day)) : null);

        private Temperature Warm()
        {
            double celsius = Number(-30, 70);
            return _random.Next(3) switch
            {
                0 => Temperature.FromDegreesCelsius(celsius),
                1 => Temperature.FromDegreesFahrenheit((celsius * 1.8) + 32),
                _ => Temperature.FromKelvins(celsius + 273.15),
            };
        }

        private DistributionBox Box(string name, Cabinet[] cabinets)
        {
            DistributionBox box = Placed(name, cabinets);
            return box.Supply.Output is DcOutput { OpenVoltage: null } && Chance(0.4)
                ? box.WithBattery(Battery(name), Protection("battery of " + name), Chance(0.5) ? Time() : null)
                : Doubled(box);
        }

        private DistributionBox Doubled(DistributionBox box)
        {
            Supply reserve = Supply();
            return !box.IsAdapter && box.Supply.Output is DcOutput { OpenVoltage: null } && reserve.Output is DcOutput { OpenVoltage: null } && Chance(0.5)
                ? box.WithReserve(reserve, ElectricPotential.FromMillivolts(Number(1, 500)))
                : box;
        }

        private Battery Battery(string name) => new($"battery of {name}",
            Chance(0.3) ? Chemistry() : Pick(BatteryChemistry.ValveRegulatedLeadAcid, BatteryChemistry.LithiumIronPhosphate), _random.Next(1, 13),
            ElectricCharge.From(Number(1, 200), Pick(ElectricChargeUnit.AmpereHour, ElectricChargeUnit.MilliampereHour)), Time(), Ohms(), Chance(0.3) ? Volts(0.5, 1.9) : null);

        private BatteryChemistry Chemistry() => new("cells", new Citation("data sheet", CitationKind.Declared),
            [ChargePoint(0, 2), ChargePoint(Number(10, 90), 2.5), ChargePoint(100, 3)],
            Cold(90), Cold(400), Number(1, 2), Volts(1, 2), Volts(3, 4), ElectricPotential.FromMillivolts(-Number(0, 5)), Number(1, 2),
            Chance(0.5) ? Temperature.FromDegreesCelsius(Number(-20, 10)) : null, Chance(0.5) ? Number(1, 10) : 1, Chance(0.5) ? Volts(3, 4) : null,
            Chance(0.5) ? Number(0.1, 3) : null, Chance(0.5) ? Temperature.FromDegreesCelsius(Number(30, 60)) : null);

        private BatteryChargePoint ChargePoint(double percent, double volts) =>
            new(Ratio.FromPercent(percent), Volts(volts, volts + 0.4), Ratio.FromPercent(Number(50, 300)), Chance(0.5) ? ElectricPotential.FromMillivolts(Number(0, 90)) : null);

        private ShareCurve<Temperature> Cold(double percent) => new(
            new(Temperature.FromDegreesCelsius(Number(-40, 0)), Ratio.FromPercent(Number(20, percent))), new(Temperature.FromDegreesCelsius(25), Ratio.FromPercent(100)));

        private DistributionBox Placed(string name, Cabinet[] cabinets) => cabinets.Length > 0 && Chance(0.5) ? Bare(name).WithCabinet(Pick(cabinets))
            : Chance(0.4) ? Bare(name).WithEnclosure(Enclosure()) : Bare(name);

        private Enclosure Enclosure() => new(Side(), Side(), Side(), Chance(0.5) ? Wall() : Pick(EnclosureWall.PaintedSteel, EnclosureWall.GalvanizedSteel, EnclosureWall.NewGalvanizedSteel, EnclosureWall.Plastic),
            Chance(0.5) ? (EnclosureFaces)_random.Next(1, 64) : Pick(EnclosureFaces.OnWall, EnclosureFaces.InRowOnWall, EnclosureFaces.OnFloor, EnclosureFaces.FreeInAir),
            Chance(0.5) ? Area.From(Number(0, 0.05), Pick(AreaUnit.SquareMeter, AreaUnit.SquareCentimeter, AreaUnit.SquareFoot)) : null,
            Chance(0.5) ? Power.From((decimal)_random.Next(0, 50_000) / 1000, Pick(PowerUnit.Watt, PowerUnit.Milliwatt)) : null, Chance(0.2));

        private EnclosureWall Wall() => new(Name("wall", 0), Ratio.FromPercent(Number(1, 100)), Ratio.FromPercent(Number(0, 100)),
            Chance(0.5) ? ThermalResistance.FromSquareMeterKelvinsPerWatt(Number(0, 0.5)) : null);

        private Length Side() => Length.From(Number(5, 20), Pick(LengthUnit.Inch, LengthUnit.Foot, LengthUnit.Meter));

        private DistributionBox Bare(string name) => _random.Next(3) switch
        {
            0 => DistributionBox.Adapter(name, Supply(), Protection(name), Claimed()),
            1 => DistributionBox.OfEqualOutputs(name, Supply(), _random.Next(1, 20), Amperes(0.1, 3), Protection(name), Maybe(Terminals), Claimed()),
            _ => new DistributionBox(name, Supply(), Many(1, 5, i => new BoxOutput(i + 1, Amperes(0.1, 3), Protection($"{name}, output {i}"), Claimed())), Maybe(Terminals)),
        };

        private TerminalRange Terminals() => new(WireSize.Awg(_random.Next(20, 40)), Chance(0.5) ? WireSize.SquareMillimeters(Number(2, 6)) : WireSize.Awg(_random.Next(-3, 19)));

        private PowerLimitClass? Claimed() => Chance(0.3) ? null : Pick(Enum.GetValues<PowerLimitClass>());

        private ProtectiveDevice? Protection(string name) => _random.Next(6) switch
        {
            0 => null,
            1 => ProtectiveDevice.None,
            2 => Pick(ResettableFuse.Generic16Volt),
            3 => Fuse("fuse of " + name),
            4 => Limit("limit of " + name, Time()),
            _ => Resettable("resettable fuse of " + name),
        };

        private ElectronicLimit Limit(string name, Duration opens) => new(name, Amperes(0.1, 5), Ratio.FromPercent(Number(0, 20)), opens, Ohms(), Volts(16, 60),
            Chance(0.5) ? Time() : null, Chance(0.5) ? opens : null);

        private Fuse Fuse(string name)
        {
            FuseCharacteristic gates = Pick(FuseCharacteristic.IecQuickActing, FuseCharacteristic.IecQuickActingTo100Milliamperes, FuseCharacteristic.IecTimeLag,
                FuseCharacteristic.IecTimeLagTo100Milliamperes, FuseCharacteristic.UlFast, FuseCharacteristic.UlTimeDelay, FuseCharacteristic.Blade);
            return new Fuse(name, ElectricCurrent.FromAmperes(Number(gates.RatedFrom.Amperes, gates.RatedTo.Amperes)), gates, Volts(16, 250), Amperes(10, 1500), Ohms(),
                Chance(0.3) ? JouleIntegral.FromAmpereSquaredSeconds(Number(0.01, 50)) : null, Maybe(Thermal), Chance(0.5) ? Volts(16, 63) : null);
        }

        private ResettableFuse Resettable(string name)
        {
            double hold = Number(0.1, 2), trip = hold * 2, least = Number(0.01, 1);
            return new ResettableFuse(name, ElectricCurrent.FromAmperes(hold), ElectricCurrent.FromAmperes(trip), ElectricCurrent.FromMilliamperes(trip * 5000), Time(),
                ElectricResistance.FromOhms(least), ElectricResistance.FromMilliohms(least * 2000), Thermal(), Volts(16, 60), Chance(0.5) ? Amperes(10, 100) : null,
                Chance(0.5) ? Power.FromWatts((decimal)_random.Next(100, 3000) / 1000) : null);
        }

        private ShareCurve<Temperature> Thermal()
        {
            if (Chance(0.5)) return ResettableFuse.GenericThermal;
            double from = Number(-40, 0);
            var source = new Citation(Name("sheet", 0), CitationKind.Declared);
            return new ShareCurve<Temperature>(
                Many(2, 5, i => new SharePoint<Temperature>(Temperature.FromDegreesCelsius(from + (20 * i)), Ratio.FromPercent(Number(20, 160))))).WithSource(source);
        }

        private ElectricResistance Ohms() => ElectricResistance.From(Number(0.01, 50), Pick(ElectricResistanceUnit.Milliohm, ElectricResistanceUnit.Ohm));

        private Duration Time() => Duration.From(Number(0.1, 100), Pick(DurationUnit.Millisecond, DurationUnit.Second));

        private Supply Supply()
        {
            ElectricPotential nominal = Volts(10, 26);
            VoltageRange? trim = Chance(0.5) ? Range() : null;
            ElectricPotential? setPoint = trim is not null && Chance(0.6) ? Pick(trim.Lowest, ElectricPotential.FromVolts(trim.Lowest.Volts * 1.1)) : null;
            if (Chance(0.15))
            {
                DcOutput unregulated = DcOutput.OfUnregulated(Volts(20, 26), Volts(10, 19), Amperes(0.5, 5), Ratio.FromPercent(Number(0, 15)),
                    Chance(0.5) ? Ratio.FromPercent(Number(0, 5)) : null, Chance(0.3) ? Ohms() : null, Overload(), Chance(0.3) ? Capacitance() : null, Chance(0.3) ? Time() : null);
                return new Supply(Name("supply", 0), unregulated, Derating(), Maybe(Input));
            }

            SupplyOutput output = Chance(0.7)
                ? Charging(new DcOutput(nominal, Amperes(0.5, 30), Ratio.FromPercent(Number(0, 50)), trim, setPoint, Chance(0.3) ? Ratio.FromPercent(Number(0, 10)) : null,
                    Chance(0.3) ? Ohms() : null, Overload(), Chance(0.3) ? Capacitance() : null, Chance(0.3) ? Power.From(Number(1, 900), Pick(PowerUnit.Watt, PowerUnit.Kilowatt)) : null, Chance(0.3) ? Time() : null))
                : Transformer(new AcOutput(nominal, Amperes(0.5, 30), Ratio.FromPercent(Number(0, 50)), Chance(0.3) ? Ohms() : null, Overload(), Chance(0.3) ? Time() : null));
            return new Supply(Name("supply", 0), output, Derating(), Maybe(Input));
        }

        private AcOutput Transformer(AcOutput output) => Chance(0.5)
            ? output.WithOpenVoltage(ElectricPotential.FromVolts(output.Nominal.Volts * Number(1.02, 1.5)), Chance(0.5) ? Frequency.FromHertz(Number(40, 70)) : null)
            : output;

        private DcOutput Charging(DcOutput output) => Chance(0.3) ? output.WithCharging(Volts(0, 2), Amperes(0.1, 5), Chance(0.6) ? Chance(0.5) : null) : output;

        private OverloadBehavior? Overload() => Limited() is { Limit: not null } limited && Chance(0.5) ? limited.WithTolerance(Ratio.FromPercent(Number(1, 20))) : Limited();

        private OverloadBehavior? Limited()
        {
            ElectricCurrent limit = Amperes(2, 30);
            return _random.Next(6) switch
            {
                0 => null,
                1 => OverloadBehavior.Unlimited,
                2 => OverloadBehavior.ConstantCurrent(limit),
                3 => OverloadBehavior.Foldback(limit, Amperes(0.1, 2)),
                4 => OverloadBehavior.Hiccup(limit, Duration.FromMilliseconds(Number(1, 900)), Duration.FromSeconds(Number(1, 9))),
                _ => OverloadBehavior.Shutdown(limit, Time()),
            };
        }

        private ElectricCapacitance InputCapacitance() => ElectricCapacitance.From(Number(1, 9000),
            Pick(ElectricCapacitanceUnit.Nanofarad, ElectricCapacitanceUnit.Microfarad, ElectricCapacitanceUnit.Millifarad));

        private ElectricCapacitance Capacitance() => ElectricCapacitance.From(Number(1, 9000),
            Pick(ElectricCapacitanceUnit.Nanofarad, ElectricCapacitanceUnit.Microfarad, ElectricCapacitanceUnit.Millifarad, ElectricCapacitanceUnit.Farad));

        private SupplyInput Input()
        {
            ElectricCurrent? inrush = Chance(0.5) ? Amperes(5, 60) : null;
            return new(Maybe(Range), inrush, Maybe(Loads), Maybe(Loads), inrush is not null && Chance(0.5) ? JouleIntegral.FromAmpereSquaredSeconds(Number(0.01, 50)) : null,
                Chance(0.5) ? Amperes(5, 90) : null, Chance(0.5) ? Amperes(0, 0.01) : null, Chance(0.5) ? Power.FromMilliwatts(_random.Next(0, 5000)) : null, Chance(0.5) ? Number(1, 4) : null);
        }

        private UninterruptibleSupply Unit(string name) => new(name, ElectricApparentPower.From(Number(1, 3), ElectricApparentPowerUnit.Kilovoltampere), Power.FromWatts(_random.Next(100, 900)),
            [new RuntimePoint(Power.FromWatts(_random.Next(1, 90)), Duration.FromMinutes(Number(20, 60))), new RuntimePoint(Power.FromWatts(_random.Next(100, 900)), Duration.FromMinutes(Number(1, 10)))],
            Chance(0.5) ? Number(1, 5) : null, Chance(0.5) ? Duration.FromMinutes(Number(1, 30)) : null);

        private CircuitBreaker Breaker(string name) => _random.Next(3) switch
        {
            0 => CircuitBreaker.TypeB(name, Amperes(1, 30)),
            1 => CircuitBreaker.TypeD(name, Amperes(1, 30), Amperes(0.01, 0.3)),
            _ => new CircuitBreaker(name, Amperes(1, 30), Number(1, 10), Number(10, 20)),
        };

        private ShareCurve<Ratio> Loads() => new(Many(2, 5, i => new SharePoint<Ratio>(Ratio.FromPercent(10 + (i * Number(20, 25))), Ratio.FromPercent(Number(30, 99)))));

        private Derating Derating()
        {
            if (Chance(0.5)) return CamPower.Derating.GenericEnclosed;
            double from = Number(-40, 0);
            return new Derating(Ambient(from), Chance(0.5) ? Line() : null, Maybe(() => new AltitudeDerating(Length.FromMeters(Number(0, 3000)), TemperatureDelta.FromKelvins(Number(0, 9)))));
        }

        private ShareCurve<ElectricPotential> Line() => new(
            Many(2, 4, i => new SharePoint<ElectricPotential>(ElectricPotential.FromVolts(85 + (i * Number(20, 25))), Ratio.FromPercent(Number(50, 100)))));

        private ShareCurve<Temperature> Ambient(double from) => new(
            Many(2, 5, i => new SharePoint<Temperature>(Temperature.FromDegreesCelsius(from + (20 * i)), Ratio.FromPercent(Number(0, 100)))));

        private ElectricPotential Volts(double low, double high) => ElectricPotential.FromVolts(Number(low, high));

        private ElectricCurrent Amperes(double low, double high) => Chance(0.5) ? ElectricCurrent.FromAmperes(Number(low, high)) : ElectricCurrent.FromMilliamperes(Number(low, high) * 1000);

        // Short numbers as people write them, and numbers with all their digits.
        private double Number(double low, double high)
        {
            double value = low + ((high - low) * _random.NextDouble());
            return Chance(0.5) ? value : Math.Clamp(Math.Round(value, 2), low, high);
        }

        private string Name(string noun, int i) => FormattableString.Invariant($"{noun} {i}") + (Chance(0.3) ? Pick(OddNames) : string.Empty);

        private bool Chance(double share) => _random.NextDouble() < share;

        private T Pick<T>(params IReadOnlyList<T> items) => items[_random.Next(items.Count)];

        private T? Maybe<T>(Func<T> make) where T : class => Chance(0.4) ? make() : null;

        private T[] Many<T>(int least, int most, Func<int, T> make) => [.. Enumerable.Range(0, _random.Next(least, most + 1)).Select(make)];
    }
}
