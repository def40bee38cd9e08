using System.Globalization;
using System.Text.RegularExpressions;

namespace CalibrationApi.Tests.Plumbing.Limits;

/// <summary>What a sender meets who asks too often, and what everybody is told before it comes to that.</summary>
public sealed partial class RequestLimitsTests
{
    private const string Somebody = "192.0.2.1";
    private const string Another = "192.0.2.2";
    private const string Units = "/v1/units";

    [Fact]
    public async Task Address_WithinItsQuota_IsToldPolicyAndStanding()
    {
        await using var host = Host(address: 3);

        using var first = await host.GetAsync(Units, Somebody);
        host.Clock.Advance(10.2);
        using var second = await host.GetAsync(Units, Somebody);

        Assert.Equal(200, (int)second.StatusCode);
        Assert.Equal([("address", "q=3;w=60")], Field(second, "RateLimit-Policy"));
        Assert.Equal([("address", "r=2;t=60")], Field(first, "RateLimit"));
        Assert.Equal([("address", "r=1;t=50")], Field(second, "RateLimit"));
    }

    [Fact]
    public async Task Address_BeyondItsQuota_IsRefusedUntilRetryAfter()
    {
        await using var host = Host(address: 2);
        for (var i = 0; i < 2; i++)
        {
            using var taken = await host.GetAsync(Units, Somebody);
            Assert.Equal(200, (int)taken.StatusCode);
        }

        using var refused = await host.GetAsync(Units, Somebody);

        var problem = await ProblemBody.ReadAsync(refused, 429);
        Assert.Equal("https://iana.org/assignments/http-problem-types#quota-exceeded", problem.Type);
        Assert.Equal(["address"], problem.ViolatedPolicies);
        Assert.Equal("rate-exceeded", problem.Only().Code);
        Assert.Equal([("address", "r=0;t=60")], Field(refused, "RateLimit"));
        var seconds = int.Parse(Assert.Single(refused.Headers.GetValues("Retry-After")), CultureInfo.InvariantCulture);
        host.Clock.Advance(seconds - 1);
        using var early = await host.GetAsync(Units, Somebody);
        Assert.Equal(429, (int)early.StatusCode);
        host.Clock.Advance(1);
        using var again = await host.GetAsync(Units, Somebody);
        Assert.Equal(200, (int)again.StatusCode);
    }

    [Fact]
    public async Task Address_BeyondItsQuota_LeavesOthersAlone()
    {
        await using var host = Host(address: 1);
        using var first = await host.GetAsync(Units, Somebody);
        using var refused = await host.GetAsync(Units, Somebody);

        using var other = await host.GetAsync(Units, Another);
        using var sameMachine = await host.GetAsync(Units, "127.0.0.1");

        Assert.Equal(429, (int)refused.StatusCode);
        Assert.Equal(200, (int)other.StatusCode);
        Assert.Equal(200, (int)sameMachine.StatusCode);
    }

    [Theory]
    [InlineData("/v1/nothing", 404)]
    [InlineData("/healthz/live", 200)]
    [InlineData("/reference/index.html", 200)]
    [InlineData("/openapi/v1.json", 200)]
    public async Task Address_WhateverItAsksFor_IsCounted(string path, int status)
    {
        await using var host = Host(address: 1);

        using var first = await host.GetAsync(path, Somebody);
        using var second = await host.GetAsync(path, Somebody);

        Assert.Equal((status, 429), ((int)first.StatusCode, (int)second.StatusCode));
        Assert.Equal([("address", "r=0;t=60")], Field(first, "RateLimit"));
    }

    [Fact]
    public async Task Address_OfTheMachineItself_HasAQuotaOfItsOwn()
    {
        await using var host = Host(address: 1, local: 2);

        var statuses = new List<int>();
        foreach (var from in (string?[])["127.0.0.1", "::1", null])
        {
            using var response = await host.GetAsync(Units, from);
            statuses.Add((int)response.StatusCode);
        }

        Assert.Equal([200, 200, 429], statuses);
    }

    [Fact]
    public async Task Key_BeyondItsQuota_IsRefusedFromEveryAddress()
    {
        await using var host = Host(key: 1);
        using var first = await host.GetAsync(Units, Somebody, "one");

        using var refused = await host.GetAsync(Units, Another, "one");
        using var otherKey = await host.GetAsync(Units, Somebody, "two");

        Assert.Equal([("address", "q=6000;w=60"), ("key", "q=1;w=60")], Field(first, "RateLimit-Policy"));
        Assert.Equal([("address", "r=5999;t=60"), ("key", "r=0;t=60")], Field(first, "RateLimit"));
        var problem = await ProblemBody.ReadAsync(refused, 429);
        Assert.Equal(["key"], problem.ViolatedPolicies);
        Assert.Equal("60", Assert.Single(refused.Headers.GetValues("Retry-After")));
        Assert.Equal(200, (int)otherKey.StatusCode);
    }

    [Fact]
    public async Task Answers_OfEveryStatus_SayHowMuchIsLeft()
    {
        await using var host = Host(address: 1000);
        var statuses = new HashSet<int>();
        foreach (
            var (method, path, body) in new[]
            {
                ("GET", Units, null),
                ("GET", "/v1/units?x=1", null),
                ("GET", "/v1/machines/019a0000-0000-7000-8000-000000000000", null),
                ("DELETE", Units, null),
                ("POST", "/v1/machines", "{}"),
                ("POST", "/v1/machines", "{"),
            }
        )
        {
            using var content = body is null ? null : Question.Json(System.Text.Encoding.UTF8.GetBytes(body));
            using var response = await host.SendAsync(new HttpMethod(method), path, Somebody, null, content);

            statuses.Add((int)response.StatusCode);
            Assert.Single(Field(response, "RateLimit"));
            Assert.Single(Field(response, "RateLimit-Policy"));
        }

        Assert.Equal([200, 400, 401, 405], statuses.Order());
    }

    private static ArrangedHost Host(int address = 6000, int key = 3000, int local = 600_000) =>
        new(
            ("Calibration:Limits:RequestsPerMinutePerAddress", Text(address)),
            ("Calibration:Limits:RequestsPerMinutePerKey", Text(key)),
            ("Calibration:Limits:RequestsPerMinuteLocal", Text(local))
        );

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A field as RFC 9651 reads it: a list of strings with parameters. Whatever is no such list fails.</summary>
    private static (string Name, string Parameters)[] Field(HttpResponseMessage response, string name)
    {
        var text = Assert.Single(response.Headers.GetValues(name));
        Assert.Matches(StructuredList(), text);
        return [.. Item().Matches(text).Select(match => (match.Groups[1].Value, match.Groups[2].Value.TrimStart(';')))];
    }

    [GeneratedRegex(
        """^"[ !#-\[\]-~]*"(;[a-z*][a-z0-9_.*-]*(=(-?[0-9]{1,15}|"[ !#-\[\]-~]*"))?)*(, "[ !#-\[\]-~]*"(;[a-z*][a-z0-9_.*-]*(=(-?[0-9]{1,15}|"[ !#-\[\]-~]*"))?)*)*$"""
    )]
    private static partial Regex StructuredList();

    [GeneratedRegex("\"([^\"]*)\"((?:;[^,]*)?)")]
    private static partial Regex Item();
}
