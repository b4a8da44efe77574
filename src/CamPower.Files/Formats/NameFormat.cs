using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CamPower.Files.Formats;

/// <summary>A name: of a part, or of one that another part refers to.</summary>
internal sealed partial class NameFormat() : Format<string>("text", JsonTokenType.String)
{
    // Control characters steer a terminal, line separators break a line, and direction marks let a text read otherwise than it is.
    private const string Steering = @"\u0000-\u001F\u007F-\u009F\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069";

    /// <summary>The first character of a name that steers how text is shown, as "U+202E"; null where there is none.</summary>
    internal static string? SteeringCharacterOf(string name) =>
        SteeringCharacter().Match(name) is { Success: true } match ? $"U+{(int)match.ValueSpan[0]:X4}" : null;

    internal override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = $@"^[^{Steering}]*[^\s{Steering}][^{Steering}]*$" };
    internal override void Write(SiteWriter writer, string value) => writer.WriteName(value);

    /// <summary>The path: a name without references.</summary>
    internal override string StandIn(Place at) => at.Path;

    protected override object? ReadFrom(Place at)
    {
        if (string.IsNullOrWhiteSpace(at.Text)) at.Error("a name must not be empty");
        else if (SteeringCharacterOf(at.Text) is string steering) at.Error(
            $"a name must not hold the control or direction character {steering}");
        else return at.Text;
        return null;
    }

    [GeneratedRegex($"[{Steering}]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex SteeringCharacter();
}
