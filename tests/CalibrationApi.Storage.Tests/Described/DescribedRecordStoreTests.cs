using CalibrationApi.Storage.Described;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Described;

public sealed class DescribedRecordStoreTests
{
    private const string Local = TestDatabase.Local;

    public static TheoryData<RecordKind> Kinds => [.. Enum.GetValues<RecordKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Find_AfterInsert_GivesTheSameRecord(RecordKind kind)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var record = new DescribedRecord(
            Given.Id(1),
            1,
            "naïve “name”",
            true,
            """{"note":"Grüße, 種"}""",
            "f1",
            Given.Noon,
            Given.Noon.AddMilliseconds(1)
        );

        new DescribedRecordStore(kind).Insert(connection, Local, record);

        Assert.Equal(record, new DescribedRecordStore(kind).Find(connection, Local, record.Id));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Find_RecordOfAnotherKind_IsNull(RecordKind kind)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        new DescribedRecordStore(kind).Insert(connection, Local, Given.Described(Given.Id(1)));

        Assert.All(Enum.GetValues<RecordKind>().Where(other => other != kind), other =>
            Assert.Null(new DescribedRecordStore(other).Find(connection, Local, Given.Id(1)))
        );
    }

    [Fact]
    public void Insert_IdThatIsTaken_ThrowsAndLeavesTheRecord()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = new DescribedRecordStore(RecordKind.Products);
        store.Insert(connection, Local, Given.Described(Given.Id(1)));

        Assert.Throws<SqliteException>(() => store.Insert(connection, Local, Given.Described(Given.Id(1)) with { Name = "other" }));

        Assert.Equal("thing", store.Find(connection, Local, Given.Id(1))!.Name);
    }

    [Fact]
    public void Replace_ChangesTheDescriptionAndKeepsOriginAndOthers()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = new DescribedRecordStore(RecordKind.Products);
        store.Insert(connection, Local, Given.Described(Given.Id(1)));
        store.Insert(connection, Local, Given.Described(Given.Id(2)));
        var next = new DescribedRecord(
            Given.Id(1),
            2,
            "other",
            true,
            """{"name":"other"}""",
            "f2",
            Given.Noon.AddDays(1),
            Given.Noon.AddDays(2)
        );

        store.Replace(connection, Local, next);

        // The fingerprint is that of the request that created it: repeating that request is still recognised.
        Assert.Equal(next with { Fingerprint = "f1", CreatedAt = Given.Noon }, store.Find(connection, Local, Given.Id(1)));
        Assert.Equal(Given.Described(Given.Id(2)), store.Find(connection, Local, Given.Id(2)));
    }

    [Fact]
    public void List_FollowsTheOrderOfIds_WhateverTheOrderOfArrival()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = Filled(connection, 3, 1, 2);

        Assert.Equal(
            [Given.Id(1), Given.Id(2), Given.Id(3)],
            store.List(connection, Local, "", 10, withRetired: false).Select(record => record.Id)
        );
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(100)]
    public void List_PageByPage_GivesEveryRecordOnce(int most)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = Filled(connection, [.. Enumerable.Range(1, 21)]);
        var seen = new List<string>();

        while (true)
        {
            var page = store
                .List(connection, Local, seen.LastOrDefault() ?? "", most, withRetired: false)
                .Select(record => record.Id)
                .ToArray();
            Assert.True(page.Length <= most);
            if (page is [])
                break;
            seen.AddRange(page);
        }

        Assert.Equal(Enumerable.Range(1, 21).Select(Given.Id), seen);
    }

    [Fact]
    public void List_RecordsAddedBehindAndAhead_ShowsThoseAhead()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = Filled(connection, 10, 20, 30);
        var last = store.List(connection, Local, "", 2, withRetired: false).Last().Id;

        Filled(connection, 5, 25, 40);

        Assert.Equal(
            [Given.Id(25), Given.Id(30), Given.Id(40)],
            store.List(connection, Local, last, 10, withRetired: false).Select(record => record.Id)
        );
    }

    [Theory]
    [InlineData(false, new[] { 1, 3 })]
    [InlineData(true, new[] { 1, 2, 3 })]
    public void List_RetiredRecords_ComeOnlyWhenAskedFor(bool withRetired, int[] expected)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var store = Filled(connection, 1, 2, 3);
        store.Replace(connection, Local, Given.Described(Given.Id(2)) with { Retired = true });

        Assert.Equal(expected.Select(Given.Id), store.List(connection, Local, "", 10, withRetired).Select(record => record.Id));
        Assert.Equal(expected.Select(Given.Id).Take(2), store.List(connection, Local, "", 2, withRetired).Select(record => record.Id));
    }

    private static DescribedRecordStore Filled(SqliteConnection connection, params int[] numbers)
    {
        var store = new DescribedRecordStore(RecordKind.Products);
        foreach (var number in numbers)
            store.Insert(connection, Local, Given.Described(Given.Id(number)));
        return store;
    }
}
