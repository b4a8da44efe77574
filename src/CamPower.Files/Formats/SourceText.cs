using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;

namespace CamPower.Files.Formats;

/// <summary>The bytes of a file, and the line and column of each.</summary>
internal sealed class SourceText(ReadOnlyMemory<byte> utf8)
{
    private List<int>? _lineStarts;

    internal ReadOnlySpan<byte> Bytes => utf8.Span;

    /// <summary>The offset of a byte in a line, both from 0, as the JSON reader counts.</summary>
    internal int OffsetOf(long line, long byteInLine) => (int)Math.Min(LineStarts[(int)line] + byteInLine, Bytes.Length);

    /// <summary>Line and column of an offset, both from 1; the column in UTF-16 code units.</summary>
    internal (int Line, int Column) Locate(int offset)
    {
        int index = LineStarts.BinarySearch(offset);
        int line = index >= 0 ? index : ~index - 1;
        return (line + 1, Encoding.UTF8.GetCharCount(Bytes[LineStarts[line]..offset]) + 1);
    }

    // Only a file with an error needs them.
    private List<int> LineStarts =>
        _lineStarts ??= [0, .. Enumerable.Range(0, utf8.Length).Where(i => utf8.Span[i] == (byte)'\n').Select(i => i + 1)];
}
