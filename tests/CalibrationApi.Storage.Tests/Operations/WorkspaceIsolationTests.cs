using CalibrationApi.Storage.CatchTests;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>No operation sees or changes what belongs to another workspace, even under the same ids.</summary>
public sealed class WorkspaceIsolationTests
{
    private const string Other = StoredWorkspace.Other;

    [Theory]
    [MemberData(nameof(StoreOperations.Reading), MemberType = typeof(StoreOperations))]
    public void Read_InAnotherWorkspace_FindsNothing(string name)
    {
        var operation = StoreOperations.Get(name);
        using var database = StoredWorkspace.Open();
        using var connection = database.Open();

        Assert.NotEmpty(operation.Read!(connection, TestDatabase.Local));
        Assert.Empty(operation.Read!(connection, "stranger"));
    }

    [Theory]
    [MemberData(nameof(StoreOperations.Writing), MemberType = typeof(StoreOperations))]
    public void Write_InAnotherWorkspace_LeavesTheRowsOfThisOneAlone(string name)
    {
        var operation = StoreOperations.Get(name);
        using var database = StoredWorkspace.Open();
        using var connection = database.Open();
        // The same id may exist on both sides.
        operation.Write!(connection, TestDatabase.Local);
        var (local, other) = (Rows(connection, TestDatabase.Local), Rows(connection, Other));

        operation.Write!(connection, Other);

        Assert.Equal(local, Rows(connection, TestDatabase.Local));
        Assert.NotEqual(other, Rows(connection, Other));
    }

    [Fact]
    public void EveryTable_ButTheSecretsOfTheFile_NamesTheWorkspace()
    {
        using var database = TestDatabase.Empty();
        using var connection = database.Open();

        Assert.Equal(["secrets"], Tables(connection).Where(table => !HasWorkspace(connection, table)));
    }

    [Theory]
    [InlineData("machine")]
    [InlineData("product")]
    [InlineData("lot")]
    [InlineData("scale")]
    [InlineData("plan")]
    public void Insert_WithReferenceToARecordOfAnotherWorkspace_IsRefused(string column)
    {
        using var database = TestDatabase.WithDescribedRecords(TestDatabase.Local, Other);
        using var connection = database.Open();
        connection.Execute($"delete from {column}s where workspace = @Other", new { Other });

        var failure = Assert.Throws<SqliteException>(() => CatchTestStore.Insert(connection, Other, Given.Test(1)));

        Assert.Contains("FOREIGN KEY", failure.Message, StringComparison.Ordinal);
    }

    private static string[] Tables(SqliteConnection connection) =>
        [.. connection.Query<string>("select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' order by name")];

    private static bool HasWorkspace(SqliteConnection connection, string table) =>
        connection.QuerySingle<long>(
            "select count(*) from pragma_table_info(@table) where name = 'workspace' and \"notnull\" = 1",
            new { table }
        ) == 1;

    // Every value of every row of a workspace, as text.
    private static string[] Rows(SqliteConnection connection, string workspace) =>
        [
            .. Tables(connection)
                .Where(table => HasWorkspace(connection, table))
                .SelectMany(table =>
                    connection
                        .Query($"select * from {table} where workspace = @workspace", new { workspace })
                        .Select(row => $"{table}: " + string.Join('|', ((IDictionary<string, object?>)row).Select(Text)))
                        .Order(StringComparer.Ordinal)
                ),
        ];

    private static string Text(KeyValuePair<string, object?> cell) =>
        cell.Value is byte[] bytes
            ? Convert.ToHexString(bytes)
            : Convert.ToString(cell.Value, System.Globalization.CultureInfo.InvariantCulture) ?? "";
}
