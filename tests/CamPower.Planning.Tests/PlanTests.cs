using System;
using System.Linq;
using UnitsNet;

namespace CamPower.Planning.Tests;

/// <summary>Plans against trying them all, and against what they promise.</summary>
public class PlanTests
{
    [Theory]
    [InlineData(3, 1)]
    [InlineData(5, 2)]
    public void Plan_CostsWhatTheCheapestOfAllPlansCosts(int cameras, int seed)
    {
        PlanningQuestion question = PlannedYard.Of(cameras, places: 2, seed);
        SitePlan plan = question.Plan();
        double? least = new EveryPlan(question).LeastCost();
        Assert.True(plan.IsProven, plan.ToText());
        Assert.True(plan.Cost is not null == least is not null, plan.ToText());
        if (least is double cost) Assert.Equal(cost, plan.Cost!.Value, 2e-3);
    }
}
