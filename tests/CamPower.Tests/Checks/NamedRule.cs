using System.Collections.Generic;

namespace CamPower.Tests.Checks;

/// <summary>A rule whose words and severity the test chooses; it speaks of the site once.</summary>
internal sealed class NamedRule(string id, Severity severity = Severity.Note, string purpose = "p", string remedy = "r", Citation? source = null, string message = "m")
    : Rule(id, severity, purpose, remedy, source ?? Sources.CommonPractice)
{
    public override IEnumerable<Finding> Check(Evidence evidence) => [Find(new Subject(SubjectKind.Site, evidence.Assessment.Site.Name), message)];
}
