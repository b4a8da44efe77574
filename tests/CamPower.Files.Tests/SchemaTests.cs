using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using CamPower.Tests;
using Json.Schema;

namespace CamPower.Files.Tests;

public class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(SiteFile.Schema);

    [Fact]
    public void CommittedSchema_IsTheOneGenerated() => CamPower.Tests.Repository.GeneratedPage.AssertCurrent("docs/site.schema.json", SiteFile.Schema);

    [Fact]
    public void TheSchema_IsASchemaOfItsDraft() => Assert.True(MetaSchemas.Draft202012.Evaluate(Json(SiteFile.Schema)).IsValid);

    [Fact]
    public void TheExamples_AreAccepted()
    {
        Assert.True(Accepts(Samples.Minimal));
        Assert.True(Accepts(Samples.Full));
    }

    [SeededProperty(Arbitrary = [typeof(RandomSites)], MaxTest = 50)]
    public void WhateverIsWritten_IsAccepted(Site site) => Assert.True(Accepts(SiteFile.Write(site)));

    [Fact]
    public void AnUnknownMember_IsRejectedInEveryObject() =>
        AssertRejectedEverywhere(root => Nodes(root).OfType<JsonObject>(), entry => entry["unheardOf"] = 1);

    [Fact]
    public void ANullInPlaceOfAnything_IsRejected() =>
        AssertRejectedEverywhere(root => Nodes(root).Where(n => n.Parent is not null), node => node.ReplaceWith<JsonNode?>(null));

    [Fact]
    public void ANumberInPlaceOfAnyText_IsRejected() =>
        AssertRejectedEverywhere(root => Nodes(root).Where(n => n.GetValueKind() == JsonValueKind.String), node => node.ReplaceWith(12.5));

    [Theory]
    [InlineData("\"length\": \"180 ft\"", "\"length\": \"180 W\"")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": \"180  ft\"")]
    [InlineData("\"length\": \"180 ft\"", "\"length\": \"1,5 m\"")]
    [InlineData("\"motor\": [\"6 W\", \"0.1 A\"]", "\"motor\": [\"6 W\", \"0.1 V\"]")]
    [InlineData("\"stage\": \"linear\"", "\"stage\": \"Linear\"")]
    [InlineData("\"draw\": { \"base\": \"18 W\" }", "\"draw\": { \"base\": \"18 W\" }, \"label\": { \"voltage\": \"12 V\", \"current\": \"1 A\", \"stage\": \"linear\" }")]
    [InlineData("\"outputs\": 16,", "\"adapter\": true,")]
    [InlineData("\"outputs\": 16,", "")]
    [InlineData("\"formatVersion\": 1", "\"formatVersion\": 2")]
    [InlineData("\"name\": \"frosty night\", ", "")]
    public void WhatReadRejectsByItself_TheSchemaRejects(string piece, string with)
    {
        string text = Samples.Full.Replace(piece, with, StringComparison.Ordinal);
        Assert.Null(SiteFile.Read(text).Site);
        Assert.False(Accepts(text));
    }

    internal static bool Accepts(string text) => Schema.Evaluate(Json(text)).IsValid;

    private static JsonElement Json(string text)
    {
        using JsonDocument document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    // Changes one node after another of the full example, each in a copy of its own.
    private static void AssertRejectedEverywhere(Func<JsonNode, IEnumerable<JsonNode>> find, Action<JsonNode> change)
    {
        int count = find(JsonNode.Parse(Samples.Full)!).Count();
        Assert.True(count > 10);
        for (int i = 0; i < count; i++)
        {
            JsonNode root = JsonNode.Parse(Samples.Full)!;
            JsonNode node = find(root).ElementAt(i);
            string path = node.GetPath();
            change(node);
            string text = root.ToJsonString();
            Assert.NotEmpty(SiteFile.Read(text).Errors);
            Assert.False(Accepts(text), path);
        }
    }

    private static IEnumerable<JsonNode> Nodes(JsonNode node) => node switch
    {
        JsonObject entry => entry.Select(m => m.Value!).SelectMany(Nodes).Prepend(node),
        JsonArray list => list.Select(n => n!).SelectMany(Nodes).Prepend(node),
        _ => [node],
    };
}
