using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Reports.Diagrams;

/// <summary>Mark of a finding at one place of a diagram: its severity and the rule in words.</summary>
internal sealed record DiagramMark(Severity Severity, string Words)
{
    /// <summary>The marks of one subject, worst first. Notes stay in the list of findings.</summary>
    internal static IReadOnlyList<DiagramMark> Of(IEnumerable<Finding> findings, SubjectKind kind, string name) =>
    [
        .. findings.Where(f => f.Severity > Severity.Note && f.About.Kind == kind
            && string.Equals(f.About.Name, name, StringComparison.Ordinal))
            .OrderByDescending(f => f.Severity)
            .Select(f => new DiagramMark(f.Severity, $"{f.Severity}: {f.Title}"))
            .Distinct(),
    ];
}
