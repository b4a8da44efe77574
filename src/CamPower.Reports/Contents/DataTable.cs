using System.Collections.Generic;

namespace CamPower.Reports.Contents;

/// <summary>A table with a caption; the first cell of a row says what the row is about.</summary>
internal sealed record DataTable(string Caption, IReadOnlyList<Column> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block;
