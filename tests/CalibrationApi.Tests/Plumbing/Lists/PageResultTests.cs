using System.Text.Json.Nodes;

namespace CalibrationApi.Tests.Plumbing.Lists;

/// <summary>Pages of lists: in order, each item once, the same in every format.</summary>
public sealed class PageResultTests(RecordService service) : IClassFixture<RecordService>
{
    public static TheoryData<string> Kinds => DescribedKinds.Paths;

    public static TheoryData<string> Lists => [.. DescribedKinds.Paths, "history", "catch-tests", "adoptions", "scale-checks"];

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task List_PageByPage_HoldsEveryItemOnceAndInOrder(string path)
    {
        await FillAsync();
        var whole = (await service.GetAsync($"/v1/{path}?limit=1000")).Expect(200).Body.List("/items");

        var seen = new List<JsonNode>();
        var pages = 0;
        for (string? address = $"/v1/{path}?limit=2"; address is not null; pages++)
        {
            var page = (await service.GetAsync(address)).Expect(200);
            var items = page.Body.List("/items");
            Assert.InRange(items.Count, 1, 2);
            Assert.Equal(page.Next, page.Body.At("/next")?.GetValue<string>());
            if (page.Next is not null)
                Assert.Equal(2, items.Count);
            seen.AddRange(items!);
            address = page.Next;
        }

        Assert.True(pages > 1);
        Assert.Equal(whole.Select(Text), seen.Select(Text));
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task List_AsCsvAndNdjson_HoldsTheSameAsJson(string path)
    {
        await FillAsync();
        var json = (await service.GetAsync($"/v1/{path}?limit=3", "application/json")).Expect(200);
        var items = json.Body.List("/items");

        var csv = (await service.GetAsync($"/v1/{path}?limit=3", "text/csv")).Expect(200);
        var ndjson = (await service.GetAsync($"/v1/{path}?limit=3", "application/x-ndjson")).Expect(200);

        Assert.Equal("application/json; charset=utf-8", json.ContentType);
        Assert.Equal("text/csv; charset=utf-8; header=present", csv.ContentType);
        Assert.Equal($"attachment; filename=\"{path}-2026-05-04.csv\"", csv.Header("Content-Disposition"));
        Assert.Equal("application/x-ndjson; charset=utf-8", ndjson.ContentType);
        Assert.All((Reply[])[json, csv, ndjson], reply => Assert.Equal("Accept, Accept-Encoding", reply.Header("Vary")));
        Assert.EndsWith("\n", ndjson.Text, StringComparison.Ordinal);
        Assert.Equal(items.Select(Text), ndjson.Text.TrimEnd('\n').Split('\n').Select(line => Text(JsonNode.Parse(line))));
        var rows = Rfc4180.Read(csv.Text);
        Assert.Equal(items.Count, rows.Count);
        foreach (var (item, row) in items.Zip(rows))
        {
            var cells = Rfc4180.CellsOf(item!, unitsInHeader: false);
            Assert.NotEmpty(cells);
            Assert.All(row, cell => Assert.Equal(cells.GetValueOrDefault(cell.Key, ""), cell.Value));
            Assert.Subset(row.Keys.ToHashSet(), cells.Keys.ToHashSet());
        }

        // Every format goes on at the same place.
        Assert.NotNull(json.Next);
        Assert.Equal(json.Next, csv.Next);
        Assert.Equal(json.Next, ndjson.Next);
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task List_WithoutItems_IsAnEmptyListInEveryFormat(string path)
    {
        using var empty = new RecordService();

        var json = (await empty.GetAsync($"/v1/{path}")).Expect(200);
        var csv = (await empty.GetAsync($"/v1/{path}", "text/csv")).Expect(200);
        var ndjson = (await empty.GetAsync($"/v1/{path}", "application/x-ndjson")).Expect(200);

        Assert.Empty(json.Body.List("/items"));
        Assert.Null(json.Next);
        Assert.Empty(Rfc4180.Read(csv.Text));
        Assert.Contains("id", csv.Text.TrimEnd().Split(','));
        Assert.Empty(ndjson.Text);
    }

    // Pages of one list can be put together, and are then the whole list.
    [Theory]
    [MemberData(nameof(Lists))]
    public async Task List_AsCsvPageByPage_IsTheWholeTable(string path)
    {
        await FillAsync();
        foreach (var units in (string[])["units=us", "units=metric", "includeRetired=true"])
        {
            if (units[0] == 'i' && !DescribedKinds.Paths.Contains(path))
                continue;
            var whole = (await service.GetAsync($"/v1/{path}?{units}", "text/csv")).Expect(200);
            var header = whole.Text[..(whole.Text.IndexOf("\r\n", StringComparison.Ordinal) + 2)];

            var together = header;
            for (string? address = $"/v1/{path}?limit=2&{units}"; address is not null; )
            {
                var page = (await service.GetAsync(address, "text/csv")).Expect(200);
                Assert.StartsWith(header, page.Text, StringComparison.Ordinal);
                together += page.Text[header.Length..];
                address = page.Next;
            }

            Assert.Null(whole.Next);
            Assert.Equal(whole.Text, together);
        }
    }

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task List_AsCsvInOneSystemOfUnits_HasThemInTheHeader(string path)
    {
        await FillAsync();
        var items = (await service.GetAsync($"/v1/{path}?limit=1000&units=us")).Expect(200).Body.List("/items");

        var rows = Rfc4180.Read((await service.GetAsync($"/v1/{path}?units=us", "text/csv")).Expect(200).Text);

        Assert.Equal(items.Count, rows.Count);
        foreach (var (item, row) in items.Zip(rows))
        {
            var cells = Rfc4180.CellsOf(item!, unitsInHeader: true);
            Assert.All(row, cell => Assert.Equal(cells.GetValueOrDefault(cell.Key, ""), cell.Value));
            Assert.Subset(row.Keys.ToHashSet(), cells.Keys.ToHashSet());
        }
    }

    [Fact]
    public async Task List_AsCsvWithSemicolons_HasDecimalCommasAndAMarkWhereAskedFor()
    {
        await FillAsync();

        var plain = (await service.GetAsync("/v1/history?units=metric", "text/csv")).Expect(200);
        var other = (await service.GetAsync("/v1/history?units=metric&separator=semicolon&bom=yes", "text/csv")).Expect(200);

        Assert.Equal([0xEF, 0xBB, 0xBF], other.Bytes[..3]);
        Assert.NotEqual(0xEF, plain.Bytes[0]);
        Assert.Matches(";0,[0-9]+;", other.Text);
        Assert.DoesNotMatch(";0\\.[0-9]+;", other.Text);
        Assert.Equal(plain.Text.Split("\r\n")[0].Replace(',', ';'), other.Text.TrimStart('\uFEFF').Split("\r\n")[0]);
    }

    [Theory]
    [InlineData("separator=tab", "text/csv", "separator")]
    [InlineData("bom=true", "text/csv", "bom")]
    [InlineData("separator=semicolon", "application/json", "separator")]
    [InlineData("bom=yes", "application/x-ndjson", "bom")]
    public async Task List_WordAboutTablesThatCannotBeMeant_IsRefused(string query, string accept, string parameter)
    {
        foreach (var path in (string[])["products", "history", "changes"])
        {
            var fault = (await (await service.GetAsync($"/v1/{path}?{query}", accept)).ProblemAsync(422)).Only();
            Assert.Equal((parameter, "word-unknown"), (fault.Parameter, fault.Code));
        }
    }

    [Theory]
    [InlineData("?units=metric")]
    [InlineData("?units=metric&limit=all")]
    [InlineData("")]
    public async Task List_AsCsv_StreamsEverythingAndIsNeverCut(string query)
    {
        using var large = new RecordService();
        await large.CreateAsync("/v1/products", Farm.ProductDraft.With("/id", "01968f00-0000-7000-8000-000000000000"));
        large.Execute(
            """
            with recursive numbers (n) as (select 1 union all select n + 1 from numbers where n < 2499)
            insert into products select workspace, substr(id, 1, 24) || printf('%012d', n), revision, name, retired, body, fingerprint, created_at, updated_at from products, numbers
            """
        );

        var all = (await large.GetAsync("/v1/products" + query, "text/csv")).Expect(200);

        Assert.Null(all.Next);
        // No length was known beforehand: rows went out as they were read.
        Assert.Null(all.Header("Content-Length"));
        Assert.Equal(
            (await large.ItemsAsync("/v1/products?limit=1000")).Select(item => item["id"]!.GetValue<string>()),
            Rfc4180.Read(all.Text).Select(row => row["id"])
        );
    }

    [Fact]
    public async Task List_AllAsNdjson_StreamsEverythingWithoutPages()
    {
        using var large = new RecordService();
        var first = await large.CreateAsync("/v1/products", Farm.ProductDraft.With("/id", "01968f00-0000-7000-8000-000000000000"));
        large.Execute(
            """
            with recursive numbers (n) as (select 1 union all select n + 1 from numbers where n < 2499)
            insert into products select workspace, substr(id, 1, 24) || printf('%012d', n), revision, name, retired, body, fingerprint, created_at, updated_at from products, numbers
            """
        );

        var all = (await large.GetAsync("/v1/products?limit=all", "application/x-ndjson")).Expect(200);

        Assert.Null(all.Next);
        // No length was known beforehand: lines went out as they were read.
        Assert.Null(all.Header("Content-Length"));
        var ids = all.Text.TrimEnd('\n').Split('\n').Select(line => JsonNode.Parse(line)!["id"]!.GetValue<string>()).ToArray();
        Assert.Equal(2500, ids.Length);
        Assert.Equal(first, ids[0]);
        Assert.Equal(ids.Order(StringComparer.Ordinal), ids);
        Assert.Equal(ids, (await large.ItemsAsync("/v1/products?limit=1000")).Select(item => item["id"]!.GetValue<string>()));
    }

    [Fact]
    public async Task List_RecordsAddedWhileItIsRead_MoveNothing()
    {
        const string Id = "01968f01-0000-7000-8000-0000000000";
        using var fresh = new RecordService();
        foreach (var n in (string[])["20", "30", "40", "50", "60"])
            await fresh.CreateAsync("/v1/products", Farm.ProductDraft.With("/id", Id + n));

        var first = (await fresh.GetAsync("/v1/products?limit=2")).Expect(200);
        // One before the place where the reader stands, one at once after it, one at the end.
        foreach (var n in (string[])["10", "31", "70"])
            await fresh.CreateAsync("/v1/products", Farm.ProductDraft.With("/id", Id + n));
        var rest = await fresh.ItemsAsync(first.Next!);

        Assert.Equal(
            ["20", "30", "31", "40", "50", "60", "70"],
            first.Body.List("/items").Concat(rest).Select(item => item!["id"]!.GetValue<string>()[^2..])
        );
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/csv")]
    [InlineData("application/x-ndjson")]
    public async Task List_NextLink_KeepsTheQueryAndIsAbsolute(string accept)
    {
        await FillAsync();

        var page = (await service.GetAsync("/v1/products?limit=1&units=us&includeRetired=true", accept)).Expect(200);

        Assert.Matches(
            "^<http://localhost/v1/products\\?limit=1&units=us&includeRetired=true&cursor=[A-Za-z0-9_-]+>; rel=\"next\"$",
            page.Header("Link")
        );
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task List_InOtherUnits_ConvertsLikeTheRecord(string path)
    {
        await FillAsync();

        foreach (var item in (await service.GetAsync($"/v1/{path}?limit=5&units=us")).Expect(200).Body.List("/items"))
        {
            var record = (await service.GetAsync($"/v1/{path}/{item!["id"]}?units=us")).Expect(200);
            Assert.Equal(Text(record.Json), Text(item));
        }
    }

    [Theory]
    [InlineData("limit=0", "limit", "number-out-of-range")]
    [InlineData("limit=1001", "limit", "number-out-of-range")]
    [InlineData("limit=-1", "limit", "number-out-of-range")]
    [InlineData("limit=1.5", "limit", "number-out-of-range")]
    [InlineData("limit=ten", "limit", "number-out-of-range")]
    [InlineData("limit=", "limit", "number-out-of-range")]
    [InlineData("limit=all", "limit", "number-out-of-range")]
    [InlineData("limit=99999999999999999999", "limit", "number-out-of-range")]
    [InlineData("units=imperial", "units", "word-unknown")]
    [InlineData("units=US", "units", "word-unknown")]
    public async Task List_WrongWordInTheQuery_IsRefusedByItsName(string query, string parameter, string code)
    {
        foreach (var path in (string[])["products", "history", "catch-tests"])
        {
            var fault = (await (await service.GetAsync($"/v1/{path}?{query}")).ProblemAsync(422)).Only();
            Assert.Equal((parameter, code), (fault.Parameter, fault.Code));
        }
    }

    [Fact]
    public async Task List_IncludeRetiredThatIsNoTruthValue_IsRefused()
    {
        var fault = (await (await service.GetAsync("/v1/products?includeRetired=yes")).ProblemAsync(422)).Only();

        Assert.Equal(("includeRetired", "word-unknown"), (fault.Parameter, fault.Code));
    }

    [Theory]
    [InlineData("page=2", "member-unknown")]
    [InlineData("Limit=2", "member-unknown")]
    [InlineData("limit=2&limit=3", "member-duplicate")]
    public async Task List_QueryThatTheListDoesNotTake_IsUnreadable(string query, string code)
    {
        foreach (var path in (string[])["products", "history"])
            Assert.Equal(code, (await (await service.GetAsync($"/v1/{path}?{query}")).ProblemAsync(400)).Only().Code);
    }

    private static string Text(JsonNode? node) => node!.ToJsonString();

    private async Task FillAsync()
    {
        if (service.RowCounts()["history"] > 0)
            return;
        for (var i = 0; i < 5; i++)
        {
            var farm = await Farm.CreateAsync(service, machine => machine.With("/note", "a, \"b\"\n=c"));
            await service.CreateAsync("/v1/plans", farm.PlanDraft.With("/name", $"field {i}, the north one"));
            // The same instant for all: the order of arrival tells them apart.
            await farm.CheckScaleAsync();
            await farm.AdoptAsync(adoption => adoption.With("/reason", "said \"so\"; ü, 好"));
            await farm.TestAsync(test => test.With("/setting", $"gear {i}"));
        }
    }
}
