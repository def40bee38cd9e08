using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Hosting.Pipeline;

/// <summary>Only named proxies are believed when they say for whom they ask.</summary>
public sealed class ForwardedRequestsTests
{
    private const string Proxy = "10.1.2.3";
    private const string Stranger = "192.0.2.66";

    [Theory]
    [InlineData(Proxy, "https://")]
    [InlineData("::ffff:10.1.2.3", "https://")]
    [InlineData(Stranger, "http://")]
    [InlineData("127.0.0.1", "http://")]
    public async Task Scheme_Forwarded_IsInLinksWhenTheProxyIsNamed(string from, string scheme)
    {
        await using var host = await HostAsync();

        using var response = await host.GetAsync(
            "/v1/products?limit=1",
            from,
            "one",
            ("X-Forwarded-For", "203.0.113.7"),
            ("X-Forwarded-Proto", "https"),
            ("X-Forwarded-Host", "evil.example")
        );

        var next = JsonNode.Parse(await response.Content.ReadAsStringAsync())!["next"]!.GetValue<string>();
        Assert.StartsWith(scheme + "localhost/", next, StringComparison.Ordinal);
        Assert.StartsWith($"<{scheme}localhost/", Assert.Single(response.Headers.GetValues("Link")), StringComparison.Ordinal);
    }

    [Theory]
    // Each request names another client; whoever is believed has one request left for each.
    [InlineData(Proxy, "203.0.113.1", "203.0.113.2", 200)]
    [InlineData(Stranger, "203.0.113.1", "203.0.113.2", 429)]
    // What a client writes itself stands before what the proxy adds, and is not looked at.
    [InlineData(Proxy, "198.51.100.1, 203.0.113.1", "198.51.100.2, 203.0.113.1", 429)]
    // A chain of named proxies is followed to its end.
    [InlineData(Proxy, "203.0.113.1, 10.1.9.9", "203.0.113.2, 10.1.9.9", 200)]
    [InlineData(Proxy, "203.0.113.1, 10.1.9.9", "203.0.113.1, 10.1.8.8", 429)]
    public async Task Address_Forwarded_IsCountedWhenTheProxyIsNamed(string from, string first, string second, int status)
    {
        await using var host = new ArrangedHost(
            ("Calibration:Proxies", "10.1.0.0/16"),
            ("Calibration:Limits:RequestsPerMinutePerAddress", "1")
        );
        using var taken = await host.GetAsync("/v1/units", from, null, ("X-Forwarded-For", first));

        using var response = await host.GetAsync("/v1/units", from, null, ("X-Forwarded-For", second));

        Assert.Equal((200, status), ((int)taken.StatusCode, (int)response.StatusCode));
    }

    [Fact]
    public async Task Headers_OfAProxyThatIsNotNamed_AreToldOnce()
    {
        var log = new LogEntries();
        await using var host = new ArrangedHost { Log = log };

        for (var i = 0; i < 3; i++)
        {
            using var response = await host.GetAsync("/v1/units", Stranger, null, ("X-Forwarded-For", "203.0.113.7"));
        }

        var warning = Assert.Single(log.All, entry => entry.Text.Contains("X-Forwarded-For", StringComparison.Ordinal));
        Assert.StartsWith($"{Stranger} sent X-Forwarded-For and is not in Calibration__Proxies", warning.Text, StringComparison.Ordinal);
    }

    private static async Task<ArrangedHost> HostAsync()
    {
        var host = new ArrangedHost(("Calibration:Proxies", "10.1.0.0/16"));
        for (var i = 0; i < 2; i++)
        {
            using var content = Question.Json(Encoding.UTF8.GetBytes(Farm.ProductDraft.Text));
            using var response = await host.SendAsync(HttpMethod.Post, "/v1/products", content: content);
            Assert.Equal(201, (int)response.StatusCode);
        }

        return host;
    }
}
