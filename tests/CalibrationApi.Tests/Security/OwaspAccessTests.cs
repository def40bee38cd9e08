using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Testing;
using CalibrationApi.Tests.Plumbing.Access;

namespace CalibrationApi.Tests.Security;

/// <summary>
/// Who gets in, and to what. Items 1, 2, 5 and 6 of the OWASP API Security Top 10, edition 2023 (owasp.org/API-Security, CC BY-SA
/// 4.0), one concrete test or more for each.
/// The whole of items 1, 2 and 5, every operation with every kind of key, is in <see cref="ForeignWorkspaceTests"/>,
/// <see cref="ScopeMatrixTests"/> and <see cref="KeySchemeTests"/>.
/// </summary>
public sealed class OwaspAccessTests(TwoFarms farms) : IClassFixture<TwoFarms>
{
    [Fact]
    public async Task API1_RecordsOfAnotherWorkspace_AreNotThere()
    {
        var before = farms.Service.RowCounts();
        foreach (var collection in farms.North.Ids.Append(new("machines", farms.North.Farm.Machine)))
        {
            var path = $"/v1/{collection.Key}/{collection.Value}";

            await (await farms.AskAsync(HttpMethod.Get, path, farms.South.Full.Text)).RefusedAsync(404, null, "not-found");
            Assert.Equal(200, (await farms.AskAsync(HttpMethod.Get, path, farms.North.Full.Text)).Status);
        }

        var body = farms.South.Farm.CatchTest.With("/machine", farms.North.Farm.Machine);
        await (await farms.AskAsync(HttpMethod.Post, "/v1/catch-tests", farms.South.Full.Text, body.Text)).RefusedAsync(
            422,
            "#/machine",
            "id-unknown"
        );
        Assert.Equal(before, farms.Service.RowCounts());
    }

    [Fact]
    public async Task API2_GuessedSecret_OpensNothingHoweverMuchOfItIsRight()
    {
        var key = farms.North.Full.Text;
        string[] guesses =
        [
            key[..^1],
            key + "a",
            key[..^1] + (key[^1] == 'a' ? 'b' : 'a'),
            key.ToUpperInvariant(),
            KeyText.Make(farms.North.Full.Id).Text,
            farms.North.Full.Id,
        ];
        foreach (var guess in guesses)
        {
            var reply = await farms.AskAsync(HttpMethod.Get, "/v1/machines", guess);

            Assert.Equal(401, reply.Status);
            Assert.StartsWith(
                "Bearer realm=\"calibration\", error=\"invalid_token\"",
                reply.Header("WWW-Authenticate"),
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void API2_DatabaseFile_HoldsNoSecret()
    {
        farms.Service.Execute("pragma wal_checkpoint(truncate)");
        var path = farms.Service.Read<string>("select file from pragma_database_list where name = 'main'");
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var copy = new MemoryStream();
        file.CopyTo(copy);
        var text = Encoding.Latin1.GetString(copy.ToArray());

        var secret = farms.North.Full.Text[(KeyText.Start(farms.North.Full.Id).Length + 1)..];

        Assert.Contains(farms.North.Full.Id, text, StringComparison.Ordinal);
        Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
        Assert.DoesNotContain(secret[..16], text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task API5_MethodThatTheContractDoesNotName_IsNotAllowedAnywhere()
    {
        string[] methods = ["GET", "POST", "PUT", "PATCH", "DELETE", "TRACE"];
        var tried = 0;
        foreach (var path in ContractDocument.Committed.Operations.GroupBy(operation => operation.Path))
        {
            foreach (var method in methods.Except(path.Select(operation => operation.Method)))
            {
                var reply = await farms.AskAsync(
                    HttpMethod.Parse(method),
                    path.Key.Replace("{id}", Farm.NoRecord, StringComparison.Ordinal),
                    farms.North.Full.Text
                );

                await reply.RefusedAsync(405, null, "method-not-allowed");
                Assert.All(path, operation => Assert.Contains(operation.Method, reply.Header("Allow"), StringComparison.Ordinal));
                tried++;
            }
        }

        Assert.True(tried > 100);
    }

    [Fact]
    public async Task API5_AdministratorOfOneWorkspace_RunsNoInstallation()
    {
        var key = farms.North.Key(Scope.Admin).Text;
        var operations = farms.Routes.Keys.Where(operation => farms.ScopeOf(operation) == Scope.Operator).ToArray();

        Assert.NotEmpty(operations);
        foreach (var operation in operations)
            await (await farms.SendAsync(operation, await farms.SampleAsync(operation, farms.North), key)).RefusedAsync(
                403,
                null,
                "scope-missing"
            );
    }

    [Fact]
    public async Task API6_MakingKeys_NeedsTheAdministratorAndIsNotedEachTime()
    {
        JsonObject Wanted(string scope) => new() { ["name"] = "mass", ["scopes"] = new JsonArray(scope) };
        var before = farms.Service.RowCounts();

        foreach (var scope in Scope.All.Except([Scope.Admin]))
            Assert.Equal(
                403,
                (await farms.AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Key(scope).Text, Wanted(Scope.Read).ToJsonString())).Status
            );
        // Nobody gives away what runs the installation.
        var raised = await farms.AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Full.Text, Wanted(Scope.Operator).ToJsonString());
        Assert.Equal(422, raised.Status);
        Assert.Equal(before["audit"], farms.Service.RowCounts()["audit"]);

        for (var made = 1; made <= 5; made++)
        {
            (await farms.AskAsync(HttpMethod.Post, "/v1/keys", farms.North.Full.Text, Wanted(Scope.Read).ToJsonString())).Expect(201);
            Assert.Equal(before["audit"] + made, farms.Service.RowCounts()["audit"]);
        }
    }
}
