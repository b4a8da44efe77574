using System;
using System.Collections.Generic;
using System.Collections.ObjectModel;
using System.Linq;
using UnitsNet;

namespace CamPower.Studies;

/// <summary>Compares two versions of a site.</summary>
internal sealed class SiteDifference(Site before, Site after, RuleSet rules, PriceList prices)
{
    // What rounding alone moves has not moved.
    private const double Rounding = 1e-9;

    private readonly SiteAssessment _before = before.Assess(), _after = after.Assess();

    internal SiteComparison Compare()
    {
        List<ComparedPart> old = [.. ComparedPart.AllOf(before)], now = [.. ComparedPart.AllOf(after)];
        var oldOf = old.ToDictionary(part => part.Key, StringComparer.Ordinal);
        var nowOf = now.ToDictionary(part => part.Key, StringComparer.Ordinal);
        IReadOnlyList<Finding> was = rules.Check(_before), found = rules.Check(_after);
        return new SiteComparison(before, after,
            Texts(now.Where(part => !oldOf.ContainsKey(part.Key)).Select(part => part.InWords)),
            Texts(old.Where(part => !nowOf.ContainsKey(part.Key)).Select(part => part.InWords)),
            Texts(now.Where(part => oldOf.ContainsKey(part.Key)).SelectMany(part => Changes(oldOf[part.Key], part))),
            Without(found, was), Without(was, found), Margins(), MaterialDifference.Of(before, after, prices));
    }

    private static ReadOnlyCollection<string> Texts(IEnumerable<string> texts) => Array.AsReadOnly([.. texts]);

    private static IEnumerable<string> Changes(ComparedPart old, ComparedPart now) =>
        from fact in now.Facts
        where !string.Equals(old.Facts[fact.Key], fact.Value, StringComparison.Ordinal)
        select $"{now.Key}: {fact.Key} {old.Facts[fact.Key]} -> {fact.Value}";

    private static ReadOnlyCollection<Finding> Without(IEnumerable<Finding> these, IEnumerable<Finding> those)
    {
        List<(string, SubjectKind, string, Severity)> left = [.. those.Select(KeyOf)];
        return Array.AsReadOnly([.. these.Where(f => !left.Remove(KeyOf(f)))]);

        static (string, SubjectKind, string, Severity) KeyOf(Finding f) => (f.Rule, f.About.Kind, f.About.Name, f.Severity);
    }

    private ReadOnlyCollection<MovedMargin> Margins()
    {
        ILookup<(string, string), Margin> old = MarginsOf(_before).ToLookup(margin => (margin.About.Name, margin.What));
        return Array.AsReadOnly([.. MarginsOf(_after)
            .SelectMany(now => old[(now.About.Name, now.What)].Take(1), (now, was) =>
                new MovedMargin(now.About, now.What, was.Quantity, now.Quantity, was.Limit))
            .Where(margin => Math.Abs(margin.ChangeShare) > Rounding).OrderBy(margin => margin.ChangeShare)]);
    }

    private static IEnumerable<Margin> MarginsOf(SiteAssessment solved)
    {
        foreach (DeviceAssessment device in solved.Devices.Where(d => d.Worst.State == DeviceState.Up && d.Worst.Accepted is not null))
        {
            VoltageRange accepted = device.Worst.Accepted!;
            Subject about = Subject.Of(device.Device);
            yield return new(about, "room to its lowest voltage", device.Worst.Margin, accepted.LowestVolts);
            yield return new(about, "room to its highest voltage",
                ElectricPotential.FromVolts(accepted.HighestVolts - device.LightLoadVolts), accepted.HighestVolts);
        }

        foreach (BoxAssessment box in solved.Boxes.Where(b => b.Outputs.Count > 0))
        {
            if (box.Worst.DeratedAmperes > 0)
            {
                yield return new(Subject.Of(box.Box), "spare current of its supply",
                    ElectricCurrent.FromAmperes(box.Worst.DeratedAmperes - box.Worst.Amperes), box.Worst.DeratedAmperes);
            }

            foreach (OutputAssessment output in box.Outputs)
            {
                yield return new(Subject.Of(box.Box, output.Output), "spare current to its limit",
                    ElectricCurrent.FromAmperes(output.Output.LimitAmperes - output.Worst.Amperes), output.Output.LimitAmperes);
            }
        }
    }

    private sealed record Margin(Subject About, string What, IQuantity Quantity, double Limit);
}
