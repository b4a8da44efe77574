using System;
using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Reference;

/// <summary>The tables from outside the project, and the inventory of what is done with each of their rows.</summary>
internal static class ReferenceData
{
    private const string InventoryName = "inventory.csv";

    internal static IReadOnlyList<ReferenceRow> Rows { get; } = [.. Csv.Names.Where(n => n != InventoryName).SelectMany(Csv.Read)
        .Select(r => new ReferenceRow(r["id"], r["quantity"], r["conditions"], r["value"], r["unit"], r["tolerance"], r["source"], r["provenance"]))];

    internal static IReadOnlyList<InventoryEntry> Inventory { get; } =
        [.. Csv.Read(InventoryName).Select(r => new InventoryEntry(r["id"], r["use"], r["detail"]))];

    internal static ReferenceRow Row(string id) => Rows.Single(r => r.Id == id);

    internal static InventoryEntry Entry(string id) => Inventory.Single(e => e.Id == id);

    /// <summary>Theory data of the rows of one use: id, what it is, source.</summary>
    internal static TheoryData<string, string, string> Theory(Func<InventoryEntry, ReferenceRow, bool> wanted)
    {
        Dictionary<string, ReferenceRow> rows = Rows.ToDictionary(r => r.Id);
        var data = new TheoryData<string, string, string>();
        foreach (InventoryEntry entry in Inventory)
        {
            if (!rows.TryGetValue(entry.Id, out ReferenceRow? row) || !wanted(entry, row)) continue;
            data.Add(row.Id, $"{row.Quantity} ({row.Conditions}) {row.Value} {row.Unit}", $"{row.Source}; {row.Provenance}");
        }

        return data;
    }
}
