using System.Linq;

namespace CamPower.Tests.Repository;

public class SourcesPageTests
{
    [Fact]
    public void PageOfSources_IsCurrent() => GeneratedPage.AssertCurrent("docs/sources.md", SourcesPage.Text());

    [Fact]
    public void EverySourceThatAConstantCites_IsListedAmongTheSources()
    {
        var listed = SourcesPage.Citations.Select(c => c.Value).ToHashSet();
        var strays = SourcesPage.Values.Where(v => !listed.Contains(v.Value.Source)).Select(v => v.Member);
        Assert.Empty(strays);
    }

    [Fact]
    public void Page_HoldsKnownRows()
    {
        Assert.Contains("| `ConductorConstants.ClassBLay` |", SourcesPage.Text(), System.StringComparison.Ordinal);
        Assert.Contains("| `AmericanWireGauge` | ASTM B258", SourcesPage.Text(), System.StringComparison.Ordinal);
    }
}
