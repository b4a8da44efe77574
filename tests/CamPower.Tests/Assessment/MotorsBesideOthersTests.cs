using System.Linq;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Assessment;

/// <summary>Three cameras with unlike motors beside infrared and heaters, of which none, one, two or all move.</summary>
public class MotorsBesideOthersTests
{
    // At rest 0.5 + 0.3 + 0.15, 0.6 and 0.7 + 0.25 + 0.35 A; the motors add 0.2, 0.7 and 0.4 A.
    private static readonly Device[] Three =
    [
        Camera(new ComponentDraw(Amperes(0.5), infrared: Amperes(0.3), motor: Amperes(0.2), heater: Amperes(0.15))),
        Camera(new ComponentDraw(Amperes(0.6), motor: Amperes(0.7))),
        Camera(new ComponentDraw(Amperes(0.7), infrared: Amperes(0.25), motor: Amperes(0.4), heater: Amperes(0.35))),
    ];

    // All at one place on one output: those move that add most.
    [Theory]
    [InlineData(0, new[] { 0.95, 0.6, 1.3 })]
    [InlineData(1, new[] { 0.95, 1.3, 1.3 })]
    [InlineData(2, new[] { 0.95, 1.3, 1.7 })]
    [InlineData(3, new[] { 1.15, 1.3, 1.7 })]
    [InlineData(null, new[] { 1.15, 1.3, 1.7 })]
    public void OnOneOutput(int? moving, double[] amperes)
    {
        BoxAssessment box = Shared(0.1, Box(), [Moving(moving)], Three).Assess().Boxes[0];
        Assert.Equal(amperes.Sum(), box.Outputs[0].Worst.Current.Amperes, 1e-9);
        Assert.Equal(amperes.Sum(), box.Worst.TotalCurrent.Amperes, 1e-9);
    }

    // Each on its own output, which must bear its own motor; the box bears those that may move together.
    [Theory]
    [InlineData(0, new[] { 0.95, 0.6, 1.3 }, 2.85)]
    [InlineData(1, new[] { 1.15, 1.3, 1.7 }, 2.85 + 0.7)]
    [InlineData(2, new[] { 1.15, 1.3, 1.7 }, 2.85 + 1.1)]
    [InlineData(3, new[] { 1.15, 1.3, 1.7 }, 2.85 + 1.3)]
    [InlineData(null, new[] { 1.15, 1.3, 1.7 }, 2.85 + 1.3)]
    public void OnOutputsOfTheirOwn(int? moving, double[] outputs, double total)
    {
        BoxAssessment box = Star(Box(), [Moving(moving)], [.. Three.Select(d => (0.1, d))]).Assess().Boxes[0];
        AssertEqual(outputs, [.. box.Outputs.Select(o => o.Worst.Current.Amperes)]);
        Assert.Equal(total, box.Worst.TotalCurrent.Amperes, 1e-9);
    }

    // Two on one output and one on another, in both orders of the outputs: the box bears the largest motor of all.
    [Theory]
    [InlineData(1, 2)]
    [InlineData(2, 1)]
    public void OnTwoOutputs_OneMoves(int ofTwo, int ofOne)
    {
        var site = new Site("site", [Moving(1)], [Box()],
            [
                new SiteRun(RunOrigin.Output(BoxName, ofTwo), "two", Runs.OfOhms(0.1)),
                new SiteRun(RunOrigin.Output(BoxName, ofOne), "one", Runs.OfOhms(0.1)),
            ],
            [new SiteDevice("a", Three[0], "two"), new SiteDevice("b", Three[1], "two"), new SiteDevice("c", Three[2], "one")]);
        BoxAssessment box = site.Assess().Boxes[0];
        Assert.Equal(0.95 + 1.3, box.Outputs.Single(o => o.Output.Number == ofTwo).Worst.Current.Amperes, 1e-9);
        Assert.Equal(1.7, box.Outputs.Single(o => o.Output.Number == ofOne).Worst.Current.Amperes, 1e-9);
        Assert.Equal(2.85 + 0.7, box.Worst.TotalCurrent.Amperes, 1e-9);
    }

    private static Condition Moving(int? count) => new("moving", LoadComponents.Infrared | LoadComponents.Heater | LoadComponents.Motor, At(), count);

    private static void AssertEqual(double[] expected, double[] found)
    {
        Assert.Equal(expected.Length, found.Length);
        for (int i = 0; i < expected.Length; i++) Assert.Equal(expected[i], found[i], 1e-9);
    }
}
