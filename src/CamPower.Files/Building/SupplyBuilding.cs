using CamPower.Files.Entries;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to supplies.</summary>
internal static class SupplyBuilding
{
    internal static Supply Build(SupplyEntry entry, Place at)
    {
        bool isAc = at.Value("output", entry.Output, CurrentKind.Dc) == CurrentKind.Ac;
        if (isAc) NoteDcMembers(entry, at);
        OverloadBehaviour? overload = Build(entry.Overload, at.Member("overload"));
        SupplyOutput output = isAc ? Ac(entry, overload, at) : Dc(entry, overload, at);
        Derating derating = Build(entry.Derating, at.Member("derating"));
        SupplyInlet? inlet = entry.Inlet is null ? null : Build(entry.Inlet, at.Member("inlet"));
        return new Supply(at.Name("name", entry.Name), output, derating, inlet);
    }

    private static void NoteDcMembers(SupplyEntry entry, Place at)
    {
        Note("trim", entry.Trim is not null, "an AC output cannot be adjusted");
        Note("setPoint", entry.SetPoint is not null, "an AC output cannot be adjusted");
        Note("ratedPower", entry.RatedPower is not null, "only a DC output has a rated power beside its current");
        Note("ripple", entry.Ripple is not null, "only a DC output has ripple");
        Note("capacitance", entry.Capacitance is not null, "only a DC output has a capacitance");

        void Note(string member, bool isGiven, string message)
        {
            if (isGiven && !at.Member(member).IsFaulty) at.Member(member).Fault(message);
        }
    }

    private static AcOutput Ac(SupplyEntry entry, OverloadBehaviour? overload, Place at) => at.Build(() => new AcOutput(
        at.Value("nominal", entry.Nominal, StandIn.Voltage),
        at.Value("ratedCurrent", entry.RatedCurrent, StandIn.Current),
        at.Value("tolerance", entry.Tolerance, Ratio.Zero),
        at.Optional("sourceResistance", entry.SourceResistance),
        overload));

    private static DcOutput Dc(SupplyEntry entry, OverloadBehaviour? overload, Place at)
    {
        VoltageRange? trim = ModelBuilding.Range(entry.Trim, at.Member("trim"));
        return at.Build(() => new DcOutput(
            at.Value("nominal", entry.Nominal, StandIn.Voltage),
            at.Value("ratedCurrent", entry.RatedCurrent, StandIn.Current),
            at.Value("tolerance", entry.Tolerance, Ratio.Zero),
            at.Sound("trim", trim),
            at.Member("trim").IsFaulty ? null : at.Optional("setPoint", entry.SetPoint),
            at.Optional("ripple", entry.Ripple),
            at.Optional("sourceResistance", entry.SourceResistance),
            overload,
            at.Optional("capacitance", entry.Capacitance),
            at.Optional("ratedPower", entry.RatedPower)));
    }

    private static OverloadBehaviour? Build(OverloadEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named;
        if (entry.ConstantCurrent is not null) return Limited("constantCurrent", () => OverloadBehaviour.ConstantCurrent(Current("constantCurrent", entry.ConstantCurrent)));
        if (entry.Foldback is not null) return Limited("foldback", () => OverloadBehaviour.Foldback(Current("foldback", entry.Foldback), at.Value("shortCircuit", entry.ShortCircuit, StandIn.LowCurrent)));
        if (entry.Hiccup is not null) return Limited("hiccup", () => OverloadBehaviour.Hiccup(Current("hiccup", entry.Hiccup), at.Value("pulse", entry.Pulse, StandIn.ShortTime), at.Value("period", entry.Period, StandIn.LongTime)));
        return entry.Shutdown is null ? null : Limited("shutdown", () => OverloadBehaviour.Shutdown(Current("shutdown", entry.Shutdown), at.Value("within", entry.Within, StandIn.LongTime)));

        ElectricCurrent Current(string member, Formats.Written<ElectricCurrent> current) => at.Value(member, current, StandIn.HighCurrent);

        OverloadBehaviour Limited(string member, System.Func<OverloadBehaviour> make) => at.Build(make, OverloadBehaviour.Unlimited, ("limit", member));
    }

    private static Derating Build(DeratingEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named ?? Derating.GenericEnclosed;
        ShareCurve<Temperature>? ambient = CurveBuilding.Build(entry.Ambient, at.Member("ambient"), StandIn.Temperature);
        ShareCurve<ElectricPotential>? line = CurveBuilding.Build(entry.LineVoltage, at.Member("lineVoltage"), StandIn.Voltage);
        AltitudeDerating? altitude = entry.Altitude is null ? null : Build(entry.Altitude, at.Member("altitude"));
        return at.Build(() => new Derating(at.Sound("ambient", ambient) ?? Derating.GenericEnclosed.Ambient, at.Sound("lineVoltage", line), altitude));
    }

    private static AltitudeDerating Build(AltitudeDeratingEntry entry, Place at) => at.Build(() => new AltitudeDerating(
        at.Value("above", entry.Above, Length.Zero), at.Value("perThousandMetres", entry.PerThousandMetres, TemperatureDelta.Zero)));

    private static SupplyInlet Build(InletEntry entry, Place at)
    {
        VoltageRange? voltage = ModelBuilding.Range(entry.Voltage, at.Member("voltage"));
        ShareCurve<Ratio>? efficiency = CurveBuilding.Build(entry.Efficiency, at.Member("efficiency"), StandIn.Share);
        ShareCurve<Ratio>? powerFactor = CurveBuilding.Build(entry.PowerFactor, at.Member("powerFactor"), StandIn.Share);
        return at.Build(() => new SupplyInlet(voltage, at.Optional("inrushCurrent", entry.InrushCurrent),
            at.Sound("efficiency", efficiency), at.Sound("powerFactor", powerFactor)));
    }
}
