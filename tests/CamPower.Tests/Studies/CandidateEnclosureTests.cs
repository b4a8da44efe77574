using CamPower.Tests.Sites;
using UnitsNet;
using static CamPower.Tests.Sites.SmallSite;

namespace CamPower.Tests.Studies;

/// <summary>
/// A box of a catalog that declares an enclosure is judged in its own, any other in that of the present box. 12 V, 7.9 A and 85 % lose 16.7 W: a small enclosure in 40 °C gets
/// well above 50 °C, from where a generic supply loses 2.5 % a kelvin; a large one stays below, and 80 % of 10 A are enough (common practice).
/// </summary>
public class CandidateEnclosureTests
{
    private static readonly Enclosure Small = Of(0.3, 0.4, 0.15), Large = Of(0.9, 1.1, 0.4);

    [Theory]
    [InlineData("small", null, false)]
    [InlineData("small", "large", true)]
    [InlineData("small", "small", false)]
    [InlineData("large", null, true)]
    [InlineData("large", "small", false)]
    [InlineData(null, "small", false)]
    [InlineData(null, null, true)]
    public void EachIsAsWarmAsWhereItStands(string? present, string? own, bool fits)
    {
        DistributionBox offered = In(own, DistributionBox.OfEqualOutputs("offered", Dc(amperes: 10).WithEfficiency(0.85), 2, ElectricCurrent.FromAmperes(9)));
        Site site = Star(In(present, Box(Dc(amperes: 20).WithEfficiency(0.85))), [Condition.Day(At(box: 40))], (0, Camera(Amperes(7.9))));
        BoxChoice choice = site.SmallestBoxFor(BoxName, [offered], SizingPolicy.CommonPractice);
        Assert.Equal(fits, choice.Chosen is not null);
        if (!fits) Assert.Equal(BoxConstraint.Rating, Assert.Single(choice.Binding).Constraint);
    }

    private static DistributionBox In(string? enclosure, DistributionBox box) => enclosure switch
    {
        "small" => box.WithEnclosure(Small),
        "large" => box.WithEnclosure(Large),
        _ => box,
    };

    private static Enclosure Of(double width, double height, double depth) =>
        new(Length.FromMeters(width), Length.FromMeters(height), Length.FromMeters(depth), EnclosureWall.PaintedSteel, EnclosureFaces.OnWall);
}
