using System.Collections.Generic;

namespace CamPower.Reports.Contents;

#pragma warning disable MA0048 // What a report is made of is one list.

/// <summary>A piece of a report, before anyone decides how it looks.</summary>
internal abstract record Block;

/// <summary>A part of a report under a heading.</summary>
internal sealed record Section(string Heading, IReadOnlyList<Block> Blocks);

/// <summary>Some sentences; those that decide are strong.</summary>
internal sealed record Paragraph(string Text, bool IsStrong = false) : Block;

/// <summary>Sentences in a list.</summary>
internal sealed record ItemList(IReadOnlyList<string> Items) : Block;

/// <summary>A term and its value.</summary>
internal sealed record Fact(string Name, string Value);

/// <summary>Terms and their values.</summary>
internal sealed record Facts(IReadOnlyList<Fact> Items) : Block;

/// <summary>A column of a table; numbers are aligned to the right.</summary>
internal sealed record Column(string Heading, bool IsNumber = false);

/// <summary>A table with a caption; the first cell of a row says what the row is about.</summary>
internal sealed record DataTable(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block;

/// <summary>Findings by rule, each rule with what to do.</summary>
internal sealed record FoundList(IReadOnlyList<FindingGroup> Groups) : Block;

/// <summary>Charts side by side, as many as fit; wide ones below each other, with or without a place on paper.</summary>
internal sealed record Pictures(IReadOnlyList<Chart> Charts, bool AreWide = false, bool ArePrinted = true) : Block;
