using System;
using Spectre.Console;

namespace SiteCheck;

/// <summary>Where the report goes.</summary>
internal static class Consoles
{
    private const int Columns = 80;

    /// <summary>A terminal keeps its colours; a file or a pipe gets plain text. Either is 80 columns wide.</summary>
    public static IAnsiConsole ForTerminalOrFile()
    {
        Console.OutputEncoding = System.Text.Encoding.UTF8;
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = Console.IsOutputRedirected ? AnsiSupport.No : AnsiSupport.Detect,
            ColorSystem = Console.IsOutputRedirected ? ColorSystemSupport.NoColors : ColorSystemSupport.Detect,
            Out = new AnsiConsoleOutput(Console.Out),
        });
        console.Profile.Width = Columns;
        return console;
    }
}
