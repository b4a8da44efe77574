using System;
using System.IO;
using System.Text.RegularExpressions;

namespace CamPower.Files.Tests;

/// <summary>The examples of docs/site-file.md, as a reader of the page would copy them.</summary>
internal static class Samples
{
    internal static string Minimal => Fenced("minimal");

    internal static string Full => Fenced("full");

    internal static string Doc(string name) => File.ReadAllText(PathOfDoc(name)).ReplaceLineEndings("\n");

    internal static string PathOfDoc(string name)
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "CamPower.sln"))) folder = Path.GetDirectoryName(folder)!;
        return Path.Combine(folder, "docs", name);
    }

    private static string Fenced(string name) => Regex.Match(
        Doc("site-file.md"), $"^```json {name}\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline).Groups[1].Value;
}
