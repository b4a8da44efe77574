using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>What the bound rests on: what is found of few cameras on a box is found of more.</summary>
public class CompanyRulesTests
{
    private static readonly string[] Kinds = ["open, limits", "open, resettable fuses", "closed, limits", "closed, resettable fuses"];

    public static TheoryData<string> AllKinds => [.. Kinds];

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void FindingsThatStay_StayWithOneMoreCamera(string kind)
    {
        DistributionBox box = BoxOf(kind, amperes: 3);
        var random = new Random(20);
        int held = 0;
        for (int i = 0; i < 60; i++)
        {
            (Device, double, int)[] cameras = [.. Enumerable.Range(0, 2 + random.Next(6)).Select(_ => Any(random))];
            ISet<string> more = RulesOf(box, cameras), few = RulesOf(box, cameras[..^1]);
            string[] stay = [.. few.Where(rule => CompanyRules.Stays(rule, isHeated: box.Enclosure is not null))];

            // An overload speaks for what it does to voltages, and above the headroom is above the rating in the end.
            if (!more.Any(CompanyRules.IsOfLoad)) Assert.Empty(stay.Except(more));
            held += stay.Length;
        }

        Assert.True(held > 10, $"only {held} findings were tried");
    }

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void WhatACameraBreaksAlone_ItBreaksInCompany(string kind)
    {
        DistributionBox box = BoxOf(kind, amperes: 5);
        PlanningQuestion question = Question();
        var trials = new RunTrials(question, RuleSet.Standard);
        var random = new Random(21);
        int held = 0;
        for (int i = 0; i < 60; i++)
        {
            (Device Model, double Meters, int Cable)[] cameras = [.. Enumerable.Range(0, 2 + random.Next(6)).Select(_ => Any(random))];
            RunTrial alone = trials.Of(new PlannedCamera("alone", cameras[0].Model, Length.Zero, Length.Zero), cameras[0].Meters, box,
                PlannedYard.Cables[cameras[0].Cable]);
            Assert.Empty(alone.Objections.Select(f => f.Rule).Except(RulesOf(box, cameras)));
            held += alone.Objections.Count;
        }

        Assert.True(held > 10, $"only {held} findings were tried");
    }

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void NoBoxThatKeepsTheRulesOfLoad_IsLoadedAboveItsCapacity(string kind)
    {
        DistributionBox box = BoxOf(kind, amperes: 3);
        PlanningQuestion question = Question();
        var capacity = new BoxCapacity(question, RuleSet.Standard);
        double[] most = [.. question.Conditions.Select(c => capacity.MostAmperes(box, c))];
        var random = new Random(22);
        int above = 0, below = 0;
        for (int i = 0; i < 60; i++)
        {
            Site site = SiteOf(box, [.. Enumerable.Range(0, 1 + random.Next(8)).Select(_ => Any(random))]);
            SiteAssessment solved = site.Assess();
            bool keeps = RuleSet.Standard.Check(solved).All(f => f.Severity <= Severity.Note || !CompanyRules.IsOfLoad(f.Rule));
            bool isAbove = solved.Boxes[0].InConditions.Zip(most, (c, limit) => c.TotalCurrent.Amperes > limit).Any(x => x);
            Assert.False(keeps && isAbove);
            if (isAbove) above++;
            else if (keeps) below++;
        }

        Assert.True(above > 5 && below > 5, $"{above} above, {below} below");
    }

    private static PlanningQuestion Question() => new("yard", PlannedYard.Conditions, [PlanTests.Camera("camera", 1)], [new BoxPlace("gate")])
    {
        InstallationMethod = InstallationMethod.InCableOrRaceway(2),
    };

    private static DistributionBox BoxOf(string kind, double amperes)
    {
        DistributionBox box = PlannedYard.Box(8, amperes, 13, kind.EndsWith("limits", StringComparison.Ordinal) ? PlannedYard.Limit : PlannedYard.ResettableFuse);
        return kind.StartsWith("closed", StringComparison.Ordinal) ? box.WithEnclosure(PlannedYard.Closed(0.3)) : box;
    }

    private static (Device Model, double Meters, int Cable) Any(Random random)
    {
        Device[] models = [PlannedYard.Dome, PlannedYard.Bullet, PlannedYard.Heated, PlannedYard.Indoor];
        return (models[random.Next(models.Length)], random.Next(90), random.Next(PlannedYard.Cables.Count));
    }

    private static HashSet<string> RulesOf(DistributionBox box, (Device, double, int)[] cameras) => RuleSet.Standard.Check(SiteOf(box, cameras).Assess())
        .Where(f => f.Severity > Severity.Note).Select(f => f.Rule).ToHashSet(StringComparer.Ordinal);

    private static Site SiteOf(DistributionBox box, (Device Model, double Meters, int Cable)[] cameras) => new("yard", PlannedYard.Conditions, [box],
        cameras.Select((c, i) => new SiteRun(RunOrigin.Output(box.Name, i + 1), $"camera {i}",
            new CableRun(PlannedYard.Cables[c.Cable], Length.FromMeters(c.Meters)), installationMethod: InstallationMethod.InCableOrRaceway(2))),
        cameras.Select((c, i) => new SiteDevice($"camera {i}", c.Model, $"camera {i}")));
}
