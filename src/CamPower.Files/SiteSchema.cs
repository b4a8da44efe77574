using System.ComponentModel;
using System.Linq;
using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using CamPower.Files.Entries;
using CamPower.Files.Formats;
using CamPower.Files.Reading;

namespace CamPower.Files;

/// <summary>The JSON Schema of site files, from the same entries that the reader follows.</summary>
internal static class SiteSchema
{
    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    internal static string Text { get; } = Generate();

    private static string Generate()
    {
        var exporting = new JsonSchemaExporterOptions { TransformSchemaNode = Transform, TreatNullObliviousAsNonNullable = true };
        var schema = (JsonObject)SiteJsonContext.Default.SiteEntry.GetJsonSchemaAsNode(exporting);
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "CamPower site file, version 1");
        schema["properties"]!["formatVersion"]!["const"] = SiteEntry.CurrentVersion;
        schema["properties"]!["conditions"]!["minItems"] = 1;
        return schema.ToJsonString(Layout) + "\n";
    }

    private static JsonObject Transform(JsonSchemaExporterContext context, JsonNode exported)
    {
        JsonObject schema = SchemaOf(context.TypeInfo, exported);
        if (Description(context) is string description) schema["description"] = description + Written(context.TypeInfo);
        return schema;
    }

    private static JsonObject SchemaOf(JsonTypeInfo type, JsonNode exported)
    {
        if (type.Converter is IWrittenConverter written) return written.Format.Schema;

        // Every text of a file that is no quantity and no word is a name.
        if (type.Type == typeof(string)) return new JsonObject { ["type"] = "string", ["pattern"] = @"\S" };
        var schema = (JsonObject)exported;
        if (schema.ContainsKey("$ref")) return schema;
        if (schema["type"] is JsonArray types) schema["type"] = types.Select(t => (string)t!).First(t => t is not "null");
        if (type.Kind == JsonTypeInfoKind.Enumerable && !schema.ContainsKey("items")) schema["items"] = ItemsOf(type);
        JsonArray? forms = FormsOf(type);
        if (type.CreateObject?.Invoke() is IHasTextForm text) AllowText(schema, text, forms);
        else if (forms is not null) schema["oneOf"] = forms;
        return schema;
    }

    // What is said of members and items does not touch a text, and keeps its place, to which the exporter refers.
    private static void AllowText(JsonObject schema, IHasTextForm text, JsonArray? forms)
    {
        var other = new JsonObject { ["type"] = schema["type"]!.DeepClone() };
        if (forms is not null) other["oneOf"] = forms;
        schema.Remove("type");
        schema["anyOf"] = new JsonArray(text.TextSchema, other);
    }

    // The exporter leaves items out whose converter is our own.
    private static JsonObject ItemsOf(JsonTypeInfo list) => SchemaOf(list.Options.GetTypeInfo(list.ElementType!), new JsonObject());

    private static string Written(JsonTypeInfo type) =>
        type.Converter is IWrittenConverter written && written.Format.Schema.ContainsKey("pattern") ? $" Written as {written.Format.Description}." : string.Empty;

    // Exactly one form: its own members are required, those of the others are not allowed.
    private static JsonArray? FormsOf(JsonTypeInfo type)
    {
        FormAttribute[] forms = EntryForm.Of(type);
        return forms.Length == 0 ? null : new JsonArray([.. forms.Select(form => FormSchema(form, [.. forms.Where(f => f != form)]))]);
    }

    private static JsonObject FormSchema(FormAttribute form, FormAttribute[] others)
    {
        var forbidden = new JsonObject();
        foreach (string member in others.SelectMany(o => o.AllOwn)) forbidden[member] = false;
        return new JsonObject
        {
            ["required"] = new JsonArray([.. form.AllNeeded.Select(m => (JsonNode)m)]),
            ["properties"] = forbidden,
        };
    }

    private static string? Description(JsonSchemaExporterContext context)
    {
        ICustomAttributeProvider? provider = context.PropertyInfo is null ? context.TypeInfo.Type : context.PropertyInfo.AttributeProvider;
        return provider?.GetCustomAttributes(typeof(DescriptionAttribute), inherit: false).OfType<DescriptionAttribute>().FirstOrDefault()?.Description;
    }
}
