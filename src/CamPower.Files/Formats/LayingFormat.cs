using System;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>How a run lies, as the library names it.</summary>
internal sealed partial class LayingFormat() : TextFormat<Laying>(Laying.LargeBundle)
{
    internal static LayingFormat Instance { get; } = new();

    internal override string Description => $"how a run lies: '{Laying.LargeBundle.Name}' or '{Laying.InCableOrRaceway(2).Name}', with a count of your own";

    internal override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["description"] = Description,
        ["pattern"] = $"^({Laying.LargeBundle.Name}|[1-9][0-9]{{0,3}} current-carrying conductors in a cable or raceway)$",
    };

    internal override Laying Parse(string text)
    {
        if (string.Equals(text, Laying.LargeBundle.Name, StringComparison.Ordinal)) return Laying.LargeBundle;
        Match match = InCable().Match(text);
        return match.Success
            ? Laying.InCableOrRaceway(int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture))
            : throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");
    }

    internal override string Text(Laying value)
    {
        bool isKnown = ReferenceEquals(value, Laying.LargeBundle) || (value.Source == Sources.NecAmpacity && InCable().IsMatch(value.Name));
        return isKnown ? value.Name : throw new NotSupportedException($"A site file cannot express the laying '{value}': it knows those of the library.");
    }

    [GeneratedRegex("^(?<count>[1-9][0-9]{0,3}) current-carrying conductors in a cable or raceway$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex InCable();
}
