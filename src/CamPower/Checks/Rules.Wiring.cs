using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Checks;
using CamPower.Sites;
using UnitsNet;
using static System.FormattableString;

namespace CamPower;

/// <content>Rules on what is connected to what, and with which cable.</content>
public static partial class Rules
{
    /// <summary>A device that accepts DC only is on AC: half of each cycle is reversed.</summary>
    public static Rule AcIntoDcDevice { get; } = new SimpleRule("ac-into-dc-device", "AC on a DC device", Severity.Danger,
        "An AC supply feeds a device that accepts DC only.",
        "Do not energize. Connect the device to a DC supply of its rated voltage.",
        Sources.CommonPractice, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where !device.Box.Supply.Output.IsDc && device.Device.Model.AcInput is null
            select rule.Find(Subject.Of(device.Device), $"{device.Box} gives AC; {device.Device.Model} accepts DC only."));

    /// <summary>A device that accepts AC only is on DC.</summary>
    public static Rule DcIntoAcDevice { get; } = new SimpleRule("dc-into-ac-device", "DC on an AC device", Severity.Failure,
        "A DC supply feeds a device that accepts AC only.",
        "Connect the device to an AC supply of its rated voltage.",
        Sources.CommonPractice, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where device.Box.Supply.Output.IsDc && device.Device.Model.DcInput is null
            select rule.Find(Subject.Of(device.Device), $"{device.Box} gives DC; {device.Device.Model} accepts AC only."));

    /// <summary>The leads of a device on DC were seen or measured to be reversed.</summary>
    public static Rule ReversedPolarity { get; } = new SimpleRule("reversed-polarity", "leads reversed", Severity.Danger,
        "The leads of a device on DC are reversed. The device may be destroyed at once, or its protection diode may short the output.",
        "Do not energize. Swap the leads, measure the polarity at the plug, and then connect the device.",
        Sources.CommonPractice, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            where device.Device.LeadsReversed && device.Box.Supply.Output.IsDc
            select rule.Find(Subject.Of(device.Device), $"Its leads from {Subject.Of(device.Box, device.Output)} are reversed."));

    /// <summary>Outputs are joined: two supplies in parallel, of which one feeds back into the other, or two outputs of one box.</summary>
    /// <remarks>The voltage found is how far one supply can be above the other: the highest of one less the lowest of the other. The data
    /// sheet says so where supplies may work in parallel; drop the rule for them.</remarks>
    public static Rule OutputsTiedTogether { get; } = new OutputsTiedTogetherRule();

    /// <summary>A cabinet holds outputs of several nominal voltages, or of DC and AC.</summary>
    public static Rule MixedVoltagesInOneCabinet { get; } = new SimpleRule("mixed-voltages-in-one-cabinet",
        "different voltages in one cabinet", Severity.Caution,
        "A cabinet holds outputs of different nominal voltages, or of DC and AC. A wire on the wrong output can destroy its device.",
        "Give each voltage its own cabinet, or mark the voltage and DC or AC on every output and wire. " +
        "Measure at the end of a cable before you connect a device.",
        Sources.CommonPractice, (rule, evidence) =>
            from cabinet in evidence.Assessment.Site.Cabinets
            let voltages = evidence.Assessment.Site.Boxes.Where(b => ReferenceEquals(b.Cabinet, cabinet))
                .GroupBy(b => NominalVoltage(b.Supply.Output), StringComparer.Ordinal)
                .Select(alike => $"{alike.Key} ({string.Join(", ", alike)})").ToList()
            where voltages.Count > 1
            select rule.Find(Subject.Of(cabinet), $"It holds outputs of {string.Join(" and of ", voltages)}."));

    /// <summary>A box feeds more cameras than it has outputs, so that some share an output.</summary>
    public static Rule MoreCamerasThanOutputs { get; } = new SimpleRule("more-cameras-than-outputs", Severity.Caution,
        "A box feeds more cameras than it has outputs. A fault on one camera turns off the others on its output.",
        "Use a distribution box with more outputs, or a second distribution box.",
        Sources.CommonPractice, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            where !box.Box.IsAdapter
            let cameras = box.Outputs.Sum(o => o.Devices.Count(d => d.Model.Kind == DeviceKind.Camera))
            let outputs = box.Box.Outputs.Count
            where cameras > outputs
            select rule.Find(Subject.Of(box.Box),
                Invariant($"It feeds {cameras} cameras from {outputs} {(outputs == 1 ? "output" : "outputs")}."),
                Scalar.FromAmount(cameras), Scalar.FromAmount(outputs)));

