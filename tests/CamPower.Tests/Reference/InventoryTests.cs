using System.Collections.Generic;
using System.Linq;

namespace CamPower.Tests.Reference;

/// <summary>Every row handed over is accounted for, and what is said to be computed is.</summary>
public class InventoryTests
{
    [Fact]
    public void Inventory_NamesEveryRowOnceAndNoOther()
    {
        List<string> rows = [.. ReferenceData.Rows.Select(r => r.Id).Order()];
        Assert.Distinct(rows);
        Assert.Equal(rows, ReferenceData.Inventory.Select(e => e.Id).Order());
        Assert.True(rows.Count > 900, "The tables have not been embedded.");
    }

    [Fact]
    public void Inventory_KnowsFiveUses_AndSaysHowOrWhy() => Assert.All(ReferenceData.Inventory, e =>
    {
        Assert.Contains(e.Use, new[] { "computed", "input", "from-memory", "out-of-scope", "later" });
        Assert.False(string.IsNullOrWhiteSpace(e.Detail), e.Id);
    });

    [Fact]
    public void Inventory_NeverTakesARowFromMemoryForAPrintedOne() => Assert.All(
        ReferenceData.Inventory.Where(e => e.IsCalculated),
        e => Assert.Equal(ReferenceData.Row(e.Id).IsFromMemory, e.Use == "from-memory"));

    // The theories are made from the inventory, so a computed row is one that a theory computes: none falls between them.
    [Fact]
    public void Inventory_EveryCalculatedRowIsInExactlyOneTheory()
    {
        var visited = new[] { ReferenceTests.Printed, ReferenceTests.Misprints, ReferenceTests.Maxima, ReferenceTests.FromMemory }
            .SelectMany(data => data.Select(row => (string)row[0])).ToList();
        Assert.Equal(ReferenceData.Inventory.Where(e => e.IsCalculated).Select(e => e.Id).Order(), visited.Order());
    }

    // The calculator sees the expression alone: with another conductor in it, another number comes out.
    [Fact]
    public void Calculator_ComputesFromTheExpressionAlone() => Assert.NotEqual(
        Calculator.Evaluate("Conductor.ResistancePerLengthAt(copper, solid, 18 AWG, 20)"),
        Calculator.Evaluate("Conductor.ResistancePerLengthAt(copper, solid, 17 AWG, 20)"));
}
