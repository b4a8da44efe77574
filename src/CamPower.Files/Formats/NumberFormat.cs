using System;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Files.Reading;
using CamPower.Files.Writing;

namespace CamPower.Files.Formats;

/// <summary>A whole number, which JSON writes as it is.</summary>
internal sealed class NumberFormat : Format<int>
{
    internal static NumberFormat Count { get; } = new();

    /// <summary>The version of the format: there is only one.</summary>
    internal static NumberFormat Version { get; } = new() { Only = 1 };

    /// <summary>The only number that is known, or null where there are many.</summary>
    internal int? Only { get; private init; }

    internal override string Expected => "a whole number";

    internal override JsonObject Schema()
    {
        var schema = new JsonObject { ["type"] = "integer" };
        if (Only is int only) schema["const"] = only;
        return schema;
    }

    internal override bool Fits(JsonTokenType kind) => kind == JsonTokenType.Number;

    internal override void Write(SiteWriter writer, int value) => writer.Json.WriteNumberValue(value);

    internal override int StandIn(Place at) => 1;

    protected override object? ReadFrom(Place at)
    {
        if (!int.TryParse(at.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value))
        {
            at.Fault($"{Phrase.Quoted(at.Text!)} is not a whole number");
            return null;
        }

        if (Only is null || value == Only) return value;
        at.Fault(FormattableString.Invariant($"version {value} is unknown: version {Only} is known, and the rest was read as if it were that"));
        return null;
    }
}
