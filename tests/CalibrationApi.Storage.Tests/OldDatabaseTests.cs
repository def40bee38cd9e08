using System.Text.Json.Nodes;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.Audit;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Changes;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Storage.ScaleChecks;
using Dapper;

namespace CalibrationApi.Storage.Tests;

/// <summary>Files that earlier schemas wrote are opened, read and written. What each holds: OldDatabases/README.md.</summary>
public sealed class OldDatabaseTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "OldDatabases");
    private static readonly Series Series = new(Given.Id(1), "front", "coarse", "", Given.Id(2));
    private static readonly DateTimeOffset Later = new(2027, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static TheoryData<string> Files => [.. Names];

    private static IEnumerable<string> Names =>
        Directory.GetFiles(Folder, "*.db").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal);

    [Fact]
    public void Files_ThereIsOneOfEverySchema()
    {
        Assert.Equal(Enumerable.Range(1, Migrator.Newest).Select(number => $"{number:D4}.db"), Names);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Prepare_OldFile_BringsItToTheNewestSchema(string file)
    {
        using var database = Copy(file);
        using (var before = database.Open())
        {
            Assert.Equal(file, $"{before.QuerySingle<int>("pragma user_version"):D4}.db");
        }

        database.Database.Prepare();

        using var fresh = TestDatabase.Empty();
        using var connection = database.Open();
        Assert.Equal(Migrator.Newest, connection.QuerySingle<int>("pragma user_version"));
        Assert.Equal("ok", connection.QuerySingle<string>("pragma integrity_check"));
        Assert.Empty(connection.Query("pragma foreign_key_check"));
        Assert.Equal(Schema(fresh), Schema(database));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Read_OldFile_FindsEveryRecord(string file)
    {
        using var database = Copy(file);
        database.Database.Prepare();
        using var connection = database.Open();

        var machine = new DescribedRecordStore(RecordKind.Machines).Find(connection, "local", Given.Id(1))!;
        Assert.Equal((2, "seeder, rebuilt", false), (machine.Revision, machine.Name, machine.Retired));
        Assert.Equal("Europe/Vienna", JsonNode.Parse(machine.Body)!["timeZone"]!.GetValue<string>());
        Assert.All([(RecordKind.Products, 2), (RecordKind.Lots, 3), (RecordKind.Scales, 4), (RecordKind.Plans, 6)], record =>
            Assert.NotNull(new DescribedRecordStore(record.Item1).Find(connection, "local", Given.Id(record.Item2)))
        );
        Assert.True(new DescribedRecordStore(RecordKind.Containers).Find(connection, "local", Given.Id(5))!.Retired);

        var test = CatchTestStore.Find(connection, "local", Given.Id(8))!;
        Assert.Equal(Series, test.Series);
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(2)), test.OccurredAt);
        Assert.Equal(0.36232, test.Value, 5);
        Assert.NotNull(JsonNode.Parse(test.Answer)!["massPerRevolution"]);
        Assert.Equal(Given.Id(9), SupersessionStore.Find(connection, "local", "catch-test", Given.Id(8))!.Replacement);
        Assert.Equal([Given.Id(9)], CatchTestStore.OfSeries(connection, "local", Series, Later, 50).Select(one => one.Id));

        Assert.Equal(0.363, AdoptionStore.InForce(connection, "local", Series, Later)!.EnteredValue);
        Assert.True(ScaleCheckStore.LastBefore(connection, "local", Given.Id(4), Later)!.Passed);
        Assert.Equal(
            [(Given.Id(7), null), (Given.Id(8), Given.Id(9)), (Given.Id(9), null), (Given.Id(10), null)],
            HistoryStore
                .List(connection, "local", new HistoryFilter(), null, 100)
                .Select(line => (line.Entry.Record, line.Entry.SupersededBy))
        );
        Assert.Equal(201, connection.QuerySingle<int>("select status from idempotency_keys where key = 'old'"));
    }

    // A file from before the list of changes has it in the order in which the records came, like one that wrote it itself.
    [Theory]
    [MemberData(nameof(Files))]
    public void Changes_OldFile_TellOfEveryRecordInTheOrderInWhichItCame(string file)
    {
        using var database = Copy(file);
        database.Database.Prepare();
        using var connection = database.Open();

        var changes = ChangeStore.List(connection, "local", new ChangeFilter(), 0, 100).ToArray();

        Assert.Equal(
            [
                (1, "machine", 1, 1, "created"),
                (2, "product", 2, 1, "created"),
                (3, "lot", 3, 1, "created"),
                (4, "scale", 4, 1, "created"),
                (5, "container", 5, 1, "created"),
                (6, "scale-check", 7, 1, "recorded"),
                (7, "plan", 6, 1, "created"),
                (8, "catch-test", 8, 1, "recorded"),
                (9, "catch-test", 9, 1, "recorded"),
                (10, "catch-test", 8, 2, "superseded"),
                (11, "adoption", 10, 1, "recorded"),
                (12, "machine", 1, 2, "changed"),
            ],
            changes.Select(one => (one.Sequence, one.Kind, int.Parse(one.Record[^12..]), one.Revision, one.What))
        );
        Assert.All(changes, change =>
            Assert.Equal(change.Kind is "machine" or "plan" or "catch-test" or "adoption" ? Given.Id(1) : null, change.Machine)
        );
        var superseded = changes.Single(change => change.What == "superseded");
        Assert.Equal(Given.Id(9), superseded.SupersededBy);
        Assert.Equal(new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(2)), superseded.OccurredAt);
        Assert.Equal(TimeSpan.FromHours(2), superseded.OccurredAt!.Value.Offset);
        Assert.Equal(changes.Length, changes.Select(change => change.Mark).Distinct().Count());
        Assert.Equal(new ChangePosition(12, changes[^1].Mark), ChangeStore.Newest(connection, "local"));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Read_OldFile_HasTheWorkspaceAndTheKeysItHad(string file)
    {
        using var database = Copy(file);
        database.Database.Prepare();
        using var connection = database.Open();

        Assert.Equal(("local", false), (WorkspaceStore.Find(connection, "local")!.Name, WorkspaceStore.Find(connection, "local")!.Retired));
        var keys = KeyStore.List(connection, "local", "", 10).ToArray();
        Assert.Equal(string.CompareOrdinal(file, "0003.db") < 0 ? [] : ["yard tablet"], keys.Select(key => key.Name));
        Assert.All(keys, key =>
        {
            Assert.Equal(["read", "write"], key.Scopes);
            Assert.True(key.IsLive(Later));
            Assert.NotNull(key.LastUsedAt);
            Assert.Equal(
                "createKey",
                AuditStore.List(connection, "local", new AuditFilter { NewestFirst = true }, null, 1).Single().Entry.Action
            );
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Write_OldFile_AddsToIt(string file)
    {
        using var database = Copy(file);
        database.Database.Prepare();
        var test = Given.Test(20) with { Series = Series, Lot = Given.Id(3), Scale = Given.Id(4), Plan = Given.Id(6) };
        await using (var writer = new SingleWriter(database.Database))
        {
            await writer.WriteAsync(connection =>
            {
                CatchTestStore.Insert(connection, "local", test);
                return true;
            });
        }

        using var connection = database.Open();
        Assert.Equal([test.Id, Given.Id(9)], CatchTestStore.OfSeries(connection, "local", Series, Later, 50).Select(one => one.Id));
    }

    private static TestDatabase Copy(string file) => TestDatabase.Of(File.ReadAllBytes(Path.Combine(Folder, file)));

    private static string[] Schema(TestDatabase database)
    {
        using var connection = database.Open();
        return
        [
            .. connection.Query<string>("select type || ' ' || name || ' ' || coalesce(sql, '') from sqlite_schema order by type, name"),
        ];
    }
}
