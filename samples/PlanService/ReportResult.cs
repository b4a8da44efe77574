using System.Threading.Tasks;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace PlanService;

/// <summary>A report as a page that a browser may show and do nothing else with.</summary>
internal sealed class ReportResult(string html) : IResult
{
    // Names in it come from the file: should one ever get past the escaping, nothing of it runs or loads. Its styles and its pictures are inline.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; sandbox";

    public Task ExecuteAsync(HttpContext httpContext)
    {
        IHeaderDictionary headers = httpContext.Response.Headers;
        headers[HeaderNames.ContentSecurityPolicy] = Policy;
        headers[HeaderNames.XContentTypeOptions] = "nosniff";
        return Results.Text(html, "text/html", System.Text.Encoding.UTF8).ExecuteAsync(httpContext);
    }
}
