using System.Net;
using CalibrationApi.Plumbing.Settings;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Configuration;

namespace CalibrationApi.Tests.Hosting.Pipeline;

/// <summary>What a browser is told about pages of other origins (CORS, WHATWG Fetch).</summary>
public sealed class AllowedOriginsTests
{
    private const string Setting = "Calibration:AllowedOrigins";
    private const string App = "https://app.example";
    private const string Local = "http://localhost:8080";

    [Theory]
    [InlineData(App)]
    [InlineData(Local)]
    public async Task Answer_ToAConfiguredOrigin_MayBeReadWithItsHeaders(string origin)
    {
        await using var host = new ConfiguredHost($"{App}; {Local}");
        using var client = host.CreateCheckedClient();

        using var response = await client.SendAsync(From(origin, HttpMethod.Get, "/v1/scales"));

        Assert.Equal(origin, Header(response, "Access-Control-Allow-Origin"));
        Assert.Equal(
            [
                "Accept-Post",
                "Allow",
                "Content-Disposition",
                "ETag",
                "Idempotent-Replayed",
                "Link",
                "Location",
                "RateLimit",
                "RateLimit-Policy",
                "Retry-After",
                "WWW-Authenticate",
            ],
            Names(response, "Access-Control-Expose-Headers")
        );
        Assert.Null(Header(response, "Access-Control-Allow-Credentials"));
        Assert.Equal(["Accept", "Accept-Encoding", "Origin"], Names(response, "Vary"));
    }

