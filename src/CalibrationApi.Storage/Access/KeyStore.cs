using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Access;

/// <summary>Keeps keys. They are never deleted: what was done with a key stays explained.</summary>
public static class KeyStore
{
    private const string Columns =
        "k.workspace, k.id, k.name, k.scopes, k.secret_hash as secretHash, k.fingerprint, k.created_at as createdAt, k.created_by as createdBy, k.expires_at as expiresAt, "
        + "k.revoked_at as revokedAt, k.revoked_because as revokedBecause, k.replaces, k.replaced_by as replacedBy, k.last_used_at as lastUsedAt";

    /// <summary>One key; null when this workspace has none with that id.</summary>
    public static KeyRecord? Find(SqliteConnection connection, string workspace, string id) =>
        connection
            .QuerySingleOrDefault<Row>($"select {Columns} from keys k where workspace = @workspace and id = @id", new { workspace, id })
            ?.ToRecord();

    /// <summary>The keys that follow <paramref name="after"/> in the order of their ids.</summary>
    public static IEnumerable<KeyRecord> List(SqliteConnection connection, string workspace, string after, int most) =>
        connection
            .Query<Row>(
                $"select {Columns} from keys k where workspace = @workspace and id > @after order by workspace, id limit @most",
                new
                {
                    workspace,
                    after,
                    most,
                },
                buffered: false
            )
            .Select(row => row.ToRecord());

    /// <summary>
    /// The keys with an id in whatever workspace, each with its workspace and whether that is retired: which of them a request shows, its
    /// secret says.
    /// </summary>
    public static IReadOnlyList<(string Workspace, bool IsRetired, KeyRecord Key)> OfAnyWorkspace(SqliteConnection connection, string id) =>
        [
            .. connection
                .Query<Row>(
                    $"select {Columns}, w.retired as workspaceRetired from keys k join workspaces w on w.workspace = k.workspace where k.id = @id",
                    new { id }
                )
                .Select(row => (row.Workspace, row.WorkspaceRetired == 1, row.ToRecord())),
        ];

    /// <summary>Whether any key was ever made, in whatever workspace.</summary>
    /// <remarks>Asked before every request without a key, hence by the driver itself.</remarks>
    public static bool AnyExists(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "select exists (select 1 from keys)";
        return command.ExecuteScalar() is 1L;
    }

    /// <summary>Whether a key with a scope opens anything at an instant, in whatever workspace.</summary>
    public static bool AnyLive(SqliteConnection connection, string scope, DateTimeOffset now) =>
        connection.QuerySingle<long>(
            """
            select exists (
              select 1 from workspaces w join keys k on k.workspace = w.workspace
              where w.retired = 0 and k.revoked_at is null and (k.expires_at is null or k.expires_at > @now) and k.scopes like @scope)
            """,
            new { now = Instants.Text(now), scope = $"%,{scope},%" }
        ) == 1;

    /// <summary>Adds a key.</summary>
    public static void Insert(SqliteConnection connection, string workspace, KeyRecord key) =>
        connection.Execute(
            """
            insert into keys (workspace, id, name, scopes, secret_hash, fingerprint, created_at, created_by, expires_at, replaces)
            values (@workspace, @Id, @Name, @scopes, @SecretHash, @Fingerprint, @createdAt, @CreatedBy, @expiresAt, @Replaces)
            """,
            new
            {
                workspace,
                key.Id,
                key.Name,
                scopes = $",{string.Join(',', key.Scopes)},",
                key.SecretHash,
                key.Fingerprint,
                createdAt = Instants.Text(key.CreatedAt),
                key.CreatedBy,
                expiresAt = key.ExpiresAt is { } expires ? Instants.Text(expires) : null,
                key.Replaces,
            }
        );

    /// <summary>Ends a key now.</summary>
    public static void Revoke(SqliteConnection connection, string workspace, string id, DateTimeOffset now, string because) =>
        connection.Execute(
            "update keys set revoked_at = @now, revoked_because = @because where workspace = @workspace and id = @id",
            new
            {
                workspace,
                id,
                now = Instants.Text(now),
                because,
            }
        );

    /// <summary>Says which key takes the place of another, and until when that goes on.</summary>
    public static void ReplaceBy(SqliteConnection connection, string workspace, string id, string successor, DateTimeOffset until) =>
        connection.Execute(
            "update keys set replaced_by = @successor, expires_at = @until where workspace = @workspace and id = @id",
            new
            {
                workspace,
                id,
                successor,
                until = Instants.Text(until),
            }
        );

    /// <summary>Notes that a key was used.</summary>
    public static void NoteUse(SqliteConnection connection, string workspace, string id, DateTimeOffset at) =>
        connection.Execute(
            "update keys set last_used_at = @at where workspace = @workspace and id = @id",
            new
            {
                workspace,
                id,
                at = Instants.Text(at),
            }
        );

    private sealed class Row
    {
        public string Workspace { get; set; } = "";

        public long WorkspaceRetired { get; set; }

        public string Id { get; set; } = "";

        public string Name { get; set; } = "";

        public string Scopes { get; set; } = "";

        public byte[] SecretHash { get; set; } = [];

        public string Fingerprint { get; set; } = "";

        public string CreatedAt { get; set; } = "";

        public string? CreatedBy { get; set; }

        public string? ExpiresAt { get; set; }

        public string? RevokedAt { get; set; }

        public string? RevokedBecause { get; set; }

        public string? Replaces { get; set; }

        public string? ReplacedBy { get; set; }

        public string? LastUsedAt { get; set; }

        public KeyRecord ToRecord() =>
            new()
            {
                Id = Id,
                Name = Name,
                Scopes = Scopes.Split(',', StringSplitOptions.RemoveEmptyEntries),
                SecretHash = SecretHash,
                Fingerprint = Fingerprint,
                CreatedAt = Instants.Read(CreatedAt),
                CreatedBy = CreatedBy,
                ExpiresAt = Read(ExpiresAt),
                RevokedAt = Read(RevokedAt),
                RevokedBecause = RevokedBecause,
                Replaces = Replaces,
                ReplacedBy = ReplacedBy,
                LastUsedAt = Read(LastUsedAt),
            };

        private static DateTimeOffset? Read(string? text) => text is null ? null : Instants.Read(text);
    }
}
