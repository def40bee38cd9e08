using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Storage.Access;
using CalibrationApi.Tests.Plumbing.Access;

namespace CalibrationApi.Tests.Changes;

/// <summary>Every stored change is listed once, in the order in which it was stored, and nothing else.</summary>
public sealed class ListChangesTests : IDisposable
{
    private readonly RecordService service = new();

    [Fact]
    public async Task EveryKindOfRecord_IsToldOfAsItWasStored()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var check = (await farm.CheckScaleAsync()).Id;
        var test = (await farm.TestAsync()).Id;
        var adoption = (await farm.AdoptAsync()).Id;
        var retired = (await service.PutAsync($"/v1/lots/{farm.Lot}", Farm.LotDraft(farm.Product).With("/retired", true), "*")).Expect(200);
        var back = (await service.PutAsync($"/v1/lots/{farm.Lot}", Farm.LotDraft(farm.Product), "*")).Expect(200);
        var renamed = (await service.PutAsync($"/v1/lots/{farm.Lot}", Farm.LotDraft(farm.Product).With("/name", "B"), "*")).Expect(200);

        var told = (await ChangesAsync()).Select(change =>
            (Word(change, "kind"), Word(change, "id"), change["revision"]!.GetValue<int>(), Word(change, "what"), Word(change, "machine"))
        );

