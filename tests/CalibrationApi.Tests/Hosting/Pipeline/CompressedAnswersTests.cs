using System.IO.Compression;
using System.Text;
using CalibrationApi.Hosting.Pipeline;
using CalibrationApi.Plumbing.Keeping;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests.Hosting.Pipeline;

/// <summary>Which answers are compressed, and that none is whose length could give a secret away.</summary>
public sealed class CompressedAnswersTests
{
    [Theory]
    [InlineData("/openapi/v1.json", "application/json")]
    [InlineData("/reference/reference-page.js", "text/javascript")]
    [InlineData("/openapi/v1.yaml", "application/yaml")]
    [InlineData("/reference/codes", "text/html")]
    [InlineData("/v1/units", "application/json")]
    [InlineData("/v1/codes", "application/json")]
    [InlineData("/v1/machines", "application/json")]
    [InlineData("/v1/catch-tests", "text/csv")]
    [InlineData("/v1/history", "application/x-ndjson")]
    public async Task Get_PublicDocumentOrList_IsCompressedAsAskedAndUnpacksToTheSame(string path, string media)
    {
        await using var host = new ApiHost();
        using var client = host.CreateClient();
        (
            await client.PostAsync(
                new Uri("/v1/machines", UriKind.Relative),
                new StringContent(Farm.MachineDraft.Body.ToJsonString(), Encoding.UTF8, "application/json")
            )
        ).EnsureSuccessStatusCode();
        var plain = await SendAsync(client, path, media, null);
        Assert.Null(plain.Encoding);
        Assert.Contains("Accept-Encoding", plain.Vary, StringComparison.Ordinal);

        foreach (var encoding in (string[])["gzip", "br"])
        {
            var packed = await SendAsync(client, path, media, encoding);

            Assert.Equal(encoding, packed.Encoding);
            Assert.Contains("Accept-Encoding", packed.Vary, StringComparison.Ordinal);
            Assert.Equal(plain.Text(), packed.Text());
            Assert.Equal(plain.ETag, packed.ETag);
            if (plain.Body.Length > 10_000)
                Assert.True(packed.Body.Length < plain.Body.Length / 2, $"{packed.Body.Length} of {plain.Body.Length} bytes");
        }
    }

    [Theory]
    [InlineData("GET", "/v1/keys")]
    [InlineData("GET", "/v1/workspaces")]
    [InlineData("GET", "/v1/audit")]
    [InlineData("GET", "/v1/audit/refusals")]
    [InlineData("POST", "/v1/keys", """{ "name": "tablet", "scopes": ["read"] }""")]
    [InlineData("POST", "/v1/calculations/catch-test", """{ "catches": [] }""")]
    [InlineData("POST", "/v1/products", """{ "name": "barley" }""")]
    [InlineData("GET", "/v1/machines?limit=x")]
    public async Task Answer_BesideASecretOrOfWhatWasSent_IsNeverCompressed(string method, string path, string? body = null)
    {
        await using var host = new ApiHost();
        using var client = host.CreateClient();
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        request.Headers.TryAddWithoutValidation("Accept-Encoding", "br, gzip");
        if (body is not null)
            request.Content = new StringContent(body, Encoding.UTF8, "application/json");

        using var answer = await client.SendAsync(request);

        Assert.Empty(answer.Content.Headers.ContentEncoding);
        Assert.NotEmpty(await answer.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public void Routes_ThatMayBeCompressed_AreReadOnlyAndPublicOrListsOfRecords()
    {
        var routes = ApiHost
            .SharedServices.GetRequiredService<EndpointDataSource>()
            .Endpoints.OfType<RouteEndpoint>()
            .Where(route => CompressedAnswers.MayBeCompressed(route.Metadata))
            .Select(route => "/" + route.RoutePattern.RawText!.Trim('/'))
            .ToArray();

        Assert.Contains("/v1/catch-tests", routes);
        Assert.Contains("/v1/units", routes);
        Assert.DoesNotContain(routes, path =>
            path.Contains("key", StringComparison.Ordinal) || path.Contains("audit", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(routes, path => path.StartsWith("/v1/workspaces", StringComparison.Ordinal));
        Assert.DoesNotContain(routes, path => path.StartsWith("/v1/calculations", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Get_WithATag_HasOneForAllEncodingsThatIsWeakAndKnownAgain()
    {
        await using var host = new ArrangedHost();
        var document = Encoding.UTF8.GetBytes($$"""{ "text": "{{new string('x', 1000)}}" }""");
        host.Endpoints["/document"] = new(
            context => new RecordResult(document, "\"one\"").ExecuteAsync(context),
            new EndpointMetadataCollection(new AllowAnonymousAttribute()),
            "document"
        );

        foreach (var encoding in (string[])["identity", "gzip", "br"])
        {
            using var first = await host.GetAsync("/document", headers: ("Accept-Encoding", encoding));
            Assert.Equal("W/\"one\"", first.Headers.ETag?.ToString());
            Assert.Equal(encoding == "identity" ? [] : [encoding], first.Content.Headers.ContentEncoding);
            foreach (var known in (string[])["W/\"one\"", "\"one\""])
            {
                using var again = await host.GetAsync("/document", headers: [("Accept-Encoding", encoding), ("If-None-Match", known)]);
                Assert.Equal((304, "W/\"one\""), ((int)again.StatusCode, again.Headers.ETag?.ToString()));
                Assert.Contains("Accept-Encoding", again.Headers.Vary);
            }
        }
    }

    // The library of the page packs its files itself, each packed form with a tag of its own.
    [Fact]
    public async Task Get_FileOfTheReferencePage_IsPackedByItsLibrary()
    {
        await using var host = new ApiHost();
        using var client = host.CreateClient();

        var plain = await SendAsync(client, "/reference/swagger-ui.css", "text/css", null);
        var packed = await SendAsync(client, "/reference/swagger-ui.css", "text/css", "gzip");

        Assert.Equal("gzip", packed.Encoding);
        Assert.Equal(plain.Text(), packed.Text());
        Assert.NotEqual(plain.ETag, packed.ETag);
    }

    private static async Task<Received> SendAsync(HttpClient client, string path, string media, string? encoding)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.TryAddWithoutValidation("Accept", media);
        if (encoding is not null)
            request.Headers.TryAddWithoutValidation("Accept-Encoding", encoding);
        using var answer = await client.SendAsync(request);
        Assert.True(answer.IsSuccessStatusCode, $"{path}: {(int)answer.StatusCode}");
        return new(
            answer.Content.Headers.ContentEncoding.SingleOrDefault(),
            string.Join(", ", answer.Headers.Vary),
            answer.Headers.ETag?.ToString(),
            await answer.Content.ReadAsByteArrayAsync()
        );
    }

    private sealed record Received(string? Encoding, string Vary, string? ETag, byte[] Body)
    {
        public string Text()
        {
            using var packed = new MemoryStream(Body);
            using Stream plain = Encoding switch
            {
                "gzip" => new GZipStream(packed, CompressionMode.Decompress),
                "br" => new BrotliStream(packed, CompressionMode.Decompress),
                _ => packed,
            };
            using var reader = new StreamReader(plain);
            return reader.ReadToEnd();
        }
    }
}
