using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Tests.Plumbing.Access;

namespace CalibrationApi.Tests.Administration.Keys;

/// <summary>A key from its making to its end, over HTTP.</summary>
public sealed class KeyLifeTests : IDisposable
{
    private readonly RecordService service = new();
    private readonly MadeKey admin;

    public KeyLifeTests()
    {
        admin = MadeKey.In(service, "local", Scope.Admin);
        service.Key = admin.Text;
    }

    public void Dispose() => service.Dispose();

    [Fact]
    public async Task CreateKey_AnswersWithTheKeyOnce()
    {
        var created = (await service.PostAsync("/v1/keys", Draft())).Expect(201);
        var text = created.Body.Word("/key");

        Assert.Equal("no-store", created.Header("Cache-Control"));
        Assert.StartsWith(created.Body.Word("/start") + "_", text, StringComparison.Ordinal);
        Assert.Equal($"/v1/keys/{created.Id}", created.Header("Location"));
        Assert.Equal(admin.Id, created.Body.Word("/createdBy"));
        var read = (await service.GetAsync($"/v1/keys/{created.Id}")).Expect(200);
        Assert.False(read.Body.Has("/key"));
        Assert.DoesNotContain(text, (await service.GetAsync("/v1/keys")).Expect(200).Text, StringComparison.Ordinal);
        Assert.Equal(200, (await AskAsync(text)).Status);
    }

    [Fact]
    public async Task CreateKey_RepeatedWithItsIdempotencyKey_NamesTheKeyWithoutItsText()
    {
        var first = (await service.PostAsync("/v1/keys", Draft(), "once")).Expect(201);
        var again = (await service.PostAsync("/v1/keys", Draft(), "once")).Expect(201);

        Assert.Equal(first.Id, again.Id);
        Assert.True(first.Body.Has("/key"));
        Assert.False(again.Body.Has("/key"));
        Assert.Equal("true", again.Header("Idempotent-Replayed"));
    }

    [Fact]
    public async Task CreateKey_RepeatedWithItsOwnId_NamesTheKeyWithoutItsText()
    {
        var body = Draft().With("/id", "019d0000-000b-7000-8000-0000000000aa");
        (await service.PostAsync("/v1/keys", body)).Expect(201);

        Assert.False((await service.PostAsync("/v1/keys", body)).Expect(200).Body.Has("/key"));
        await (await service.PostAsync("/v1/keys", body.With("/name", "other"))).RefusedAsync(422, "#/id", "id-taken");
    }

    [Theory]
    [InlineData("/scopes", """["operator"]""", "#/scopes/0", "word-unknown")]
    [InlineData("/scopes", """["read","root"]""", "#/scopes/1", "word-unknown")]
    [InlineData("/scopes", "[]", "#/scopes", "too-few")]
    [InlineData("/scopes", "null", "#/scopes", "member-missing")]
    [InlineData("/name", "null", "#/name", "member-missing")]
    [InlineData("/name", "\" \"", "#/name", "text-wrong")]
    [InlineData("/expiresAt", "\"2026-05-04T09:00:00Z\"", "#/expiresAt", "time-wrong")]
    [InlineData("/expiresAt", "\"tomorrow\"", "#/expiresAt", "time-wrong")]
    public async Task CreateKey_BrokenRule_IsRefusedAndLeavesNothing(string member, string value, string pointer, string code)
    {
        var body = Draft().With(member, JsonNode.Parse(value));

        var reply = await service.WithoutTraceAsync(() => service.PostAsync("/v1/keys", body));

        await reply.RefusedAsync(422, pointer, code);
    }

    [Theory]
    [InlineData("workspace", "\"local\"")]
    [InlineData("secretHash", "\"AAAA\"")]
    [InlineData("createdBy", "\"me\"")]
    [InlineData("state", "\"live\"")]
    public async Task CreateKey_WithWhatOnlyTheServiceSets_IsRefused(string member, string value)
    {
        await (await service.PostAsync("/v1/keys", Draft().With("/" + member, JsonNode.Parse(value)))).RefusedAsync(
            400,
            $"#/{member}",
            "member-unknown"
        );
    }

    [Fact]
    public async Task RevokedKey_OpensNothingFromTheNextRequestOn()
    {
        var created = (await service.PostAsync("/v1/keys", Draft())).Expect(201);
        var text = created.Body.Word("/key");
        Assert.Equal(200, (await AskAsync(text)).Status);

        var revoked = (await RevokeAsync(created.Id)).Expect(200);

        await (await AskAsync(text)).RefusedAsync(401, null, "key-revoked");
        Assert.Equal("revoked", revoked.Body.Word("/state"));
        Assert.Equal("lost in the field", revoked.Body.Word("/revokedBecause"));
        var again = (await RevokeAsync(created.Id)).Expect(200);
        Assert.Equal(revoked.Body.Word("/revokedAt"), again.Body.Word("/revokedAt"));
    }

