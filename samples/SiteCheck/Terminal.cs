using System;
using System.Globalization;

namespace SiteCheck;

/// <summary>Where the text goes: a terminal has a width and colors, a file or a pipe has neither.</summary>
internal static class Terminal
{
    private const int OfFile = 80, Narrowest = 60, Widest = 120;

    /// <summary>The width that COLUMNS asks for, else that of the terminal; 80 columns for a file. Longer lines than 120 columns are hard to read.</summary>
    public static int Width => Math.Clamp(
        int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), NumberStyles.None, CultureInfo.InvariantCulture, out int columns) ? columns
        : Console.IsOutputRedirected || Console.WindowWidth < 1 ? OfFile : Console.WindowWidth,
        Narrowest, Widest);

    // NO_COLOR is what programs agree on for those who want none.
    private static bool HasColor => !Console.IsOutputRedirected && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));

    public static void Write(Page page)
    {
        if (!HasColor)
        {
            Console.Out.Write(page.ToString());
            return;
        }

        foreach (PageLine line in page.Lines)
        {
            if (line.Color is ConsoleColor color) Console.ForegroundColor = color;
            Console.Out.Write(line.Lead);
            if (line.Color is not null) Console.ResetColor();
            Console.Out.WriteLine(line.Rest);
        }
    }
}
