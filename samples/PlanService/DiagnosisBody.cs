using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using PlanService.Answers;

namespace PlanService;

/// <summary>A body of three members, each given as the whole text with blanks where the others were: so every place in it stays true.</summary>
internal sealed class DiagnosisBody
{
    private static readonly string[] Known = ["site", "readings", "symptoms"];

    private readonly byte[] _text;
    private readonly Dictionary<string, Range> _members = new(StringComparer.Ordinal);

    private DiagnosisBody(byte[] text) => _text = text;

    /// <summary>What is wrong with the body itself; null where nothing is.</summary>
    public ErrorAnswer? Error { get; private set; }

    public static DiagnosisBody Read(byte[] text)
    {
        var body = new DiagnosisBody(text);
        try
        {
            body.Error = body.ReadMembers();
        }
        catch (JsonException e)
        {
            body.Error = ErrorAt("$", (int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "this is no valid JSON");
        }

        return body;
    }

    /// <summary>The text of a member in its place; null where the body has no such member.</summary>
    public byte[]? TextOf(string member)
    {
        if (!_members.TryGetValue(member, out Range range)) return null;
        byte[] text = [.. _text.Select(b => b is (byte)'\n' or (byte)'\r' ? b : (byte)' ')];
        _text.AsSpan(range).CopyTo(text.AsSpan(range));
        return text;
    }

    public static ErrorAnswer ErrorAt(string path, int line, int column, string message) =>
        new() { Path = path, Line = line, Column = column, Message = message };

    private static string? NameAt(in Utf8JsonReader reader)
    {
        foreach (string name in Known)
        {
            if (reader.ValueTextEquals(name)) return name;
        }

        return null;
    }

    private ErrorAnswer? ReadMembers()
    {
        var reader = new Utf8JsonReader(_text);
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject) return ErrorAt("$", 1, 1, "the body must be an object with a member 'site'");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (NameAt(reader) is not string name) return ErrorAt("$", 1, 1, "the body has an unknown member; its members are site, readings and symptoms");
            reader.Read();
            if (name == "readings" && reader.TokenType != JsonTokenType.StartObject) return ErrorAt("$.readings", 1, 1, "it must be an object");
            var from = (int)reader.TokenStartIndex;
            reader.Skip();
            if (!_members.TryAdd(name, from..(int)reader.BytesConsumed)) return ErrorAt("$." + name, 1, 1, "it is there twice");
        }

        // What comes after the object is no JSON any more.
        while (reader.Read())
        {
        }

        return _members.ContainsKey("site") ? null : ErrorAt("$.site", 1, 1, "it is missing: a site file");
    }
}
