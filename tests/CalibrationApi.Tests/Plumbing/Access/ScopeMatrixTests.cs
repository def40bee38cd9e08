using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.Access;
using Xunit.Abstractions;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>Every operation of the route table with every scope and with every kind of key that opens nothing.</summary>
public sealed class ScopeMatrixTests(TwoFarms farms, ITestOutputHelper output) : IClassFixture<TwoFarms>
{
    [Fact]
    public async Task Rows_AreThoseOfTheRouteTable()
    {
        foreach (var operation in farms.Routes.Keys)
            Assert.NotNull(await farms.SampleAsync(operation, farms.North));

        Assert.Empty(Sample.Operations.Except(farms.Routes.Keys));
        output.WriteLine($"{farms.Routes.Count} operations, each with a row");
    }

    [Fact]
    public async Task EveryOperation_WithEachScopeAlone_TakesItsOwnAndNoOther()
    {
        var (taken, refused) = (0, 0);
        foreach (var (operation, scope) in farms.Routes.Keys.SelectMany(operation => Scope.All.Select(scope => (operation, scope))))
        {
            var needed = farms.ScopeOf(operation);
            var reply = await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), farms.North.Key(scope).Text);

            if (needed is null || needed == scope)
            {
                Assert.True(reply.Status is >= 200 and < 300, $"{operation} with {scope}: {reply.Status} {reply.Text}");
                taken++;
                continue;
            }

            await reply.RefusedAsync(403, null, "scope-missing");
            Assert.Equal(
                $"Bearer realm=\"calibration\", error=\"insufficient_scope\", error_description=\"{reply.Body.Word("/detail")}\", scope=\"{needed}\"",
                reply.Header("WWW-Authenticate")
            );
            refused++;
        }

        Assert.Equal(farms.Routes.Count * Scope.All.Count, taken + refused);
        Assert.True(refused > taken);
        output.WriteLine($"{farms.Routes.Count} operations x {Scope.All.Count} scopes: {taken} taken, {refused} refused");
    }

    [Fact]
    public async Task EveryOperation_WithAKeyThatOpensNothing_IsRefused()
    {
        var asked = 0;
        var retired = await Site.CreateAsync(farms.Service, "019d0000-00aa-7000-8000-000000000003");
        using (var connection = farms.Service.Database.Open())
            WorkspaceStore.Replace(
                connection,
                retired.Workspace,
                WorkspaceStore.Find(connection, retired.Workspace)! with
                {
                    Retired = true,
                }
            );
        foreach (var operation in farms.Routes.Keys)
        {
            var scope = farms.ScopeOf(operation);
            var good = farms.North.Key(scope ?? Scope.Read);
            var ended = farms.North.Key(scope ?? Scope.Read);
            ended.Revoke(farms.Service, farms.North.Workspace);
            (string? Key, string Code)[] keys =
            [
                (null, "key-missing"),
                (MadeKey.In(farms.Service, farms.North.Workspace, farms.Service.Clock.Now, scope ?? Scope.Read).Text, "key-expired"),
                (ended.Text, "key-revoked"),
                (good.Text[..^1], "key-invalid"),
                (OneLetterChanged(good.Text), "key-invalid"),
                (KeyText.Make(good.Id).Text, "key-invalid"),
                (KeyText.Make(Farm.NoRecord).Text, "key-invalid"),
                (retired.Full.Text, "workspace-retired"),
            ];
            foreach (var (key, code) in keys)
            {
                var reply = await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), key);
                asked++;
                if (scope is null)
                {
                    Assert.Equal(200, reply.Status);
                    continue;
                }

                await reply.RefusedAsync(401, null, code);
                Assert.Equal(
                    key is null
                        ? "Bearer realm=\"calibration\""
                        : $"Bearer realm=\"calibration\", error=\"invalid_token\", error_description=\"{reply.Body.Word("/detail")}\"",
                    reply.Header("WWW-Authenticate")
                );
            }
        }

        output.WriteLine($"{farms.Routes.Count} operations x 8 keys that open nothing: {asked} requests");
    }

    [Fact]
    public async Task EveryRefusal_LeavesNothingBehind()
    {
        var samples = new List<(string Operation, Sample Sample)>();
        foreach (var operation in farms.Routes.Keys.Where(operation => farms.ScopeOf(operation) is not null))
            samples.Add((operation, await farms.SampleAsync(operation, farms.South)));
        var key = farms.South.Key("no scope at all").Text;
        // The first refusal of a minute is stored at once; the rest is only counted.
        await farms.SendAsync(samples[0].Operation, samples[0].Sample, null);
        await farms.Service.Service<RefusalCounts>().StoreAsync();
        var before = farms.Service.RowCounts();

        foreach (var (operation, sample) in samples)
        {
            Assert.Equal(401, (await farms.SendAsync(operation, sample, null)).Status);
            Assert.Equal(403, (await farms.SendAsync(operation, sample, key)).Status);
        }

        Assert.Equal(before, farms.Service.RowCounts());
    }

    // Another letter in the middle of the secret, so that the length and both ends stay.
    private static string OneLetterChanged(string key) => key[..50] + (key[50] == 'a' ? 'b' : 'a') + key[51..];
}
