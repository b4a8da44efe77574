using System.Collections.Generic;
using System.Text;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Timeouts;

namespace PlanService;

/// <summary>An answer that is whole before its first byte is sent: when the time is over meanwhile, nothing of it is missing.</summary>
internal sealed record Answer(byte[] Body, string ContentType, int Status = StatusCodes.Status200OK) : IResult
{
    // Names in a page come from the file: should one get past the escaping, nothing of it runs or loads. Styles and pictures are inline.
    private const string Policy =
        "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox";

    /// <summary>The answer as a page that a browser may show and do nothing else with.</summary>
    public static Answer Page(string html) =>
        new(Encoding.UTF8.GetBytes(html), "text/html; charset=utf-8") { Headers = [new("Content-Security-Policy", Policy)] };

    private IReadOnlyList<KeyValuePair<string, string>> Headers { get; init; } = [];

    public async Task ExecuteAsync(HttpContext httpContext)
    {
        // Throws where the time was over just now: then the answer is 408, and no half of this one.
        httpContext.RequestAborted.ThrowIfCancellationRequested();
        httpContext.Features.Get<IHttpRequestTimeoutFeature>()?.DisableTimeout();
        HttpResponse response = httpContext.Response;
        response.StatusCode = Status;
        response.ContentType = ContentType;
        response.ContentLength = Body.Length;
        response.Headers.XContentTypeOptions = "nosniff";
        foreach ((string name, string value) in Headers) response.Headers[name] = value;
        await response.Body.WriteAsync(Body);
    }
}
