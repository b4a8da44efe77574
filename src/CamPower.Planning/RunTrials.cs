using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning;

/// <summary>Tries single runs by the full assessment and every rule: what a camera breaks alone, it breaks in company too.</summary>
/// <remarks>A box with one camera is as lightly loaded and as cool as it can be. So only findings of camera, run and output count here, and
/// of those only what more load and more heat cannot cure.</remarks>
internal sealed class RunTrials(PlanningQuestion question, RuleSet rules)
{
    private readonly Dictionary<(Device, double, DistributionBox, Cable), RunTrial> _done = [];

    /// <summary>One camera on a box.</summary>
    internal RunTrial Of(PlannedCamera camera, double meters, DistributionBox box, Cable cable)
    {
        if (_done.TryGetValue((camera.Model, meters, box, cable), out RunTrial? done)) return done;
        Site site = Alone(camera.Model, meters, box, cable, question.Conditions);
        SiteAssessment solved = site.Assess();
        Finding[] objections = [.. rules.Check(solved).Where(f => f.Severity > question.MostSevere && IsCertain(f, box))];
        double[] amperes = AmperesOf(solved);
        double[] atRest = camera.Model.Draw.HasMotor && question.Conditions.Any(c => c.MotorsMoving is not null)
            ? AmperesOf(Alone(camera.Model, meters, box, cable, [.. question.Conditions.Select(AtRest)]).Assess())
            : amperes;
        var trial = new RunTrial(CostOf(site, box), new RunDraw(amperes, atRest), objections);
        _done.Add((camera.Model, meters, box, cable), trial);
        return trial;
    }

    private Site Alone(Device model, double meters, DistributionBox box, Cable cable, IReadOnlyList<Condition> conditions) => new(
        question.Name, conditions, [box],
        [new SiteRun(RunOrigin.Output(box.Name, 1), model.Name, new CableRun(cable, Length.FromMeters(meters)),
            installationMethod: question.InstallationMethod)],
        [new SiteDevice(model.Name, model, at: model.Name)], altitude: question.Altitude);

    private static double[] AmperesOf(SiteAssessment solved) =>
        [.. solved.Boxes[0].InConditions.Select(c => c.TotalCurrent.Amperes)];

    private static Condition AtRest(Condition condition) => condition.MotorsMoving is null
        ? condition
        : new Condition(condition.Name, condition.On, condition.At, motorsMoving: 0, condition.Duration, condition.LineVoltage,
            condition.HoursAYear);

    // The cable, its connector, and the work of pulling it.
    private double CostOf(Site site, DistributionBox box)
    {
        MaterialList all = site.ListMaterial(question.Material, question.Prices);
        MaterialList boxAlone = new Site(site.Name, site.Conditions, [box], [], []).ListMaterial(question.Material, question.Prices);
        return all.Cost - boxAlone.Cost + (question.Prices.PullingAMeter * all.Pulls.Sum(pull => pull.Cut.Meters));
    }

    private static bool IsCertain(Finding finding, DistributionBox box) =>
        finding.About.Kind is SubjectKind.Device or SubjectKind.Run or SubjectKind.Output
        && (box.Enclosure is null || !CompanyRules.HeatMayCure(finding.Rule));
}
