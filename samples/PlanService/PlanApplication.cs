using System;
using System.Text.Encodings.Web;
using System.Text.Json.Serialization;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using PlanService.Answers;

namespace PlanService;

/// <summary>Puts the service together.</summary>
public static class PlanApplication
{
    /// <summary>Makes the service, not yet started.</summary>
    /// <param name="args">Settings as on a command line, such as <c>--urls http://127.0.0.1:0</c>.</param>
    public static WebApplication Create(string[] args)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            Args = args,
            ContentRootPath = AppContext.BaseDirectory,
        });
        PlanLimits limits = builder.Configuration.GetSection("Limits").Get<PlanLimits>() ?? new PlanLimits();
        if (limits.Error() is string error) throw new InvalidOperationException(error);
        // Nobody but this machine is served unless somebody says so.
        if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey])) builder.WebHost.UseUrls("http://127.0.0.1:5080");
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = limits.MaxBytes;
            server.Limits.RequestHeadersTimeout = limits.Timeout;
        });
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
        // What a client did is its answer, and no error of the service: a request that takes too long would be logged with a stack trace.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Http.Timeouts.RequestTimeoutsMiddleware", LogLevel.None);
        AddServices(builder.Services, limits);

        WebApplication app = builder.Build();
        app.UseStatusCodePages(context => PlanProblem.WriteAsync(context.HttpContext, context.HttpContext.Response.StatusCode, limits));
        app.UseExceptionHandler();
        app.UseRequestTimeouts();
        app.UseRateLimiter();
        app.MapOpenApi("/openapi.json");
        app.MapPlans();
        return app;
    }

    private static void AddServices(IServiceCollection services, PlanLimits limits)
    {
        services.AddSingleton(limits);
        services.AddSingleton<WorkingPlaces>();
        services.AddSingleton<PlanWork>();
        services.AddHealthChecks();
        services.Configure<ExceptionHandlerOptions>(o =>
        {
            o.StatusCodeSelector = e => e is BadHttpRequestException bad ? bad.StatusCode : StatusCodes.Status500InternalServerError;
            o.ExceptionHandler = context => PlanProblem.WriteAsync(context, context.Response.StatusCode, limits);
            o.SuppressDiagnosticsCallback = context => context.Exception is BadHttpRequestException;
        });
        services.AddRequestTimeouts(o => o.DefaultPolicy = new RequestTimeoutPolicy
        {
            Timeout = limits.Timeout,
            TimeoutStatusCode = StatusCodes.Status408RequestTimeout,
        });
        services.AddRateLimiter(o =>
        {
            o.OnRejected = async (context, _) => await PlanProblem.TooBusy(context.HttpContext).ExecuteAsync(context.HttpContext);
            // Nobody waits here, for the library ends what waits too long with 200 and nothing: a site waits in WorkingPlaces.
            o.AddConcurrencyLimiter(PlanEndpoints.OneOfSeveral, l => l.PermitLimit = limits.AtOnce);
        });
        services.ConfigureHttpJsonOptions(o =>
        {
            o.SerializerOptions.TypeInfoResolverChain.Insert(0, PlanJson.Default);
            o.SerializerOptions.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
            // Degrees and ohms are written as such.
            o.SerializerOptions.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        });
        services.AddOpenApi(o => o.AddDocumentTransformer((document, _, _) =>
        {
            document.Info.Title = "Plan service";
            document.Info.Version = "1";
            document.Info.Description = "Assesses low-voltage camera power: post a site file, get what each device gets and what is wrong, as JSON or as a page to print. "
                + "Quantities come twice: as text for people, and as a number whose name says its unit.";
            return Task.CompletedTask;
        }));
    }
}