    [Fact]
    public async Task ExpiringKey_OpensUntilItsInstantAndNotAfter()
    {
        var text = (await service.PostAsync("/v1/keys", Draft().With("/expiresAt", "2026-05-04T11:00:00Z"))).Expect(201).Body.Word("/key");

        service.Clock.Now = service.Clock.Now.AddHours(1).AddMilliseconds(-1);
        Assert.Equal(200, (await AskAsync(text)).Status);
        service.Clock.Now = service.Clock.Now.AddMilliseconds(1);
        await (await AskAsync(text)).RefusedAsync(401, null, "key-expired");
    }

    [Fact]
    public async Task RotatedKey_GoesOnBesideItsSuccessorUntilTheStatedInstant()
    {
        var old = (await service.PostAsync("/v1/keys", Draft().With("/expiresAt", "2026-06-03T10:00:00Z"))).Expect(201);

        var successor = (await RotateAsync(old.Id, "2026-05-11T10:00:00Z")).Expect(201);

        Assert.Equal((old.Id, "yard tablet"), (successor.Body.Word("/replaces"), successor.Body.Word("/name")));
        Assert.Equal(["read"], successor.Body.List("/scopes").Select(scope => scope!.GetValue<string>()));
        // As long a life as the old one was given: thirty days.
        Assert.Equal("2026-06-03T10:00:00.000Z", successor.Body.Word("/expiresAt"));
        var replaced = (await service.GetAsync($"/v1/keys/{old.Id}")).Expect(200);
        Assert.Equal((successor.Id, "2026-05-11T10:00:00.000Z"), (replaced.Body.Word("/replacedBy"), replaced.Body.Word("/expiresAt")));
        var (first, second) = (old.Body.Word("/key"), successor.Body.Word("/key"));
        Assert.Equal((200, 200), ((await AskAsync(first)).Status, (await AskAsync(second)).Status));
        service.Clock.Now = service.Clock.Now.AddDays(7);
        Assert.Equal((401, 200), ((await AskAsync(first)).Status, (await AskAsync(second)).Status));
    }

    [Theory]
    [InlineData(null, false)]
    [InlineData("2026-06-01T10:00:00.001Z", false)]
    [InlineData("2026-06-01T10:00:00Z", true)]
    [InlineData("2026-05-05T10:00:00Z", true)]
    public async Task KeyThatExpires_MakesNoneThatOutlivesIt(string? expiresAt, bool isTaken)
    {
        var old = (await service.PostAsync("/v1/keys", Draft().With("/expiresAt", "2026-08-01T10:00:00Z"))).Expect(201);
        var until = new DateTimeOffset(2026, 6, 1, 10, 0, 0, TimeSpan.Zero);
        var forATime = MadeKey.In(service, "local", until, Scope.Admin, Scope.Operator);
        var asked = expiresAt is null ? Draft() : Draft().With("/expiresAt", expiresAt);
        var rotation = expiresAt is null
            ? """{ "until": "2026-05-05T10:00:00Z" }"""
            : $$"""{ "until": "2026-05-05T10:00:00Z", "expiresAt": "{{expiresAt}}" }""";
        service.Key = forATime.Text;
        // So that as long a life again would be a longer one.
        service.Clock.Now = service.Clock.Now.AddHours(1);

        Reply[] replies =
        [
            await service.PostAsync("/v1/keys", asked),
            await service.PostAsync("/v1/workspaces/local/keys", asked),
            await service.PostAsync($"/v1/keys/{old.Id}/rotations", rotation),
            await service.PostAsync($"/v1/keys/{forATime.Id}/rotations", rotation),
        ];

        foreach (var reply in replies)
        {
            if (isTaken)
                reply.Expect(201);
            else
                await reply.RefusedAsync(422, "#/expiresAt", "time-wrong");
        }
    }

    [Fact]
    public async Task Rotation_OfAKeyThatExpiresEarlier_DoesNotLengthenItsLife()
    {
        var old = (await service.PostAsync("/v1/keys", Draft().With("/expiresAt", "2026-05-05T10:00:00Z"))).Expect(201);

        (await RotateAsync(old.Id, "2026-05-11T10:00:00Z")).Expect(201);

        Assert.Equal("2026-05-05T10:00:00.000Z", (await service.GetAsync($"/v1/keys/{old.Id}")).Body.Word("/expiresAt"));
    }

