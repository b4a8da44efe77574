using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>One of a few values, each written as a word of its own; the first is the stand-in.</summary>
internal sealed class WordFormat<T>(string noun, params (string Word, T Value)[] table)
    : TextFormat<T>($"{noun}: {Phrase.List(table.Select(row => Phrase.Quoted(row.Word)), "or")}", table[0].Value)
{
    /// <summary>The values, in the order of the table.</summary>
    internal IEnumerable<T> Values => table.Select(row => row.Value);

    internal override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["enum"] = new JsonArray([.. table.Select(row => (JsonNode)row.Word)]),
    };

    /// <summary>What else may be written in the place of a word, for messages; null where there is nothing.</summary>
    internal string? Hint { get; init; }

    /// <summary>Whether a value has a word.</summary>
    internal bool Knows(T value) => Values.Contains(value);

    internal override T Parse(string text)
    {
        int i = Array.FindIndex(table, row => string.Equals(row.Word, text, StringComparison.Ordinal));
        if (i >= 0) return table[i].Value;
        string[] known = [.. table.Select(row => row.Word)];
        throw new FormatException(OldName.Of(text, known) is string now
            ? $"{Phrase.Quoted(text)} is now called {Phrase.Quoted(now)}"
            : $"{Phrase.Quoted(text)} is not {noun}{Choice(text, known)}");
    }

    // One choice is printed once.
    private string Choice(string text, string[] known)
    {
        string meant = Phrase.DidYouMean(text, known);
        string choice = known.Length == 1 && meant.Length > 0 ? meant : $"; write {Phrase.List(known.Select(Phrase.Quoted), "or")}{meant}";
        return Hint is null ? choice : $"{choice}{(meant.Length > 0 ? " " : ". ")}{Hint}";
    }

    internal override string Text(T value) => Array.Find(table, row => EqualityComparer<T>.Default.Equals(row.Value, value)).Word
        ?? throw new NotSupportedException(
            $"A site file cannot express {noun} '{value}': it knows {Phrase.List(table.Select(row => Phrase.Quoted(row.Word)), "and")}.");
}
