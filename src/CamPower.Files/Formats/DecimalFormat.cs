using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace CamPower.Files.Formats;

/// <summary>A number without a unit, which JSON writes as it is.</summary>
internal sealed class DecimalFormat() : Format<double>("a number", JsonTokenType.Number)
{
    internal override JsonObject Schema() => new() { ["type"] = "number" };

    internal override void Write(SiteWriter writer, double value) => writer.Json.WriteNumberValue(value);

    internal override double StandIn(Place at) => 1;

    protected override object? ReadFrom(Place at)
    {
        if (Number.Value(at.Text!) is double value) return value;
        at.Error($"{Phrase.Quoted(at.Text!)} is an impossible number: no number can hold it");
        return null;
    }
}
