using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading;

namespace CamPower.Files.Tests;

/// <summary>Many sites: each answers as it would alone, in order, whatever the others do, and no more of them is held than a window.</summary>
public class FleetTests
{
    private static byte[] Sound { get; } = Encoding.UTF8.GetBytes(OneLine(Samples.Minimal));

    private static RuleSet Rules => RuleSet.Standard;

    [Fact]
    public void Check_GivesEachSiteWhatItHasAlone_InOrder()
    {
        string folder = Path.GetDirectoryName(Samples.PathOfDoc("../samples/SiteCheck/sites/boatyard.json"))!;
        string[] files = [.. Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal)];
        CheckedSite[] sites = [.. Fleet.Check(Fleet.ReadFolder(folder), Rules)];
        Assert.Equal(files.Select(Path.GetFileName), sites.Select(s => s.Name));
        foreach ((string file, CheckedSite site) in files.Zip(sites))
        {
            Site alone = SiteFile.Read(File.ReadAllText(file)).Site!;
            Assert.Equal(alone.Name, site.SiteName);
            Assert.Equal(Rules.Check(alone.Assess()).Select(f => f.ToString()), site.Findings.Select(f => f.ToString()));
            Assert.Equal(site.Findings.Count(f => f.Severity == Severity.Failure), site.CountOf(Severity.Failure));
        }
    }

    [Fact]
    public void BadSites_AreReportedInTheirPlace_AndTheOthersGoOn()
    {
        string missing = Path.Combine(Path.GetTempPath(), "no such folder", "gone.json");
        SiteDocument[] documents = [Of("a"), new("b", "{"u8.ToArray()), SiteDocument.OfFile(missing), Of("d")];
        CheckedSite[] sites = [.. Fleet.Check(documents, Rules)];
        Assert.Equal(["a", "b", "gone.json", "d"], sites.Select(s => s.Name));
        Assert.Equal([true, false, false, true], sites.Select(s => s.IsChecked));
        Assert.Contains("line 1", sites[1].Errors[0], StringComparison.Ordinal);
        Assert.Null(sites[1].SiteName);
    }

    [Fact]
    public void RuleThatThrows_IsAnErrorOfTheSite()
    {
        RuleSet rules = new([new ThrowingRule()]);
        CheckedSite site = Assert.Single(Fleet.Check([Of("a")], rules));
        Assert.False(site.IsChecked);
        Assert.Equal("The check failed: InvalidOperationException: this rule is broken", Assert.Single(site.Errors));
        Assert.NotNull(site.SiteName);
    }

    // Lines end with LF or CR LF, the last perhaps with neither; blank ones count and are passed over; one may be longer than the buffer.
    [Theory]
    [InlineData("\n", "")]
    [InlineData("\n", "\n")]
    [InlineData("\r\n", "\r\n")]
    public void ReadLines_NamesEachDocumentAfterItsLine(string end, string last)
    {
        string json = OneLine(Samples.Minimal), large = json[..^1] + new string(' ', 200_000) + "}";
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(string.Join(end, json, "", " \t", large, json) + last));
        CheckedSite[] sites = [.. Fleet.Check(Fleet.ReadLines(stream), Rules)];
        Assert.Equal(["line 1", "line 4", "line 5"], sites.Select(s => s.Name));
        Assert.All(sites, s => Assert.True(s.IsChecked, s.ToString()));
    }

    [Fact]
    public void LineThatIsTooLong_IsAnErrorAndTheNextIsRead()
    {
        var options = new SiteFileOptions { MaxBytes = 100_000 };
        string json = OneLine(Samples.Minimal), large = json[..^1] + new string(' ', 1_000_000) + "}";
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes($"{large}\n{json}\n"));
        CheckedSite[] sites = [.. Fleet.Check(Fleet.ReadLines(stream, options), Rules, options)];
        Assert.Equal([false, true], sites.Select(s => s.IsChecked));
        Assert.Contains("more than 100000 bytes", sites[0].Errors[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ReadsAFewDocumentsAhead_AndNoMore()
    {
        int read = 0, given = 0, most = 0;
        foreach (CheckedSite _ in Fleet.Check(Many(), Rules).Take(500))
        {
            given++;
            most = Math.Max(most, read - given);
        }

        Assert.Equal(500, given);
        Assert.InRange(most, 1, 16 * Environment.ProcessorCount);

        // Endless: bounded memory or none.
        IEnumerable<SiteDocument> Many()
        {
            while (true)
            {
                read++;
                yield return new SiteDocument("bad", "{"u8.ToArray());
            }
        }
    }

    [Fact]
    public void Cancel_StopsBeforeTheNextSite()
    {
        using var stop = new CancellationTokenSource();
        int given = 0;
        Assert.ThrowsAny<OperationCanceledException>(() =>
        {
            foreach (CheckedSite _ in Fleet.Check(Enumerable.Repeat(Of("a"), 1000), Rules, cancellationToken: stop.Token))
            {
                if (++given == 3) stop.Cancel();
            }
        });
        Assert.Equal(3, given);
    }

    // Counted by hand over the same sites.
    [Fact]
    public void Summary_CountsBySeverityRuleAndSite()
    {
        string folder = Path.GetDirectoryName(Samples.PathOfDoc("../samples/SiteCheck/sites/boatyard.json"))!;
        CheckedSite[] sites = [.. Fleet.Check(Fleet.ReadFolder(folder).Append(new SiteDocument("bad", "{"u8.ToArray())), Rules)];
        var summary = new FleetSummary(worst: 4);
        foreach (CheckedSite site in sites) summary.Add(site);

        Assert.Equal(sites.Length, summary.Sites);
        Assert.Equal(1, summary.NotChecked);
        foreach (Severity severity in Enum.GetValues<Severity>())
        {
            Assert.Equal(sites.Count(s => s.Findings.Count > 0 && s.Findings.Max(f => f.Severity) == severity), summary.WorstAt(severity));
        }

        Assert.True(summary.WorstAt(Severity.Danger) > 0);
        Assert.Equal(sites.SelectMany(s => s.Findings).Select(f => f.Rule).Distinct().Order(StringComparer.Ordinal), summary.Rules.Select(r => r.Rule).Order(StringComparer.Ordinal));
        foreach (FleetRule rule in summary.Rules)
        {
            Assert.Equal(sites.Sum(s => s.Findings.Count(f => f.Rule == rule.Rule)), rule.Findings);
            Assert.Equal(sites.Count(s => s.Findings.Any(f => f.Rule == rule.Rule)), rule.Sites);
            Assert.Equal(sites.SelectMany(s => s.Findings).Where(f => f.Rule == rule.Rule).Max(f => f.Severity), rule.Severity);
        }

        IEnumerable<string> worst = sites.Where(s => s.IsChecked)
            .OrderByDescending(s => s.CountOf(Severity.Danger)).ThenByDescending(s => s.CountOf(Severity.Failure)).ThenByDescending(s => s.CountOf(Severity.Caution))
            .Select(s => s.Name).Take(4);
        Assert.Equal(worst, summary.Worst.Select(s => s.Name));
    }

    [Fact]
    public void Summary_OfSoundSites_HasNoWorst()
    {
        CheckedSite site = Of("a").Check(new RuleSet([]));
        var summary = new FleetSummary();
        summary.Add(site);
        Assert.Empty(summary.Worst);
        Assert.Equal(1, summary.WithoutFindings);
        Assert.Equal("1 site: 0 with danger, 0 with failures, 0 with cautions, 1 with notes at most, 0 not checked", summary.ToString());
    }

    private static SiteDocument Of(string name) => new(name, Sound);

    private static string OneLine(string json) => json.ReplaceLineEndings(" ").TrimEnd();

    private sealed class ThrowingRule() : Rule("throws", Severity.Note, "Throws.", "Nothing.", Sources.Kirchhoff)
    {
        public override IEnumerable<Finding> Check(Evidence evidence) => throw new InvalidOperationException("this rule is broken");
    }
}
