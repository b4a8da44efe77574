using System.Linq;
using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Faults;

/// <summary>Sites whose faults can be worked out by hand: 12 V without tolerance, 0.1 Ω of source, loops of joints.</summary>
internal static class SmallFaultSite
{
    /// <summary>Two cameras of 12 W that drop out at 8 V, each behind 0.5 Ω on an output of its own.</summary>
    internal static Site TwoOutputs(ProtectiveDevice? device, OverloadBehavior? overload = null, double otherDropOut = 8, bool declaresDropOut = true) => new("site", [Condition.Day(At())],
        [Box(device, overload)], [Run(RunOrigin.Output(BoxName, 1), "one", 0.5), Run(RunOrigin.Output(BoxName, 2), "two", 0.5)],
        [new SiteDevice("first", Twelve(8), "one"), new SiteDevice("second", Twelve(declaresDropOut ? otherDropOut : null), "two")]);

    internal static DistributionBox Box(ProtectiveDevice? device, OverloadBehavior? overload, int outputs = 2, double? sourceOhms = 0.1) => DistributionBox.OfEqualOutputs(BoxName,
        new Supply("supply", new DcOutput(Volts(12), ElectricCurrent.FromAmperes(10), Ratio.Zero,
            sourceResistance: sourceOhms is double ohms ? ElectricResistance.FromOhms(ohms) : null, overload: overload), Derating.GenericEnclosed), outputs, ElectricCurrent.FromAmperes(2), device);

    internal static SiteRun Run(RunOrigin from, string to, double ohms, string? returnAt = null) => new(from, to, Runs.OfOhms(ohms), returnAt);

    internal static Device Twelve(double? dropOut) => Camera(Watts(12), Range(10, 14), dropOut is double volts ? Starts(volts + 1, volts) : null);

    internal static ShortCircuit ShortAt(Site site, string place) => site.Assess().StudyFaults()[0].Shorts.Single(s => s.Place == place);
}
