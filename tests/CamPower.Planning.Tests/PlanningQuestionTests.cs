using System;
using System.Collections.Generic;
using System.Linq;
using CamPower.Tests.Repository;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>Questions that cannot be asked are refused, each with what is wrong.</summary>
public class PlanningQuestionTests
{
    private static readonly PlannedCamera Door = PlanTests.Camera("door", 10);

    [Fact]
    public void EmptyListsAndRepeatedNames_AreRefused()
    {
        Assert.Throws<ArgumentException>("cameras", () => Question([], "gate"));
        Assert.Throws<ArgumentException>("places", () => Question([Door]));
        Assert.Throws<ArgumentException>("conditions", () => new PlanningQuestion("yard", [], [Door], [new BoxPlace("gate")]));
        Assert.Throws<ArgumentException>("cameras", () => Question([Door, Door], "gate"));
        Assert.Throws<ArgumentException>("places", () => Question([Door], "gate", "gate"));
        Assert.Throws<ArgumentException>("cameras", () => Question([Door.WithFeed("attic")], "gate"));
        Assert.Throws<ArgumentNullException>("places", () => new PlanningQuestion("yard", PlannedYard.Conditions, [Door], null!));
    }

    [Fact]
    public void NumbersOutsideTheirRange_AreNamedWithIt()
    {
        Assert.Contains("MostBoxes is 0 boxes; it must be from 1 to 100",
            Assert.Throws<ArgumentOutOfRangeException>("MostBoxes", () => new BoxPlace("gate") { MostBoxes = 0 }).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("Price", () => new BoxPlace("gate") { Price = -1 });
        Assert.Throws<ArgumentOutOfRangeException>("x", () => new BoxPlace("gate", Length.FromKilometers(200), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("routes", () => PlanTests.Camera("door", -1));
        Assert.Throws<ArgumentOutOfRangeException>("workLimit", () => Question([Door], "gate").Plan(workLimit: 0));
    }

    [Fact]
    public void BoxesThatCannotBePlannedWith_AreRefused()
    {
        DistributionBox box = PlannedYard.Box(4, 5, 13);
        var uneven = new DistributionBox("uneven", box.Supply, [new BoxOutput(1, ElectricCurrent.FromAmperes(1)), new BoxOutput(2, ElectricCurrent.FromAmperes(2))]);
        var transformer = new DistributionBox("transformer", new Supply("24 V AC", new AcOutput(
            ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(2), Ratio.FromPercent(5)), Derating.GenericEnclosed),
            [new BoxOutput(1, ElectricCurrent.FromAmperes(1))]);
        Assert.Contains("its outputs are not all alike", Refused(uneven), StringComparison.Ordinal);
        Assert.Contains("its supply must give a regulated direct voltage", Refused(transformer), StringComparison.Ordinal);
    }

    // 3 m and 4 m along the two directions: 7 m.
    [Fact]
    public void RoutesGoAlongBothDirections()
    {
        var camera = new PlannedCamera("door", PlannedYard.Dome, Length.FromMeters(-1), Length.FromMeters(5));
        Assert.Equal(7, camera.MetersFrom(new BoxPlace("gate", Length.FromMeters(2), Length.FromMeters(1))));
        Assert.Null(camera.MetersFrom(new BoxPlace("gate")));
        Assert.Null(Door.MetersFrom(new BoxPlace("attic")));
    }

    [Fact]
    public void EachPublicType_IsNamedInTheirPage()
    {
        string page = System.IO.File.ReadAllText(RepositoryFiles.PathOf("docs/planning.md"));
        Assert.All(typeof(SitePlan).Assembly.GetExportedTypes(), type => Assert.Contains($"`{type.Name}", page, StringComparison.Ordinal));
        Assert.InRange(typeof(SitePlan).Assembly.GetExportedTypes().Length, 1, 5);
    }

    private static string Refused(DistributionBox box) => Assert.Throws<ArgumentException>(
        () => new PlanningQuestion("yard", PlannedYard.Conditions, [Door], [new BoxPlace("gate")]) { Boxes = [box] }.Plan()).Message;

    private static PlanningQuestion Question(IEnumerable<PlannedCamera> cameras, params string[] places) =>
        new("yard", PlannedYard.Conditions, cameras, places.Select(name => new BoxPlace(name)));
}
