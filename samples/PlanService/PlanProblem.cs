using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;
using static System.FormattableString;

namespace PlanService;

/// <summary>What goes wrong, as problem details (RFC 9457), whatever form was asked for.</summary>
internal static class PlanProblem
{
    private const int SecondsToComeAgain = 1;

    /// <summary>Writes the problem of a status, and says in its detail what to do.</summary>
    public static Task WriteAsync(HttpContext context, int status, PlanLimits limits) =>
        Of(status, DetailOf(status, limits)).ExecuteAsync(context);

    /// <summary>Refuses a site file because too many wait, and says when to come again (RFC 9110, 10.2.3).</summary>
    public static IResult TooBusy(HttpContext context)
    {
        context.Response.Headers.RetryAfter = SecondsToComeAgain.ToString(CultureInfo.InvariantCulture);
        return Of(StatusCodes.Status503ServiceUnavailable,
            "Too many site files are waiting: send this one again after the seconds in Retry-After.");
    }

    /// <summary>Refuses a body that is no JSON by its header.</summary>
    public static IResult OfMediaType() => Of(StatusCodes.Status415UnsupportedMediaType, "A site file is application/json in UTF-8.");

    /// <summary>Refuses an Accept header that allows none of the forms that there are.</summary>
    public static IResult OfForms(IEnumerable<MediaTypeHeaderValue> forms) =>
        Of(StatusCodes.Status406NotAcceptable, $"The answer is {string.Join(" or ", forms.Select(f => f.MediaType))}.");

    /// <summary>Refuses a body in a compressed form, and says in what form it is taken (RFC 9110, 15.5.16).</summary>
    public static IResult OfEncoding(HttpContext context)
    {
        context.Response.Headers.AcceptEncoding = "identity";
        return Of(StatusCodes.Status415UnsupportedMediaType,
            "The body is compressed: send the site file as it is, without Content-Encoding.");
    }

    private static IResult Of(int status, string detail) => Results.Problem(detail, statusCode: status);

    private static string DetailOf(int status, PlanLimits limits) => status switch
    {
        StatusCodes.Status400BadRequest => "This is no complete HTTP request, or its body ended early.",
        StatusCodes.Status404NotFound => "There is nothing here: GET / lists what there is.",
        StatusCodes.Status405MethodNotAllowed => "This address has another method: GET / lists what there is.",
        StatusCodes.Status408RequestTimeout =>
            Invariant($"The request took longer than {limits.Timeout.TotalSeconds} s to arrive, to wait for its turn or to be worked out."),
        StatusCodes.Status413PayloadTooLarge => Invariant($"The site file is too large: it may have at most {limits.MaxBytes} bytes."),
        StatusCodes.Status500InternalServerError => "This is an error of the service, not of the site file.",
        _ => "The request cannot be answered.",
    };
}