    [Fact]
    public async Task Rotation_OfWhatCannotBeRotated_IsRefused()
    {
        var twice = (await service.PostAsync("/v1/keys", Draft())).Expect(201).Id;
        (await RotateAsync(twice, "2026-05-11T10:00:00Z")).Expect(201);
        var ended = (await service.PostAsync("/v1/keys", Draft())).Expect(201).Id;
        (await RevokeAsync(ended)).Expect(200);

        await (await RotateAsync(twice, "2026-05-11T10:00:00Z")).RefusedAsync(422, null, "already-superseded");
        await (await RotateAsync(ended, "2026-05-11T10:00:00Z")).RefusedAsync(422, null, "record-retired");
        await (await RotateAsync(ended, "2026-05-03T10:00:00Z")).RefusedAsync(422, "#/until", "time-wrong");
    }

    [Fact]
    public async Task KeyOfTheOperator_IsOutOfReachForAnAdministrator()
    {
        var above = MadeKey.In(service, "local", Scope.Operator, Scope.Admin);

        var rotated = await RotateAsync(above.Id, "2026-05-11T10:00:00Z");
        await rotated.RefusedAsync(403, null, "scope-missing");
        await (await RevokeAsync(above.Id)).RefusedAsync(403, null, "scope-missing");
        Assert.EndsWith("scope=\"operator\"", rotated.Header("WWW-Authenticate"), StringComparison.Ordinal);

        service.Key = above.Text;
        (await RotateAsync(above.Id, "2026-05-11T10:00:00Z")).Expect(201);
    }

    [Fact]
    public async Task LastUse_IsNotedOnceAMinute()
    {
        var created = (await service.PostAsync("/v1/keys", Draft())).Expect(201);
        var text = created.Body.Word("/key");
        Assert.False(created.Body.Has("/lastUsedAt"));

        await AskAsync(text);
        Assert.Equal("2026-05-04T10:00:00.000Z", await LastUsedAsync(created.Id));
        service.Clock.Now = service.Clock.Now.AddSeconds(59);
        await AskAsync(text);
        Assert.Equal("2026-05-04T10:00:00.000Z", await LastUsedAsync(created.Id));
        service.Clock.Now = service.Clock.Now.AddSeconds(1);
        await AskAsync(text);
        Assert.Equal("2026-05-04T10:01:00.000Z", await LastUsedAsync(created.Id));
    }

    [Fact]
    public async Task Secret_IsNeverInTheFile()
    {
        var created = (await service.PostAsync("/v1/keys", Draft(), "once")).Expect(201);
        var rotated = (await RotateAsync(created.Id, "2026-05-11T10:00:00Z")).Expect(201);
        (string, string)[] texts =
        [
            (created.Id, created.Body.Word("/key")),
            (rotated.Id, rotated.Body.Word("/key")),
            (admin.Id, admin.Text),
        ];
        foreach (var (_, text) in texts)
            await AskAsync(text);

        var files = Directory.GetFiles(Path.GetDirectoryName(service.Database.Path)!);
        Assert.Contains(files, file => file.EndsWith("-wal", StringComparison.Ordinal) && new FileInfo(file).Length > 0);
        foreach (var file in files)
        {
            var bytes = await ReadSharedAsync(file);
            foreach (var (id, text) in texts)
            {
                var secret = text[(KeyText.Start(id).Length + 1)..];
                Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(secret)));
                Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(secret[..20])));
            }

            // So that the search can find something: the id is there.
            if (file.EndsWith("-wal", StringComparison.Ordinal))
                Assert.All(texts, key => Assert.NotEqual(-1, bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(key.Item1))));
        }
    }

    private static async Task<byte[]> ReadSharedAsync(string file)
    {
        await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[stream.Length];
        await stream.ReadExactlyAsync(bytes);
        return bytes;
    }

    private static Draft Draft() => CalibrationApi.Tests.Draft.Of("""{ "name": "yard tablet", "scopes": ["read"] }""");

    private Task<Reply> RevokeAsync(string id) => service.PostAsync($"/v1/keys/{id}/revocations", """{ "reason": "lost in the field" }""");

    private Task<Reply> RotateAsync(string id, string until) =>
        service.PostAsync($"/v1/keys/{id}/rotations", $$"""{ "until": "{{until}}" }""");

    private async Task<string> LastUsedAsync(string id)
    {
        await service.Service<KeyUse>().Last;
        return (await service.GetAsync($"/v1/keys/{id}")).Expect(200).Body.Word("/lastUsedAt");
    }

    private async Task<Reply> AskAsync(string key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri("/v1/machines", UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Authorization", $"Bearer {key}");
        var reply = await service.SendAsync(request);
        return reply;
    }
}
