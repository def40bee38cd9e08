using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Access;

/// <summary>Keeps workspaces.</summary>
public static class WorkspaceStore
{
    private const string Columns =
        "workspace as id, revision, name, retired, fingerprint, created_at as createdAt, updated_at as updatedAt";

    /// <summary>One workspace; null when there is none with that id.</summary>
    public static WorkspaceRecord? Find(SqliteConnection connection, string workspace) =>
        connection
            .QuerySingleOrDefault<Row>($"select {Columns} from workspaces where workspace = @workspace", new { workspace })
            ?.ToRecord();

    /// <summary>The workspaces that follow <paramref name="after"/> in the order of their ids, of the whole installation.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="after">The id of the last one already seen; empty for the beginning.</param>
    /// <param name="most">How many at the most.</param>
    /// <param name="withRetired">Retired ones too.</param>
    public static IEnumerable<WorkspaceRecord> ListAll(SqliteConnection connection, string after, int most, bool withRetired) =>
        connection
            .Query<Row>(
                $"select {Columns} from workspaces where workspace > @after and (@withRetired or retired = 0) order by workspace limit @most",
                new
                {
                    after,
                    most,
                    withRetired,
                },
                buffered: false
            )
            .Select(row => row.ToRecord());

    /// <summary>Adds a workspace.</summary>
    public static void Insert(SqliteConnection connection, string workspace, WorkspaceRecord record) =>
        connection.Execute(
            """
            insert into workspaces (workspace, revision, name, retired, fingerprint, created_at, updated_at)
            values (@workspace, @Revision, @Name, @retired, @Fingerprint, @createdAt, @updatedAt)
            """,
            new
            {
                workspace,
                record.Revision,
                record.Name,
                retired = record.Retired ? 1 : 0,
                record.Fingerprint,
                createdAt = Instants.Text(record.CreatedAt),
                updatedAt = Instants.Text(record.UpdatedAt),
            }
        );

    /// <summary>Renames or retires a workspace.</summary>
    public static void Replace(SqliteConnection connection, string workspace, WorkspaceRecord record) =>
        connection.Execute(
            "update workspaces set revision = @Revision, name = @Name, retired = @retired, updated_at = @updatedAt where workspace = @workspace",
            new
            {
                workspace,
                record.Revision,
                record.Name,
                retired = record.Retired ? 1 : 0,
                updatedAt = Instants.Text(record.UpdatedAt),
            }
        );

    private sealed class Row : RevisedRow
    {
        public WorkspaceRecord ToRecord() =>
            new(Id, Revision, Name, Retired == 1, Fingerprint, Instants.Read(CreatedAt), Instants.Read(UpdatedAt));
    }
}
