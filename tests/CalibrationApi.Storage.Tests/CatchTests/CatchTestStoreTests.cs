using CalibrationApi.Storage.CatchTests;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.CatchTests;

public sealed class CatchTestStoreTests
{
    private const string Local = TestDatabase.Local;

    [Fact]
    public void Find_AfterInsert_GivesTheSameTest()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        // A number that no decimal text of usual length gives back; an offset with minutes.
        var test = Given.Test(1) with
        {
            Value = Math.PI / 10,
            Random = 1.0 / 3e5,
            OccurredAt = new DateTimeOffset(2026, 4, 18, 6, 40, 0, 123, new TimeSpan(5, 45, 0)),
        };

        CatchTestStore.Insert(connection, Local, test);

        var found = CatchTestStore.Find(connection, Local, test.Id)!;
        Assert.Equal(test with { Catches = found.Catches }, found);
        Assert.Equal(test.OccurredAt.Offset, found.OccurredAt.Offset);
        Assert.Empty(found.Catches);
    }

    [Fact]
    public void Find_WithoutLotAndPlan_GivesNone()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        CatchTestStore.Insert(connection, Local, Given.Test(1) with { Lot = null, Plan = null });

        var found = CatchTestStore.Find(connection, Local, Given.Id(1))!;

        Assert.Equal((null, null), (found.Lot, found.Plan));
    }

    [Fact]
    public void Insert_KeepsEachCatchAsEnteredAndCanonical()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        // One pound is 0.45359237 kg: the international yard and pound agreement of 1959.
        CatchTestStore.Insert(
            connection,
            Local,
            Given.Test(1) with
            {
                Catches =
                [
                    new CatchRow(true, 37.63, "lb", 37.63 * 0.45359237, 47, 0.36316, 4e-6),
                    new CatchRow(false, 17.08, "kg", 17.08, 46.8, 0.36496, 0),
                ],
            }
        );

        var catches = connection.Query<(
            long Position,
            long Counted,
            double Entered,
            string Unit,
            double Kilograms,
            double Revolutions,
            double Value,
            double Variance
        )>(
            """
            select c.position, c.counted, c.net_entered, c.net_unit, c.net_kilograms, c.revolutions, c.value, c.variance
            from catches c join catch_tests t on t.seq = c.test where t.id = @id and c.workspace = 'local' order by c.position
            """,
            new { id = Given.Id(1) }
        );

        Assert.Equal([(0, 1, 37.63, "lb", 37.63 * 0.45359237, 47, 0.36316, 4e-6), (1, 0, 17.08, "kg", 17.08, 46.8, 0.36496, 0)], catches);
    }

    [Fact]
    public void Insert_WithACatchThatDoesNotFit_LeavesNothingOnceUndone()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        using (var transaction = connection.BeginTransaction())
        {
            Assert.Throws<SqliteException>(() =>
                CatchTestStore.Insert(connection, Local, Given.Test(1) with { Catches = [Given.Catch(0.36), Given.Catch(-1)] })
            );
            transaction.Rollback();
        }

        Assert.Null(CatchTestStore.Find(connection, Local, Given.Id(1)));
        Assert.Equal(0, database.Count("catches"));
    }

    [Fact]
    public void Insert_IdThatIsTaken_Throws()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        CatchTestStore.Insert(connection, Local, Given.Test(1));

        Assert.Throws<SqliteException>(() => CatchTestStore.Insert(connection, Local, Given.Test(1)));

        Assert.Equal(1, database.Count("catch_tests"));
    }
}