    [Theory]
    [InlineData("GET", "/v1/nothing", 404)]
    [InlineData("POST", "/v1/units", 405)]
    [InlineData("POST", "/v1/scales", 415)]
    public async Task Problem_ToAConfiguredOrigin_MayBeReadToo(string method, string path, int status)
    {
        await using var host = new ConfiguredHost(App);
        using var client = host.CreateCheckedClient();

        using var response = await client.SendAsync(From(App, new HttpMethod(method), path));

        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal(App, Header(response, "Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("http://app.example")]
    [InlineData("https://app.example:8443")]
    [InlineData("https://sub.app.example")]
    [InlineData("https://APP.example")]
    [InlineData("null")]
    public async Task Answer_ToAnotherOrigin_MayNotBeRead(string origin)
    {
        await using var host = new ConfiguredHost(App);
        using var client = host.CreateCheckedClient();

        using var response = await client.SendAsync(From(origin, HttpMethod.Get, "/v1/units"));

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.DoesNotContain(response.Headers, header => header.Key.StartsWith("Access-Control-", StringComparison.Ordinal));
        Assert.Equal(["Accept-Encoding", "Origin"], Names(response, "Vary"));
    }

    [Theory]
    [InlineData("POST", "content-type,idempotency-key")]
    [InlineData("PUT", "content-type,if-match")]
    [InlineData("GET", "authorization,if-none-match")]
    public async Task Preflight_OfAConfiguredOrigin_AllowsWhatTheContractTakes(string method, string headers)
    {
        await using var host = new ConfiguredHost(App);
        using var client = host.CreateCheckedClient();

        using var response = await client.SendAsync(Preflight(App, method, headers));

        Assert.Equal(HttpStatusCode.NoContent, response.StatusCode);
        Assert.Equal(App, Header(response, "Access-Control-Allow-Origin"));
        Assert.Contains(method, Names(response, "Access-Control-Allow-Methods"));
        Assert.Empty(headers.Split(',').Except(Names(response, "Access-Control-Allow-Headers"), StringComparer.OrdinalIgnoreCase));
        Assert.Equal("600", Header(response, "Access-Control-Max-Age"));
    }

    [Fact]
    public async Task Preflight_OfAnotherOrigin_AllowsNothing()
    {
        await using var host = new ConfiguredHost(App);
        using var client = host.CreateCheckedClient();

        using var response = await client.SendAsync(Preflight("https://other.example", "POST", "content-type"));

        Assert.DoesNotContain(response.Headers, header => header.Key.StartsWith("Access-Control-", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("GET")]
    [InlineData("OPTIONS")]
    public async Task Request_WhenNothingIsConfigured_IsAnsweredWithoutAWordAboutOrigins(string method)
    {
        using var request = method == "GET" ? From(App, HttpMethod.Get, "/v1/units") : Preflight(App, "POST", "content-type");

        using var response = await ApiHost.Client.SendAsync(request);

        Assert.DoesNotContain(response.Headers, header => header.Key.StartsWith("Access-Control-", StringComparison.Ordinal));
        Assert.DoesNotContain("Origin", Names(response, "Vary"));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("https://app.example")]
    [InlineData("http://localhost:8080;https://app.example:8443")]
    [InlineData("http://127.0.0.1:5173 ; http://[::1]:5173")]
    public void Refusal_OfOriginsAsBrowsersWriteThem_IsNone(string? configured) => Assert.Null(Refusal(configured));

    [Theory]
    [InlineData("*", "*")]
    [InlineData("null", "null")]
    [InlineData("app.example", "app.example")]
    [InlineData("https://app.example/", "https://app.example/")]
    [InlineData("https://app.example/page", "https://app.example/page")]
    [InlineData("https://*.example", "https://*.example")]
    [InlineData("https://App.example", "https://App.example")]
    [InlineData("HTTPS://app.example", "HTTPS://app.example")]
    [InlineData("https://app.example:443", "https://app.example:443")]
    [InlineData("https://me@app.example", "https://me@app.example")]
    [InlineData("ftp://app.example", "ftp://app.example")]
    [InlineData("https://äcker.example", "https://äcker.example")]
    [InlineData("https://app.example;http://localhost:8080/", "http://localhost:8080/")]
    [InlineData("https://app.example,http://localhost:8080", "https://app.example,http://localhost:8080")]
    public void Refusal_OfAnythingElse_NamesItAndSaysHowToWriteIt(string configured, string named)
    {
        var refusal = Refusal(configured);

        Assert.StartsWith(
            $"Calibration__AllowedOrigins holds '{named}'. Give origins as browsers write them",
            refusal,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Start_WithABrokenOrigin_EndsWithASentence()
    {
        await using var service = ServiceProcess.Start(
            "--urls",
            "http://127.0.0.1:0",
            "--Calibration:AllowedOrigins",
            "https://app.example/"
        );

        var (exitCode, errors) = await service.EndAsync();

        Assert.NotEqual(0, exitCode);
        Assert.StartsWith("Refusing to start: Calibration__AllowedOrigins holds 'https://app.example/'", errors, StringComparison.Ordinal);
    }

    private static string? Refusal(string? configured)
    {
        var faults = new List<string>();
        CalibrationSettings.Read(
            new ConfigurationBuilder().AddInMemoryCollection([new(Setting, configured)]).Build(),
            isAtATerminal: false,
            faults
        );
        return faults.SingleOrDefault();
    }

    private static HttpRequestMessage From(string origin, HttpMethod method, string path) =>
        new(method, path) { Headers = { { "Origin", origin } } };

    private static HttpRequestMessage Preflight(string origin, string method, string headers)
    {
        var request = From(origin, HttpMethod.Options, "/v1/scales");
        request.Headers.Add("Access-Control-Request-Method", method);
        request.Headers.Add("Access-Control-Request-Headers", headers);
        return request;
    }

    private static string? Header(HttpResponseMessage response, string name) =>
        response.Headers.TryGetValues(name, out var values) ? string.Join(',', values) : null;

    private static string[] Names(HttpResponseMessage response, string name) =>
        [
            .. (Header(response, name) ?? "")
                .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Order(StringComparer.Ordinal),
        ];

    private sealed class ConfiguredHost(string origins) : ApiHost
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.UseSetting(Setting, origins);
        }
    }
}
