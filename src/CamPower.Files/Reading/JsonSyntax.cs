using System;
using System.Text;
using System.Text.Json;

namespace CamPower.Files.Reading;

/// <summary>Whether a file is JSON at all: the one fault that hides every other.</summary>
internal static class JsonSyntax
{
    /// <summary>Notes the one fault of a file that is not JSON, and says whether it is.</summary>
    internal static bool Check(SourceText source, FaultLog faults)
    {
        (int Offset, string Message)? fault = EncodingFault(source.Bytes) ?? GrammarFault(source);
        if (fault is not (int offset, string message)) return true;
        faults.Add(JsonPath.Root, "this is not JSON: " + message, offset);
        return false;
    }

    private static (int Offset, string Message)? EncodingFault(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Trim(" \t\r\n"u8).IsEmpty) return (0, "it is empty");
        for (int offset = 0; offset < bytes.Length;)
        {
            if (Rune.DecodeFromUtf8(bytes[offset..], out _, out int length) != System.Buffers.OperationStatus.Done)
            {
                return (offset, "it is not UTF-8 here");
            }

            offset += length;
        }

        return null;
    }

    private static (int Offset, string Message)? GrammarFault(SourceText source)
    {
        var reader = new Utf8JsonReader(source.Bytes, new JsonReaderOptions { MaxDepth = int.MaxValue });
        try
        {
            while (reader.Read())
            {
                if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName) _ = reader.GetString();
            }

            return null;
        }
        catch (JsonException e)
        {
            return (source.OffsetOf(e.LineNumber ?? 0, e.BytePositionInLine ?? 0), Reason(e.Message));
        }
        catch (InvalidOperationException)
        {
            // An escape that is half of a surrogate pair.
            return ((int)reader.TokenStartIndex, "this text holds an escape that is no character");
        }
    }

    private static string Reason(string message)
    {
        int place = message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        message = place < 0 ? message : message[..place];

        // What the reader could be told to do is no advice to who wrote the file.
        return message.Replace(" Change the reader options.", string.Empty, StringComparison.Ordinal);
    }
}
