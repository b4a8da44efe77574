using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace CamPower.Planning;

/// <summary>Solves the integer program, checks the plan by the full assessment, leaves out what the rules object to, and solves again.
/// </summary>
/// <remarks>Cuts leave out only what breaks a rule, so that the bound of every round is a bound of the cost of any plan.</remarks>
internal sealed class PlanSearch
{
    // Where the limit is reached before any plan passed, a few more rounds of a part of the work look for one.
    private const int LastRounds = 20, MostRounds = 1000;
    private const double ShareOfLastRounds = 0.1;

    private readonly PlanningCase _planned;
    private readonly MasterProblem _master;
    private readonly PlanCheck _check;
    private readonly double _workLimit;
    private readonly CancellationToken _cancellationToken;
    private double _work, _bound;
    private int _rounds;

    internal PlanSearch(PlanningCase planned, double workLimit, CancellationToken cancellationToken)
    {
        _planned = planned;
        _workLimit = workLimit;
        _cancellationToken = cancellationToken;
        _master = new MasterProblem(planned);
        _check = new PlanCheck(planned, _master, cancellationToken);
    }

    internal SitePlan Plan()
    {
        int lastRounds = LastRounds;
        while (true)
        {
            double left = _workLimit - _work;
            bool isLate = left <= 0 || _rounds >= MostRounds;
            if (isLate && lastRounds-- == 0) return None();
            MasterAnswer answer = _master.Solve(isLate ? _workLimit * ShareOfLastRounds : left, _cancellationToken);
            _work += answer.Work;
            _rounds++;
            _bound = Math.Max(_bound, answer.Bound);
            if (answer.IsInfeasible) return None();
            if (answer.Choice is not PlanChoice choice) continue;
            SiteAssessment solved = PlanSite.Of(_planned, choice).Assess(_cancellationToken);
            IReadOnlyList<Finding> findings = _check.FindingsOf(solved);
            Finding[] objections = [.. findings.Where(_check.IsObjection)];
            if (objections.Length == 0) return Found(choice, solved, findings);
            _check.Exclude(choice, objections);
        }
    }

    // What the rounding of prices may hide is no gap.
    private SitePlan Found(PlanChoice choice, SiteAssessment solved, IReadOnlyList<Finding> findings)
    {
        double cost = choice.CostIn(_planned);
        double bound = cost - _bound <= _master.Rounding ? cost : _bound;
        return new SitePlan(
            _planned.Question, solved, cost, bound, findings, [.. new PlanBindings(_planned, _check).Of(choice)], _work, _rounds);
    }

    private SitePlan None() => new(_planned.Question, null, null, _bound, [],
        double.IsPositiveInfinity(_bound) ? [.. new PlanBindings(_planned, _check).OfNone()] : [], _work, _rounds);
}
