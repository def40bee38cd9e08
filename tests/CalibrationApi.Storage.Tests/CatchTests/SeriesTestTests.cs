using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.CatchTests;

/// <summary>What the statistics of a series are read from.</summary>
public sealed class SeriesTestTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private readonly TestDatabase database = TestDatabase.WithDescribedRecords();
    private readonly SqliteConnection connection;

    public SeriesTestTests() => connection = database.Open();

    [Fact]
    public void OfSeries_GivesTheNewestTestFirst_WhateverTheOrderOfArrival()
    {
        Add(2, hours: 2);
        Add(3, hours: 3);
        Add(1, hours: 1);

        Assert.Equal([3, 2, 1], Of(before: 10));
    }

    [Fact]
    public void OfSeries_AtTheSameTime_GivesTheOneReceivedLastFirst()
    {
        Add(2, hours: 1);
        Add(1, hours: 1);

        Assert.Equal([1, 2], Of(before: 10));
    }

    [Fact]
    public void OfSeries_Before_IsExclusive()
    {
        Add(1, hours: 1);
        Add(2, hours: 2);
        Add(3, hours: 3);

        Assert.Equal([1], Of(before: 2));
        Assert.Empty(Of(before: 1));
    }

    [Fact]
    public void OfSeries_Limit_CountsTestsAndNotCatches()
    {
        for (var i = 1; i <= 5; i++)
            Add(i, hours: i, catches: [0.35, 0.36, 0.37]);

        var tests = CatchTestStore.OfSeries(connection, Local, Given.Series, Given.Noon.AddHours(10), 2);

        Assert.Equal([Given.Id(5), Given.Id(4)], tests.Select(test => test.Id));
        Assert.All(tests, test => Assert.Equal([0.35, 0.36, 0.37], test.Values));
    }

    [Fact]
    public void OfSeries_LeavesOutWhatWasSupersededAndWhatIsToBeInvestigated()
    {
        Add(1, hours: 1);
        Add(2, hours: 2);
        Add(3, hours: 3, verdict: "investigate");
        Add(4, hours: 4, verdict: "repeat");
        Add(5, hours: 5, verdict: "keep");
        SupersessionStore.TryInsert(connection, Local, "catch-test", Given.Supersession(2, 5));

        Assert.Equal([5, 4, 1], Of(before: 10));
    }

    [Fact]
    public void OfSeries_LeavesOut_DoNotUseUpTheLimit()
    {
        Add(1, hours: 1);
        Add(2, hours: 2, verdict: "investigate");
        Add(3, hours: 3);
        SupersessionStore.TryInsert(connection, Local, "catch-test", Given.Supersession(3, 9));

        Assert.Equal([1], Of(before: 10, most: 1));
    }

    [Fact]
    public void OfSeries_GivesCountedCatchesInOrderWithTheirVariances()
    {
        CatchTestStore.Insert(
            connection,
            Local,
            Given.Test(1) with
            {
                Value = 0.42,
                Random = 0.02,
                Catches =
                [
                    Given.Catch(0.37) with
                    {
                        Variance = 3e-6,
                    },
                    Given.Catch(0.99) with
                    {
                        Counted = false,
                    },
                    Given.Catch(0.35) with
                    {
                        Variance = 1e-6,
                    },
                ],
            }
        );

        var test = Assert.Single(CatchTestStore.OfSeries(connection, Local, Given.Series, Given.Noon.AddHours(1), 50));

        Assert.Equal((0.42, 0.02, Given.Id(RecordKind.Lots)), (test.Value, test.Random, test.Lot));
        Assert.Equal([0.37, 0.35], test.Values);
        Assert.Equal([3e-6, 1e-6], test.Variances);
    }

    [Fact]
    public void OfSeries_OtherSeries_IsNotMixedIn()
    {
        foreach (var kind in new[] { RecordKind.Machines, RecordKind.Products })
            new DescribedRecordStore(kind).Insert(connection, Local, Given.Described(Given.Id(77)));
        Series[] others =
        [
            Given.Series with
            {
                Machine = Given.Id(77),
            },
            Given.Series with
            {
                Meter = "rear",
            },
            Given.Series with
            {
                Element = "fine",
            },
            Given.Series with
            {
                Setting = "7",
            },
            Given.Series with
            {
                Product = Given.Id(77),
            },
        ];
        Add(1, hours: 1);
        foreach (var (series, i) in others.Select((series, i) => (series, i)))
            CatchTestStore.Insert(connection, Local, Given.Test(10 + i) with { Series = series });

        Assert.Equal([1], Of(before: 10));
        Assert.All(others.Select((series, i) => (series, Given.Id(10 + i))), other =>
            Assert.Equal(
                other.Item2,
                Assert.Single(CatchTestStore.OfSeries(connection, Local, other.series, Given.Noon.AddHours(10), 50)).Id
            )
        );
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private void Add(int number, int hours, string verdict = "adopt", params double[] catches) =>
        CatchTestStore.Insert(
            connection,
            Local,
            Given.Test(number) with
            {
                OccurredAt = Given.Noon.AddHours(hours),
                Verdict = verdict,
                Catches = [.. (catches is [] ? [0.36] : catches).Select(Given.Catch)],
            }
        );

    private IEnumerable<int> Of(int before, int most = 50) =>
        CatchTestStore
            .OfSeries(connection, Local, Given.Series, Given.Noon.AddHours(before), most)
            .Select(test => int.Parse(test.Id[^12..], System.Globalization.CultureInfo.InvariantCulture));
}
