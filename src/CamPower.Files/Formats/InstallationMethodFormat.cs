using System;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using UnitsNet;

namespace CamPower.Files.Formats;

/// <summary>The installation method of a run: one of those of the library.</summary>
internal sealed partial class InstallationMethodFormat() : TextFormat<InstallationMethod>(
    $"an installation method: {Forms}", InstallationMethod.LargeBundle)
{
    private const string Pattern = "(large bundle|(?<count>[1-9][0-9]{0,3}) current-carrying conductors in a cable or raceway"
        + "|installation method (?<method>A2|B2|C)(, (?<circuits>[1-9]|1[0-9]|20) circuits)?)";

    private static string Forms =>
        $"'{InstallationMethod.InCableOrRaceway(2).Name}' (or another number), '{InstallationMethod.LargeBundle.Name}', "
        + $"or '{InstallationMethod.InInsulatedWall().Name}' (or B2, or C; for up to 20 circuits together add ', 3 circuits')";

    internal override JsonObject Schema() => Matching(GroupName().Replace(Pattern, string.Empty));

    internal override InstallationMethod Parse(string text) =>
        Find(text) ?? throw new FormatException($"{Phrase.Quoted(text)} is not an installation method; write {Forms}");

    // The library says of several circuits that they are bunched.
    internal override string Text(InstallationMethod value)
    {
        string text = value.Name.Replace(" circuits bunched", " circuits", StringComparison.Ordinal);
        return Find(text) is InstallationMethod known && IsSame(known, value)
            ? text
            : throw new NotSupportedException(
                $"A site file cannot express the installation method '{value}': it knows those of the library.");
    }

    private static InstallationMethod? Find(string text)
    {
        Match match = Whole().Match(text);
        if (!match.Success) return null;
        if (match.Groups["count"].Success) return InstallationMethod.InCableOrRaceway(Count(match.Groups["count"]));
        int circuits = match.Groups["circuits"].Success ? Count(match.Groups["circuits"]) : 1;
        return match.Groups["method"].Value switch
        {
            "A2" => InstallationMethod.InInsulatedWall(circuits),
            "B2" => InstallationMethod.InConduitOnWall(circuits),
            "C" => InstallationMethod.OnWall(circuits),
            _ => InstallationMethod.LargeBundle,
        };
    }

    private static int Count(Group digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    // Under the name of a given one there may be currents of the user's own.
    private static bool IsSame(InstallationMethod known, InstallationMethod value) =>
        string.Equals(known.Name, value.Name, StringComparison.Ordinal) && known.Source == value.Source
        && known.Points.Count == value.Points.Count
        && known.Points.All(p => value.Points.TryGetValue(p.Key, out ElectricCurrent current) && Number.IsSame(p.Value, current));

    [GeneratedRegex($"^{Pattern}\\z", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Whole();

    [GeneratedRegex(@"\?<[a-z]+>", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GroupName();
}
