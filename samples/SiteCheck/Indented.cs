using Spectre.Console;

namespace SiteCheck;

/// <summary>Running text, set in from the left.</summary>
internal static class Indented
{
    /// <summary>Writes a text in lines that fit the console, each set in by two.</summary>
    public static void WriteIndented(this IAnsiConsole console, string text)
    {
        string line = " ";
        foreach (string word in text.Split(' '))
        {
            if (line.Length + 1 + word.Length > console.Profile.Width)
            {
                console.WriteLine(line);
                line = " ";
            }

            line += " " + word;
        }

        console.WriteLine(line);
    }
}
