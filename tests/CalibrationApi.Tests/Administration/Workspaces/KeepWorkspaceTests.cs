using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Tests.Plumbing.Access;

namespace CalibrationApi.Tests.Administration.Workspaces;

/// <summary>Workspaces, by whoever runs the installation.</summary>
public sealed class KeepWorkspaceTests : IDisposable
{
    private readonly RecordService service = new();

    public KeepWorkspaceTests() => service.Key = MadeKey.In(service, "local", Scope.Operator).Text;

    public void Dispose() => service.Dispose();

    [Fact]
    public async Task CreateWorkspace_ThenItsFirstKey_OpensAnEmptyWorkspace()
    {
        var workspace = (await service.PostAsync("/v1/workspaces", """{ "name": "Ottermere" }""")).Expect(201);

        var key = (
            await service.PostAsync($"/v1/workspaces/{workspace.Id}/keys", """{ "name": "first", "scopes": ["admin", "read"] }""")
        ).Expect(201);

        Assert.Equal(workspace.Id, key.Body.Word("/workspace"));
        service.Key = key.Body.Word("/key");
        Assert.Empty((await service.GetAsync("/v1/machines")).Expect(200).Body.List("/items"));
        // The new administrator sees who made the key.
        var line = Assert.Single((await service.GetAsync("/v1/audit")).Expect(200).Body.List("/items"));
        Assert.Equal(
            ("createKeyOfWorkspace", $"/v1/keys/{key.Id}"),
            (line!["action"]!.GetValue<string>(), line["target"]!.GetValue<string>())
        );
        Assert.Equal(
            key.Id,
            Assert.Single((await service.GetAsync("/v1/keys")).Expect(200).Body.List("/items"))!["id"]!.GetValue<string>()
        );
    }

    [Theory]
    [InlineData("/v1/workspaces", """{ "name": "\u0000" }""")]
    [InlineData("/v1/workspaces", """{ "name": "Otter\u0000mere" }""")]
    [InlineData("/v1/workspaces/local/keys", """{ "name": "\u0000first", "scopes": ["read"] }""")]
    public async Task Create_NameWithTheCharacterZero_IsRefused(string path, string body)
    {
        var reply = await service.WithoutTraceAsync(() => service.PostAsync(path, body));

        await reply.RefusedAsync(422, "#/name", "text-wrong");
    }

    [Fact]
    public async Task CreateWorkspace_Repeated_IsOne()
    {
        const string Body = """{ "id": "019d0000-000a-7000-8000-000000000077", "name": "Ottermere" }""";
        (await service.PostAsync("/v1/workspaces", Body)).Expect(201);

        Assert.Equal("true", (await service.PostAsync("/v1/workspaces", Body)).Expect(200).Header("Idempotent-Replayed"));
        await (await service.PostAsync("/v1/workspaces", Body.Replace("mere", "more", StringComparison.Ordinal))).RefusedAsync(
            422,
            "#/id",
            "id-taken"
        );
    }

    [Fact]
    public async Task RetiredWorkspace_OpensToNoneOfItsKeysUntilItComesBack()
    {
        var workspace = (await service.PostAsync("/v1/workspaces", """{ "name": "Ottermere" }""")).Expect(201);
        var key = (await service.PostAsync($"/v1/workspaces/{workspace.Id}/keys", """{ "name": "first", "scopes": ["read"] }"""))
            .Expect(201)
            .Body.Word("/key");

        var retired = (await PutAsync(workspace.Id, """{ "name": "Ottermere", "retired": true }""", workspace.ETag)).Expect(200);

        await (await AskAsync(key)).RefusedAsync(401, null, "workspace-retired");
        await (await service.PostAsync($"/v1/workspaces/{workspace.Id}/keys", """{ "name": "next", "scopes": ["read"] }""")).RefusedAsync(
            422,
            null,
            "record-retired"
        );
        (await PutAsync(workspace.Id, """{ "name": "Ottermere" }""", retired.ETag)).Expect(200);
        Assert.Equal(200, (await AskAsync(key)).Status);
    }

    [Fact]
    public async Task ReplaceWorkspace_NeedsThePresentRevision()
    {
        var workspace = (await service.PostAsync("/v1/workspaces", """{ "name": "one" }""")).Expect(201);
        (await PutAsync(workspace.Id, """{ "name": "two" }""", workspace.ETag)).Expect(200);

        Assert.Equal(412, (await PutAsync(workspace.Id, """{ "name": "three" }""", workspace.ETag)).Status);
        Assert.Equal(428, (await PutAsync(workspace.Id, """{ "name": "three" }""", null)).Status);
        Assert.Equal(404, (await PutAsync(Farm.NoRecord, """{ "name": "three" }""", "*")).Status);
        Assert.Equal("two", (await service.GetAsync($"/v1/workspaces/{workspace.Id}")).Expect(200).Body.Word("/name"));
        await (await PutAsync(workspace.Id, """{ "id": "local", "name": "x" }""", "*")).RefusedAsync(422, "#/id", "text-wrong");
    }

    [Fact]
    public async Task ReplaceWorkspace_RetiringTheOwnOne_IsRefused()
    {
        await (await PutAsync("local", """{ "name": "local", "retired": true }""", "*")).RefusedAsync(422, "#/retired", "records-at-odds");
    }

    [Fact]
    public async Task ListWorkspaces_PageByPage_ShowsEachOnce()
    {
        foreach (var name in new[] { "a", "b", "c" })
            (await service.PostAsync("/v1/workspaces", new Draft(new JsonObject { ["name"] = name, ["retired"] = name == "b" }))).Expect(
                201
            );

        var all = await service.ItemsAsync("/v1/workspaces?limit=1&includeRetired=true");

        Assert.Equal(["a", "b", "c", "local"], all.Select(one => one["name"]!.GetValue<string>()).Order());
        Assert.Equal(3, (await service.ItemsAsync("/v1/workspaces")).Count);
        Assert.Equal(422, (await service.GetAsync("/v1/workspaces?includeRetired=perhaps")).Status);
        var csv = (await service.GetAsync("/v1/workspaces?includeRetired=true", "text/csv")).Expect(200);
        Assert.StartsWith("id,revision,retired,createdAt,updatedAt,name\r\n", csv.Text, StringComparison.Ordinal);
        Assert.Equal(
            4,
            (await service.GetAsync("/v1/workspaces?includeRetired=true&limit=all", "application/x-ndjson"))
                .Expect(200)
                .Text.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Length
        );
    }

    private async Task<Reply> PutAsync(string id, string body, string? ifMatch) =>
        await service.PutAsync($"/v1/workspaces/{id}", Draft.Of(body), ifMatch);

    private async Task<Reply> AskAsync(string key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/machines", UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");
        return await service.SendAsync(request);
    }
}
