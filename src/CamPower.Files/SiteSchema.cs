using System.Text.Json.Nodes;
using CamPower.Files.Parts;
using CamPower.Files.Writing;

namespace CamPower.Files;

/// <summary>The JSON Schema of site files, from the same members that the reader follows.</summary>
internal static class SiteSchema
{
    internal static string Text { get; } = Generate();

    private static string Generate()
    {
        JsonObject schema = SiteFormat.Schema;
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "CamPower site file, version 1");
        schema["description"] = "An installation: its cables, device models, conditions, boxes, runs and devices.";
        return SiteWriter.Text(json => schema.WriteTo(json));
    }
}
