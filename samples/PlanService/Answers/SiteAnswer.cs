using System.Collections.Generic;
using System.Linq;
using CamPower;

namespace PlanService.Answers;

/// <summary>A site in every condition, and what was found.</summary>
public sealed record SiteAnswer
{
    /// <summary>Name of the site.</summary>
    public required string Site { get; init; }

    /// <summary>The worst severity found: note, caution, failure or danger; absent where nothing was found.</summary>
    public string? Worst { get; init; }

    /// <summary>The conditions, in the order of the file.</summary>
    public required IReadOnlyList<ConditionAnswer> Conditions { get; init; }

    /// <summary>The devices, in the order of the file.</summary>
    public required IReadOnlyList<DeviceAnswer> Devices { get; init; }

    /// <summary>The boxes and adapters with their used outputs, in the order of the file.</summary>
    public required IReadOnlyList<BoxAnswer> Boxes { get; init; }

    /// <summary>The video shields that carry return current.</summary>
    public required IReadOnlyList<ShieldAnswer> Shields { get; init; }

    /// <summary>What was found, worst first.</summary>
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Identifiers of what no number tells and a person must look at on site, findings or not; GET /inspections explains them.</summary>
    public required IReadOnlyList<string> Inspections { get; init; }

    internal static SiteAnswer Of(Evidence evidence, IReadOnlyList<Finding> findings) => Of(evidence.Assessment, evidence.Faults, findings);

    private static SiteAnswer Of(SiteAssessment assessment, IReadOnlyList<OutputFaults> faults, IReadOnlyList<Finding> findings) => new()
    {
        Site = assessment.Site.Name,
        Worst = findings.Count == 0 ? null : Word.Of(findings.Max(f => f.Severity)),
        Conditions = [.. assessment.Site.Conditions.Select(ConditionAnswer.Of)],
        Devices = [.. assessment.Devices.Select(DeviceAnswer.Of)],
        Boxes = [.. assessment.Boxes.Select(box => BoxAnswer.Of(box, faults))],
        Shields = [.. assessment.Shields.Select(ShieldAnswer.Of)],
        Findings = [.. findings.Select(FindingAnswer.Of)],
        Inspections = [.. InspectionList.Standard.Items.Select(i => i.Id)],
    };
}
