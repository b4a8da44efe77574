namespace CamPower.Circuits;

/// <summary>The factor by which the constant-power components of a network could grow before its operating point is lost.</summary>
internal static class CollapseMargin
{
    private const double JustBeyond = 1e-9;

    /// <summary>The end of the branch that holds the operating point or, where there is none, of the branch that goes furthest.</summary>
    internal static double Of(OperatingPointSearch search)
    {
        if (!search.TryFind(0)) return 0;
        if (!search.HasConstantPower) return double.PositiveInfinity;
        double end = SolutionBranch.End(search, 0);

        // Where the branch from zero load ends before the load, the voltages jump to a lower one, if there is any.
        // At a load whose voltage is a small part of the sources' a point is found a little beyond the end: each look goes twice as far.
        for (double beyond = JustBeyond; search.SourcesMaySwitch && end < 1; beyond *= 2)
        {
            double next = 1;
            if (!search.TryFind(next) && !search.TryFind(next = end * (1 + beyond))) return end;
            end = SolutionBranch.End(search, next);
        }

        return end;
    }
}
