using System.Net;
using CalibrationApi.Plumbing.Access;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Tests;

/// <summary>The real service with settings of a test; requests come from where and with the key that the test says.</summary>
internal sealed class ArrangedHost(params (string Name, string Value)[] settings) : ApiHost
{
    private const string FromHeader = "Test-From";
    private const string KeyHeader = "Test-Key";

    public SteppingClock Clock { get; } = new();

    /// <summary>Where the log goes besides the console.</summary>
    public ILoggerProvider? Log { get; init; }

    /// <summary>Addresses that only this test has.</summary>
    public Dictionary<string, Endpoint> Endpoints { get; } = [];

    /// <summary>Sends a request from an address, with a key.</summary>
    public async Task<HttpResponseMessage> SendAsync(
        HttpMethod method,
        string path,
        string? from = null,
        string? key = null,
        HttpContent? content = null,
        params (string Name, string Value)[] headers
    )
    {
        using var client = CreateCheckedClient();
        using var request = new HttpRequestMessage(method, new Uri(path, UriKind.RelativeOrAbsolute)) { Content = content };
        if (from is not null)
            request.Headers.Add(FromHeader, from);
        if (key is not null)
            request.Headers.Add(KeyHeader, key);
        foreach (var (name, value) in headers)
        {
            if (!request.Headers.TryAddWithoutValidation(name, value))
                content!.Headers.TryAddWithoutValidation(name, value);
        }

        return await client.SendAsync(request);
    }

    public Task<HttpResponseMessage> GetAsync(
        string path,
        string? from = null,
        string? key = null,
        params (string Name, string Value)[] headers
    ) => SendAsync(HttpMethod.Get, path, from, key, null, headers);

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        foreach (var (name, value) in settings)
            builder.UseSetting(name, value);
        builder.ConfigureTestServices(services =>
        {
            services.AddSingleton<TimeProvider>(Clock);
            services.AddSingleton<IStartupFilter>(new Arrangement(Endpoints));
            if (Log is not null)
                services.AddSingleton(Log);
        });
    }

    private sealed class Arrangement(Dictionary<string, Endpoint> endpoints) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
            app =>
            {
                app.Use(
                    (context, rest) =>
                    {
                        var headers = context.Request.Headers;
                        if (headers.Remove(FromHeader, out var from))
                            context.Connection.RemoteIpAddress = IPAddress.Parse(from.ToString());
                        if (headers.Remove(KeyHeader, out var key))
                            context.User = Caller.Principal(
                                "Test",
                                CalibrationApi.Plumbing.Access.Workspace.Local.ToString(),
                                key.ToString(),
                                Scope.All
                            );
                        if (endpoints.TryGetValue(context.Request.Path, out var endpoint))
                            context.SetEndpoint(endpoint);
                        return rest(context);
                    }
                );
                next(app);
            };
    }
}
