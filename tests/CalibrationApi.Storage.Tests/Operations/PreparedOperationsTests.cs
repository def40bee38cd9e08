using SQLitePCL;

namespace CalibrationApi.Storage.Tests.Operations;

/// <summary>On a connection that keeps its statements, no operation has one prepared a second time.</summary>
public sealed class PreparedOperationsTests
{
    [Theory]
    [MemberData(nameof(StoreOperations.Reading), MemberType = typeof(StoreOperations))]
    public void Read_Again_PreparesNothing(string name)
    {
        var operation = StoreOperations.Get(name);
        using var database = StoredWorkspace.Open();
        using var connection = database.Database.OpenPreparing();
        var prepared = 0;
        // SQLite asks the authorizer while it prepares a statement, and only then.
        strdelegate_authorizer count = (_, _, _, _, _, _) => ++prepared * raw.SQLITE_OK;
        raw.sqlite3_set_authorizer(connection.Handle, count, null);

        Assert.NotEmpty(operation.Read!(connection, TestDatabase.Local));
        Assert.NotEqual(0, prepared);
        prepared = 0;

        Assert.NotEmpty(operation.Read(connection, TestDatabase.Local));
        Assert.Equal(0, prepared);
        Assert.True(connection.IsIdle);
    }
}
