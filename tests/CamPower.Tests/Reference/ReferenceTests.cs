using System;
using System.Globalization;

namespace CamPower.Tests.Reference;

/// <summary>The library against figures from outside the project, each test named by its row, the figure and its source.</summary>
public class ReferenceTests
{
    public static TheoryData<string, string, string> Printed => ReferenceData.Theory((e, r) => e.Use == "computed" && !r.IsMisprint && (!r.IsMaximum || e.StatesTheMaximum));

    public static TheoryData<string, string, string> Misprints => ReferenceData.Theory((e, r) => e.Use == "computed" && r.IsMisprint);

    public static TheoryData<string, string, string> Maxima => ReferenceData.Theory((e, r) => e.IsCalculated && !r.IsMisprint && r.IsMaximum && !e.StatesTheMaximum);

    public static TheoryData<string, string, string> FromMemory => ReferenceData.Theory((e, r) => e.Use == "from-memory" && !r.IsMisprint && !r.IsMaximum);

    // The source's own rounding, or the tolerance that the inventory gives with its reason.
    [Theory]
    [MemberData(nameof(Printed))]
    public void Computed_MeetsThePrintedValue(string id, string figure, string source) => AssertPrinted(id, figure, source);

    // Nobody saw these in print. They count for little: what they say is that the same formula was remembered.
    // Their independent check is the printed row of the same conductor, which Computed_MeetsThePrintedValue holds.
    [Theory]
    [MemberData(nameof(FromMemory))]
    public void FromMemory_AgreesWithWhatIsComputed(string id, string figure, string source) => AssertPrinted(id, figure, source);

    [Theory]
    [MemberData(nameof(Misprints))]
    public void Computed_DoesNotReproduceTheMisprint(string id, string figure, string source)
    {
        (ReferenceRow row, double computed) = Compute(id);
        Assert.True(Math.Abs(computed - row.Number) > 2 * row.HalfLastDigit, $"{figure} is flagged as wrong, but {Text(computed)} was computed. {source}");
    }

    // A standard's maximum is 4 to 22 % above nominal; small sizes below the standard's range up to 25 %.
    [Theory]
    [MemberData(nameof(Maxima))]
    public void Computed_NominalLiesBelowTheMaximum(string id, string figure, string source)
    {
        (ReferenceRow row, double computed) = Compute(id);
        Assert.True(computed < row.Number && row.Number <= 1.25 * computed, $"{figure}: {Text(computed)} was computed. {source}");
    }

    private static void AssertPrinted(string id, string figure, string source)
    {
        (ReferenceRow row, double computed) = Compute(id);
        // A tolerance of the inventory's own is never closer than the last printed digit.
        double allowed = ReferenceData.Entry(id).OwnTolerance is double share ? Math.Max(share * computed, row.HalfLastDigit) : row.Allowed;
        allowed *= 1 + 1e-9;
        Assert.True(Math.Abs(computed - row.Number) <= allowed, $"{figure} ± {Text(allowed)}, but {Text(computed)} was computed. {source}");
    }

    private static (ReferenceRow Row, double Computed) Compute(string id)
    {
        ReferenceRow row = ReferenceData.Row(id);
        return (row, Calculator.Evaluate(ReferenceData.Entry(id).Expression) / SiUnits.Factor(row.Unit));
    }

    private static string Text(double value) => value.ToString("G9", CultureInfo.InvariantCulture);
}
