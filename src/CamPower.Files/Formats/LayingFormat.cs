using System;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>How a run lies, as the library names it.</summary>
internal sealed partial class LayingFormat() : TextFormat<Laying>(
    $"how a run lies: '{Laying.LargeBundle.Name}' or '{Laying.InCableOrRaceway(2).Name}', with a count of your own", Laying.LargeBundle)
{
    private const string InCablePattern = "(?<count>[1-9][0-9]{0,3}) current-carrying conductors in a cable or raceway";

    internal override JsonObject Schema() =>
        Matching($"({Laying.LargeBundle.Name}|{InCablePattern.Replace("?<count>", string.Empty, StringComparison.Ordinal)})");

    internal override Laying Parse(string text)
    {
        if (string.Equals(text, Laying.LargeBundle.Name, StringComparison.Ordinal)) return Laying.LargeBundle;
        Match match = InCable().Match(text);
        return match.Success
            ? Laying.InCableOrRaceway(int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture))
            : throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");
    }

    internal override string Text(Laying value) =>
        ReferenceEquals(value, Laying.LargeBundle) || (value.Source == Sources.NecAmpacity && InCable().IsMatch(value.Name))
            ? value.Name
            : throw new NotSupportedException($"A site file cannot express the laying '{value}': it knows those of the library.");

    [GeneratedRegex($"^{InCablePattern}$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InCable();
}
