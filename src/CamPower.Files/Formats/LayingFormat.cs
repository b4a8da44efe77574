using System;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>How a run lies: one of the layings of the library.</summary>
internal sealed partial class LayingFormat() : TextFormat<Laying>(
    $"how a run lies: '{Laying.LargeBundle.Name}', '{Laying.InCableOrRaceway(2).Name}' with a count of your own, "
        + $"or '{Laying.InInsulatedWall().Name}, 3 circuits' with A2, B2 or C and at most 20", Laying.LargeBundle)
{
    private const string Pattern = "(large bundle|(?<count>[1-9][0-9]{0,3}) current-carrying conductors in a cable or raceway"
        + "|installation method (?<method>A2|B2|C)(, (?<circuits>[1-9]|1[0-9]|20) circuits)?)";

    internal override JsonObject Schema() => Matching(GroupName().Replace(Pattern, string.Empty));

    internal override Laying Parse(string text) => Find(text) ?? throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");

    // The library says of several circuits that they are bunched.
    internal override string Text(Laying value)
    {
        string text = value.Name.Replace(" circuits bunched", " circuits", StringComparison.Ordinal);
        return Find(text) is Laying known && IsSame(known, value)
            ? text
            : throw new NotSupportedException($"A site file cannot express the laying '{value}': it knows those of the library.");
    }

    private static Laying? Find(string text)
    {
        Match match = Whole().Match(text);
        if (!match.Success) return null;
        if (match.Groups["count"].Success) return Laying.InCableOrRaceway(Count(match.Groups["count"]));
        int circuits = match.Groups["circuits"].Success ? Count(match.Groups["circuits"]) : 1;
        return match.Groups["method"].Value switch
        {
            "A2" => Laying.InInsulatedWall(circuits),
            "B2" => Laying.InConduitOnWall(circuits),
            "C" => Laying.OnWall(circuits),
            _ => Laying.LargeBundle,
        };
    }

    private static int Count(Group digits) => int.Parse(digits.Value, CultureInfo.InvariantCulture);

    // Under the name of a given one there may be currents of the user's own.
    private static bool IsSame(Laying known, Laying value) =>
        string.Equals(known.Name, value.Name, StringComparison.Ordinal) && known.Source == value.Source
        && known.Points.Count == value.Points.Count
        && known.Points.Zip(value.Points).All(p => p.First.Size == p.Second.Size && Number.IsSame(p.First.Current, p.Second.Current));

    [GeneratedRegex($"^{Pattern}\\z", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Whole();

    [GeneratedRegex(@"\?<[a-z]+>", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GroupName();
}
