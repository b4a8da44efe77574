using System;
using System.Globalization;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>How a cable lies: in a large bundle, or in a cable or raceway with so many conductors that carry current.</summary>
internal sealed class LayingFormat : ITextFormat<Laying>
{
    private const string LargeBundle = "large bundle", Conductors = " conductors";

    public string Description => "how a cable lies: 'large bundle', or how many conductors together carry current, such as '8 conductors'";

    public JsonObject Schema => new()
    {
        ["type"] = "string",
        ["pattern"] = $"^({LargeBundle}|[1-9][0-9]{{0,3}}{Conductors})$",
    };

    public Laying Parse(string text)
    {
        if (string.Equals(text, LargeBundle, StringComparison.Ordinal)) return Laying.LargeBundle;
        bool isCount = text.EndsWith(Conductors, StringComparison.Ordinal)
            & int.TryParse(text.Replace(Conductors, string.Empty, StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out int count);
        return isCount && count is >= 1 and <= 9999 && string.Equals(text, Counted(count), StringComparison.Ordinal)
            ? Laying.InCableOrRaceway(count)
            : throw new FormatException($"{Phrase.Quoted(text)} is not {Description}");
    }

    public string Format(Laying value)
    {
        if (ReferenceEquals(value, Laying.LargeBundle)) return LargeBundle;
        return value.CurrentCarryingConductors is int count and <= 9999
            ? Counted(count)
            : throw new NotSupportedException($"A site file cannot express the laying '{value}': it knows {Description}.");
    }

    private static string Counted(int count) => count.ToString(CultureInfo.InvariantCulture) + Conductors;
}