        Assert.Equal(
            [
                ("product", farm.Product, 1, "created", null),
                ("machine", farm.Machine, 1, "created", farm.Machine),
                ("lot", farm.Lot, 1, "created", null),
                ("scale", farm.Scale, 1, "created", null),
                ("container", farm.Container, 1, "created", null),
                ("plan", plan, 1, "created", farm.Machine),
                ("scale-check", check, 1, "recorded", null),
                ("catch-test", test, 1, "recorded", farm.Machine),
                ("adoption", adoption, 1, "recorded", farm.Machine),
                ("lot", farm.Lot, 2, "retired", null),
                ("lot", farm.Lot, 3, "reinstated", null),
                ("lot", farm.Lot, 4, "changed", null),
            ],
            told
        );
        Assert.Equal(["\"r2\"", "\"r3\"", "\"r4\""], [retired.ETag, back.ETag, renamed.ETag]);
    }

    [Fact]
    public async Task TestThatArrivesLate_StandsWhereItArrived()
    {
        var farm = await Farm.CreateAsync(service);
        await farm.TestAsync(test => test.With("/occurredAt", "2026-05-03T10:00:00+02:00"));
        var reader = await ReaderAtTheEndAsync();
        service.Clock.Now += TimeSpan.FromDays(2);

        var late = (await farm.TestAsync(test => test.With("/occurredAt", "2026-05-01T10:00:00+02:00"))).Id;

        var change = Assert.Single(await reader.ReadOnAsync());
        Assert.Equal(
            (late, "2026-05-01T10:00:00+02:00", "2026-05-06T10:00:00.000Z"),
            (Word(change, "id"), Word(change, "occurredAt"), Word(change, "receivedAt"))
        );
    }

    [Fact]
    public async Task Correction_OfAnOldTest_TellsOfBothRecords()
    {
        var farm = await Farm.CreateAsync(service);
        var wrong = (await farm.TestAsync()).Id;
        var reader = await ReaderAtTheEndAsync();

        var right = (await farm.TestAsync(test => test.With("/supersedes", Farm.Supersedes(wrong)))).Id;

        Assert.Equal(
            [(right, "recorded", null), (wrong, "superseded", right)],
            (await reader.ReadOnAsync()).Select(change => (Word(change, "id"), Word(change, "what"), Word(change, "supersededBy")))
        );
    }

    [Fact]
    public async Task KeysAndWorkspaces_AreNotListed()
    {
        await Farm.CreateAsync(service);
        var reader = await ReaderAtTheEndAsync();
        service.Key = MadeKey.In(service, "local", [.. Scope.All]).Text;

        (await service.PostAsync("/v1/keys", Draft.Of("""{ "name": "tablet", "scopes": ["read"] }"""))).Expect(201);
        (await service.PostAsync("/v1/workspaces", Draft.Of("""{ "name": "third farm" }"""))).Expect(201);

        Assert.Empty(await reader.ReadOnAsync());
    }

    [Fact]
    public async Task RepeatedAndRefusedRequests_LeaveNoChange()
    {
        var farm = await Farm.CreateAsync(service);
        var own = farm.ScaleCheck.With("/id", Guid.CreateVersion7().ToString());
        (await service.PostAsync("/v1/scale-checks", own)).Expect(201);
        (await service.PostAsync("/v1/products", Farm.ProductDraft, key: "once")).Expect(201);
        var reader = await ReaderAtTheEndAsync();

        (await service.PostAsync("/v1/scale-checks", own)).Expect(200);
        (await service.PostAsync("/v1/products", Farm.ProductDraft, key: "once")).Expect(201);
        (await service.PutAsync($"/v1/products/{farm.Product}", Farm.ProductDraft, "\"r9\"")).Expect(412);
        (await service.PostAsync("/v1/lots", Farm.LotDraft(Farm.NoRecord))).Expect(422);
        (await service.PostAsync("/v1/catch-tests", farm.CatchTest.With("/supersedes", Farm.Supersedes(Farm.NoRecord)))).Expect(422);

        Assert.Empty(await reader.ReadOnAsync());
    }

    [Fact]
    public async Task Pages_LeadToACursorThatStaysGood()
    {
        await Farm.CreateAsync(service);
        var first = (await service.GetAsync("/v1/changes?limit=2")).Expect(200);
        Assert.Equal(first.Next, first.Body.Word("/next"));
        Assert.Equal(Cursors(first)[1], first.Body.Word("/after"));
        var walked = await service.ItemsAsync("/v1/changes?limit=2");
        Assert.Equal([1, 2, 3, 4, 5], walked.Select(change => change["sequence"]!.GetValue<int>()));
        var last = (await service.GetAsync($"/v1/changes?limit=5&after={Cursors(first)[0]}")).Expect(200);
        Assert.Equal((4, null), (last.Body.List("/items")!.Count, last.Next));
        Assert.Equal(Cursors(last)[3], last.Body.Word("/after"));

        var empty = (await service.GetAsync($"/v1/changes?after={last.Body.Word("/after")}")).Expect(200);
        Assert.Empty(empty.Body.List("/items")!);
        Assert.Equal(last.Body.Word("/after"), empty.Body.Word("/after"));
        service.Clock.Now += TimeSpan.FromDays(3650);
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);

        var later = (await service.GetAsync($"/v1/changes?after={last.Body.Word("/after")}")).Expect(200);
        Assert.Equal(id, Word(Assert.Single(later.Body.List("/items")!)!, "id"));
    }

    [Fact]
    public async Task EmptyWorkspace_GivesACursorOfTheBeginning()
    {
        var reader = ChangeReader.Of(service);
        Assert.Equal(0, await reader.ReadPageAsync());

        await Farm.CreateAsync(service);

        Assert.Equal(5, (await reader.ReadOnAsync(limit: 2)).Count);
    }

    [Fact]
    public async Task Filters_GiveWhatFitsAndACursorBehindTheRest()
    {
        var farm = await Farm.CreateAsync(service);
        var other = await Farm.CreateAsync(service);
        await farm.TestAsync();
        await other.TestAsync();

        Assert.Equal(["lot", "lot"], (await ChangesAsync("&kind=lot")).Select(change => Word(change, "kind")));
        Assert.Equal(["machine", "catch-test"], (await ChangesAsync($"&machine={farm.Machine}")).Select(change => Word(change, "kind")));
        var both = (await service.GetAsync($"/v1/changes?machine={farm.Machine}&kind=catch-test")).Expect(200);
        Assert.Single(both.Body.List("/items")!);
        Assert.Empty(await ChangesAsync($"&machine={Farm.NoRecord}"));

        // Another filter goes on at the same place.
        var after = both.Body.Word("/after");
        Assert.Empty((await service.GetAsync($"/v1/changes?after={after}")).Expect(200).Body.List("/items")!);
        await other.TestAsync();
        Assert.Single((await service.GetAsync($"/v1/changes?after={after}")).Expect(200).Body.List("/items")!);
    }

    [Fact]
    public async Task PlanMovedToAnotherMachine_IsListedForBoth()
    {
        var farm = await Farm.CreateAsync(service);
        var plan = await service.CreateAsync("/v1/plans", farm.PlanDraft);
        var other = await service.CreateAsync("/v1/machines", Farm.MachineDraft);

        (await service.PutAsync($"/v1/plans/{plan}", farm.PlanDraft.With("/machine", other), "*")).Expect(200);

        var moved = (await ChangesAsync($"&machine={farm.Machine}&kind=plan"))[^1];
        Assert.Equal(("changed", other, farm.Machine), (Word(moved, "what"), Word(moved, "machine"), Word(moved, "machineBefore")));
        Assert.Single(await ChangesAsync($"&machine={other}&kind=plan"));
    }

    [Fact]
    public async Task Formats_HoldTheSameChanges()
    {
        await Farm.CreateAsync(service);
        var json = (await ChangesAsync()).Select(change => change.ToJsonString());

        var lines = (await service.GetAsync("/v1/changes?limit=all", "application/x-ndjson")).Expect(200);
        var table = (await service.GetAsync("/v1/changes?limit=3", "text/csv")).Expect(200);

        Assert.Equal(json, lines.Text.TrimEnd().Split('\n').Select(line => JsonNode.Parse(line)!.ToJsonString()));
        var rows = Rfc4180.Read(table.Text);
        Assert.StartsWith(
            "sequence,kind,id,revision,what,receivedAt,occurredAt,machine,machineBefore,supersededBy,cursor\r\n",
            table.Text,
            StringComparison.Ordinal
        );
        Assert.Equal(["1", "2", "3"], rows.Select(row => row["sequence"]));
        Assert.Contains($"after={rows[^1]["cursor"]}", table.Next, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("1")]
    [InlineData("5%7C0")]
    public async Task Cursor_ThatIsNone_IsRefused(string cursor)
    {
        var fault = (await (await service.GetAsync($"/v1/changes?after={cursor}")).ProblemAsync(400)).Only();

        Assert.Equal(("cursor-invalid", "after"), (fault.Code, fault.Parameter));
    }

    [Fact]
    public async Task Cursor_OfAnotherList_IsRefused()
    {
        await Farm.CreateAsync(service);
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var next = (await service.GetAsync("/v1/products?limit=1")).Expect(200).Next!;

        var reply = await service.GetAsync($"/v1/changes?after={next[(next.IndexOf("cursor=", StringComparison.Ordinal) + 7)..]}");

        Assert.Equal("cursor-invalid", (await reply.ProblemAsync(400)).Only().Code);
    }

    [Fact]
    public async Task Cursor_OfWhatABackupUndid_IsGoneAndNotSkipped()
    {
        await Farm.CreateAsync(service);
        var kept = await ReaderAtTheEndAsync();
        await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var undone = await ReaderAtTheEndAsync();

        // As a backup from before would have it, into which another product was stored since.
        service.Execute("drop trigger changes_are_not_deleted");
        service.Execute("delete from changes where seq = (select max(seq) from changes)");
        var gone = await service.GetAsync($"/v1/changes?after={undone.After}");
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var stillGone = await service.GetAsync($"/v1/changes?after={undone.After}&wait=20s");

        Assert.Equal("database-restored", (await gone.ProblemAsync(410)).Only().Code);
        Assert.Equal("database-restored", (await stillGone.ProblemAsync(410)).Only().Code);
        Assert.Equal(id, Word(Assert.Single(await kept.ReadOnAsync()), "id"));
    }

    [Theory]
    [InlineData("wait=31s", "wait", "number-out-of-range")]
    [InlineData("wait=20", "wait", "number-out-of-range")]
    [InlineData("wait=-1s", "wait", "number-out-of-range")]
    [InlineData("wait=1.5s", "wait", "number-out-of-range")]
    [InlineData("kind=key", "kind", "word-unknown")]
    [InlineData("limit=0", "limit", "number-out-of-range")]
    public async Task Parameter_ThatIsWrong_IsNamed(string query, string parameter, string code)
    {
        var fault = (await (await service.GetAsync($"/v1/changes?{query}")).ProblemAsync(422)).Only();

        Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
    }

    [Fact]
    public async Task OtherWorkspace_HasItsOwnChangesWithItsOwnNumbers()
    {
        const string South = "019d0000-00aa-7000-8000-000000000002";
        await Farm.CreateAsync(service);
        using (var connection = service.Database.Open())
            WorkspaceStore.Insert(
                connection,
                South,
                new WorkspaceRecord(South, 1, "south", false, "", service.Clock.Now, service.Clock.Now)
            );
        var (local, south) = (MadeKey.In(service, "local", [.. Scope.All]).Text, MadeKey.In(service, South, [.. Scope.All]).Text);
        service.Key = south;
        var id = await service.CreateAsync("/v1/products", Farm.ProductDraft);
        var reader = ChangeReader.Of(service);
        await reader.ReadOnAsync();
        service.Key = local;

        var foreign = await service.GetAsync($"/v1/changes?after={reader.After}");

        Assert.Equal([1], reader.Numbers);
        Assert.Equal([id], reader.Ids);
        Assert.Equal("cursor-invalid", (await foreign.ProblemAsync(400)).Only().Code);
        Assert.DoesNotContain(id, (await ChangesAsync()).Select(change => Word(change, "id")));
    }

    public void Dispose() => service.Dispose();

    private static string? Word(JsonNode change, string member) => change[member]?.GetValue<string>();

    private static string[] Cursors(Reply page) => [.. page.Body.List("/items")!.Select(change => Word(change!, "cursor")!)];

    private async Task<IReadOnlyList<JsonNode>> ChangesAsync(string filter = "") => await ChangeReader.Of(service, filter).ReadOnAsync();

    private async Task<ChangeReader> ReaderAtTheEndAsync()
    {
        var reader = ChangeReader.Of(service);
        await reader.ReadOnAsync();
        return reader;
    }
}
