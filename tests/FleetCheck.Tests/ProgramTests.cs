using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Text;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace FleetCheck.Tests;

/// <summary>The program as a shell sees it.</summary>
public class ProgramTests
{
    [Fact]
    public void Run_WithoutArguments_PrintsTheCommittedSummaryAndReportsTheBadSite()
    {
        (int exit, string printed, string errors) = Run("");
        GeneratedPage.AssertCurrent("samples/FleetCheck/fleet.txt", printed);
        Assert.Equal(3, exit);
        Assert.StartsWith("line 11: not checked: $.runs[0].length", errors, StringComparison.Ordinal);
        Assert.StartsWith("21 sites: ", printed, StringComparison.Ordinal);
        Assert.Contains("1 not checked", printed, StringComparison.Ordinal);
    }

    [Fact]
    public void StandardInput_GivesTheSameSummary()
    {
        string fleet = File.ReadAllText(RepositoryFiles.PathOf("samples/FleetCheck/fleet.jsonl"));
        Assert.Equal(Run(""), Run(fleet, "-"));
    }

    [Fact]
    public void Sites_HaveARowEachInTheirOrder()
    {
        string csv = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            Run("", "--sites", csv);
            string[] rows = File.ReadAllLines(csv);
            Assert.Equal(22, rows.Length);
            Assert.Equal("document,site,dangers,failures,cautions,notes,error", rows[0]);
            Assert.All(rows.Skip(1).Index(), row => Assert.StartsWith($"line {row.Index + 1},", row.Item, StringComparison.Ordinal));
            Assert.Contains("line 11,,,,,,", rows[11], StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(csv);
        }
    }

    // The sites of the site check: the same file says the same in a folder of many.
    [Fact]
    public void Folder_IsCheckedFileByFile()
    {
        (int exit, string printed, string errors) = Run("", RepositoryFiles.PathOf("samples/SiteCheck/sites"));
        Assert.Equal(2, exit);
        Assert.Contains("Ternfield boatyard", printed, StringComparison.Ordinal);
        Assert.Empty(errors);
    }

    [Theory]
    [InlineData("--sites")]
    [InlineData("--quick")]
    [InlineData("no-such-folder")]
    public void WrongArguments_AreSaidAndGive3(string argument)
    {
        (int exit, string printed, string errors) = Run("", argument);
        Assert.Equal(3, exit);
        Assert.Empty(printed);
        Assert.NotEmpty(errors);
    }

    private static (int Exit, string Printed, string Errors) Run(string input, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "FleetCheck.dll"));
        foreach (string argument in arguments) start.ArgumentList.Add(argument);
        using Process process = Process.Start(start)!;
        Task<string> errors = process.StandardError.ReadToEndAsync();
        Task<string> printed = process.StandardOutput.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        process.WaitForExit();
        return (process.ExitCode, printed.Result.ReplaceLineEndings("\n"), errors.Result);
    }
}
