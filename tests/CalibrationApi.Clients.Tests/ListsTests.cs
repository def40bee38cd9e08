using System.Text;

namespace CalibrationApi.Clients.Tests;

/// <summary>Lists are read page by page, in one stream.</summary>
public sealed class ListsTests(Season season) : IClassFixture<Season>
{
    [Fact]
    public async Task ListAsync_OverManyPages_GivesEveryItemOnceAndInOrder()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);

        var whole = await client.History.ListAsync(new() { PageSize = 1000 }).ToListAsync();
        var paged = await client.History.ListAsync(new() { PageSize = 7 }).ToListAsync();

        Assert.True(whole.Count > 30);
        Assert.Equal(whole.Select(item => item.Id), paged.Select(item => item.Id));
        Assert.Equal(1 + ((whole.Count + 6) / 7), wire.Requests.Count);
    }

    [Fact]
    public async Task ListAsync_LeftEarly_ReadsNoFurtherPage()
    {
        var wire = new Wire();
        using var client = season.Connect(wire);

        var first = await client.History.ListAsync(new() { PageSize = 5 }).Take(6).ToListAsync();

        Assert.Equal(6, first.Count);
        Assert.Equal(2, wire.Requests.Count);
    }

    [Fact]
    public async Task ListAsync_OfDescribedRecords_FollowsTheirPages()
    {
        using var client = season.Connect();

        var products = await client.Products.ListAsync(pageSize: 2).ToListAsync();

        Assert.True(products.Count > 2);
        Assert.Contains(products, product => product.Id == Season.Barley);
    }

    [Fact]
    public async Task ListAsync_WithRetired_HasMore()
    {
        using var client = season.Connect();
        var scale = await client.Scales.CreateAsync(Given.Scale("scale to retire"));
        scale.Draft.Retired = true;
        await client.Scales.SaveAsync(scale);

        var inUse = await client.Scales.ListAsync().ToListAsync();
        var all = await client.Scales.ListAsync(includeRetired: true).ToListAsync();

        Assert.DoesNotContain(inUse, one => one.Id == scale.Id);
        Assert.Contains(all, one => one.Id == scale.Id);
    }

    [Fact]
    public async Task ListAsync_Filtered_GivesOnlyWhatFits()
    {
        using var client = season.Connect();
        var filter = new HistoryFilter
        {
            Machine = Season.Machine,
            Meter = "front",
            Verdict = Verdicts.Investigate,
            OldestFirst = true,
        };

        var tests = await client.CatchTests.ListAsync(filter).ToListAsync();

        Assert.NotEmpty(tests);
        Assert.All(tests, test => Assert.Equal(Verdicts.Investigate, test.Verdict));
        Assert.All(tests, test => Assert.Equal("front", test.Meter));
    }

    [Fact]
    public async Task ListAsync_BetweenTwoTimes_KeepsTheirOffsets()
    {
        using var client = season.Connect();
        // One local day in a zone two hours ahead of UTC.
        var day = new DateTimeOffset(2026, 4, 13, 0, 0, 0, TimeSpan.FromHours(2));

        var items = await client.History.ListAsync(new() { From = day, Until = day.AddDays(1) }).ToListAsync();

        Assert.NotEmpty(items);
        Assert.All(items, item => Assert.Equal("2026-04-13", item.LocalDate.ToString()));
        Assert.All(items, item => Assert.Equal(TimeSpan.FromHours(2), item.OccurredAt!.Value.Offset));
    }

    [Fact]
    public async Task ListAsync_InUsUnits_IsInUsUnitsOnEveryPage()
    {
        using var client = season.Connect();

        var tests = await client.CatchTests.ListAsync(new() { Units = UnitSystem.Us, PageSize = 3 }).ToListAsync();

        Assert.True(tests.Count > 3);
        Assert.All(tests, test =>
            Assert.True(
                test.MassPerRevolution!.Unit is HistoryValue_unit.LbRev or HistoryValue_unit.OzRev,
                test.MassPerRevolution.Unit.ToString()
            )
        );
    }

    [Fact]
    public async Task ListAsync_WithANextPageThatHasNoCursor_DoesNotBeginAnew()
    {
        using var client = season.Connect(new NextPageIsTheFirst());

        await Assert.ThrowsAsync<InvalidDataException>(() => client.Scales.ListAsync().ToListAsync().AsTask());
    }

    private sealed class NextPageIsTheFirst : DelegatingHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(
                new HttpResponseMessage
                {
                    Content = new StringContent(
                        """{ "items": [], "next": "http://localhost/v1/scales" }""",
                        Encoding.UTF8,
                        "application/json"
                    ),
                }
            );
    }
}
