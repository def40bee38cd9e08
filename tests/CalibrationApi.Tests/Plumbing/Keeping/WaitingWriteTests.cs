using System.Text;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>The time of a request also runs while its write waits for its turn.</summary>
public sealed class WaitingWriteTests
{
    private const string Products = "/v1/products";

    [Fact]
    public async Task Request_WhoseTimeIsUpBeforeItsTurn_IsAnsweredAndStoresNothingUntilItIsRepeated()
    {
        await using var host = new ArrangedHost(("Calibration:Limits:RequestSeconds", "1"));
        using var gate = new ManualResetEventSlim();
        var blocked = host.Services.GetRequiredService<SingleWriter>().WriteAsync(_ => gate.Wait(TimeSpan.FromSeconds(60)));

        using var late = await StoreAsync(host);

        Assert.False(blocked.IsCompleted);
        Assert.Equal("service-busy", (await ProblemBody.ReadAsync(late, 503)).Only().Code);
        Assert.Equal("5", Assert.Single(late.Headers.GetValues("Retry-After")));
        gate.Set();
        Assert.True(await blocked);
        Assert.Equal(0, Count(host));
        using var again = await StoreAsync(host);
        Assert.Equal(201, (int)again.StatusCode);
        Assert.Equal(1, Count(host));
    }

    private static async Task<HttpResponseMessage> StoreAsync(ArrangedHost host)
    {
        using var body = new StringContent(Farm.ProductDraft.Text, Encoding.UTF8, "application/json");
        return await host.SendAsync(HttpMethod.Post, Products, content: body, headers: ("Idempotency-Key", "the-same-each-time"));
    }

    private static long Count(ArrangedHost host)
    {
        using var connection = host.Services.GetRequiredService<CalibrationDatabase>().Open();
        return connection.QuerySingle<long>("select count(*) from products");
    }
}
