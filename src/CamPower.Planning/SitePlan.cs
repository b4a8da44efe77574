using System;
using System.Collections.Generic;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>A plan of least cost, or the answer that there is none.</summary>
/// <remarks>Immutable.</remarks>
public sealed class SitePlan
{
    internal SitePlan(PlanningQuestion question, SiteAssessment? assessment, double? cost, double bound, IReadOnlyList<Finding> findings,
        IReadOnlyList<PlanBinding> bindings, double work, int rounds)
    {
        Question = question;
        Assessment = assessment;
        Cost = cost;
        LowerBound = bound;
        Findings = findings;
        Bindings = bindings;
        Work = work;
        Rounds = rounds;
    }

    /// <summary>The question.</summary>
    public PlanningQuestion Question { get; }

    /// <summary>The plan as a site; null where none was found.</summary>
    public Site? Site => Assessment?.Site;

    /// <summary>The plan solved in every condition, as the rules checked it; null where none was found.</summary>
    public SiteAssessment? Assessment { get; }

    /// <summary>What it costs without what was given, in the unit of the prices; null where no plan was found.</summary>
    public double? Cost { get; }

    /// <summary>A cost below which there is no plan; infinite where there is none at all.</summary>
    public double LowerBound { get; }

    /// <summary>How far the cost is above the lower bound, in percent of the cost; null where no plan was found. [%]</summary>
    public Ratio? Gap => Cost is not double cost ? null : Ratio.FromPercent(cost > 0 ? 100 * (cost - LowerBound) / cost : 0);

    /// <summary>Whether it is proven that no plan is cheaper, or that there is none at all.</summary>
    public bool IsProven => Cost is double cost ? LowerBound >= cost : double.IsPositiveInfinity(LowerBound);

    /// <summary>What the rules found in it, none of it more severe than was allowed.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>What keeps it from costing less: for each box the next cheaper one, for each camera the next cheaper cable and the cheapest
    /// run from another box, each with what speaks against it. Without a plan, what keeps cameras from being fed.</summary>
    public IReadOnlyList<PlanBinding> Bindings { get; }

    /// <summary>The work of the solver, in its own unit.</summary>
    public double Work { get; }

    /// <summary>How often a plan was made and checked.</summary>
    public int Rounds { get; }

    /// <summary>Cost and proof in one line, in the invariant culture; never throws.</summary>
    public override string ToString() => PlanText.Headline(this);

    /// <summary>The plan in lines of text: boxes, runs, cost, proof, and what binds.</summary>
    public string ToText() => PlanText.Of(this);
}
