namespace CamPower.Files.Tests;

public class DocumentedExampleTests
{
    [Fact]
    public void MinimalExample_IsASite()
    {
        SiteFileResult result = SiteFile.Read(Samples.Minimal);
        Assert.Empty(result.Faults);
        Assert.True(result.TryGetSite(out Site? site));
        Assert.Equal("garden gate", site.Name);
        Assert.Equal(15, Assert.Single(site.Runs).Run.OneWayLength.Meters);
    }

    [Fact]
    public void FullExample_IsASite()
    {
        SiteFileResult result = SiteFile.Read(Samples.Full);
        Assert.Empty(result.Faults);
        Assert.Equal(4, result.Site!.Devices.Count);
        string text = SiteFile.Write(result.Site);
        SiteFileResult again = SiteFile.Read(text);
        Assert.Empty(again.Faults);
        Assert.Equal(text, SiteFile.Write(again.Site!));
    }
}
