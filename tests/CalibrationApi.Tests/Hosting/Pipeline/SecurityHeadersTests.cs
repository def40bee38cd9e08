using System.Text;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests.Hosting.Pipeline;

/// <summary>What every answer tells browsers and caches, whatever the route and however it ends.</summary>
public sealed class SecurityHeadersTests
{
    private const string AnyId = "019a0000-0000-7000-8000-000000000000";

    [Fact]
    public async Task Answers_OfAllRoutes_CarryTheHeaders()
    {
        await using var host = new ArrangedHost();
        var routes = host.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().ToArray();
        Assert.True(routes.Length > 20);
        foreach (var route in routes)
        {
            var path = "/" + route.RoutePattern.RawText!.Trim('/').Replace("{id}", AnyId, StringComparison.Ordinal);
            Assert.DoesNotContain("{", path, StringComparison.Ordinal);
            foreach (var method in route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET"])
                await CheckAsync(host, method, path);
        }
    }

    [Theory]
    [InlineData("GET", "/")]
    [InlineData("GET", "/nothing")]
    [InlineData("GET", "/openapi/v1.json")]
    [InlineData("DELETE", "/v1/units")]
    [InlineData("TRACE", "/v1/units")]
    [InlineData("GET", "/v1/units?x=1")]
    public async Task Answers_WithoutARoute_CarryTheHeaders(string method, string path)
    {
        await using var host = new ArrangedHost();

        await CheckAsync(host, method, path);
    }

    [Fact]
    public async Task Answer_ToAFailure_CarriesTheHeaders()
    {
        await using var host = new ArrangedHost();
        host.Endpoints["/fails"] = new(_ => throw new InvalidOperationException("It fails."), null, "fails");

        await CheckAsync(host, "GET", "/fails");
    }

    [Fact]
    public async Task ReferencePage_InABrowser_MayOnlyUseThisService()
    {
        await using var host = new ArrangedHost();

        using var page = await host.GetAsync("/reference/index.html");

        var policy = Assert.Single(page.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; script-src 'self' 'unsafe-eval'; ", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("*", policy, StringComparison.Ordinal);
        // The policy lets no script run that stands in the page itself.
        Assert.DoesNotContain("<script>", await page.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.False(page.Headers.Contains("x-swagger-ui-version"));
    }

    [Theory]
    [InlineData("https://calibration.example/v1/units", true)]
    [InlineData("http://calibration.example/v1/units", false)]
    [InlineData("https://localhost/v1/units", false)]
    public async Task Answer_OverTls_KeepsBrowsersToTls(string address, bool isKept)
    {
        await using var host = new ArrangedHost();

        using var response = await host.GetAsync(address);

        Assert.Equal(isKept, response.Headers.TryGetValues("Strict-Transport-Security", out var values));
        if (isKept)
            Assert.Equal("max-age=31536000", Assert.Single(values!));
    }

    [Fact]
    public async Task Record_WithRulesForCachesOfItsOwn_KeepsThem()
    {
        await using var host = new ArrangedHost();

        using var response = await host.GetAsync("/v1/units");

        Assert.Equal("public, max-age=3600", response.Headers.CacheControl?.ToString());
    }

    private static async Task CheckAsync(ArrangedHost host, string method, string path)
    {
        using var content = method is "POST" or "PUT" ? Question.Json(Encoding.UTF8.GetBytes("{}")) : null;
        using var response = await host.SendAsync(new HttpMethod(method), path, content: content);

        var answer = $"{method} {path}: {(int)response.StatusCode}";
        Assert.True("nosniff" == Header(response, "X-Content-Type-Options"), answer);
        Assert.True("no-referrer" == Header(response, "Referrer-Policy"), answer);
        var isPage = path.StartsWith("/reference", StringComparison.Ordinal);
        Assert.True(isPage || "default-src 'none'; frame-ancestors 'none'" == Header(response, "Content-Security-Policy"), answer);
        Assert.Contains("frame-ancestors 'none'", Header(response, "Content-Security-Policy"), StringComparison.Ordinal);
        Assert.True(Header(response, "Cache-Control").Length > 0, answer);
        if ((int)response.StatusCode >= 400)
            Assert.True(response.Headers.CacheControl!.NoStore || response.Headers.CacheControl.NoCache, answer);
        Assert.False(response.Headers.Contains("Server"), answer);
        Assert.False(response.Headers.Contains("X-Powered-By"), answer);
    }

    private static string Header(HttpResponseMessage response, string name) =>
        response.Headers.TryGetValues(name, out var values) ? string.Join(", ", values) : "";
}
