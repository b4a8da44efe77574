using System;
using System.Linq;

namespace CamPower.Tests.Checks;

/// <summary>What only a person can answer is listed with its reason, and kept apart from what is worked out.</summary>
public class InspectionListTests
{
    // The list that the trade goes through before it switches on (common practice, no source).
    [Fact]
    public void Standard_HoldsWhatOnlyAPersonCanAnswer() => Assert.Equal(
        ["bare-conductor-beyond-terminal", "opposite-poles-side-by-side", "knockout-without-bushing", "loose-metal-in-box", "lid-closed-and-locked", "tug-test", "battery-place-and-terminals", "polarity-measured"],
        InspectionList.Standard.Items.Select(i => i.Id));

    [Fact]
    public void Inspections_AreNotRules() =>
        Assert.Empty(InspectionList.Standard.Items.Select(i => i.Id).Intersect(RuleSet.Standard.Rules.Select(r => r.Id)));

    // Whoever opens the box is told to isolate it, except where the reading must be live, and at a battery, which always is.
    [Fact]
    public void InsideTheBox_WantsItDead() => Assert.Equal(["lid-closed-and-locked", "battery-place-and-terminals", "polarity-measured"],
        InspectionList.Standard.Items.Where(i => !i.Caution.Contains("check that it reads 0 V", StringComparison.Ordinal)).Select(i => i.Id));

    [Fact]
    public void List_TakesOnesOwn_AndRefusesTheSameTwice()
    {
        var own = new Inspection("drip-loop", "Look for a drip loop.", "Water runs in.", "Mind the ladder.", Sources.CommonPractice);
        var more = new InspectionList([.. InspectionList.Standard.Items, own]);
        Assert.Same(own, more.Items[^1]);
        Assert.Equal("drip-loop", own.ToString());
        Assert.Contains("drip-loop", Assert.Throws<ArgumentException>(() => new InspectionList([own, own])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new InspectionList(null!));
        Assert.Throws<ArgumentNullException>(() => new InspectionList([null!]));
    }

    [Fact]
    public void Inspection_RefusesBadWords()
    {
        Assert.All(new[] { "", "Upper", "two words" }, id => Assert.Throws<ArgumentException>(() => new Inspection(id, "l", "w", "c", Sources.CommonPractice)));
        Assert.Throws<ArgumentException>(() => new Inspection("a", " ", "w", "c", Sources.CommonPractice));
        Assert.Throws<ArgumentException>(() => new Inspection("a", "l", "", "c", Sources.CommonPractice));
        Assert.Throws<ArgumentException>(() => new Inspection("a", "l", "w", "", Sources.CommonPractice));
        Assert.Throws<ArgumentNullException>(() => new Inspection("a", "l", "w", "c", null!));
    }
}
