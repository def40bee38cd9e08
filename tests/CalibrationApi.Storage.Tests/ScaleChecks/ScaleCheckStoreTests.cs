using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.ScaleChecks;

public sealed class ScaleCheckStoreTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private static readonly string Scale = Given.Id(RecordKind.Scales);
    private readonly TestDatabase database = TestDatabase.WithDescribedRecords();
    private readonly SqliteConnection connection;

    public ScaleCheckStoreTests() => connection = database.Open();

    [Theory]
    [InlineData(true, 0.0011)]
    [InlineData(false, -0.02)]
    public void Find_AfterInsert_GivesTheSameCheck(bool passed, double error)
    {
        var check = Given.Check(1) with
        {
            Passed = passed,
            Error = error,
            OccurredAt = new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(-3.5)),
        };

        ScaleCheckStore.Insert(connection, Local, check);

        var found = ScaleCheckStore.Find(connection, Local, check.Id)!;
        Assert.Equal(check, found);
        Assert.Equal(check.OccurredAt.Offset, found.OccurredAt.Offset);
    }

    [Theory]
    [InlineData(0, null)]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 3)]
    [InlineData(9, 3)]
    public void LastBefore_GivesTheLastAtOrBefore(int hours, int? expected)
    {
        Add(3, hours: 3);
        Add(1, hours: 1);

        Assert.Equal(Id(expected), ScaleCheckStore.LastBefore(connection, Local, Scale, Given.Noon.AddHours(hours))?.Id);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 3)]
    [InlineData(2, 3)]
    [InlineData(3, null)]
    public void FirstAfter_GivesTheFirstThatIsLater(int hours, int? expected)
    {
        Add(3, hours: 3);
        Add(1, hours: 1);

        Assert.Equal(Id(expected), ScaleCheckStore.FirstAfter(connection, Local, Scale, Given.Noon.AddHours(hours))?.Id);
    }

    [Fact]
    public void LastBeforeAndFirstAfter_AtTheSameTime_GoByArrival()
    {
        Add(2, hours: 1);
        Add(1, hours: 1);

        Assert.Equal(Given.Id(1), ScaleCheckStore.LastBefore(connection, Local, Scale, Given.Noon.AddHours(2))!.Id);
        Assert.Equal(Given.Id(2), ScaleCheckStore.FirstAfter(connection, Local, Scale, Given.Noon)!.Id);
    }

    [Fact]
    public void LastBeforeAndFirstAfter_SupersededCheck_IsLeftOut()
    {
        Add(1, hours: 1);
        Add(2, hours: 2);
        Add(3, hours: 3);
        Add(4, hours: 4);
        SupersessionStore.TryInsert(connection, Local, "scale-check", Given.Supersession(2, 9));
        SupersessionStore.TryInsert(connection, Local, "scale-check", Given.Supersession(3, 9));

        Assert.Equal(Given.Id(1), ScaleCheckStore.LastBefore(connection, Local, Scale, Given.Noon.AddHours(2.5))!.Id);
        Assert.Equal(Given.Id(4), ScaleCheckStore.FirstAfter(connection, Local, Scale, Given.Noon.AddHours(2.5))!.Id);
    }

    [Fact]
    public void LastBeforeAndFirstAfter_OtherScale_IsNotMixedIn()
    {
        new DescribedRecordStore(RecordKind.Scales).Insert(connection, Local, Given.Described(Given.Id(77)));
        ScaleCheckStore.Insert(connection, Local, Given.Check(1) with { Scale = Given.Id(77) });

        Assert.Null(ScaleCheckStore.LastBefore(connection, Local, Scale, Given.Noon.AddHours(1)));
        Assert.Null(ScaleCheckStore.FirstAfter(connection, Local, Scale, Given.Noon.AddHours(-1)));
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private static string? Id(int? number) => number is { } known ? Given.Id(known) : null;

    private void Add(int number, int hours) =>
        ScaleCheckStore.Insert(connection, Local, Given.Check(number) with { OccurredAt = Given.Noon.AddHours(hours) });
}
