using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.OneWriter;

/// <summary>Remembers the answers of storing requests by the key their senders gave them.</summary>
public static class IdempotencyKeys
{
    /// <summary>How long an answer is remembered.</summary>
    public static TimeSpan Lifetime { get; } = TimeSpan.FromHours(24);

    /// <summary>What was remembered under a key; null for nothing.</summary>
    /// <param name="connection">Inside the transaction of the write.</param>
    /// <param name="workspace">Workspace of the sender.</param>
    /// <param name="route">Method and route.</param>
    /// <param name="key">The sender's key.</param>
    /// <param name="now">The present; what is older than <see cref="Lifetime"/> is nothing.</param>
    public static (string Fingerprint, StoredAnswer Answer)? Find(
        SqliteConnection connection,
        string workspace,
        string route,
        string key,
        DateTimeOffset now
    )
    {
        var row = connection.QuerySingleOrDefault<Row>(
            "select fingerprint, status, location, etag, body from idempotency_keys where workspace = @workspace and route = @route and key = @key and created_at >= @oldest",
            new
            {
                workspace,
                route,
                key,
                oldest = Instants.Text(now - Lifetime),
            }
        );
        return row is null ? null : (row.Fingerprint, new StoredAnswer((int)row.Status, row.Location, row.Etag, row.Body));
    }

    /// <summary>Remembers an answer and forgets those that are too old.</summary>
    public static void Remember(
        SqliteConnection connection,
        string workspace,
        string route,
        string key,
        string fingerprint,
        StoredAnswer answer,
        DateTimeOffset now
    )
    {
        connection.Execute("delete from idempotency_keys where created_at < @before", new { before = Instants.Text(now - Lifetime) });
        connection.Execute(
            """
            insert into idempotency_keys (workspace, route, key, fingerprint, status, location, etag, body, created_at)
            values (@workspace, @route, @key, @fingerprint, @status, @location, @etag, @body, @createdAt)
            """,
            new
            {
                workspace,
                route,
                key,
                fingerprint,
                status = (long)answer.Status,
                location = answer.Location,
                etag = answer.ETag,
                body = answer.Body,
                createdAt = Instants.Text(now),
            }
        );
    }

    private sealed class Row
    {
        public string Fingerprint { get; set; } = "";

        public long Status { get; set; }

        public string? Location { get; set; }

        public string? Etag { get; set; }

        public byte[] Body { get; set; } = [];
    }
}
