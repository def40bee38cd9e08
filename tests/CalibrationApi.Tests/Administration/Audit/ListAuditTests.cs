using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Tests.Plumbing.Access;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Tests.Administration.Audit;

/// <summary>Who did what with which key.</summary>
public sealed class ListAuditTests : IDisposable
{
    private readonly RecordService service = new();
    private readonly MadeKey admin;
    private readonly MadeKey writer;

    public ListAuditTests()
    {
        admin = MadeKey.In(service, "local", Scope.Admin, Scope.Read);
        writer = MadeKey.In(service, "local", Scope.Write, Scope.Read);
    }

    public void Dispose() => service.Dispose();

    [Fact]
    public async Task Writes_EachLeaveOneLine()
    {
        service.Key = writer.Text;
        var created = (await service.PostAsync("/v1/machines", Farm.MachineDraft, "once")).Expect(201);
        (await service.PostAsync("/v1/machines", Farm.MachineDraft, "once")).Expect(201);
        service.Clock.Now = service.Clock.Now.AddMinutes(1);
        (await service.PutAsync($"/v1/machines/{created.Id}", Farm.MachineDraft.With("/name", "other"), created.ETag)).Expect(200);
        Assert.Equal(412, (await service.PutAsync($"/v1/machines/{created.Id}", Farm.MachineDraft, created.ETag)).Status);
        Assert.Equal(422, (await service.PostAsync("/v1/machines", Farm.MachineDraft.Without("/name"))).Status);

        var lines = await LinesAsync("/v1/audit");

        Assert.Equal(["replaceMachine", "createMachine"], lines.Select(line => line.Word("/action")));
        Assert.All(lines, line =>
            Assert.Equal(("key", writer.Id, $"/v1/machines/{created.Id}"), (line.Word("/actor"), line.Word("/key"), line.Word("/target")))
        );
        Assert.Equal(["2026-05-04T10:01:00.000Z", "2026-05-04T10:00:00.000Z"], lines.Select(line => line.Word("/at")));
        Assert.All(lines, line => Assert.NotEmpty(line.Word("/traceId")));
    }

    [Fact]
    public async Task Writes_ThatShareACommit_EachKeepTheTraceOfTheirOwnRequest()
    {
        service.Key = writer.Text;
        string[] traces = ["4bf92f3577b34da6a3ce929d0e0e4736", "0af7651916cd43dd8448eb211c80319c"];
        using var gate = new ManualResetEventSlim();
        var held = service.Service<SingleWriter>().WriteAsync(_ => gate.Wait(TimeSpan.FromSeconds(60)));
        var requests = traces.Select(trace => service.SendAsync(Traced(trace))).ToArray();
        await service.QueuedAsync(requests.Length);

        gate.Set();
        Assert.True(await held);
        var made = await Task.WhenAll(requests);

        var lines = await LinesAsync("/v1/audit?action=createMachine");
        Assert.Equal(
            made.Select((reply, i) => ($"/v1/machines/{reply.Expect(201).Id}", traces[i])).Order(),
            lines.Select(line => (line.Word("/target"), line.Word("/traceId"))).Order()
        );

        static HttpRequestMessage Traced(string trace) =>
            new(HttpMethod.Post, new Uri("/v1/machines", UriKind.Relative))
            {
                Headers = { { "traceparent", $"00-{trace}-00f067aa0ba902b7-01" } },
                Content = new StringContent(Farm.MachineDraft.Text, System.Text.Encoding.UTF8, "application/json"),
            };
    }

    [Fact]
    public async Task Filters_ByKeyActionAndTime_FindTheLines()
    {
        service.Key = writer.Text;
        await service.CreateAsync("/v1/machines", Farm.MachineDraft);
        service.Clock.Now = service.Clock.Now.AddHours(1);
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        service.Key = admin.Text;
        (await service.PostAsync("/v1/keys", """{ "name": "x", "scopes": ["read"] }""")).Expect(201);

        Assert.Equal(["createProduct", "createMachine"], Actions(await LinesAsync($"/v1/audit?key={writer.Id}")));
        Assert.Equal(["createKey"], Actions(await LinesAsync("/v1/audit?action=createKey")));
        Assert.Equal(["createMachine"], Actions(await LinesAsync("/v1/audit?until=2026-05-04T10:30:00Z")));
        Assert.Equal(["createProduct", "createKey"], Actions(await LinesAsync("/v1/audit?from=2026-05-04T10:30:00Z&order=oldest-first")));
        Assert.Equal(["createMachine", "createProduct", "createKey"], Actions(await LinesAsync("/v1/audit?order=oldest-first&limit=1")));
        Assert.Equal(422, (await AskAsync("/v1/audit?order=upwards")).Status);
        Assert.Equal(422, (await AskAsync("/v1/audit?from=yesterday")).Status);
    }

