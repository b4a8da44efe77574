using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using System.Threading;
using CamPower;
using CamPower.Commissioning;
using CamPower.Files;
using CamPower.Reports;
using CamPower.Tolerance;
using Microsoft.Net.Http.Headers;
using PlanService.Answers;
using UnitsNet;

namespace PlanService;

/// <summary>What becomes of a body with a site, readings and symptoms.</summary>
internal static class DiagnosisWork
{
    private const string NoSymptom = "this is no symptom: write a device, a colon, and one of works, dark, restarts, flickers at dusk, hum bars, dim infrared, "
        + "works on the bench; or: several at once";

    private static readonly Temperature Usual = Temperature.FromDegreesCelsius(20);

    public static Answer Of(byte[] text, PlanWork work, MediaTypeHeaderValue form, CancellationToken cancellation)
    {
        DiagnosisBody body = DiagnosisBody.Read(text);
        if (body.Error is ErrorAnswer error) return Refused([error]);
        SiteFileResult file;
        using (var site = new MemoryStream(body.TextOf("site")!)) file = SiteFile.Read(site, work.Options);
        if (!file.TryGetSite(out Site? read)) return Refused(Within("site", file.Errors));
        ReadingsFileResult? readings = body.TextOf("readings") is byte[] given ? ReadingsFile.Read(Encoding.UTF8.GetString(given), read) : null;
        if (readings is { Errors.Count: > 0 }) return Refused(Within("readings", readings.Errors));
        var errors = new List<ErrorAnswer>();
        Symptom[] symptoms = [.. SymptomsOf(body, read, errors)];
        if (errors.Count > 0) return Refused(errors);

        var sheet = new CommissioningSheet(
            read, SiteTolerance.Standard, Meter.Handheld, readings?.At ?? new Surroundings(Usual, Usual, Usual), cancellation);
        var record = new CommissioningRecord(sheet, readings?.Readings ?? [], readings?.By, readings?.On);
        using var json = new MemoryStream();
        new DiagnosisReport(record, sheet.Diagnose(record.Readings, symptoms, cancellationToken: cancellation)).WriteJson(json);
        return new Answer(json.ToArray(), form.ToString());

        Answer Refused(IReadOnlyList<ErrorAnswer> errors) => work.Refused(SiteFileProblem.Of(errors));
    }

    private static IReadOnlyList<ErrorAnswer> Within(string member, IEnumerable<SiteFileError> errors) =>
        [.. errors.Select(e => DiagnosisBody.ErrorAt(string.Concat("$.", member, e.Path.AsSpan(e.Path.StartsWith('$') ? 1 : 0)), e.Line, e.Column, e.Message))];

    private static IEnumerable<Symptom> SymptomsOf(DiagnosisBody body, Site site, List<ErrorAnswer> errors)
    {
        if (body.TextOf("symptoms") is not byte[] text) yield break;
        using JsonDocument list = JsonDocument.Parse(text);
        if (list.RootElement.ValueKind != JsonValueKind.Array)
        {
            errors.Add(DiagnosisBody.ErrorAt("$.symptoms", 1, 1, "it must be a list of texts"));
            yield break;
        }

        int place = 0;
        foreach (JsonElement item in list.RootElement.EnumerateArray())
        {
            string path = FormattableString.Invariant($"$.symptoms[{place++}]");
            if (Made(item, site, out string? error) is Symptom symptom) yield return symptom;
            else errors.Add(DiagnosisBody.ErrorAt(path, 1, 1, error!));
        }
    }

    private static Symptom? Made(JsonElement item, Site site, out string? error)
    {
        error = null;
        try
        {
            Symptom symptom = Symptom.Parse(item.ValueKind == JsonValueKind.String ? item.GetString()! : item.GetRawText());
            if (symptom.Device is not string device || site.Devices.Any(d => d.Name == device)) return symptom;
            error = "the site has no device of that name";
        }
        catch (Exception e) when (e is FormatException or ArgumentException or InvalidOperationException)
        {
            error = NoSymptom;
        }

        return null;
    }
}
