using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Security.Cryptography;
using CamPower.Tests.Repository;

namespace CamPower.Mutants;

/// <summary>The library with every mutant in it, each off until it is switched on, as Stryker writes it; beside the tests.</summary>
internal static class MutatedLibrary
{
    private const string Library = "CamPower.dll";
    private const string Keep = ".stryker-unchanged";

    private static readonly string Folder = RepositoryFiles.PathOf("artifacts/mutants");
    private static readonly string Made = Path.Combine(Folder, Library);
    private static readonly string MadeFrom = Path.Combine(Folder, "made-from.txt");

    /// <summary>Stryker's report on the mutants that it made.</summary>
    public static string Report { get; } = Path.Combine(Folder, "reports", "mutation-report.json");

    /// <summary>Where the survivors are written.</summary>
    public static string Survivors { get; } = Path.Combine(Folder, "survivors.txt");

    /// <summary>Where a process finds this program, the tests and the mutated library.</summary>
    public static string RunFolder { get; } = Path.Combine(Folder, "run");

    /// <summary>Has Stryker mutate the library, unless its sources are those of last time, and lays it beside the tests.</summary>
    public static void Prepare()
    {
        string sources = HashOfSources();
        if (!File.Exists(MadeFrom) || File.ReadAllText(MadeFrom) != sources)
        {
            Directory.CreateDirectory(Folder);
            File.Delete(MadeFrom);
            Make();
            File.WriteAllText(MadeFrom, sources);
        }

        if (Directory.Exists(RunFolder)) Directory.Delete(RunFolder, recursive: true);
        foreach (string file in Directory.EnumerateFiles(AppContext.BaseDirectory, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(RunFolder, Path.GetRelativePath(AppContext.BaseDirectory, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        File.Copy(Made, Path.Combine(RunFolder, Library), overwrite: true);
        Rewriting.OptimizeAndRecord(Path.Combine(RunFolder, Library));
        Rewriting.Optimize(Path.Combine(RunFolder, "CamPower.Tests.dll"));
    }

    // One small test is all that Stryker itself runs; it leaves the mutated library beside the tests, and the sound one under another name.
    private static void Make()
    {
        string tests = RepositoryFiles.PathOf("tests/CamPower.Tests");
        string library = Path.Combine(tests, "bin", "Debug", "net10.0", Library);
        Dotnet(RepositoryFiles.Root, "tool", "restore");
        try
        {
            Dotnet(tests, "dotnet-stryker", "--skip-version-check",
                "--config-file", Path.Combine(AppContext.BaseDirectory, "stryker-config.json"), "--output", Folder);
            if (!File.Exists(library + Keep)) throw new InvalidOperationException("Stryker left no mutated library beside the tests.");
            File.Copy(library, Made, overwrite: true);
        }
        finally
        {
            if (File.Exists(library + Keep)) File.Move(library + Keep, library, overwrite: true);
        }
    }

    private static void Dotnet(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = folder, RedirectStandardOutput = true };
        // Analyzers say nothing of mutants, and take most of the time; no build server stays behind.
        start.Environment["RunAnalyzers"] = "false";
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using Process process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => Console.Error.WriteLine(line.Data);
        process.BeginOutputReadLine();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException($"dotnet {string.Join(' ', arguments)} failed.");
    }

    private static string HashOfSources()
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        string sources = RepositoryFiles.PathOf("src/CamPower");
        foreach (string file in Directory.EnumerateFiles(sources, "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            string path = Path.GetRelativePath(sources, file);
            if (path.StartsWith("obj", StringComparison.Ordinal) || path.StartsWith("bin", StringComparison.Ordinal)) continue;
            hash.AppendData(System.Text.Encoding.UTF8.GetBytes(path));
            hash.AppendData(File.ReadAllBytes(file));
        }

        return Convert.ToHexString(hash.GetHashAndReset());
    }
}