    [Fact]
    public async Task Lines_CannotBeChangedOrDeleted()
    {
        service.Key = writer.Text;
        await service.CreateAsync("/v1/machines", Farm.MachineDraft);

        Assert.Throws<SqliteException>(() => service.Execute("update audit set key = null"));
        Assert.Throws<SqliteException>(() => service.Execute("delete from audit"));
        Assert.Single(await LinesAsync("/v1/audit"));
    }

    [Fact]
    public async Task Export_IsNotedOnceAnHour_OtherReadingIsNot()
    {
        service.Key = writer.Text;
        var machine = await service.CreateAsync("/v1/machines", Farm.MachineDraft);
        await service.GetAsync("/v1/machines");
        await service.GetAsync($"/v1/machines/{machine}");
        (await service.GetAsync("/v1/machines", "text/csv")).Expect(200);
        (await service.GetAsync("/v1/machines", "application/x-ndjson")).Expect(200);
        service.Clock.Now = service.Clock.Now.AddHours(1);
        (await service.GetAsync("/v1/machines", "text/csv")).Expect(200);
        (await service.GetAsync("/v1/history", "text/csv")).Expect(200);

        var lines = await LinesAsync("/v1/audit?order=oldest-first");

        Assert.Equal(["createMachine", "listMachines", "listMachines", "listHistory"], Actions(lines));
        Assert.Equal("/v1/history", lines[^1].Word("/target"));
    }

    [Fact]
    public async Task Audit_AsCsvAndNdjson_HoldsTheSame()
    {
        service.Key = writer.Text;
        await service.CreateAsync("/v1/machines", Farm.MachineDraft);
        await service.CreateAsync("/v1/products", Farm.ProductDraft);

        var csv = (await AskAsync("/v1/audit?until=2026-05-04T10:00:00.001Z", "text/csv")).Expect(200);
        var lines = (await AskAsync("/v1/audit", "application/x-ndjson"))
            .Expect(200)
            .Text.Split('\n', StringSplitOptions.RemoveEmptyEntries);

        var rows = csv.Text.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("at,actor,key,action,target,traceId", rows[0]);
        Assert.Equal(3, rows.Count(row => row.Contains("create", StringComparison.Ordinal)) + 1);
        Assert.True(lines.Length >= 2);
    }

    [Fact]
    public async Task Refusals_AreCountedByKeyAndReason()
    {
        var ended = MadeKey.In(service, "local", Scope.Read);
        ended.Revoke(service, "local");
        for (var i = 0; i < 3; i++)
            Assert.Equal(401, (await AskAsync("/v1/machines", key: ended.Text)).Status);
        Assert.Equal(403, (await AskAsync("/v1/audit", key: writer.Text)).Status);
        Assert.Equal(401, (await AskAsync("/v1/machines", key: "none")).Status);

        var refusals = await LinesAsync("/v1/audit/refusals");

        Assert.Equal(
            new[] { (ended.Id, "key-revoked", 3.0), (writer.Id, "scope-missing", 1.0) }.Order(),
            refusals.Select(one => (one.Word("/key"), one.Word("/code"), one.Number("/count"))).Order()
        );
        Assert.All(refusals, one => Assert.Equal("2026-05-04", one.Word("/day")));
        service.Key = MadeKey.In(service, "local", Scope.Operator).Text;
        var unknown = Assert.Single((await service.GetAsync("/v1/audit/refusals/without-key")).Expect(200).Body.List("/items"));
        Assert.Equal(("key-invalid", 1), (unknown!["code"]!.GetValue<string>(), unknown["count"]!.GetValue<int>()));
    }

    [Fact]
    public async Task Refusals_HoweverMany_TakeOneRowForEachDay()
    {
        for (var i = 0; i < 500; i++)
        {
            if (i % 100 == 0)
                service.Clock.Now = service.Clock.Now.AddMinutes(2);
            await AskAsync("/v1/machines", key: KeyText.Make(Farm.NoRecord).Text);
        }

        await service.Service<RefusalCounts>().StoreAsync();

        Assert.Equal(
            (1, 500),
            (service.Read<long>("select count(*) from refusals"), service.Read<long>("select sum(count) from refusals"))
        );
        Assert.Equal(0, service.Read<long>("select count(*) from audit"));
    }

    [Fact]
    public async Task LocalMode_IsNotedAsSuch()
    {
        using var other = new RecordService();
        await other.CreateAsync("/v1/machines", Farm.MachineDraft);

        Assert.Equal((AuditEntry.ByLocal, "createMachine"), other.Read<(string, string)>("select actor, action from audit"));
    }

    private static IEnumerable<string> Actions(IReadOnlyList<Answer> lines) => lines.Select(line => line.Word("/action"));

    private async Task<IReadOnlyList<Answer>> LinesAsync(string path)
    {
        service.Key = admin.Text;
        return [.. (await service.ItemsAsync(path)).Select(item => new Answer(item))];
    }

    private async Task<Reply> AskAsync(string path, string? accept = null, string? key = null)
    {
        service.Key = key ?? admin.Text;
        return await service.GetAsync(path, accept);
    }
}
