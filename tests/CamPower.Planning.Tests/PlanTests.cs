using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>What a plan promises.</summary>
public class PlanTests
{
    private const string Place = "gate";

    // 10 m of route are 10 x 1.1 + 2 x 0.5 = 12 m of cable, at 0.1 and 1 of work a meter: 13.2. The box: a supply of 30 by its own price,
    // 4 outputs of 1 and 4 limits of 2 by the neutral ones, a visit of 5, and 7 for the place: 54.
    [Fact]
    public void Cost_IsThatOfBoxPlaceCableAndWork()
    {
        PriceList prices = PriceList.Neutral.With("20 AWG pair", 0.1).With("12 V 5 A supply", 30);
        SitePlan plan = Question([("door", 10)], placePrice: 7, prices).Plan();
        Assert.Equal(67.2, plan.Cost!.Value, 1e-9);
        Assert.True(plan.IsProven);
        Assert.Equal((plan.Cost.Value, 0.0), (plan.LowerBound, plan.Gap!.Value.Percent));
        Assert.Equal("67.2 points, proven least.", plan.ToString());
        Assert.Equal(10, plan.Site!.Runs.Single().Run.OneWayLength.Meters);
    }

    // Of 8 outputs 6 may be used, for 7.5 outputs are more than 8 less than a quarter of 7: 7 x 1.25 = 8.75.
    [Fact]
    public void Bindings_NameTheOutputsThatTheNextCheaperBoxLacks()
    {
        SitePlan plan = Question([.. Enumerable.Range(1, 7).Select(i => ($"camera {i}", 10.0))]).Plan();
        PlanBinding binding = Assert.Single(plan.Bindings, b => b.About.Kind == SubjectKind.Box);
        Assert.Equal(16, plan.Site!.Boxes.Single().Outputs.Count);
        Assert.Equal("Of its 8 outputs 6 may be used; 7 are needed.", binding.Reason);
        Assert.Equal(("8 outputs at 13 V", 44.0), (binding.Alternative, binding.Saves!.Value));
        Assert.Contains("gate: 8 outputs at 13 V would save 44. Of its 8", plan.ToText(), StringComparison.Ordinal);
    }

    // A dome of 8.4 W behind 60 m wants more than 18 AWG at 13 V less 1 %.
    [Fact]
    public void Bindings_NameWhatSpeaksAgainstTheNextCheaperCable()
    {
        SitePlan plan = Question([("far", 60)]).Plan();
        PlanBinding binding = Assert.Single(plan.Bindings);
        Assert.Equal("18 AWG pair", binding.Alternative);
        Assert.Equal(SubjectKind.Device, binding.About.Kind);
        Assert.Contains(binding.Finding!.Rule, new[] { "undervoltage", "thin-voltage-margin" });
        Assert.True(binding.Saves > 0);
    }

    [Fact]
    public void WhatIsGiven_StaysAndCostsNothing()
    {
        DistributionBox present = PlannedYard.Box(8, 10, 13);
        Cable laid = PlannedYard.Pair(14);
        PlannedCamera[] cameras = [Camera("old", 20).WithFeed(Place, laid), Camera("new", 10)];
        var question = new PlanningQuestion("yard", PlannedYard.Conditions, cameras, [new BoxPlace(Place) { Box = present, Price = 100 }])
        {
            Boxes = PlannedYard.Boxes(), Cables = PlannedYard.Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        };
        SitePlan plan = question.Plan();

        // Only the new run: 12 m of 20 AWG pair.
        Assert.Equal(12 * (PriceList.Neutral.OfAMeter(PlannedYard.Pair(20)) + 1), plan.Cost!.Value, 1e-6);
        Assert.Same(present.Supply, plan.Site!.Boxes.Single().Supply);
        Assert.Same(laid, plan.Site.Runs.Single(run => run.To == "old").Run.Segments.Single().Cable);
        Assert.DoesNotContain(plan.Bindings, b => b.About.Name == "old");
    }

    [Fact]
    public void ABoxThatIsGiven_StaysWithoutACamera()
    {
        var question = new PlanningQuestion("yard", PlannedYard.Conditions, [Camera("door", 10)],
            [new BoxPlace(Place), new BoxPlace("shed") { Box = PlannedYard.Box(4, 5, 13) }])
        {
            Boxes = PlannedYard.Boxes(), Cables = PlannedYard.Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        };
        Assert.Equal([Place, "shed"], question.Plan().Site!.Boxes.Select(b => b.Name));
    }

