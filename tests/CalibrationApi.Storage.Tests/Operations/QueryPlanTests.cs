using Dapper;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>Every statement of every store finds its rows by an index and in the order of an index.</summary>
public sealed class QueryPlanTests
{
    public static TheoryData<string, bool> Operations
    {
        get
        {
            var cases = new TheoryData<string, bool>();
            foreach (var operation in StoreOperations.All)
            {
                cases.Add(operation.Name, false);
                cases.Add(operation.Name, true);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Operations))]
    public void EveryStatement_SearchesAndDoesNotSort(string name, bool isAnalyzed)
    {
        var operation = StoreOperations.Get(name);
        using var database = StoredWorkspace.Open();
        using var connection = new RecordingConnection(database.Path);
        if (isAnalyzed)
            connection.Execute("analyze main");
        operation.Read?.Invoke(connection, TestDatabase.Local);
        operation.Write?.Invoke(connection, TestDatabase.Local);

        var plans = connection.Plans();

        Assert.NotEmpty(plans);
        foreach (var plan in plans)
        {
            Assert.True(!plan.Scans.Any(), plan.ToString());
            Assert.True(operation.SortsBecause is not null || !plan.Sorts.Any(), plan.ToString());
        }

        // An allowance that nobody needs any more goes.
        Assert.True(operation.SortsBecause is null || plans.Any(plan => plan.Sorts.Any()), operation.SortsBecause);
    }
}
