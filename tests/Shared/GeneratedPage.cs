using System;
using System.IO;

namespace CamPower.Tests.Repository;

/// <summary>A committed file that is made from the code, and must be what the code would make today.</summary>
internal static class GeneratedPage
{
    /// <summary>With this environment variable set to 1 the tests write the files instead of comparing them.</summary>
    public const string Switch = "CAMPOWER_REGENERATE";

    public static bool IsRegenerating => Environment.GetEnvironmentVariable(Switch) == "1";

    /// <summary>Compares a committed file with the text it should hold, or writes it when asked to.</summary>
    public static void AssertCurrent(string relativePath, string text)
    {
        string path = RepositoryFiles.PathOf(relativePath);
        if (IsRegenerating) Write(path, text);

        Assert.True(File.Exists(path), $"{relativePath} is missing: run the tests once with {Switch}=1.");
        string committed = File.ReadAllText(path).ReplaceLineEndings("\n");
        Assert.True(committed == text, $"{relativePath} is not current: run the tests once with {Switch}=1 and look at the difference.");
    }

    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}
