using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Changes;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Changes;

/// <summary>What the stores of records tell of a change, and how it is read.</summary>
public sealed class ChangeStoreTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private readonly TestDatabase database = TestDatabase.WithDescribedRecords(Local, "other");
    private readonly SqliteConnection connection;

    public ChangeStoreTests() => connection = database.Open();

    [Fact]
    public void List_DescribedRecords_TellsOfEachKindOnce()
    {
        Assert.Equal(
            ["machine", "product", "lot", "scale", "container", "plan"],
            List().Select(change => change.What == "created" && change.Revision == 1 ? change.Kind : change.What)
        );
        Assert.Equal(Enum.GetValues<RecordKind>().Select(Given.Id), List().Select(change => change.Record));
    }

    [Fact]
    public void List_ReplacedRecord_SaysWhetherItWasTakenOutOfUse()
    {
        var store = new DescribedRecordStore(RecordKind.Lots);
        var lot = Given.Described(RecordKind.Lots) with { Revision = 2, UpdatedAt = Given.Noon.AddHours(1) };
        var before = ChangeStore.Newest(connection, Local).Sequence;

        store.Replace(connection, Local, lot);
        store.Replace(connection, Local, lot with { Revision = 3, Retired = true });
        store.Replace(connection, Local, lot with { Revision = 4, Retired = true });
        store.Replace(connection, Local, lot with { Revision = 5 });

        Assert.Equal(
            [(2, "changed"), (3, "retired"), (4, "changed"), (5, "reinstated")],
            List(before).Select(change => (change.Revision, change.What))
        );
        Assert.All(List(before), change =>
            Assert.Equal((lot.Id, lot.UpdatedAt, null), (change.Record, change.ReceivedAt, change.OccurredAt))
        );
    }

    [Fact]
    public void Replace_RecordThatIsNotThere_ChangesAndTellsNothing()
    {
        var before = ChangeStore.Newest(connection, Local);

        new DescribedRecordStore(RecordKind.Lots).Replace(connection, Local, Given.Described(Given.Id(1)));

        Assert.Equal(before, ChangeStore.Newest(connection, Local));
    }

    [Fact]
    public void List_PlanMovedToAnotherMachine_IsFoundByBothMachines()
    {
        var store = new DescribedRecordStore(RecordKind.Plans);
        var plan = Given.Described(Given.Id(1)) with { Body = Plan(11) };
        store.Insert(connection, Local, plan);
        store.Replace(connection, Local, plan with { Revision = 2, Body = Plan(11) });
        store.Replace(connection, Local, plan with { Revision = 3, Body = Plan(12) });
        store.Replace(connection, Local, plan with { Revision = 4, Body = Plan(12) });

        Assert.Equal([1, 2, 3], Revisions(11));
        Assert.Equal([3, 4], Revisions(12));
        Assert.Equal(
            [null, null, Given.Id(11), null],
            List().Where(change => change.Record == plan.Id).Select(change => change.MachineBefore)
        );

        IEnumerable<int> Revisions(int machine) =>
            List(filter: new ChangeFilter { Machine = Given.Id(machine) }).Select(change => (int)change.Revision);
        static string Plan(int machine) => $$"""{"name":"plan","machine":"{{Given.Id(machine)}}"}""";
    }

    [Theory]
    [InlineData("catch-test", true)]
    [InlineData("adoption", true)]
    [InlineData("scale-check", false)]
    public void List_CorrectedEvidence_TellsOfTheNewRecordAndThenOfTheOld(string kind, bool isAboutAMachine)
    {
        var at = new DateTimeOffset(2026, 4, 18, 6, 40, 0, TimeSpan.FromHours(2));
        CatchTestStore.Insert(connection, Local, Given.Test(1) with { OccurredAt = at });
        AdoptionStore.Insert(connection, Local, Given.Adoption(1) with { OccurredAt = at });
        ScaleCheckStore.Insert(connection, Local, Given.Check(1) with { OccurredAt = at });
        var machine = isAboutAMachine ? Given.Series.Machine : null;
        var line = Given.Line(2) with { Kind = kind, Machine = machine, ReceivedAt = Given.Noon.AddDays(2) };
        var before = ChangeStore.Newest(connection, Local).Sequence;

        HistoryStore.Append(connection, Local, line with { Supersedes = Given.Id(1) });

        var told = List(before).Select(change => change with { Mark = 0 }).ToArray();
        var recorded = new Change
        {
            Sequence = before + 1,
            Kind = kind,
            Record = Given.Id(2),
            Revision = 1,
            What = "recorded",
            ReceivedAt = line.ReceivedAt,
            OccurredAt = line.OccurredAt,
            Machine = machine,
        };
        Assert.Equal(
            [
                recorded,
                recorded with
                {
                    Sequence = before + 2,
                    Record = Given.Id(1),
                    Revision = 2,
                    What = "superseded",
                    OccurredAt = at,
                    SupersededBy = Given.Id(2),
                },
            ],
            told
        );
        Assert.Equal(at.Offset, told[1].OccurredAt!.Value.Offset);
    }

    [Fact]
    public void List_OfTwoWorkspaces_NumbersEachWithoutAGap()
    {
        for (var i = 1; i <= 3; i++)
        {
            HistoryStore.Append(connection, Local, Given.Line(i));
            HistoryStore.Append(connection, "other", Given.Line(i));
        }

        Assert.Equal(Enumerable.Range(1, 9), List().Select(change => (int)change.Sequence));
        Assert.Equal(Enumerable.Range(1, 9), List(workspace: "other").Select(change => (int)change.Sequence));
        Assert.Equal(ChangePosition.Beginning, ChangeStore.Newest(connection, "stranger"));
    }

    [Fact]
    public void List_AfterAnythingWasUndone_HasNoGap()
    {
        using (var transaction = connection.BeginTransaction())
        {
            HistoryStore.Append(connection, Local, Given.Line(1));
            connection.Execute("savepoint request");
            HistoryStore.Append(connection, Local, Given.Line(2));
            connection.Execute("rollback to request");
            HistoryStore.Append(connection, Local, Given.Line(3));
            transaction.Commit();
        }

        Assert.Equal([(7, Given.Id(1)), (8, Given.Id(3))], List(6).Select(change => (change.Sequence, change.Record)));
    }

    [Fact]
    public void List_GoingOn_GivesWhatFollowsAndNoMoreThanAsked()
    {
        Assert.Equal([3, 4], List(2, most: 2).Select(change => (int)change.Sequence));
        Assert.Equal(["plan"], List(2, new ChangeFilter { Kind = "plan" }).Select(change => change.Kind));
        Assert.Empty(List(6));
    }

    [Fact]
    public void Holds_PositionOfThisPast_IsTrueAndOfAnotherFalse()
    {
        var seen = ChangeStore.Newest(connection, Local);
        HistoryStore.Append(connection, Local, Given.Line(1));
        var lost = ChangeStore.Newest(connection, Local);
        Assert.True(Holds(ChangePosition.Beginning) && Holds(seen) && Holds(lost));
        Assert.False(ChangeStore.Holds(connection, "other", seen));

        // As a backup from before would have it, in which something else was stored since.
        connection.Execute("drop trigger changes_are_not_deleted");
        connection.Execute("delete from changes where workspace = @Local and seq = @Sequence", new { Local, lost.Sequence });

        Assert.False(Holds(lost));
        HistoryStore.Append(connection, Local, Given.Line(1));
        Assert.False(Holds(lost));
        Assert.True(Holds(seen));
        Assert.True(Holds(ChangeStore.Newest(connection, Local)));

        bool Holds(ChangePosition position) => ChangeStore.Holds(connection, Local, position);
    }

    [Theory]
    [InlineData("update changes set what = 'nothing'")]
    [InlineData("delete from changes")]
    public void Changes_AreNeverChanged(string sql)
    {
        var failure = Assert.Throws<SqliteException>(() => connection.Execute(sql));

        Assert.Contains("only added to", failure.Message, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private Change[] List(long after = 0, ChangeFilter? filter = null, int most = 100, string workspace = Local) =>
        [.. ChangeStore.List(connection, workspace, filter ?? new ChangeFilter(), after, most)];
}
