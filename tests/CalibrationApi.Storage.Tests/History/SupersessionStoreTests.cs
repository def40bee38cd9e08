using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.Described;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Storage.Tests.History;

public sealed class SupersessionStoreTests
{
    private const string Local = TestDatabase.Local;
    private const string CatchTest = "catch-test";

    [Fact]
    public void TryInsert_FirstTime_IsTrueAndFound()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        var supersession = Given.Supersession(1, 2);

        Assert.True(SupersessionStore.TryInsert(connection, Local, CatchTest, supersession));

        Assert.Equal(supersession, SupersessionStore.Find(connection, Local, CatchTest, Given.Id(1)));
        Assert.Null(SupersessionStore.Find(connection, Local, CatchTest, Given.Id(2)));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void TryInsert_SecondTime_IsFalseAndTheFirstStands(int replacement)
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();
        SupersessionStore.TryInsert(connection, Local, CatchTest, Given.Supersession(1, 2));

        Assert.False(
            SupersessionStore.TryInsert(connection, Local, CatchTest, Given.Supersession(1, replacement) with { Reason = "again" })
        );

        Assert.Equal(Given.Supersession(1, 2), SupersessionStore.Find(connection, Local, CatchTest, Given.Id(1)));
    }

    [Fact]
    public void TryInsert_OfTheReplacement_MakesAChain()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        Assert.True(SupersessionStore.TryInsert(connection, Local, CatchTest, Given.Supersession(1, 2)));
        Assert.True(SupersessionStore.TryInsert(connection, Local, CatchTest, Given.Supersession(2, 3)));
    }

    // A client may use one id of its own for a test and for the adoption that follows it.
    [Fact]
    public void TryInsert_RecordOfAnotherKindWithTheSameId_StaysAsItWas()
    {
        using var database = TestDatabase.WithDescribedRecords();
        using var connection = database.Open();
        CatchTestStore.Insert(connection, Local, Given.Test(1));
        AdoptionStore.Insert(connection, Local, Given.Adoption(1));
        ScaleCheckStore.Insert(connection, Local, Given.Check(1));
        foreach (var kind in new[] { CatchTest, "adoption", "scale-check" })
            HistoryStore.Append(connection, Local, Given.Line(1) with { Kind = kind });

        SupersessionStore.TryInsert(connection, Local, CatchTest, Given.Supersession(1, 2));

        var later = Given.Noon.AddHours(1);
        Assert.Empty(CatchTestStore.OfSeries(connection, Local, Given.Series, later, 50));
        Assert.NotNull(AdoptionStore.InForce(connection, Local, Given.Series, later));
        Assert.Single(AdoptionStore.InForceOnMachine(connection, Local, Given.Series.Machine, later));
        Assert.NotNull(ScaleCheckStore.LastBefore(connection, Local, Given.Id(RecordKind.Scales), later));
        Assert.NotNull(ScaleCheckStore.FirstAfter(connection, Local, Given.Id(RecordKind.Scales), Given.Noon.AddHours(-1)));
        Assert.Equal(
            [(CatchTest, Given.Id(2)), ("adoption", null), ("scale-check", null)],
            HistoryStore.List(connection, Local, new HistoryFilter(), null, 10).Select(line => (line.Entry.Kind, line.Entry.SupersededBy))
        );
        Assert.True(SupersessionStore.TryInsert(connection, Local, "adoption", Given.Supersession(1, 3)));
        Assert.Null(AdoptionStore.InForce(connection, Local, Given.Series, later));
    }
}
