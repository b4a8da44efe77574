using System;
using System.Diagnostics;
using System.Linq;
using System.Text;
using System.Threading.Tasks;
using CamPower.Tests.Repository;

namespace CamPower.Consumers.Tests;

/// <summary>Runs programs as a shell at the top of the repository would.</summary>
internal static class Command
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(8);

    /// <summary>Runs the .NET command line in a folder of the repository.</summary>
    public static Task<CommandResult> DotnetAsync(string folder, params string[] arguments) => RunAsync("dotnet", folder, arguments);

    /// <summary>Runs a program and waits for its end.</summary>
    public static async Task<CommandResult> RunAsync(string program, string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = RepositoryFiles.PathOf(folder),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        // The build that runs these tests must not steer the builds that they start.
        foreach (string name in start.Environment.Keys.Where(n => n.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList()) start.Environment.Remove(name);
        start.Environment["DOTNET_NOLOGO"] = "1";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync().WaitAsync(Patience);
        return new CommandResult(process.ExitCode, (await output).ReplaceLineEndings("\n"), (await errors).ReplaceLineEndings("\n"));
    }
}
