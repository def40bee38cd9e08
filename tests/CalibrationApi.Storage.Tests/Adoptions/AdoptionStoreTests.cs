using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Adoptions;

public sealed class AdoptionStoreTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private static readonly string Machine = Given.Series.Machine;
    private readonly TestDatabase database = TestDatabase.WithDescribedRecords();
    private readonly SqliteConnection connection;

    public AdoptionStoreTests() => connection = database.Open();

    [Fact]
    public void Find_AfterInsert_GivesTheSameAdoption()
    {
        CatchTestStore.Insert(connection, Local, Given.Test(5));
        var adoption = Given.Adoption(1) with
        {
            Test = Given.Id(5),
            EnteredValue = 0.8,
            EnteredUnit = "lb/rev",
            Value = 0.8 * 0.45359237,
            OccurredAt = new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(-5)),
        };

        AdoptionStore.Insert(connection, Local, adoption);

        var found = AdoptionStore.Find(connection, Local, adoption.Id)!;
        Assert.Equal(adoption, found);
        Assert.Equal(adoption.OccurredAt.Offset, found.OccurredAt.Offset);
    }

    [Fact]
    public void Insert_OnATestThatDoesNotExist_Throws()
    {
        Assert.Throws<SqliteException>(() => AdoptionStore.Insert(connection, Local, Given.Adoption(1) with { Test = Given.Id(5) }));
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 3)]
    [InlineData(9, 3)]
    public void InForce_AtAnInstant_IsTheNewestUpToIt(int hours, int? expected)
    {
        Add(3, hours: 3);
        Add(1, hours: 1);

        var id = expected is { } number ? Given.Id(number) : null;
        Assert.Equal(id, AdoptionStore.InForce(connection, Local, Given.Series, Given.Noon.AddHours(hours))?.Id);
        Assert.Equal(id, AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(hours)).SingleOrDefault()?.Id);
    }

    [Fact]
    public void InForce_AtTheSameTime_IsTheOneReceivedLast()
    {
        Add(2, hours: 1);
        Add(1, hours: 1);

        Assert.Equal([1, 1], InForce(hours: 1));
    }

    [Fact]
    public void InForce_ReceivedLateButTypedInEarlier_DoesNotTakeOver()
    {
        Add(1, hours: 2);
        Add(2, hours: 1);

        Assert.Equal([1, 1], InForce(hours: 9));
    }

    [Fact]
    public void InForce_SupersededAdoption_GivesWayToTheOneBefore()
    {
        Add(1, hours: 1);
        Add(2, hours: 2);
        SupersessionStore.TryInsert(connection, Local, "adoption", Given.Supersession(2, 9));

        Assert.Equal([1, 1], InForce(hours: 9));
    }

    [Fact]
    public void InForce_WhenAllAreSuperseded_IsNone()
    {
        Add(1, hours: 1);
        SupersessionStore.TryInsert(connection, Local, "adoption", Given.Supersession(1, 9));

        Assert.Null(AdoptionStore.InForce(connection, Local, Given.Series, Given.Noon.AddHours(9)));
        Assert.Empty(AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(9)));
    }

    [Fact]
    public void InForceOnMachine_GivesOneForEachSeriesInTheirOrder()
    {
        new DescribedRecordStore(RecordKind.Products).Insert(connection, Local, Given.Described(Given.Id(999)));
        new DescribedRecordStore(RecordKind.Machines).Insert(connection, Local, Given.Described(Given.Id(998)));
        Series[] ordered =
        [
            Given.Series,
            Given.Series with
            {
                Product = Given.Id(999),
            },
            Given.Series with
            {
                Setting = "7",
            },
            Given.Series with
            {
                Element = "fine",
            },
            Given.Series with
            {
                Meter = "rear",
            },
        ];
        foreach (
            var (series, i) in ordered.Append(Given.Series with { Machine = Given.Id(998) }).Select((series, i) => (series, i)).Reverse()
        )
        {
            AdoptionStore.Insert(connection, Local, Given.Adoption(10 + i) with { Series = series });
            AdoptionStore.Insert(connection, Local, Given.Adoption(20 + i) with { Series = series, OccurredAt = Given.Noon.AddHours(1) });
        }

        var inForce = AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(2));

        Assert.Equal(ordered, inForce.Select(adoption => adoption.Series));
        Assert.Equal(Enumerable.Range(20, 5).Select(Given.Id), inForce.Select(adoption => adoption.Id));
        Assert.All(inForce, adoption =>
            Assert.Equal(adoption, AdoptionStore.InForce(connection, Local, adoption.Series, Given.Noon.AddHours(2)))
        );
        for (var i = 0; i < ordered.Length; i++)
        {
            var rest = AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(2), after: Given.Id(20 + i), most: 2);
            Assert.Equal(ordered.Skip(i + 1).Take(2), rest.Select(adoption => adoption.Series));
        }

        // An adoption that another one has replaced since says as well where to go on.
        Assert.Equal(
            ordered.Skip(1),
            AdoptionStore
                .InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(2), after: Given.Id(10))
                .Select(adoption => adoption.Series)
        );
    }

    [Fact]
    public async Task InForce_TwoWrittenAtTheSameTime_BothAreOnRecordAndOneIsInForce()
    {
        await using var writer = new SingleWriter(database.Database);
        using var start = new Barrier(2);

        await Task.WhenAll(
            Enumerable
                .Range(1, 2)
                .Select(number =>
                    Task.Factory.StartNew(
                            () =>
                            {
                                start.SignalAndWait();
                                return writer.WriteAsync(open =>
                                {
                                    AdoptionStore.Insert(open, Local, Given.Adoption(number) with { Value = number });
                                    return number;
                                });
                            },
                            CancellationToken.None,
                            TaskCreationOptions.LongRunning,
                            TaskScheduler.Default
                        )
                        .Unwrap()
                )
        );

        Assert.All([1, 2], number => Assert.Equal(number, AdoptionStore.Find(connection, Local, Given.Id(number))!.Value));
        var inForce = AdoptionStore.InForce(connection, Local, Given.Series, Given.Noon);
        Assert.Equal(inForce, Assert.Single(AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon)));
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private void Add(int number, int hours) =>
        AdoptionStore.Insert(connection, Local, Given.Adoption(number) with { OccurredAt = Given.Noon.AddHours(hours) });

    // By series, and on the machine.
    private IEnumerable<int> InForce(int hours) =>
        new[] { AdoptionStore.InForce(connection, Local, Given.Series, Given.Noon.AddHours(hours))! }
            .Concat(AdoptionStore.InForceOnMachine(connection, Local, Machine, Given.Noon.AddHours(hours)))
            .Select(adoption => int.Parse(adoption.Id[^12..], System.Globalization.CultureInfo.InvariantCulture));
}
