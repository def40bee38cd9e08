using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>Serves the files of a folder to a browser, on a loopback port of its own.</summary>
internal sealed class PageServer : IAsyncDisposable
{
    private readonly WebApplication app;

    private PageServer(WebApplication app) => this.app = app;

    /// <summary>Its origin, as browsers write it.</summary>
    public string Origin => app.Urls.Single();

    public static async Task<PageServer> StartAsync(string folder)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = folder });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        builder.Logging.ClearProviders();
        var app = builder.Build();
        app.UseStaticFiles(new StaticFileOptions { FileProvider = new PhysicalFileProvider(folder) });
        await app.StartAsync();
        return new PageServer(app);
    }

    public ValueTask DisposeAsync() => app.DisposeAsync();
}
