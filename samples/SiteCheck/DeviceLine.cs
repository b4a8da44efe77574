using System.Collections.Generic;
using System.Linq;
using CamPower;
using static System.FormattableString;

namespace SiteCheck;

/// <summary>One device as a line of a table or of the schedule.</summary>
internal sealed record DeviceLine(BoxAssessment Box, OutputAssessment Output, DeviceAssessment Device)
{
    /// <summary>Every device of some boxes, output by output.</summary>
    public static IEnumerable<DeviceLine> Of(SiteAssessment assessment, IEnumerable<BoxAssessment> boxes) =>
        from box in boxes
        from output in box.Outputs
        from device in assessment.Devices
        where device.Box == box.Box && device.Output == output.Output
        select new DeviceLine(box, output, device);

    /// <summary>The lowest and the highest voltage over all conditions: 0 where it does not stay up, a question mark where that is not known. [V]</summary>
    public string Gets
    {
        get
        {
            if (Device.Worst.State == DeviceState.WrongCurrent) return "-";
            string highest = Spoken.Volts(Device.LightLoadVoltage);
            if (Device.Worst.State == DeviceState.SupplyOverloaded) return $"?-{highest}";
            string lowest = Device.Worst.State == DeviceState.Up ? Spoken.Volts(Device.Worst.Voltage) : "0";
            return lowest == highest ? lowest : $"{lowest}-{highest}";
        }
    }

    public string Accepts => Device.Worst.Accepted is VoltageRange accepted ? Invariant($"{accepted.Lowest.Volts:0.##}-{accepted.Highest.Volts:0.##}") : "-";

    /// <summary>What its output carries, of what it may; of a box with one output in use what its supply may deliver, where that is less.</summary>
    public string Load
    {
        get
        {
            double limit = Output.Output.Limit.Amperes;
            if (Box.Outputs.Count == 1 && Box.Worst.DeratedRating.Amperes < limit) limit = Box.Worst.DeratedRating.Amperes;
            return Invariant($"{(Output.Worst.IsDemandOnly ? "needs " : "")}{Output.Worst.Current.Amperes:0.00} of {limit:0.##}");
        }
    }

    /// <summary>What is wrong with the voltage that it gets, or that it is not known; null where nothing is.</summary>
    public string? Wrong => Device.Worst.State switch
    {
        DeviceState.SupplyOverloaded => "supply overloaded",
        DeviceState.Restarting => "keeps restarting",
        DeviceState.NeverUp => "stays off",
        DeviceState.NoOperatingPoint => "cable cannot carry it",
        DeviceState.WrongCurrent => WrongCurrent,
        _ when !(Box.Worst.DeratedRating.Amperes > 0) => SupplyMayNotRun,
        _ when Device.AtLightLoad.Verdict == CamPower.Verdict.Violated => "too high",
        _ when !Device.InConditions.All(c => c.WouldStart) => "does not start",
        _ when Device.InConditions.Any(c => c.IsOpenedInService) => "fuse or limit opens",
        _ => Device.Verdict switch
        {
            CamPower.Verdict.Violated => "too low",
            CamPower.Verdict.Unknown => "not known",
            _ => null,
        },
    };

    // Reversed leads are on DC; the others take what they do not accept.
    private string WrongCurrent => Device.Device.LeadsReversed && Box.Box.Supply.Output is DcOutput && Device.Device.Model.DcInput is not null ? "leads reversed"
        : Box.Box.Supply.Output is AcOutput ? "AC on DC input"
        : "DC on AC input";

    private string SupplyMayNotRun => Box.Worst.HottestAir.Verdict == CamPower.Verdict.Violated ? "supply too hot"
        : Box.Worst.ColdestAir.Verdict == CamPower.Verdict.Violated ? "supply too cold"
        : "supply may not run";

    /// <summary>What is wrong with its voltage; else the severity of the worst finding that names it or what feeds it; else that all is well.</summary>
    public string Verdict(IReadOnlyList<Finding> findings)
    {
        if (Wrong is string wrong) return wrong;
        Finding? worst = findings.Where(IsOfThis).MaxBy(f => f.Severity);
        if (worst is null) return "ok";
        string severity = worst.Severity.ToString().ToLowerInvariant();
        return worst.About.Name == Box.Box.Name ? $"box: {severity}" : severity;
    }

    // Of the findings about its whole box only a danger is repeated with each device.
    private bool IsOfThis(Finding finding) =>
        (finding.Severity > Severity.Note && Names().Contains(finding.About.Name)) || (finding.Severity == Severity.Danger && finding.About.Name == Box.Box.Name);

    private IEnumerable<string> Names() =>
    [
        Device.Device.Name,
        Subject.Of(Box.Box, Output.Output).Name,
        .. Device.Path.Select(run => Subject.Of(run).Name),
    ];
}