    [Fact]
    public void WhereACameraCannotBeFed_ThereIsProvenToBeNoPlan_AndItSaysWhy()
    {
        SitePlan plan = Question([("near", 10), ("too far", 900)]).Plan();
        Assert.Null(plan.Site);
        Assert.Null(plan.Cost);
        Assert.Null(plan.Gap);
        Assert.True(plan.IsProven);
        PlanBinding binding = Assert.Single(plan.Bindings);
        Assert.Equal("too far", binding.About.Name);
        Assert.Equal("900 m of 14 AWG pair from gate, the nearest place", binding.Alternative);
        Assert.StartsWith("There is no plan that keeps every rule", plan.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void WhereOutputsAreTooFew_ItSaysHowMany()
    {
        SitePlan plan = Question([.. Enumerable.Range(1, 13).Select(i => ($"camera {i}", 10.0))]).Plan();
        Assert.True(plan.IsProven);
        Assert.Equal("They have 12 usable outputs at most; 13 are needed.", Assert.Single(plan.Bindings).Reason);
    }

    [Fact]
    public void ASecondBoxAtAPlace_GetsANumber()
    {
        var question = new PlanningQuestion("yard", PlannedYard.Conditions, Enumerable.Range(1, 13).Select(i => Camera($"camera {i}", 10)),
            [new BoxPlace(Place) { MostBoxes = 3 }])
        {
            Boxes = PlannedYard.Boxes(), Cables = PlannedYard.Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        };
        SitePlan plan = question.Plan();
        Assert.True(plan.IsProven);
        Assert.Equal(["gate", "gate 2"], plan.Site!.Boxes.Select(b => b.Name));
    }

    [Fact]
    public void EveryPlan_KeepsEveryRule_AndItsCostIsThatOfItsMaterialAndWork()
    {
        PlanningQuestion question = PlannedYard.HardOf(12, seed: 2);
        SitePlan plan = question.Plan();
        RuleSet rules = question.Rules.With(Rules.SupplyAboveHeadroomPolicy(question.Sizing.Loading));
        Assert.DoesNotContain(rules.Check(plan.Site!.Assess()), f => f.Severity > Severity.Note);
        Assert.Equal(question.Cameras.Select(c => c.Name), plan.Site!.Devices.Select(d => d.Name));
        MaterialList material = plan.Site.ListMaterial(question.Material, question.Prices);
        double work = (question.Prices.PullingAMeter * material.Pulls.Sum(p => p.Cut.Meters)) + (question.Prices.Visit * plan.Site.Boxes.Count);
        double places = plan.Site.Boxes.Sum(box => question.Places.Single(p => box.Name == p.Name || box.Name.StartsWith(p.Name + " ", StringComparison.Ordinal)).Price);
        Assert.Equal(material.Cost + work + places, plan.Cost!.Value, 1e-6);
    }

    [Fact]
    public void AtItsWorkLimit_ItStatesTheGap()
    {
        PlanningQuestion question = PlannedYard.HardOf(12, seed: 1);
        SitePlan proven = question.Plan(30), early = question.Plan(workLimit: 0.02);
        Assert.True(proven.IsProven);
        Assert.False(early.IsProven);
        Assert.InRange(early.LowerBound, 0, proven.Cost!.Value);
        if (early.Cost is not double cost) return;
        Assert.True(cost >= proven.Cost - 1e-6);
        Assert.Equal(100 * (cost - early.LowerBound) / cost, early.Gap!.Value.Percent, 1e-9);
        Assert.Contains("no plan costs less than", early.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void TheSameQuestion_GetsTheSamePlan() =>
        Assert.Equal(PlannedYard.Of(12, 2, seed: 3, meters: 60).Plan().ToText(), PlannedYard.Of(12, 2, seed: 3, meters: 60).Plan().ToText());

    // More to choose from costs no more.
    [Fact]
    public void AnotherPlaceToChoose_CostsNoMore()
    {
        PlanningQuestion two = PlannedYard.Of(10, places: 2, seed: 7, meters: 60);
        var three = new PlanningQuestion(two.Name, two.Conditions, two.Cameras,
            [.. two.Places, new BoxPlace("middle", Length.FromMeters(30), Length.FromMeters(30))])
        {
            Boxes = two.Boxes, Cables = two.Cables, InstallationMethod = two.InstallationMethod,
        };
        Assert.True(three.Plan().Cost <= two.Plan().Cost);
    }

    internal static PlannedCamera Camera(string name, double meters) =>
        new(name, PlannedYard.Dome, new Dictionary<string, Length> { [Place] = Length.FromMeters(meters) });

    private static PlanningQuestion Question((string Name, double Meters)[] cameras, double placePrice = 0, PriceList? prices = null) => new(
        "yard", PlannedYard.Conditions, cameras.Select(c => Camera(c.Name, c.Meters)), [new BoxPlace(Place) { Price = placePrice }])
    {
        Boxes = PlannedYard.Boxes(), Cables = PlannedYard.Cables, InstallationMethod = InstallationMethod.InCableOrRaceway(2),
        Prices = prices ?? PriceList.Neutral,
    };
}
