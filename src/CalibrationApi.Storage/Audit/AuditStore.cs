using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Audit;

/// <summary>The line of what was done by whom. The file itself refuses to change or delete an entry.</summary>
public static class AuditStore
{
    /// <summary>Adds an entry; call it in the transaction of what it tells.</summary>
    public static void Append(SqliteConnection connection, string workspace, AuditEntry entry) =>
        connection.Execute(
            "insert into audit (workspace, at, actor, key, action, target, trace) values (@workspace, @at, @Actor, @Key, @Action, @Target, @Trace)",
            new
            {
                workspace,
                at = Instants.Text(entry.At),
                entry.Actor,
                entry.Key,
                entry.Action,
                entry.Target,
                entry.Trace,
            }
        );

    /// <summary>The entries that follow a position, read one by one.</summary>
    /// <param name="connection">Stays open while the entries are read.</param>
    /// <param name="workspace">The workspace.</param>
    /// <param name="filter">Which entries.</param>
    /// <param name="after">Where to go on; null for the beginning.</param>
    /// <param name="most">How many at the most.</param>
    public static IEnumerable<(AuditEntry Entry, AuditPosition Position)> List(
        SqliteConnection connection,
        string workspace,
        AuditFilter filter,
        AuditPosition? after,
        int most
    )
    {
        var rows = connection.Query<Row>(
            Sql(filter, after is not null),
            new
            {
                workspace,
                filter.Key,
                filter.Action,
                from = filter.From is { } from ? Instants.Text(from) : null,
                until = filter.Until is { } until ? Instants.Text(until) : null,
                lastTime = after?.At,
                lastSequence = after?.Sequence,
                most,
            },
            buffered: false
        );
        return rows.Select(row => (row.ToEntry(), new AuditPosition(row.At, row.Seq)));
    }

    private static string Sql(AuditFilter filter, bool continues) =>
        new ListStatement("select seq, at, actor, key, action, target, trace from audit where workspace = @workspace")
            .Where(filter.Key, "key = @Key")
            .Where(filter.Action, "action = @Action")
            .Where(filter.From, "at >= @from")
            .Where(filter.Until, "at < @until")
            .InOrderOf("at", "seq", filter.NewestFirst, continues);

    private sealed class Row
    {
        public long Seq { get; set; }

        public string At { get; set; } = "";

        public string Actor { get; set; } = "";

        public string? Key { get; set; }

        public string Action { get; set; } = "";

        public string? Target { get; set; }

        public string? Trace { get; set; }

        public AuditEntry ToEntry() =>
            new()
            {
                At = Instants.Read(At),
                Actor = Actor,
                Key = Key,
                Action = Action,
                Target = Target,
                Trace = Trace,
            };
    }
}
