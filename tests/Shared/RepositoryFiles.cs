using System;
using System.IO;

namespace CamPower.Tests.Repository;

/// <summary>Finds the repository's own files from wherever the tests run.</summary>
internal static class RepositoryFiles
{
    /// <summary>The top folder: the nearest one above the tests that holds the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The full path of a file or folder, from its path below the top with forward slashes.</summary>
    public static string PathOf(string relativePath) => Path.GetFullPath(Path.Combine(Root, relativePath));

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "CamPower.sln"))) return folder.FullName;
        }

        throw new DirectoryNotFoundException("No folder above the tests holds CamPower.sln.");
    }
}
