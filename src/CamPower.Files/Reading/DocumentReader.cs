using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CamPower.Files.Entries;
using CamPower.Files.Formats;

namespace CamPower.Files.Reading;

/// <summary>Reads a JSON file into entries by what is known of their types, and notes every fault with its place.</summary>
/// <remarks>The file is JSON already (<see cref="JsonSyntax"/>). A value with a fault is null.</remarks>
internal ref struct DocumentReader
{
    private readonly FaultLog _faults;
    private readonly int _maxDepth;
    private Utf8JsonReader _reader;

    private DocumentReader(SourceText source, FaultLog faults, int maxDepth)
    {
        _faults = faults;
        _maxDepth = maxDepth;
        _reader = new Utf8JsonReader(source.Bytes, new JsonReaderOptions { MaxDepth = int.MaxValue });
    }

    internal static SiteEntry Read(SourceText source, FaultLog faults, int maxDepth)
    {
        var reader = new DocumentReader(source, faults, maxDepth);
        reader._reader.Read();
        return (SiteEntry?)reader.ReadValue(SiteJsonContext.Default.SiteEntry, JsonPath.Root) ?? new SiteEntry();
    }

    private object? ReadValue(JsonTypeInfo type, JsonPath at)
    {
        _faults.Place(at, (int)_reader.TokenStartIndex);
        if (IsTooDeep)
        {
            Skip(at);
            return null;
        }

        return type.Kind switch
        {
            JsonTypeInfoKind.Object => ReadObject(type, at),
            JsonTypeInfoKind.Enumerable => ReadList(type, at),
            _ => ReadLeaf(type, at),
        };
    }

    private object? ReadObject(JsonTypeInfo type, JsonPath at)
    {
        object entry = type.CreateObject!();
        if (_reader.TokenType == JsonTokenType.String && entry is IHasTextForm text)
        {
            ReadText(text, at);
            return entry;
        }

        if (_reader.TokenType != JsonTokenType.StartObject) return Refused(at, Expected("an object", entry));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (_reader.Read() && _reader.TokenType == JsonTokenType.PropertyName) ReadMember(type, entry, at, seen);
        EntryForm.Check(type, seen, at, _faults);
        return entry;
    }

    private void ReadMember(JsonTypeInfo type, object entry, JsonPath at, HashSet<string> seen)
    {
        string name = _reader.GetString()!;
        int offset = (int)_reader.TokenStartIndex;
        JsonPath path = at.Member(name);
        JsonPropertyInfo? property = type.Properties.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal));
        _reader.Read();
        if (!seen.Add(name))
        {
            _faults.Add(path, $"{Phrase.Quoted(name)} is written twice in the same object", offset);
            Skip(path);
        }
        else if (property is null)
        {
            _faults.Add(path, $"there is no member {Phrase.Quoted(name)} here{Hint(name, type)}", offset);
            Skip(path);
        }
        else
        {
            property.Set!(entry, ReadValue(TypeOf(property), path));
        }
    }

    private object? ReadList(JsonTypeInfo type, JsonPath at)
    {
        var list = (IList)type.CreateObject!();
        if (_reader.TokenType == JsonTokenType.String && list is IHasTextForm text)
        {
            ReadText(text, at);
            return list;
        }

        if (_reader.TokenType != JsonTokenType.StartArray)
        {
            return Refused(at, Expected("a list", list));
        }

        JsonTypeInfo element = type.Options.GetTypeInfo(type.ElementType!);
        for (int i = 0; _reader.Read() && _reader.TokenType != JsonTokenType.EndArray; i++) list.Add(ReadValue(element, at.Item(i)));
        return list;
    }

    private static string Expected(string shape, object entry) =>
        entry is IHasTextForm text ? $"{shape}, or text: {text.TextDescription}" : shape;

    private readonly void ReadText(IHasTextForm entry, JsonPath at)
    {
        try
        {
            entry.ReadText(_reader.GetString()!);
        }
        catch (FormatException e)
        {
            _faults.Add(at, e.Message);
        }
    }

    private object? ReadLeaf(JsonTypeInfo type, JsonPath at)
    {
        (string expected, bool fits) = Leaf(type);
        if (!fits) return Refused(at, expected);
        try
        {
            Utf8JsonReader copy = _reader;
            return JsonSerializer.Deserialize(ref copy, type);
        }
        catch (FormatException e)
        {
            _faults.Add(at, e.Message);
        }
        catch (JsonException)
        {
            _faults.Add(at, $"{Shown} is not {expected}");
        }

        return null;
    }

    private readonly (string Expected, bool Fits) Leaf(JsonTypeInfo type)
    {
        if (type.Type == typeof(int)) return ("a whole number", _reader.TokenType == JsonTokenType.Number);
        if (type.Type == typeof(bool)) return ("true or false", _reader.TokenType is JsonTokenType.True or JsonTokenType.False);
        string expected = type.Converter is IWrittenConverter written ? $"text: {written.Format.Description}" : "text";
        return (expected, _reader.TokenType == JsonTokenType.String);
    }

    private object? Refused(JsonPath at, string expected)
    {
        _faults.Add(at, $"expected {expected}, but found {Found}");
        Skip(at);
        return null;
    }

    private void Skip(JsonPath at)
    {
        int depth = _reader.CurrentDepth;
        bool tooDeep = NoteTooDeep(at, alreadyNoted: false);
        if (_reader.TokenType is not (JsonTokenType.StartObject or JsonTokenType.StartArray)) return;
        while (_reader.Read() && _reader.CurrentDepth > depth) tooDeep = NoteTooDeep(at, tooDeep);
    }

    private readonly bool NoteTooDeep(JsonPath at, bool alreadyNoted)
    {
        if (!alreadyNoted && IsTooDeep)
        {
            _faults.Add(at, FormattableString.Invariant($"nested too deep: more than {_maxDepth} levels"), (int)_reader.TokenStartIndex);
            return true;
        }

        return alreadyNoted;
    }

    private readonly bool IsTooDeep =>
        _reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray && _reader.CurrentDepth >= _maxDepth;

    private readonly string Shown => Phrase.Quoted(System.Text.Encoding.UTF8.GetString(_reader.ValueSpan));

    private readonly string Found => _reader.TokenType switch
    {
        JsonTokenType.StartObject => "an object",
        JsonTokenType.StartArray => "a list",
        JsonTokenType.String => "text",
        JsonTokenType.Number => "a number",
        JsonTokenType.Null => "null",
        _ => "true or false",
    };

    private static JsonTypeInfo TypeOf(JsonPropertyInfo property) =>
        property.Options.GetTypeInfo(Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType);

    private static string Hint(string name, JsonTypeInfo type)
    {
        IEnumerable<string> known = type.Properties.Select(p => p.Name);
        string nearest = Phrase.DidYouMean(name, known);
        return nearest.Length > 0 ? nearest : $"; the members are {Phrase.List(known, "and")}";
    }
}
