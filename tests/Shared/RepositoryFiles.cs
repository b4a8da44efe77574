using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace CamPower.Tests.Repository;

/// <summary>Finds the repository's own files from wherever the tests run.</summary>
internal static class RepositoryFiles
{
    private static readonly string[] Made =
        [$"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", $"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}"];

    /// <summary>The top folder: the nearest one above the tests that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The full path of a file or folder, from its path below the top with forward slashes.</summary>
    public static string PathOf(string relativePath) => Path.GetFullPath(Path.Combine(Root, relativePath));

    /// <summary>The files of some kinds in a folder and those in it, but those that a build made.</summary>
    public static IEnumerable<string> Under(string folder, params string[] extensions) => Directory
        .EnumerateFiles(PathOf(folder), "*", SearchOption.AllDirectories)
        .Where(file => extensions.Contains(Path.GetExtension(file)) && !Made.Any(made => file.Contains(made, StringComparison.Ordinal)));

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CamPower.sln"))) return folder.FullName;
        }

        throw new DirectoryNotFoundException("No folder above the tests holds CamPower.sln.");
    }
}
