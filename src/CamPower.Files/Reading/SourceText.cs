using System;
using System.Collections.Generic;
using System.Text;

namespace CamPower.Files.Reading;

/// <summary>The bytes of a file, and the line and column of each.</summary>
internal sealed class SourceText
{
    private readonly ReadOnlyMemory<byte> _utf8;
    private readonly List<int> _lineStarts = [0];

    internal SourceText(ReadOnlyMemory<byte> utf8)
    {
        _utf8 = utf8;
        ReadOnlySpan<byte> bytes = utf8.Span;
        for (int i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] == (byte)'\n') _lineStarts.Add(i + 1);
        }
    }

    internal ReadOnlySpan<byte> Bytes => _utf8.Span;

    /// <summary>The offset of a byte in a line, both from 0, as the JSON reader counts.</summary>
    internal int OffsetOf(long line, long byteInLine) => (int)Math.Min(_lineStarts[(int)line] + byteInLine, Bytes.Length);

    /// <summary>Line and column of an offset, both from 1; the column in UTF-16 code units.</summary>
    internal (int Line, int Column) Locate(int offset)
    {
        int index = _lineStarts.BinarySearch(offset);
        int line = index >= 0 ? index : ~index - 1;
        return (line + 1, Encoding.UTF8.GetCharCount(Bytes[_lineStarts[line]..offset]) + 1);
    }
}
