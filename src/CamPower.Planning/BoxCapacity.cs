using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>The largest load that the rules of load and heat let a box have, found by asking the core's own assessment.</summary>
/// <remarks>The load is spread evenly over all outputs, which loses least in their protective devices: no plan has more room than that.
/// </remarks>
internal sealed class BoxCapacity
{
    // From above, in steps of the rated current, so that a range of loads that fails below one that passes is passed over.
    private const int StepsARating = 50, MostRatings = 2, Halvings = 12;

    private readonly PlanningQuestion _question;
    private readonly RuleSet _rules;

    internal BoxCapacity(PlanningQuestion question, RuleSet rules)
    {
        _question = question;
        _rules = new RuleSet(rules.Rules.Where(rule => CompanyRules.IsOfLoad(rule.Id)));
    }

    /// <summary>The largest load in a condition, or a little more. [A]</summary>
    internal double MostAmperes(DistributionBox box, Condition condition)
    {
        double rated = box.Supply.Output.RatedCurrent.Amperes, step = rated / StepsARating;
        int steps = MostRatings * StepsARating;
        while (steps > 0 && !Keeps(box, condition, steps * step)) steps--;
        double passes = steps * step, fails = passes + step;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (passes + fails) / 2;
            if (Keeps(box, condition, middle)) passes = middle;
            else fails = middle;
        }

        return fails;
    }

    private bool Keeps(DistributionBox box, Condition condition, double amperes)
    {
        ElectricPotential volts = box.Supply.Output.Nominal;
        var anything = new VoltageRange(ElectricPotential.FromVolts(volts.Volts / 10), ElectricPotential.FromVolts(volts.Volts * 10));
        var device = new Device("load", DeviceKind.Camera,
            new ComponentDraw(Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes / box.Outputs.Count))), anything);
        var short0 = new CableRun(CableCatalog.Pair14, Length.Zero);
        var site = new Site(_question.Name, [condition], [box],
            box.Outputs.Select(o => new SiteRun(RunOrigin.Output(box.Name, o.Number), NameOf(o), short0)),
            box.Outputs.Select(o => new SiteDevice(NameOf(o), device, NameOf(o))), altitude: _question.Altitude);
        return !_rules.Check(site.Assess()).Any(f => f.Severity > _question.MostSevere && f.About.Kind == SubjectKind.Box);
    }

    private static string NameOf(BoxOutput output) => FormattableString.Invariant($"load {output.Number}");
}
