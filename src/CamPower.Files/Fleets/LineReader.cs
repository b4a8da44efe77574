using System;
using System.Collections.Generic;
using System.IO;

namespace CamPower.Files.Fleets;

/// <summary>The lines of a stream of UTF-8, in bounded memory: of a line that is too long no more is kept than shows it.</summary>
internal static class LineReader
{
    private const int BufferBytes = 64 * 1024;

    private const byte NewLine = (byte)'\n';

    internal static IEnumerable<byte[]> Read(Stream stream, int mostBytes)
    {
        var buffer = new byte[BufferBytes];
        using var line = new MemoryStream();
        for (int count; (count = stream.Read(buffer, 0, buffer.Length)) > 0;)
        {
            int start = 0;
            for (int end; (end = Array.IndexOf(buffer, NewLine, start, count - start)) >= 0; start = end + 1)
            {
                Keep(line, buffer.AsSpan(start..end), mostBytes);
                yield return Take(line);
            }

            Keep(line, buffer.AsSpan(start..count), mostBytes);
        }

        if (line.Length > 0) yield return Take(line);
    }

    private static void Keep(MemoryStream line, ReadOnlySpan<byte> bytes, int mostBytes)
    {
        int room = (int)Math.Min(bytes.Length, mostBytes + 1L - line.Length);
        line.Write(bytes[..room]);
    }

    private static byte[] Take(MemoryStream line)
    {
        byte[] bytes = line.ToArray();
        line.SetLength(0);
        return bytes;
    }
}
