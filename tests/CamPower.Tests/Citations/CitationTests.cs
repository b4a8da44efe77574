using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using CamPower.Conductors;
using CamPower.Tests.Reference;

namespace CamPower.Tests.Citations;

public class CitationTests
{
    internal static IEnumerable<CitedValue> Values => All<CitedValue>();

    [Fact]
    public void CitedValues_EachHaveANameAUnitAndASource()
    {
        Assert.True(Values.Count() >= 13, "The package's constants have not been found.");
        Assert.All(Values, v =>
        {
            Assert.False(string.IsNullOrWhiteSpace(v.Name));
            Assert.False(string.IsNullOrWhiteSpace(v.Unit));
            Assert.False(string.IsNullOrWhiteSpace(v.Source.Title));
            Assert.True(double.IsFinite(v.Value));
        });
        Assert.Equal(Values.Count(), Values.Select(v => v.Name).Distinct().Count());
    }

    // A source that names no publication says so; one that does says where in it. What is declared stands on the thing itself.
    [Fact]
    public void Sources_EachNameAPublicationOrSayThatThereIsNone() => Assert.All(All<Citation>(), c =>
    {
        if (c.Kind == CitationKind.CommonPractice) Assert.Contains("no source", c.Title, System.StringComparison.Ordinal);
        else if (c.Kind != CitationKind.Declared) Assert.False(string.IsNullOrWhiteSpace(c.Locator), c.Title);
        Assert.Contains(c.Title, c.ToString(), System.StringComparison.Ordinal);
    });

    // The figures stand in a table from outside the project: no constant is held against itself.
    [Theory]
    [InlineData("S05-005", nameof(ConductorConstants.AnnealedCopperCoefficient))]
    [InlineData("S05-011", nameof(ConductorConstants.AluminumCoefficient))]
    [InlineData("S05-015", nameof(ConductorConstants.HardDrawnCopperConductivity))]
    [InlineData("S06-033", nameof(ConductorConstants.CoaxShieldResistance))]
    [InlineData("S05-019", nameof(ConductorConstants.CopperClad10Conductivity))]
    [InlineData("S05-020", nameof(ConductorConstants.CopperClad15Conductivity))]
    public void CitedValues_AreThePrintedOnes(string row, string constant) =>
        Assert.Equal(ReferenceData.Row(row).Number, Named(constant).Value);

    // By hand, from the tables' 0.00393 and 0.00403 and 61 % IACS: 10 % copper conducts 10 of 64.9 parts, 15 % 15 of 66.85.
    [Theory]
    [InlineData(nameof(ConductorConstants.CopperClad10Coefficient), 0.0040146)]
    [InlineData(nameof(ConductorConstants.CopperClad15Coefficient), 0.0040076)]
    public void CladCoefficients_AreTheMeanByConductance(string constant, double byHand) =>
        Assert.Equal(byHand, Named(constant).Value, 5e-8);

    private static CitedValue Named(string constant) => (CitedValue)typeof(ConductorConstants).GetProperty(constant, BindingFlags.NonPublic | BindingFlags.Static)!.GetValue(null)!;

    private static IEnumerable<T> All<T>() => typeof(Citation).Assembly.GetTypes()
        .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static))
        .Where(p => p.PropertyType == typeof(T) && p.GetIndexParameters().Length == 0)
        .Select(p => (T)p.GetValue(null)!);
}
