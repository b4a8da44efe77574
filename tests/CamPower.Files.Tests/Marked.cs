using System;

namespace CamPower.Files.Tests;

/// <summary>A file text with a mark where a fault is expected; the mark is taken out, its line and column kept.</summary>
internal sealed class Marked
{
    private const char Mark = '¶';

    internal Marked(string textWithMark)
    {
        int at = textWithMark.IndexOf(Mark, StringComparison.Ordinal);
        string before = textWithMark[..at];
        Text = textWithMark.Remove(at, 1);
        Line = before.Split('\n').Length;
        Column = at - before.LastIndexOf('\n');
    }

    internal string Text { get; }

    internal int Line { get; }

    internal int Column { get; }

    /// <summary>A text in which one piece, which must be there once, is replaced.</summary>
    internal static Marked Replace(string text, string piece, string with)
    {
        int first = text.IndexOf(piece, StringComparison.Ordinal);
        Assert.True(first >= 0 && text.IndexOf(piece, first + 1, StringComparison.Ordinal) < 0, $"'{piece}' must be there once");
        return new Marked(text.Replace(piece, with, StringComparison.Ordinal));
    }
}
