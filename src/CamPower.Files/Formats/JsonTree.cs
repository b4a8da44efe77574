using System;
using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace CamPower.Files.Formats;

/// <summary>Reads JSON into places. That a file is not JSON is the one error that hides every other.</summary>
internal static class JsonTree
{
    /// <summary>The place of the whole file; null where it is not JSON, which is noted.</summary>
    internal static Place? Read(SiteReading file)
    {
        SourceText source = file.Source;
        if (EncodingError(source.Bytes) is (int offset, string message))
        {
            file.Add("this is not JSON: " + message, offset);
            return null;
        }

        var reader = new Utf8JsonReader(source.Bytes, new JsonReaderOptions { MaxDepth = int.MaxValue });
        try
        {
            return ReadAll(ref reader, file);
        }
        catch (JsonException e)
        {
            int at = source.OffsetOf(e.LineNumber ?? 0, e.BytePositionInLine ?? 0);
            file.Add("this is not JSON: " + GrammarError(source.Bytes, at), at);
        }
        catch (InvalidOperationException)
        {
            // An escape that is half of a surrogate pair.
            file.Add("this is not JSON: this text holds an escape that is no character", (int)reader.TokenStartIndex);
        }

        return null;
    }

    // A loop, and no recursion: a hostile file may nest as deep as it is long.
    private static Place ReadAll(ref Utf8JsonReader reader, SiteReading file)
    {
        Place? root = null, open = null;
        string? name = null;
        int nameOffset = 0;
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    (name, nameOffset) = (reader.GetString(), (int)reader.TokenStartIndex);
                    break;
                case JsonTokenType.EndObject or JsonTokenType.EndArray:
                    open = open!.Parent;
                    break;
                default:
                    var place = new Place(file, open, name, nameOffset, (int)reader.TokenStartIndex, reader.TokenType, TextOf(ref reader));
                    root ??= place;
                    name = null;
                    if (reader.TokenType is not (JsonTokenType.StartObject or JsonTokenType.StartArray)) break;
                    if (reader.CurrentDepth < file.MaxDepth) open = place;
                    else PassOver(ref reader, place);
                    break;
            }
        }

        return root!;
    }

    private static void PassOver(ref Utf8JsonReader reader, Place place)
    {
        place.IsTooDeep();
        int depth = reader.CurrentDepth;
        while (reader.Read() && reader.CurrentDepth > depth) TextOf(ref reader);
    }

    private static string? TextOf(ref Utf8JsonReader reader) => reader.TokenType switch
    {
        JsonTokenType.String or JsonTokenType.PropertyName => reader.GetString(),
        JsonTokenType.Number => Encoding.UTF8.GetString(reader.ValueSpan),
        _ => null,
    };

    private static (int Offset, string Message)? EncodingError(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Trim(" \t\r\n"u8).IsEmpty) return (0, "it is empty");
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] or [_, 0, ..] or [0, ..]) return (0, "it is UTF-16; save it as UTF-8");
        if (Utf8.IsValid(bytes)) return null;
        int offset = 0;
        while (Rune.DecodeFromUtf8(bytes[offset..], out _, out int length) == OperationStatus.Done) offset += length;
        return (offset, "it is not UTF-8 here");
    }

    private static bool EndsAValue(ReadOnlySpan<byte> before) =>
        before is [.., (byte)'"' or (byte)'}' or (byte)']' or (>= (byte)'0' and <= (byte)'9') or (byte)'e' or (byte)'l'];

    // The reader's own words speak of bytes and of its options.
    private static string GrammarError(ReadOnlySpan<byte> bytes, int at)
    {
        if (at >= bytes.Length) return "it ends too early; close every text, list and object";
        if (bytes[at] == '/') return "a comment is not allowed; take it out";
        ReadOnlySpan<byte> before = bytes[..at].TrimEnd(" \t\r\n"u8);
        bool isTrailing = bytes[at] is (byte)'}' or (byte)']' && before is [.., (byte)','];
        if (isTrailing) return "there is a comma before the end of a list or object; take it out";
        Rune.DecodeFromUtf8(bytes[at..], out Rune found, out _);
        return found.Value switch
        {
            '\'' => "a single quote is not allowed here; write \" around texts",
            < ' ' => "a text ends on the line where it begins; write \\n for a new line and \\t for a tab",
            '"' when EndsAValue(before) => "something is missing before this '\"', most likely a comma",
            _ => $"'{found.ToString()}' is not expected here",
        };
    }
}
