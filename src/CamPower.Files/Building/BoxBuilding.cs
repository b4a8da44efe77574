using System.Collections.Generic;
using System.Linq;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using UnitsNet;

namespace CamPower.Files.Building;

/// <summary>From entries to boxes and their supplies.</summary>
internal static class BoxBuilding
{
    internal static DistributionBox Build(BoxEntry entry, Place at)
    {
        string name = at.Name("name", entry.Name);
        Supply supply = Build(entry.Supply ?? new(), at.Member("supply"));
        if (entry.Adapter == false) at.Member("adapter").Fault("adapter can only be true; leave it out for a box");
        if (HasSeveralForms(entry)) return new DistributionBox(name, supply, StandIn.Outputs);
        if (entry.OutputLimits is not null) return new DistributionBox(name, supply, Outputs(entry.OutputLimits, at.Member("outputLimits")));
        if (entry.Adapter == true) return DistributionBox.Adapter(name, supply);
        return at.Build(() => DistributionBox.WithEqualOutputs(name, supply,
            at.Value("outputs", entry.Outputs, StandIn.MostOutputs), at.Value("outputLimit", entry.OutputLimit, StandIn.Current)));
    }

    // The reader has noted it; nobody knows then how many outputs were meant.
    private static bool HasSeveralForms(BoxEntry entry) => new[]
    {
        entry.OutputLimits is not null, entry.Adapter is not null, entry.Outputs is not null || entry.OutputLimit is not null,
    }.Count(given => given) > 1;

    private static IEnumerable<BoxOutput> Outputs(List<Written<ElectricCurrent>?> limits, Place at)
    {
        if (limits.Count == 0) at.Fault("a box needs at least one output");
        return limits.Count > 0 ? limits.Select((limit, i) => Output(i, limit, at.Item(i))) : StandIn.Outputs;
    }

    private static BoxOutput Output(int index, Written<ElectricCurrent>? limit, Place at) => at.BuildHere(() =>
        new BoxOutput(index + 1, limit is null || at.IsFaulty ? StandIn.Current : limit.Value));

    private static Supply Build(SupplyEntry entry, Place at)
    {
        VoltageRange? trim = ModelBuilding.Range(entry.Trim, at.Member("trim"));
        Derating derating = Build(entry.Derating, at.Member("derating"));
        bool isAc = at.Value("output", entry.Output, CurrentKind.Dc) == CurrentKind.Ac;
        if (isAc) NoteDcMembers(entry, at);
        SupplyOutput output = isAc ? Ac(entry, at) : Dc(entry, trim, at);
        return new Supply(at.Name("name", entry.Name), output, derating);
    }

    private static void NoteDcMembers(SupplyEntry entry, Place at)
    {
        if (entry.Trim is not null) at.Member("trim").Fault("an AC output cannot be adjusted");
        if (entry.SetPoint is not null) at.Member("setPoint").Fault("an AC output cannot be adjusted");
        if (entry.Ripple is not null) at.Member("ripple").Fault("only a DC output has ripple");
    }

    private static AcOutput Ac(SupplyEntry entry, Place at) => at.Build(() => new AcOutput(
        at.Value("nominal", entry.Nominal, StandIn.Voltage),
        at.Value("ratedCurrent", entry.RatedCurrent, StandIn.Current),
        at.Value("tolerance", entry.Tolerance, Ratio.Zero)));

    private static DcOutput Dc(SupplyEntry entry, VoltageRange? trim, Place at) => at.Build(() =>
    {
        bool trimIsFaulty = at.Member("trim").IsFaulty;
        return new DcOutput(
            at.Value("nominal", entry.Nominal, StandIn.Voltage),
            at.Value("ratedCurrent", entry.RatedCurrent, StandIn.Current),
            at.Value("tolerance", entry.Tolerance, Ratio.Zero),
            trimIsFaulty ? null : trim,
            trimIsFaulty ? null : at.Optional("setPoint", entry.SetPoint),
            at.Optional("ripple", entry.Ripple));
    });

    private static Derating Build(DeratingEntry? entry, Place at)
    {
        if (entry is null || entry.Named is not null) return entry?.Named ?? Derating.GenericEnclosed;
        SharePoint<Temperature>[] points = [.. entry.Select((point, i) => Build(point ?? new(), at.Item(i)))];
        return at.BuildHere(() => at.IsFaulty ? Derating.GenericEnclosed : new Derating(new ShareCurve<Temperature>(points)));
    }

    private static SharePoint<Temperature> Build(DeratingPointEntry entry, Place at) => at.Build(() => new SharePoint<Temperature>(
        at.Value("ambient", entry.Ambient, StandIn.Temperature),
        at.Value("share", entry.Share, Ratio.Zero)));
}
