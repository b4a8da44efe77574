using System;
using System.Diagnostics;
using System.IO;
using System.Linq;
using System.Threading.Tasks;
using CamPower.Tests.Repository;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;
using Microsoft.Playwright;

namespace Classroom.Browser;

/// <summary>The page as it is published, served on this machine alone, and the Chromium that looks at it.</summary>
public sealed class PublishedClassroom(Chromium chromium) : IAsyncLifetime
{
    private const string Folder = "artifacts/classroom";

    private WebApplication? _server;

    public IBrowser Browser => chromium.Browser;

    public Uri Address { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        await PublishAsync();
        _server = Serve(Path.Combine(RepositoryFiles.PathOf(Folder), "wwwroot"));
        await _server.StartAsync();
        Address = new Uri(_server.Urls.Single());
    }

    public async Task DisposeAsync()
    {
        if (_server is not null) await _server.DisposeAsync();
    }

    // Into an empty folder: what an earlier publish left there would be served too.
    private static async Task PublishAsync()
    {
        string output = RepositoryFiles.PathOf(Folder);
        if (Directory.Exists(output)) Directory.Delete(output, recursive: true);
        using var publish = Process.Start(new ProcessStartInfo("dotnet",
            ["publish", RepositoryFiles.PathOf("samples/Classroom"), "-c", "Release", "-o", output, "-v", "quiet"]) { RedirectStandardOutput = true })!;
        string said = await publish.StandardOutput.ReadToEndAsync();
        await publish.WaitForExitAsync();
        Assert.True(publish.ExitCode == 0, said);
    }

    private static WebApplication Serve(string root)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication server = builder.Build();
        var types = new FileExtensionContentTypeProvider();
        types.Mappings[".dat"] = "application/octet-stream";
        types.Mappings[".pdb"] = "application/octet-stream";
        var files = new PhysicalFileProvider(root);
        server.UseDefaultFiles(new DefaultFilesOptions { FileProvider = files });
        server.UseStaticFiles(new StaticFileOptions { FileProvider = files, ContentTypeProvider = types });
        return server;
    }
}
