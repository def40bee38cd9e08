using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Described;

/// <summary>Keeps described things of one kind. Every kind has its own table of the same shape.</summary>
public sealed class DescribedRecordStore(RecordKind kind)
{
    private const string Columns = "id, revision, name, retired, body, fingerprint, created_at as createdAt, updated_at as updatedAt";

    // The table name comes from a closed enumeration, never from a request.
    private readonly string table = kind switch
    {
        RecordKind.Machines => "machines",
        RecordKind.Products => "products",
        RecordKind.Lots => "lots",
        RecordKind.Scales => "scales",
        RecordKind.Containers => "containers",
        RecordKind.Plans => "plans",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>The kind.</summary>
    public RecordKind Kind => kind;

    /// <summary>One record; null when this workspace has none with that id.</summary>
    public DescribedRecord? Find(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<Row>($"select {Columns} from {table} where workspace = @workspace and id = @id", new { workspace, id })
            ?.ToRecord();

    /// <summary>The records that follow <paramref name="after"/> in the order of their ids.</summary>
    /// <param name="connection">A connection.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="after">The id of the last record already seen; empty for the beginning.</param>
    /// <param name="most">How many at the most.</param>
    /// <param name="withRetired">Retired ones too.</param>
    public IEnumerable<DescribedRecord> List(SqliteConnection connection, string workspace, string after, int most, bool withRetired) =>
        connection
            .Query<Row>(
                $"""
                select {Columns} from {table}
                where workspace = @workspace and id > @after and (@withRetired or retired = 0)
                order by workspace, id limit @most
                """,
                new
                {
                    workspace,
                    after,
                    most,
                    withRetired,
                },
                buffered: false
            )
            .Select(row => row.ToRecord());

    /// <summary>Adds a record with revision 1.</summary>
    public void Insert(SqliteConnection connection, string workspace, DescribedRecord record) =>
        connection.Execute(
            $"""
            insert into {table} (workspace, id, revision, name, retired, body, fingerprint, created_at, updated_at)
            values (@workspace, @id, @revision, @name, @retired, @body, @fingerprint, @createdAt, @updatedAt)
            """,
            Parameters(workspace, record)
        );

    /// <summary>Describes a record anew.</summary>
    public void Replace(SqliteConnection connection, string workspace, DescribedRecord record) =>
        connection.Execute(
            $"""
            update {table} set revision = @revision, name = @name, retired = @retired, body = @body, updated_at = @updatedAt
            where workspace = @workspace and id = @id
            """,
            Parameters(workspace, record)
        );

    private static object Parameters(string workspace, DescribedRecord record) =>
        new
        {
            workspace,
            id = record.Id,
            revision = record.Revision,
            name = record.Name,
            retired = record.Retired ? 1 : 0,
            body = record.Body,
            fingerprint = record.Fingerprint,
            createdAt = Instants.Text(record.CreatedAt),
            updatedAt = Instants.Text(record.UpdatedAt),
        };

    private sealed class Row : RevisedRow
    {
        public string Body { get; set; } = "";

        public DescribedRecord ToRecord() =>
            new(Id, Revision, Name, Retired == 1, Body, Fingerprint, Instants.Read(CreatedAt), Instants.Read(UpdatedAt));
    }
}
