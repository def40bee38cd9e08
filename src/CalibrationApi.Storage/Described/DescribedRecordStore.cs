using System.Text.Json;
using CalibrationApi.Storage.Changes;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Described;

/// <summary>Keeps described things of one kind. Every kind has its own table of the same shape.</summary>
public sealed class DescribedRecordStore(RecordKind kind)
{
    private const string Columns = "id, revision, name, retired, body, fingerprint, created_at as createdAt, updated_at as updatedAt";

    // The table name comes from a closed enumeration, never from a request.
    private readonly string table = WordOf(kind) + "s";

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
    public void Insert(SqliteConnection connection, string workspace, DescribedRecord record)
    {
        connection.Execute(
            $"""
            insert into {table} (workspace, id, revision, name, retired, body, fingerprint, created_at, updated_at)
            values (@workspace, @id, @revision, @name, @retired, @body, @fingerprint, @createdAt, @updatedAt)
            """,
            Parameters(workspace, record)
        );
        ChangeStore.Append(connection, workspace, Changed(record, ChangeWords.Created));
    }

    /// <summary>Describes a record anew; one that is not there is not made.</summary>
    public void Replace(SqliteConnection connection, string workspace, DescribedRecord record)
    {
        if (Find(connection, workspace, record.Id) is not { } before)
            return;
        connection.Execute(
            $"""
            update {table} set revision = @revision, name = @name, retired = @retired, body = @body, updated_at = @updatedAt
            where workspace = @workspace and id = @id
            """,
            Parameters(workspace, record)
        );
        var what = (before.Retired, record.Retired) switch
        {
            (false, true) => ChangeWords.Retired,
            (true, false) => ChangeWords.Reinstated,
            _ => ChangeWords.Changed,
        };
        var change = Changed(record, what);
        var machineBefore = MachineOf(before);
        ChangeStore.Append(connection, workspace, change with { MachineBefore = machineBefore == change.Machine ? null : machineBefore });
    }

    private Change Changed(DescribedRecord record, string what) =>
        new()
        {
            Kind = WordOf(kind),
            Record = record.Id,
            Revision = record.Revision,
            What = what,
            ReceivedAt = record.UpdatedAt,
            Machine = MachineOf(record),
        };

    // A plan says for which machine it is.
    private string? MachineOf(DescribedRecord record)
    {
        if (kind == RecordKind.Machines)
            return record.Id;
        if (kind != RecordKind.Plans)
            return null;
        using var body = JsonDocument.Parse(record.Body);
        return body.RootElement.TryGetProperty("machine", out var machine) ? machine.GetString() : null;
    }

    private static string WordOf(RecordKind kind) =>
        kind switch
        {
            RecordKind.Machines => "machine",
            RecordKind.Products => "product",
            RecordKind.Lots => "lot",
            RecordKind.Scales => "scale",
            RecordKind.Containers => "container",
            RecordKind.Plans => "plan",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

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
