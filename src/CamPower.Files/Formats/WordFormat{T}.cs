using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>One of a few values, each written as a word of its own.</summary>
internal sealed class WordFormat<T>(string noun, params (string Word, T Value)[] table) : TextFormat<T>(table[0].Value)
{
    internal override string Description => $"{noun}: {Phrase.List(Phrase.QuotedAll(Known), "or")}";

    internal override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["enum"] = new JsonArray([.. Known.Select(word => (JsonNode)word)]),
    };

    private IEnumerable<string> Known => table.Select(row => row.Word);

    /// <summary>The values, in the order of the table.</summary>
    internal IEnumerable<T> Values => table.Select(row => row.Value);

    /// <summary>Whether a value has a word.</summary>
    internal bool Knows(T value) => Values.Contains(value);

    internal override T Parse(string text)
    {
        foreach ((string word, T value) in table)
        {
            if (string.Equals(word, text, StringComparison.Ordinal)) return value;
        }

        throw new FormatException($"{Phrase.Quoted(text)} is not {Description}{Phrase.DidYouMean(text, Known)}");
    }

    internal override string Text(T value)
    {
        foreach ((string word, T known) in table)
        {
            if (EqualityComparer<T>.Default.Equals(known, value)) return word;
        }

        throw new NotSupportedException($"A site file cannot express {noun} '{value}': it knows {Phrase.List(Phrase.QuotedAll(Known), "and")}.");
    }
}
