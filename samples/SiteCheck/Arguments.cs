using System;

namespace SiteCheck;

/// <summary>What the command line asks for.</summary>
internal sealed record Arguments(string? SitePath, string? HtmlPath, string? MarkdownPath)
{
    public const string Usage = "Usage: SiteCheck [site file] [--html file] [--markdown file]";

    /// <summary>Reads a command line, or says that it cannot: each thing once at most, and a file after each option.</summary>
    public static bool TryRead(string[] args, out Arguments read)
    {
        read = new Arguments(null, null, null);
        for (int i = 0; i < args.Length; i++)
        {
            bool isOption = args[i].StartsWith("--", StringComparison.Ordinal);
            string? value = !isOption ? args[i] : i + 1 < args.Length ? args[i + 1] : null;
            Arguments? next = (args[i], value) switch
            {
                (_, null) => null,
                ("--html", _) when read.HtmlPath is null => read with { HtmlPath = value },
                ("--markdown", _) when read.MarkdownPath is null => read with { MarkdownPath = value },
                _ when !isOption && read.SitePath is null => read with { SitePath = value },
                _ => null,
            };
            if (next is null) return false;
            read = next;
            if (isOption) i++;
        }

        return true;
    }
}
