namespace CamPower.Tests.Checks;

/// <summary>A site that a rule speaks of, the nearest one that it does not speak of, and what it must say.</summary>
/// <param name="Rule">Identifier of the rule.</param>
/// <param name="Severity">Its severity.</param>
/// <param name="Fires">The site with the fault, and no other.</param>
/// <param name="Neighbor">The same site with the fault a hair less, or gone.</param>
/// <param name="About">Whom the finding names.</param>
/// <param name="Measured">The measured value, in the unit shown; null where nothing is measured.</param>
/// <param name="Limit">The limit, in the same unit.</param>
/// <param name="Unit">V, A, W, VA, °C, m, mm², or empty for a count.</param>
/// <param name="Condition">The condition that the finding names, or null for none.</param>
internal sealed record RuleCase(string Rule, Severity Severity, Site Fires, Site Neighbor, string About,
    double? Measured = null, double? Limit = null, string Unit = "V", string? Condition = null);
