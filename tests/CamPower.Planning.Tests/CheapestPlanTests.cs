using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>Plans of up to eight cameras and two places cost what the cheapest of all plans costs.</summary>
public class CheapestPlanTests
{
    [Theory]
    [InlineData(5, 1, 2)]
    [InlineData(6, 2, 3)]
    [InlineData(8, 3, 4)]
    [InlineData(8, 4, 8)]
    public void InOpenAir(int cameras, int seed, int smallest) => AssertCheapest(Few(Yard(cameras, seed, 70), smallest));

    // The load that the boxes may have depends on the heat in them, and so do their resettable fuses.
    [Theory]
    [InlineData(6, 1)]
    [InlineData(8, 2)]
    public void InAHotEnclosure(int cameras, int seed) =>
        AssertCheapest(Few(Yard(cameras, seed, 50), 4, PlannedYard.Closed(cameras > 6 ? 0.5 : 0.25), PlannedYard.ResettableFuse, mostSevere: Severity.Caution));

    // Boxes that are small for their outputs: loads bind, not outputs.
    [Fact]
    public void WithWeakSupplies() => AssertCheapest(Few(Yard(cameras: 7, seed: 1, 60), 8, amperesAnOutput: 0.4));

    // Of all motors one moves at a time, on the whole site.
    [Fact]
    public void WithMotors()
    {
        PlanningQuestion yard = Yard(6, 6, 60);
        var question = new PlanningQuestion("motors", [Condition.NightWithMotion(PlannedYard.At(25, 35, 20), motorsMoving: 1)],
            yard.Cameras.Select((camera, i) => i % 2 == 0 ? camera : Moved(camera)), yard.Places)
        {
            Boxes = [PlannedYard.Box(8, 3, 13), PlannedYard.Box(8, 5, 13)], Cables = [PlannedYard.Pair(20), PlannedYard.Pair(16)],
            InstallationMethod = yard.InstallationMethod,
        };
        AssertCheapest(question);

        PlannedCamera Moved(PlannedCamera camera) => new(camera.Name, PlannedYard.PanTilt,
            yard.Places.ToDictionary(place => place.Name, place => Length.FromMeters(camera.MetersFrom(place)!.Value)));
    }

    private static PlanningQuestion Yard(int cameras, int seed, double meters) => PlannedYard.Of(cameras, places: 2, seed, meters);

    private static PlanningQuestion Few(PlanningQuestion yard, int smallest, Enclosure? enclosure = null, ProtectiveDevice? protection = null,
        double amperesAnOutput = 0.9, Severity mostSevere = Severity.Note) => new(
        yard.Name, [yard.Conditions[0], yard.Conditions[1]], yard.Cameras,
        yard.Places.Select(place => new BoxPlace(place.Name, Length.FromMeters(place.XMeters), Length.FromMeters(place.YMeters)) { Enclosure = enclosure }))
    {
        Boxes = [PlannedYard.Box(smallest, amperesAnOutput * smallest, 13, protection), PlannedYard.Box(16, amperesAnOutput * 16, 13, protection)],
        Cables = [PlannedYard.Pair(20), PlannedYard.Pair(16)],
        InstallationMethod = yard.InstallationMethod,
        MostSevere = mostSevere,
    };

    private static void AssertCheapest(PlanningQuestion question)
    {
        SitePlan plan = question.Plan();
        double? least = new EveryPlan(question).LeastCost(plan.Cost + 1e-3 ?? double.PositiveInfinity);
        Assert.True(plan.IsProven, plan.ToText());
        Assert.Equal(least is null, plan.Cost is null);
        if (least is double cost) Assert.Equal(cost, plan.Cost!.Value, 1e-6);
    }
}
