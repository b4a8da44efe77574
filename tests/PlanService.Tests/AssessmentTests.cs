using System.Collections.Generic;
using System.Linq;
using System.Net;
using System.Net.Http;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using CamPower.Tests.Repository;

namespace PlanService.Tests;

public class AssessmentTests(PlanServer server) : IClassFixture<PlanServer>
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static TheoryData<string> Sites => ["boat-shed.json", "slip-gate.json", "boatyard.json", "boatyard-as-found.json"];

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Devices_AreWhatTheLibraryGives(string name)
    {
        JsonNode answer = await AnswerAsync(name);
        SiteAssessment expected = Assessed(name);
        Assert.Equal(expected.Site.Name, (string)answer["site"]!);
        Assert.NotEmpty(expected.Devices);
        Assert.Equal(expected.Devices.Count, answer["devices"]!.AsArray().Count);
        foreach ((DeviceAssessment device, JsonNode? got) in expected.Devices.Zip(answer["devices"]!.AsArray()))
        {
            Assert.Equal(device.Device.Name, (string)got!["name"]!);
            Assert.Equal(device.Worst.Condition.Name, (string)got["worstCondition"]!);
            Assert.Equal(device.LightLoadVoltage.Volts, (double)got["lightLoadVoltageInVolts"]!);
            Assert.Equal(device.InConditions.Count, got["inConditions"]!.AsArray().Count);
            foreach ((DeviceInCondition at, JsonNode? gotAt) in device.InConditions.Zip(got["inConditions"]!.AsArray())) AssertSame(at, gotAt!);
        }
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Boxes_AreWhatTheLibraryGives(string name)
    {
        JsonNode answer = await AnswerAsync(name);
        SiteAssessment expected = Assessed(name);
        Assert.Equal(expected.Boxes.Count, answer["boxes"]!.AsArray().Count);
        foreach ((BoxAssessment box, JsonNode? got) in expected.Boxes.Zip(answer["boxes"]!.AsArray()))
        {
            Assert.Equal(box.Box.Name, (string)got!["name"]!);
            Assert.Equal(box.Worst.TotalCurrent.Amperes, (double)got["totalCurrentInAmperes"]!);
            Assert.Equal(box.Worst.DeratedRating.Amperes, (double)got["deratedRatingInAmperes"]!);
            Assert.Equal(
                box.Outputs.Select(o => (o.Output.Number, o.Worst.Current.Amperes, o.Output.Limit.Amperes)),
                got["outputs"]!.AsArray().Select(o => ((int)o!["number"]!, (double)o["currentInAmperes"]!, (double)o["limitInAmperes"]!)));
        }
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task BoxTemperatures_AreWhatTheLibraryGives(string name)
    {
        JsonNode answer = await AnswerAsync(name);
        Assert.Equal(
            Assessed(name).Boxes.SelectMany(b => b.InConditions).Select(c => (c.Condition.Name, c.InsideTemperature?.DegreesCelsius, (double?)c.Heat?.Losses.Watts, (double?)c.Heat?.SolarGain.Watts, c.DeratedRating.Amperes)),
            answer["boxes"]!.AsArray().SelectMany(b => b!["inConditions"]!.AsArray()).Select(c => ((string)c!["condition"]!, (double?)c["insideInDegreesCelsius"],
                (double?)c["lossesInWatts"], (double?)c["solarGainInWatts"], (double)c["deratedRatingInAmperes"]!)));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Protection_IsWhatTheLibraryGives(string name)
    {
        JsonNode[] outputs = [.. (await AnswerAsync(name))["boxes"]!.AsArray().SelectMany(b => b!["outputs"]!.AsArray())!];
        OutputFaults[] expected = [.. Assessed(name).StudyFaults()];
        Assert.NotEmpty(expected);
        Assert.Equal(expected.Select(o => o.Output.Protection?.Name), outputs.Select(o => (string?)o["protection"]));
        Assert.Equal(
            expected.SelectMany(o => o.InConditions).Select(p => (p.Condition.Name, p.Current.Amperes, p.Carried?.Amperes, p.MayTrip)),
            outputs.SelectMany(o => o["protectionInConditions"]!.AsArray()).Select(p => ((string)p!["condition"]!, (double)p["currentInAmperes"]!, (double?)p["carriedInAmperes"], (bool)p["mayTrip"]!)));
        Assert.Equal(
            expected.Select(o => o.Output.ClaimedClass is { } claimed ? o.Box.AssessPowerLimit(o.Output.Number, claimed).ToString() : null),
            outputs.Select(o => (string?)o["powerLimit"]?["message"]));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Shorts_AreWhatTheLibraryGives(string name)
    {
        JsonNode[] got = [.. (await AnswerAsync(name))["boxes"]!.AsArray().SelectMany(b => b!["outputs"]!.AsArray()).SelectMany(o => o!["shorts"]!.AsArray())!];
        ShortCircuit[] expected = [.. Assessed(name).StudyFaults().SelectMany(o => o.Shorts)];
        Assert.Equal(
            expected.Select(s => (s.Place, s.SmallestProspective?.Amperes, s.LargestProspective?.Amperes, s.Smallest.Amperes, s.Largest?.Amperes)),
            got.Select(s => ((string)s["place"]!, (double?)s["smallestProspectiveInAmperes"], (double?)s["largestProspectiveInAmperes"], (double)s["smallestInAmperes"]!, (double?)s["largestInAmperes"])));
        Assert.Equal(
            expected.Select(s => (Plain(s.Verdict), Plain(s.WithstandVerdict), s.IsWithinBreakingCapacity, Plain(s.Supply.State), s.Supply.Voltage?.Volts, s.Supply.Condition.Name)),
            got.Select(s => (Plain(s["verdict"]), Plain(s["conductors"]), (bool?)s["isWithinBreakingCapacity"], Plain(s["supply"]!["state"]), (double?)s["supply"]!["voltageInVolts"], (string)s["supply"]!["condition"]!)));
        Assert.Equal(expected.Select(s => Names(s.Supply.Dark)), got.Select(s => Names(s["supply"]!["dark"])));
        Assert.Equal(expected.Select(s => Names(s.Supply.BelowWindow)), got.Select(s => Names(s["supply"]!["perhapsDark"])));
        Assert.Equal(expected.Select(s => Names(s.Devices)), got.Select(s => Names(s["devices"])));
        Assert.Equal(
            expected.Select(s => s.Opening.Verdict == OperatingVerdict.None ? null : s.Opening.Latest?.Seconds),
            got.Select(s => (double?)s["latestInSeconds"]));
        Assert.All(expected.Zip(got), pair => Assert.Equal(
            pair.First.Missing.ToString().Replace(" ", "", System.StringComparison.Ordinal),
            pair.Second["missing"]!.AsArray().Count == 0 ? "None" : string.Join(',', pair.Second["missing"]!.AsArray().Select(m => Plain(m))),
            ignoreCase: true));
    }

    [Fact]
    public async Task Shields_AreWhatTheLibraryGives()
    {
        JsonNode answer = await AnswerAsync("boatyard-as-found.json");
        ShieldInCondition[] expected = [.. Assessed("boatyard-as-found.json").Shields.Select(s => s.Worst)];
        Assert.NotEmpty(expected);
        Assert.Equal(
            expected.Select(s => (s.Link.Device, s.Condition.Name, s.DcShift.Volts, s.MainsFrequencyVoltage?.Volts)),
            answer["shields"]!.AsArray().Select(s => ((string)s!["device"]!, (string)s["worstCondition"]!, (double)s["dcShiftInVolts"]!, (double?)s["mainsFrequencyVoltageInVolts"])));
    }

    [Theory]
    [MemberData(nameof(Sites))]
    public async Task Findings_AreWhatTheLibraryGives(string name)
    {
        JsonNode answer = await AnswerAsync(name);
        IReadOnlyList<Finding> expected = RuleSet.Standard.Check(Assessed(name));
        Assert.Equal(
            expected.Select(f => (f.Rule, f.About.Name, f.Message, f.Remedy, f.Condition?.Name, (double?)f.Measured?.Value, (double?)f.Limit?.Value)),
            answer["findings"]!.AsArray().Select(f => ((string)f!["rule"]!, (string)f["about"]!, (string)f["message"]!, (string)f["remedy"]!,
                (string?)f["condition"], (double?)f["measured"]?["number"], (double?)f["limit"]?["number"])));
        Assert.Equal(expected.Count == 0 ? null : expected[0].Severity.ToString().ToLowerInvariant(), (string?)answer["worst"]);
    }

    // Hand-written beside the site: the service, the library and the hand must agree.
    [Fact]
    public async Task YardAsFound_HasTheFindingsWrittenByHand()
    {
        JsonNode answer = await AnswerAsync("boatyard-as-found.json");
        string[] rows = [.. PlanServer.SiteText("boatyard-as-found.findings.csv").Split('\n').Where(l => l.Length > 0 && l[0] != '#').Skip(1)];
        Assert.NotEmpty(rows);
        Assert.Equal(rows.Length, answer["findings"]!.AsArray().Count);
    }

    [Fact]
    public async Task Texts_SayTheNumbersWithTheirUnit()
    {
        JsonNode day = (await AnswerAsync("boat-shed.json"))["devices"]![0]!["inConditions"]![0]!;
        // The fuse resists 15 % more at 35 °C than at 20 °C.
        Assert.Equal("11.498 V", (string)day["voltage"]!);
        Assert.Equal(11.498, (double)day["voltageInVolts"]!, 3);
        Assert.Equal("0.313 A", (string)day["current"]!);
    }

    [Fact]
    public async Task AnswerBesideTheSample_IsTheAnswer() =>
        GeneratedPage.AssertCurrent("samples/PlanService/slip-gate.answer.json", (await AnswerAsync("slip-gate.json")).ToJsonString(Indented) + "\n");

    // What the README shows of it: the short at the far camera.
    [Fact]
    public async Task ShortOfTheReadme_IsOneOfTheAnswer() =>
        GeneratedPage.AssertCurrent("samples/PlanService/slip-gate.short.json", (await AnswerAsync("slip-gate.json"))["boxes"]![0]!["outputs"]![1]!["shorts"]![1]!.ToJsonString(Indented) + "\n");

    [Fact]
    public async Task Inspections_AreNamedAndExplained()
    {
        string[] named = [.. (await AnswerAsync("boat-shed.json"))["inspections"]!.AsArray().Select(i => (string)i!)];
        Assert.Equal(InspectionList.Standard.Items.Select(i => i.Id), named);
        JsonArray explained = JsonNode.Parse(await server.Client.GetStringAsync("/inspections"))!.AsArray();
        Assert.Equal(
            InspectionList.Standard.Items.Select(i => (i.Id, i.Look, i.Why, i.Caution)),
            explained.Select(i => ((string)i!["id"]!, (string)i["look"]!, (string)i["why"]!, (string)i["caution"]!)));
    }

    [Fact]
    public async Task Schema_IsTheLibrarys() => Assert.Equal(SiteFile.Schema, await server.Client.GetStringAsync("/schema"));

    [Fact]
    public async Task Rules_AreTheLibrarysInItsOrder()
    {
        JsonArray rules = JsonNode.Parse(await server.Client.GetStringAsync("/rules"))!.AsArray();
        Assert.Equal(
            RuleSet.Standard.Rules.Select(r => (r.Id, r.Purpose, r.Remedy, (double?)r.Limit?.Value)),
            rules.Select(r => ((string)r!["id"]!, (string)r["purpose"]!, (string)r["remedy"]!, (double?)r["limit"]?["number"])));
    }

    private async Task<JsonNode> AnswerAsync(string name)
    {
        using HttpResponseMessage response = await server.PostAsync(PlanServer.SiteText(name));
        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("application/json", response.Content.Headers.ContentType!.MediaType);
        return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }

    private static string Plain<T>(T member)
        where T : struct, System.Enum => member.ToString().ToUpperInvariant();

    private static string Plain(JsonNode? word) => ((string)word!).Replace("-", "", System.StringComparison.Ordinal).ToUpperInvariant();

    private static string Names(IEnumerable<SiteDevice> devices) => string.Join('|', devices.Select(d => d.Name));

    private static string Names(JsonNode? names) => string.Join('|', names!.AsArray().Select(n => (string)n!));

    private static SiteAssessment Assessed(string name) => SiteFile.Read(PlanServer.SiteText(name)).Site!.Assess();

    private static void AssertSame(DeviceInCondition expected, JsonNode got)
    {
        Assert.Equal(expected.Condition.Name, (string)got["condition"]!);
        Assert.Equal(expected.State.ToString(), ((string)got["state"]!).Replace("-", "", System.StringComparison.Ordinal), ignoreCase: true);
        Assert.Equal(expected.WouldStart, (bool)got["wouldStart"]!);
        bool isUp = expected.State == DeviceState.Up;
        Assert.Equal(isUp ? expected.Voltage.Volts : null, (double?)got["voltageInVolts"]);
        Assert.Equal(isUp ? expected.Current.Amperes : null, (double?)got["currentInAmperes"]);
        Assert.Equal(isUp ? expected.Margin.Volts : null, (double?)got["marginInVolts"]);
    }
}
