using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>A cursor is good for the list and the filters it was made for, as it was made, in the database it was made in.</summary>
public sealed class CursorsTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/v1/products?limit=1")]
    [InlineData("/v1/adoptions?limit=1")]
    public async Task Cursor_AlteredAnywhere_IsRefused(string list)
    {
        var cursor = await CursorAsync(service, list);

        for (var at = 0; at < cursor.Length - 1; at++)
        {
            var altered = cursor[..at] + (cursor[at] == 'A' ? 'B' : 'A') + cursor[(at + 1)..];
            await AssertRefusedAsync(service, list, altered);
        }

        await AssertRefusedAsync(service, list, cursor[..^4]);
        await AssertRefusedAsync(service, list, cursor + "AAAA");
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("abc")]
    [InlineData("%00")]
    [InlineData("%F0%9F%9A%9C")]
    [InlineData("2026-04-18T04:40:00.000Z%7C1")]
    [InlineData("' or 1=1 --")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Cursor_MadeUp_IsRefused(string cursor)
    {
        foreach (var list in (string[])["/v1/machines?limit=1", "/v1/history?limit=1"])
            await AssertRefusedAsync(service, list, cursor);
    }

    // A table leads such a text with an apostrophe, and then it is none any more.
    [Fact]
    public void Cursor_InATable_IsTakenForNoFormula()
    {
        var cursors = service.Service<Cursors>();
        for (var position = 0; position < 500; position++)
        {
            var cursor = cursors.Make("scope", $"{position}");

            Assert.Equal(cursor, CsvTable.Harmless(cursor));
            Assert.Equal($"{position}", cursors.Read("scope", cursor));
        }
    }

    [Fact]
    public async Task Cursor_VeryLong_IsRefused() => await AssertRefusedAsync(service, "/v1/history?limit=1", new string('A', 5000));

    [Theory]
    [InlineData("/v1/products?limit=1", "/v1/scales?limit=1")]
    [InlineData("/v1/products?limit=1", "/v1/products?limit=1&includeRetired=true")]
    [InlineData("/v1/products?limit=1", "/v1/history?limit=1")]
    [InlineData("/v1/history?limit=1", "/v1/adoptions?limit=1")]
    [InlineData("/v1/history?limit=1", "/v1/history?limit=1&order=oldest-first")]
    [InlineData("/v1/history?limit=1", "/v1/history?limit=1&meter=front")]
    [InlineData("/v1/history?limit=1", "/v1/history?limit=1&from=2020-01-01T00:00:00Z")]
    [InlineData("/v1/history?limit=1&meter=front", "/v1/history?limit=1&element=front")]
    public async Task Cursor_OfAnotherListOrFilter_IsRefused(string own, string other) =>
        await AssertRefusedAsync(service, other, await CursorAsync(service, own));

    [Fact]
    public async Task Cursor_OfAnotherDatabase_IsRefused()
    {
        using var foreign = new RecordService();

        await AssertRefusedAsync(foreign, "/v1/products?limit=1", await CursorAsync(service, "/v1/products?limit=1"));
    }

    [Theory]
    [InlineData("/v1/products?limit=1", "/v1/products?limit=5&units=us")]
    [InlineData("/v1/history?limit=1", "/v1/history?limit=5&units=metric")]
    public async Task Cursor_WithAnotherLimitOrUnits_GoesOn(string first, string then)
    {
        var cursor = await CursorAsync(service, first);

        Assert.NotEmpty((await service.GetAsync($"{then}&cursor={cursor}")).Expect(200).Body.List("/items"));
    }

    private static async Task<string> CursorAsync(RecordService service, string list)
    {
        if (service.RowCounts()["history"] == 0)
        {
            foreach (var _ in (int[])[1, 2])
            {
                var farm = await Farm.CreateAsync(service);
                await farm.AdoptAsync();
                await farm.AdoptAsync();
            }
        }

        var next = (await service.GetAsync(list)).Expect(200).Next!;
        return next[(next.IndexOf("cursor=", StringComparison.Ordinal) + "cursor=".Length)..];
    }

    private static async Task AssertRefusedAsync(RecordService service, string list, string cursor)
    {
        var fault = (await (await service.GetAsync($"{list}&cursor={cursor}")).ProblemAsync(400)).Only();
        Assert.Equal(("cursor", "cursor-invalid"), (fault.Parameter, fault.Code));
    }
}
