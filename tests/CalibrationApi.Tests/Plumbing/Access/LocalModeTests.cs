using System.Net;
using CalibrationApi.Plumbing.Access;
using Microsoft.AspNetCore.Http;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>Without keys only the machine itself may use the service, and it may not make keys.</summary>
public sealed class LocalModeTests(RecordService service) : IClassFixture<RecordService>
{
    private static readonly string[] Signs =
    [
        "Forwarded",
        "Via",
        "X-Forwarded-For",
        "X-Forwarded-Host",
        "X-Forwarded-Proto",
        "X-Real-IP",
        "X-Original-For",
        "X-Original-Host",
        "X-Original-Proto",
        "x-forwarded-port",
        "X-Forwarded-Prefix",
        "X-Forwarded",
        "X-Client-IP",
        "true-client-ip",
    ];

    [Theory]
    [InlineData("127.0.0.1", "localhost")]
    [InlineData("127.0.0.1", "LOCALHOST")]
    [InlineData("127.8.9.1", "127.0.0.1")]
    [InlineData("::1", "[::1]")]
    [InlineData("::ffff:127.0.0.1", "localhost")]
    public void Refusal_FromThisMachine_IsNone(string address, string host)
    {
        Assert.Null(Of(address, host));
    }

    [Theory]
    [InlineData("192.168.1.7", "localhost")]
    [InlineData("::ffff:192.168.1.7", "localhost")]
    // A page in a browser on this machine, whose name was made to lead here.
    [InlineData("127.0.0.1", "farm.example")]
    [InlineData("127.0.0.1", "localhost.example.org")]
    [InlineData("127.0.0.1", "")]
    public void Refusal_FromElsewhere_SaysHowToMakeAKey(string address, string host)
    {
        var refusal = Of(address, host)!;

        Assert.Equal(401, refusal.Status);
        Assert.Contains("keys create", refusal.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Refusal_ThroughAProxyOnThisMachine_IsTheSame()
    {
        Assert.All(Signs, sign => Assert.Same(AccessRefusal.FromElsewhere, Of("127.0.0.1", "localhost", sign)));
    }

    [Theory]
    [InlineData("https://pages.example")]
    [InlineData("http://localhost:3000")]
    [InlineData("http://localhost:5000.example")]
    [InlineData("https://localhost:5000")]
    [InlineData("null")]
    [InlineData("")]
    public void Refusal_FromAPageOfAnotherOrigin_SaysHowToLetItIn(string origin)
    {
        var refusal = Of("127.0.0.1", "localhost:5000", "Origin", origin)!;

        Assert.Equal(401, refusal.Status);
        Assert.Contains("Calibration__AllowedOrigins", refusal.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Refusal_FromAPageOfTheServiceItself_IsNone()
    {
        Assert.Null(Of("127.0.0.1", "localhost:5000", "Origin", "http://localhost:5000"));
    }

    [Fact]
    public async Task Request_FromAPageOfAnotherOrigin_PassesOnlyWhereItIsAllowed()
    {
        const string Page = "https://pages.example";
        await using var closed = new ArrangedHost();
        await using var open = new ArrangedHost(("Calibration:AllowedOrigins", Page));

        Assert.Equal(401, (int)(await closed.GetAsync("/v1/machines", headers: ("Origin", Page))).StatusCode);
        Assert.Equal(200, (int)(await open.GetAsync("/v1/machines", headers: ("Origin", Page))).StatusCode);
        Assert.Equal(401, (int)(await open.GetAsync("/v1/machines", headers: ("Origin", Page + ".example"))).StatusCode);
    }

    [Theory]
    [InlineData("/v1/keys", "admin")]
    [InlineData("/v1/audit", "admin")]
    [InlineData("/v1/workspaces", "operator")]
    public async Task Request_ForWhatNeedsAnAdministrator_AsksForAKey(string path, string scope)
    {
        var reply = await service.GetAsync(path);

        var fault = await reply.RefusedAsync(401, null, "key-missing");
        Assert.Contains(scope, fault.Detail, StringComparison.Ordinal);
        Assert.Contains("keys create", fault.Detail, StringComparison.Ordinal);
        Assert.Equal("Bearer realm=\"calibration\"", reply.Header("WWW-Authenticate"));
    }

    [Fact]
    public async Task Request_OnceAKeyExists_NeedsOne()
    {
        using var other = new RecordService();
        Assert.Equal(200, (await other.GetAsync("/v1/machines")).Status);
        var stored = await other.CreateAsync("/v1/machines", Farm.MachineDraft);

        var key = MadeKey.In(other, "local", Scope.Read);

        Assert.Equal(401, (await other.GetAsync("/v1/machines")).Status);
        // Not even when all of them have ended.
        key.Revoke(other, "local");
        Assert.Equal(401, (await other.GetAsync("/v1/machines")).Status);
        other.Key = MadeKey.In(other, "local", Scope.Read).Text;
        Assert.Equal(200, (await other.GetAsync($"/v1/machines/{stored}")).Status);
    }

    private AccessRefusal? Of(string address, string host, string? header = null, string value = "x")
    {
        var context = new DefaultHttpContext
        {
            Connection = { RemoteIpAddress = IPAddress.Parse(address) },
            Request = { Scheme = "http", Host = new HostString(host) },
        };
        if (header is not null)
            context.Request.Headers[header] = value;
        return service.Service<LocalMode>().Refusal(context);
    }
}
