using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;

namespace CamPower.Tests.Repository;

/// <summary>The house stays small, and what is public is where a reader meets it.</summary>
public partial class PublicTypesTests
{
    private const int Most = 150;

    // What came with the battery.
    private static readonly string[] OfBatteries =
    [
        "Battery", "BatteryCatalog", "BatteryChemistry", "BatteryChargePoint", "BatteryRun", "BatteryRunPoint", "BatteryRunEnd", "BatteryDropOut", "OutputOnBattery",
        "BackupPolicy", "BackupAssessment", "BackupInCondition",
    ];

    // What came with the mains side.
    private static readonly string[] OfMains =
    [
        "CircuitBreaker", "BreakerAssessment", "StartTogether", "EnergyPrice", "EnergyAssessment", "EnergyInCondition",
        "UninterruptibleSupply", "RuntimePoint", "UninterruptibleAssessment", "UninterruptibleInCondition",
    ];

    // What came with tolerances and commissioning.
    private static readonly string[] OfCommissioning =
    [
        "SiteTolerance", "UncertainQuantity", "UncertaintyShape", "UncertainRange", "UncertainValue", "UncertaintyShare", "ProbabilityEstimate",
        "ToleranceStudy", "Meter", "MeterRange", "ReadingKind", "ReadingState", "ReadingPoint", "MeterReading", "ExpectedReading",
        "ReadingVerdict", "CommissioningSheet", "JudgedReading", "CommissioningRecord",
    ];

    // What came with remedies, comparisons and the bill of materials.
    private static readonly string[] OfRemedies =
    [
        "PriceList", "SiteChange", "Remedy", "FindingRemedies", "SiteRepair", "SiteComparison", "MovedMargin", "DevicePlace", "MaterialPolicy",
        "MaterialList", "MaterialLine", "PulledCable",
    ];

    // What came with the diagnosis.
    private static readonly string[] OfDiagnosis =
        ["Cause", "CauseGroup", "CausePriors", "Diagnosis", "NextReading", "ReadingPrediction", "Symptom"];

    // What came with alternating current.
    private static readonly string[] OfAlternatingCurrent = ["AcStage", "AcInCondition"];

    // What came with a second supply.
    private static readonly string[] OfReserves = ["ReserveAssessment", "ReserveInCondition"];

    // What came with many runs at once.
    private static readonly string[] OfBatches = ["RunBatch"];

    private static IEnumerable<string> Named =>
    [
        .. OfBatches,
        .. OfBatteries,
        .. OfAlternatingCurrent,
        .. OfMains,
        .. OfCommissioning,
        .. OfRemedies,
        .. OfDiagnosis,
        .. OfReserves,
    ];

    // What is made from the code names everything, and shows nothing.
    private static readonly string[] MadeFromTheCode = ["docs/sources.md", "docs/rules.md"];

    private static IReadOnlyList<string> Public { get; } = [.. typeof(Load).Assembly.GetExportedTypes().Where(t => !t.IsNested).Select(NameOf)];

    [Fact]
    public void PublicTypes_AreAtMost150AndThoseThatAreNamed()
    {
        Assert.Empty(Named.Except(Public));
        Assert.InRange(Public.Except(Named).Count(), 1, Most);
    }

    [Fact]
    public void EachPublicType_IsNamedInAPageASampleOrATestOfAConsumer()
    {
        HashSet<string> words = [.. Shown().SelectMany(file => Word().Matches(File.ReadAllText(file)).Select(m => m.Value))];
        Assert.DoesNotContain(Public, name => !words.Contains(name));
    }

    [Fact]
    public void NoTwoTypes_ShareANameOrDifferByAPlural()
    {
        // A static class that gives values of a type may be called as many of it, as Rules of Rule.
        string[] names = [.. typeof(Load).Assembly.GetTypes().Where(t => !t.IsNested && Word().IsMatch(t.Name) && !t.Name.Contains('<', StringComparison.Ordinal)).Select(NameOf)];
        Assert.Empty(names.GroupBy(name => name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key));
        IEnumerable<string> givers = typeof(Load).Assembly.GetExportedTypes().Where(t => t.IsAbstract && t.IsSealed).Select(NameOf);
        Assert.DoesNotContain(Public.Except(givers), name => name.EndsWith('s') && Public.Contains(name[..^1]));
    }

    private static string NameOf(Type type) => type.Name.Split('`')[0];

    private static IEnumerable<string> Shown() => RepositoryFiles.Under("docs", ".md")
        .Append(RepositoryFiles.PathOf("README.md"))
        .Concat(RepositoryFiles.Under("samples", ".cs", ".razor", ".ipynb", ".dib", ".md"))
        .Concat(RepositoryFiles.Under("tests/Consumers", ".cs"))
        .Concat(RepositoryFiles.Under("tests/CamPower.Consumers.Tests", ".cs"))
        .Where(file => !MadeFromTheCode.Contains(Path.GetRelativePath(RepositoryFiles.Root, file).Replace('\\', '/')));

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();
}
