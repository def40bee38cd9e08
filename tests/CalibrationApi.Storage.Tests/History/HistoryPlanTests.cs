using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Tests.Operations;
using Dapper;

namespace CalibrationApi.Storage.Tests.History;

/// <summary>The history is read by an index and in its order, whatever it is filtered by.</summary>
public sealed class HistoryPlanTests
{
    private static readonly HistoryPosition Middle = new(Instants.Text(Given.Noon.AddHours(150)), 450);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void List_WithEveryFilterAloneAndInPairs_SearchesAndDoesNotSort(bool isAnalyzed)
    {
        using var database = StoredWorkspace.Open();
        using var connection = new RecordingConnection(database.Path);
        if (isAnalyzed)
            connection.Execute("analyze main");
        var filters = HistoryFilters
            .Members.Select(member => HistoryFilters.By(member))
            .Concat(
                HistoryFilters.Members.SelectMany((one, i) => HistoryFilters.Members.Skip(i + 1).Select(two => HistoryFilters.By(one, two)))
            )
            .Append(new HistoryFilter())
            .Append(HistoryFilters.By([.. HistoryFilters.Members]));

        foreach (var filter in filters.SelectMany(filter => new[] { filter, filter with { NewestFirst = true } }))
        {
            _ = HistoryStore.List(connection, TestDatabase.Local, filter, null, 10).ToArray();
            _ = HistoryStore.List(connection, TestDatabase.Local, filter, Middle, 10).ToArray();
        }

        var plans = connection.Plans().Where(IsList).ToArray();
        Assert.Equal(4 * (11 + 55 + 2), plans.Length);
        Assert.All(plans, plan => Assert.True(!plan.Scans.Any() && !plan.Sorts.Any(), plan.ToString()));
    }

    // Else a rare word would be looked for in every line of the workspace.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void List_FilteredByAWord_FindsItByAnIndex(bool isAnalyzed)
    {
        using var database = StoredWorkspace.Open();
        using var connection = new RecordingConnection(database.Path);
        if (isAnalyzed)
            connection.Execute("analyze main");
        var words = HistoryFilters.Members.Where(member => member.PropertyType == typeof(string)).ToArray();
        Assert.Equal(9, words.Length);

        foreach (var filter in words.Select(word => HistoryFilters.By(word)))
        {
            _ = HistoryStore.List(connection, TestDatabase.Local, filter, null, 10).ToArray();
            _ = HistoryStore.List(connection, TestDatabase.Local, filter with { NewestFirst = true }, Middle, 10).ToArray();
        }

        Assert.All(connection.Plans().Where(IsList), plan =>
            Assert.Matches(@"^SEARCH h USING INDEX history_by_\w+ \(workspace=\? AND [a-z]+=\?", plan.Steps[0])
        );
    }

    private static bool IsList(StatementPlan plan) => plan.Sql.Contains("from history", StringComparison.Ordinal);
}
