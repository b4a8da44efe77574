using System.Text.Json.Serialization;

namespace CamPower.Files.Entries;

/// <summary>What the compiler knows of the entries: their members, in order, without reflection at run time.</summary>
[JsonSourceGenerationOptions(
    GenerationMode = JsonSourceGenerationMode.Metadata,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow)]
[JsonSerializable(typeof(SiteEntry))]
internal sealed partial class SiteJsonContext : JsonSerializerContext;
