using System.Collections.Generic;
using CamPower.Reports.Contents;

namespace CamPower.Reports.Sections;

/// <summary>What was found, worst first, and what to do about it.</summary>
internal static class FindingsSection
{
    internal static Section Of(IReadOnlyList<Finding> findings) => new("What to put right", findings.Count == 0
        ? [new Paragraph("The rules that were asked found nothing.")]
        : [new Paragraph("Worst first."), new FoundList(FindingGroup.Of(findings))]);
}
