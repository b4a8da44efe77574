using System;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A whole number, which JSON writes as it is.</summary>
/// <param name="version">The only number that is known, as a version; null where there are many.</param>
internal sealed class NumberFormat(int? version = null) : Format<int>("a whole number", JsonTokenType.Number)
{
    internal override JsonObject Schema() => version is int only
        ? new() { ["type"] = "integer", ["const"] = only }
        : new() { ["type"] = "integer" };

    internal override void Write(SiteWriter writer, int value) => writer.Json.WriteNumberValue(value);
    internal override int StandIn(Place at) => 1;

    protected override object? ReadFrom(Place at)
    {
        bool isWhole = int.TryParse(at.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value);
        if (isWhole && (version is null || value == version)) return value;
        at.Error(isWhole
            ? FormattableString.Invariant($"format version {value} is unknown; write {version}. The rest was checked as version {version}")
            : $"{Phrase.Quoted(at.Text!)} is not a whole number");
        return null;
    }
}
