namespace CamPower.Planning;

/// <summary>What the solver answers.</summary>
/// <param name="Choice">The best choice that it found; null for none.</param>
/// <param name="IsInfeasible">Whether it proved that there is none.</param>
/// <param name="IsOptimal">Whether it proved that none is cheaper.</param>
/// <param name="Bound">A cost below which there is none.</param>
/// <param name="Work">Its work, in its own unit.</param>
internal sealed record MasterAnswer(PlanChoice? Choice, bool IsInfeasible, bool IsOptimal, double Bound, double Work);
