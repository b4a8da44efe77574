using System;
using System.Collections.Generic;
using System.IO;
using System.IO.Pipelines;
using System.Linq;
using System.Text.Json;
using System.Threading;
using System.Threading.Tasks;
using CamPower;
using CamPower.Files;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PlanService.Answers;

namespace PlanService;

/// <summary>What becomes of a site file from its first byte to its answer.</summary>
internal sealed class PlanWork(PlanLimits limits, WorkingPlaces places, IOptions<JsonOptions> json)
{
    /// <summary>The forms of an answer.</summary>
    public static readonly MediaTypeHeaderValue
        Json = MediaTypeHeaderValue.Parse("application/json; charset=utf-8"), Html = MediaTypeHeaderValue.Parse("text/html; charset=utf-8");

    /// <summary>Receives a site file, waits for a place, works it out and gives the whole answer.</summary>
    /// <param name="request">The request with the site file.</param>
    /// <param name="forms">The forms of the answer that there are.</param>
    /// <param name="answer">Makes the answer in a form.</param>
    /// <param name="cancellation">Breaks it off.</param>
    public Task<IResult> AnswerAsync(HttpRequest request, IReadOnlyList<MediaTypeHeaderValue> forms,
        Func<Evidence, IReadOnlyList<Finding>, MediaTypeHeaderValue, Answer> answer, CancellationToken cancellation) => AnswerAsync(request, forms,
            (body, form) => Checked(body, (evidence, findings) => answer(evidence, findings, form), cancellation), cancellation);

    /// <summary>Receives a body, waits for a place, works it out and gives the whole answer.</summary>
    /// <param name="request">The request with the body.</param>
    /// <param name="forms">The forms of the answer that there are.</param>
    /// <param name="answer">Makes the answer of the body in a form.</param>
    /// <param name="cancellation">Breaks it off.</param>
    public async Task<IResult> AnswerAsync(HttpRequest request, IReadOnlyList<MediaTypeHeaderValue> forms,
        Func<MemoryStream, MediaTypeHeaderValue, Answer> answer, CancellationToken cancellation)
    {
        HttpContext context = request.HttpContext;
        context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.Accept);
        if (!IsUtf8Json(request)) return PlanProblem.OfMediaType();
        if (IsCompressed(request)) return PlanProblem.OfEncoding(context);
        MediaTypeHeaderValue? form = Accepted.BestOf(forms, request.GetTypedHeaders().Accept);
        if (form is null) return PlanProblem.OfForms(forms);

        using MemoryStream body = await ReceiveAsync(request.BodyReader, cancellation);
        Answer? whole = await places.DoAsync(
            () => answer(body, form), cancellation);
        return whole ?? PlanProblem.TooBusy(context);
    }

    /// <summary>What is wrong with a body.</summary>
    public Answer Refused(SiteFileProblem problem) => new(Bytes(problem), "application/problem+json", StatusCodes.Status400BadRequest);

    /// <summary>What one site file may hold.</summary>
    public SiteFileOptions Options => new() { MaxBytes = limits.MaxBytes };

    /// <summary>An answer as JSON.</summary>
    public Answer Written<T>(T answer) => new(Bytes(answer), Json.ToString());

    // A read that its own token ends would leave the server's reader in the middle, and an error of it in the log.
    private static async Task<MemoryStream> ReceiveAsync(PipeReader reader, CancellationToken cancellation)
    {
        var body = new MemoryStream();
        using CancellationTokenRegistration end = cancellation.Register(reader.CancelPendingRead);
        for (bool isWhole = false; !isWhole;)
        {
            ReadResult part = await reader.ReadAsync(CancellationToken.None);
            foreach (ReadOnlyMemory<byte> bytes in part.Buffer) body.Write(bytes.Span);
            reader.AdvanceTo(part.Buffer.End);
            cancellation.ThrowIfCancellationRequested();
            isWhole = part.IsCompleted;
        }

        body.Position = 0;
        return body;
    }

    private Answer Checked(MemoryStream body, Func<Evidence, IReadOnlyList<Finding>, Answer> answer, CancellationToken cancellation)
    {
        SiteFileResult file = SiteFile.Read(body, Options);
        if (!file.TryGetSite(out Site? site))
        {
            return Refused(SiteFileProblem.Of([.. file.Errors.Select(ErrorAnswer.Of)]));
        }

        var evidence = new Evidence(site.Assess(cancellation), cancellation);
        return answer(evidence, RuleSet.Standard.Check(evidence));
    }

    private byte[] Bytes<T>(T value) => JsonSerializer.SerializeToUtf8Bytes(value, json.Value.SerializerOptions.GetTypeInfo(typeof(T)));

    private static bool IsUtf8Json(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out MediaTypeHeaderValue? type)
        && type.MediaType.Equals(Json.MediaType, StringComparison.OrdinalIgnoreCase)
        && (!type.Charset.HasValue || type.Charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase));

    private static bool IsCompressed(HttpRequest request) =>
        request.Headers.ContentEncoding.Any(encoding => !"identity".Equals(encoding, StringComparison.OrdinalIgnoreCase));
}
