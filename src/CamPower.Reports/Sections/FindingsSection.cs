using System.Collections.Generic;
using System.Linq;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>Section of the findings, worst first, and their remedies.</summary>
internal static class FindingsSection
{
    /// <summary>What is not stated has a section of its own.</summary>
    internal static Section Of(IReadOnlyList<Finding> findings)
    {
        Finding[] found = [.. findings.Where(f => !f.IsNotStated)];
        return new Section("Findings", found.Length == 0
            ? [new Paragraph("The rules that were applied found nothing to correct.")]
            : [new Paragraph("Worst first."), new FoundList(FindingGroup.Of(found))]);
    }
}