    /// <summary>A recorder is on an output of a box that feeds cameras.</summary>
    public static Rule RecorderOnCameraOutput { get; } = new SimpleRule("recorder-on-camera-output",
        "recorder on a camera output", Severity.Caution,
        "A recorder is on an output of a camera box. Its disks draw a large start-up current, and it joins the returns of the cameras.",
        "Give the recorder its own supply.",
        Sources.CommonPractice, (rule, evidence) =>
            from box in evidence.Assessment.Boxes.Where(b => !b.Box.IsAdapter)
            let fed = box.Outputs.SelectMany(o => o.Devices).ToList()
            where fed.Exists(d => d.Model.Kind == DeviceKind.Camera)
            from device in evidence.Assessment.Devices
            where ReferenceEquals(device.Box, box.Box) && device.Device.Model.Kind == DeviceKind.Recorder
            select rule.Find(Subject.Of(device.Device), $"It is a recorder on {Subject.Of(device.Box, device.Output)}."));

    /// <summary>A connector is rated for less current than its device draws.</summary>
    public static Rule ConnectorOverloaded { get; } = new SimpleRule("connector-overloaded", Severity.Failure,
        "A device draws more current than its connector is rated for. The contact heats, loses its spring force and heats more.",
        "Use a connector that is rated for the current at both ends, such as a screw terminal.",
        Sources.ConnectorRating, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            let connector = device.Device.Model.Connector
            where connector?.RatedAmperes is not null
            let rated = connector.RatedAmperes!.Value
            let most = MostDrawn(device)
            where Limits.IsAbove(most.AmperesDrawn, rated)
            select rule.Find(Subject.Of(device.Device),
                $"It draws {Digits.Of(most.AmperesDrawn, rated)} A in \"{most.Condition}\"; " +
                Invariant($"its connector ({connector}) is rated for {Digits.Of(rated, most.AmperesDrawn, "0.##")} A."),
                ElectricCurrent.FromAmperes(most.AmperesDrawn), ElectricCurrent.FromAmperes(rated), most.Condition));

    /// <summary>A joint of a run carries more current than it is rated for, or heats with its own resistance.</summary>
    /// <remarks>Its heat is I²·R in the condition with the most current, starts left out. From 2 W on it is a Caution (common practice, no
    /// source), above 15 W a Failure, as of a poor contact in <see cref="ShortMayNotBeInterrupted"/>.</remarks>
    public static Rule JointOverloaded { get; } = new JointOverloadedRule();

    /// <summary>The voltage of a supply, as marked or as set, is outside the voltage class of the connector that carries it.</summary>
    public static Rule VoltageOutsideConnectorClass { get; } = new SimpleRule("voltage-outside-connector-class",
        "plug made for another voltage", Severity.Caution,
        "The voltage of a supply, as marked or as set, is outside the voltage class of the device's connector. " +
        "The plug fits supplies of another voltage.",
        "Use a connector of the supply's voltage class.",
        Sources.UnifiedBarrelPlugs, (rule, evidence) =>
            from device in evidence.Assessment.Devices
            let connector = device.Device.Model.Connector
            let promised = connector?.VoltageClass
            where promised is not null
            let supply = device.Box.Supply.Output
            from volts in new[] { supply.NominalVolts, supply.SetVolts }.Where(v => IsOutside(v, promised)).Take(1)
            let isAbove = Limits.IsAbove(volts, promised.HighestVolts)
            select rule.Find(Subject.Of(device.Device),
                $"{device.Box} gives {Digits.Of(volts, (isAbove ? promised.HighestVolts : promised.LowestVolts), "0.##")} V; " +
                $"its plug ({connector}) is made for {promised}.",
                ElectricPotential.FromVolts(volts), isAbove ? promised.Highest : promised.Lowest));

    /// <summary>A conductor is smaller or larger than the terminal at its end accepts.</summary>
    /// <remarks>Wires in parallel count together for the largest size, and one by one for the smallest.</remarks>
    public static Rule TerminalWrongSize { get; } = new TerminalWrongSizeRule();

    /// <summary>A pre-terminated cable is extended with another cable.</summary>
    /// <remarks>The lead that a camera comes with, up to 1 m, is no such cable (common practice, no source).</remarks>
    public static Rule PreTerminatedCableExtended { get; } = new SimpleRule("pre-terminated-cable-extended",
        "pre-terminated cable extended", Severity.Caution,
        "A pre-terminated cable is extended with another cable. Its small conductors and the extra connectors add resistance.",
        "Use one length of cable from the box to the device, sized for the whole length.",
        Sources.CommonPractice, (rule, evidence) => evidence.Assessment.Devices.Select(d => d.Path)
            .Where(path => path.Sum(run => run.Run.Segments.Count()) > 1)
            .SelectMany(path => path.Where(run => run.Run.Segments.Any(IsExtended))).Distinct()
            .Select(run => rule.Find(Subject.Of(run),
                $"The pre-terminated cable from {run.From} to {run.To} is joined to another cable.")));

    /// <summary>A run has conductors of copper-clad aluminum, which look like copper.</summary>
    public static Rule CopperCladAluminum { get; } = new SimpleRule("copper-clad-aluminum",
        "wire of copper-clad aluminum", Severity.Caution,
        "A run is of copper-clad aluminum. It has 55 % to 59 % more resistance than copper of the same gauge, and is weaker at terminals.",
        "Use copper. Where the cable stays, check that the terminals are rated for it, and measure the loop resistance.",
        Sources.CopperCladAluminum, (rule, evidence) => FindAlike(rule, evidence.Assessment.Site,
            evidence.Assessment.Site.Runs.Where(IsCopperClad).Select(Subject.Of),
            "runs", "has conductors of copper-clad aluminum, with 55 % to 59 % more resistance than copper",
            "have conductors of copper-clad aluminum, with 55 % to 59 % more resistance than copper"));

    /// <summary>A run has nominal resistances in one part and a table's maximum values in another.</summary>
    public static Rule MixedResistanceBases { get; } = new SimpleRule("mixed-resistance-bases",
        "two kinds of resistance in one run", Severity.Note,
        "One part of a run uses an average (nominal) resistance, another the maximum of a standard. " +
        "The sum is neither the expected reading nor the worst case.",
        "Use the same kind for the whole run: nominal for the expected reading, a standard's maximum for the worst case.",
        Sources.Resistance, (rule, evidence) => FindAlike(rule, evidence.Assessment.Site,
            evidence.Assessment.Site.Runs.Where(run => run.Run.MixesResistanceBases).Select(Subject.Of),
            "runs", "uses an average (nominal) resistance in one part and the maximum of a standard in another; the sum is neither",
            "use an average (nominal) resistance in one part and the maximum of a standard in another"));

    /// <summary>It is not stated what is behind the terminals of a device on AC.</summary>
    public static Rule AcInputNotStated { get; } = new SimpleRule("ac-input-not-stated", "AC input not stated", Severity.Note,
        "What a device takes on AC is not stated. It is calculated as a resistor; " +
        "a rectifier input takes more current and gets less voltage.",
        "State the AC input of the device: resistor, power factor, or full-wave or half-wave rectifier with its capacitance. " +
        "Ask the maker.",
        Sources.RectifierDesign, isAboutWhatIsNotStated: true, check: (rule, evidence) => FindAlike(rule, evidence.Assessment.Site,
            evidence.Assessment.Devices.Where(IsAcUnstated).Select(d => Subject.Of(d.Device)), "devices",
            "has an AC input that is not stated; as a rectifier it takes more current and gets less voltage",
            "have an AC input that is not stated; as rectifiers they take more current and get less voltage"));

    /// <summary>Inputs of different kinds on one transformer have their negatives joined by video shields.</summary>
    public static Rule RectifiersShareACommon { get; } = new SimpleRule("rectifiers-share-a-common",
        "shields short the transformer", Severity.Danger,
        "A transformer feeds inputs whose negatives are at different ends of its winding, and video shields join them. " +
        "A diode shorts the winding through wires and shields: they overheat, and may burn before a fuse opens.",
        "Do not energize. Give each kind of input its own transformer, or isolate the video of all but one of them.",
        Sources.RectifierDesign, (rule, evidence) =>
            from box in evidence.Assessment.Boxes
            where box.ThroughJoinedCommons.IsViolated
            let current = (ElectricCurrent)box.ThroughJoinedCommons.Value!
            let rated = box.Box.Supply.Output.RatedAmperes
            select rule.Find(Subject.Of(box.Box),
                Invariant($"Shields join the negatives of {box.Commons.First} and {box.Commons.Second}. ") +
                Invariant($"At least {current.Amperes:0.0} A RMS flows through wires and shields that should carry none.") +
                (Limits.IsAbove(current.Amperes, rated) ? Invariant($" The winding is rated for {rated:0.00} A.") : string.Empty),
                current, ElectricCurrent.Zero));

    /// <summary>A video shield has more voltage at mains frequency than a policy allows: a bar rolls through the picture.</summary>
    /// <remarks>Where the ripple of a supply is not stated, the hum is unknown: see <see cref="GroundLoopHumUnknown"/>.</remarks>
    /// <param name="limit">Maximum RMS voltage along a shield, above 0; null for 10 mV. [V]</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="limit"/> is not above 0, or not finite.</exception>
    public static Rule GroundLoopHum(ElectricPotential? limit = null)
    {
        ElectricPotential policy = limit ?? ElectricPotential.FromMillivolts(CheckConstants.ShieldHum.Value);
        double maximum = Require.Positive(policy.Volts, nameof(limit), "V");
        return new SimpleRule("ground-loop-hum", "ground-loop hum", Severity.Caution,
            "The return current causes more voltage at mains frequency on a video shield than the policy allows. " +
            "A bar rolls through the picture.",
            "Use a supply with less ripple or a larger negative conductor, or isolate the camera's video ground. " +
            "Keep the safety ground (protective earth) connected.",
            CheckConstants.ShieldHum.Source, limit: policy, check: (rule, evidence) =>
                from shield in evidence.Assessment.Shields
                let worst = shield.InConditions.OrderByDescending(s => s.MainsVolts ?? 0).First()
                where worst.MainsVolts is not null
                let volts = worst.MainsVolts!.Value
                where Limits.IsAbove(volts, maximum)
                select rule.Find(new Subject(SubjectKind.Device, shield.Link.Device),
                    $"The {shield.Link} carries {Digits.Of(volts * 1000, maximum * 1000, "0.0")} mV of ground-loop hum " +
                    $"in \"{worst.Condition}\"; " +
                    $"policy maximum {Digits.Of(maximum * 1000, volts * 1000, "0.0")} mV.",
                    ElectricPotential.FromVolts(volts).ToUnit(policy.Unit), policy, worst.Condition));
    }

    /// <summary>The hum on video shields is unknown, because the ripple of a supply is not stated.</summary>
    public static Rule GroundLoopHumUnknown { get; } = new SimpleRule("ground-loop-hum-unknown",
        "ground-loop hum not checked", Severity.Note,
        "The ground-loop hum on video shields is unknown. The ripple of a supply that drives current through them is not stated.",
        "Take the ripple from the data sheet of the supply, or look at the picture at commissioning.",
        CheckConstants.ShieldHum.Source, isAboutWhatIsNotStated: true, check: (rule, evidence) =>
        {
            List<FeedGroup> unknown =
                [.. evidence.Assessment.Site.Feeds.Where(group => group.Links.Count > 0 && WithoutRipple(group).Any())];
            if (unknown.Count == 0) return [];
            int shields = unknown.Sum(group => group.Links.Count);
            string boxes = string.Join(", ", unknown.SelectMany(WithoutRipple).Distinct());
            return [rule.Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name),
                Invariant($"The ground-loop hum on {shields} video {(shields == 1 ? "shield" : "shields")} is unknown. ") +
                Invariant($"Not in the site file: ripple of {boxes}."))];
        });

    // One finding of one cause: of the thing itself where there is one, of the site where there are several.
    private static IEnumerable<Finding> FindAlike(Rule rule, Site site, IEnumerable<Subject> things, string plural, string one,
        string several)
    {
        List<Subject> all = [.. things];
        if (all.Count == 1) yield return rule.Find(all[0], $"It {one}.");
        if (all.Count < 2) yield break;
        yield return rule.Find(new Subject(SubjectKind.Site, site.Name),
            Invariant($"{all.Count} {plural} {several}: {string.Join(", ", all)}."));
    }

    private static string NominalVoltage(SupplyOutput output) =>
        Invariant($"{output.NominalVolts:R} V {(output.IsDc ? "DC" : "AC")}");

    private static bool IsOutside(double volts, VoltageRange range) =>
        Limits.IsAbove(volts, range.HighestVolts) || Limits.IsBelow(volts, range.LowestVolts);

    // A pre-terminated lead that is cable: the short one of a camera ends where its cable begins.
    private static bool IsExtended(CableSegment segment) => segment.Cable.IsPreTerminated
        && Limits.IsAbove(segment.OneWayLength.Meters, CheckConstants.LongestPigtail.Value);

    private static bool IsCopperClad(SiteRun run) =>
        run.Run.Segments.Any(s => s.Cable.Outgoing.Material.IsCopperCladAluminum || s.Cable.Return.Material.IsCopperCladAluminum);

    private static bool IsAcUnstated(DeviceAssessment device) => !device.Box.Supply.Output.IsDc
        && device.Device.Model.AcInput is not null && device.Device.Model.AcStage is null;

    // DC boxes whose ripple is not stated, in the order of their outputs.
    private static IEnumerable<DistributionBox> WithoutRipple(FeedGroup group) =>
        group.Feeds.Select(feed => feed.Box).Where(box => box.Supply.Output is DcOutput { Ripple: null });

    private static DeviceInCondition MostDrawn(DeviceAssessment device)
    {
        DeviceInCondition most = device.InConditions[0];
        foreach (DeviceInCondition candidate in device.InConditions)
        {
            if (candidate.AmperesDrawn > most.AmperesDrawn) most = candidate;
        }

        return most;
    }
}
