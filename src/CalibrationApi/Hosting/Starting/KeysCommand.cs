using System.Globalization;
using CalibrationApi.Administration.Keys;
using CalibrationApi.Hosting.Demo;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Settings;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Audit;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Hosting.Starting;

/// <summary>
/// Makes, lists and revokes keys at the machine itself: how the first key comes about, and the way back in when all are lost.
/// </summary>
/// <remarks>
/// Works on the database that the settings name, whether the service runs or not; a running one heeds it from the next request on.
/// </remarks>
internal static class KeysCommand
{
    /// <summary>The first argument of the command.</summary>
    public const string Word = "keys";

    private const string Usage = """
        keys create --name <who uses it> --scopes <scope,...> [--workspace <id or name>] [--expires <date or time>]
        keys list   [--workspace <id or name>]
        keys revoke --id <id of the key> [--reason <why>] [--workspace <id or name>]
        Scopes: calculate, read, write, admin; operator for whoever runs the installation. Without --workspace: local.
        --demo takes the database of the demonstration.
        """;

    private static readonly string[] Names = ["name", "scopes", "workspace", "expires", "id", "reason"];

    /// <summary>Runs the command; 0 when it did what was asked.</summary>
    public static int Run(string[] arguments, TextWriter output, TextWriter errors)
    {
        try
        {
            var given = Options(arguments);
            var builder = WebApplication.CreateBuilder();
            var isDemo = arguments.Contains(DemoSeason.Switch);
            var faults = new List<string>();
            var settings = CalibrationSettings.Read(builder.Configuration, isAtATerminal: true, faults);
            if (faults.Count > 0)
                throw new ArgumentException(string.Join(Environment.NewLine, faults));
            using var database = StorageSetup.Open(settings, builder.Environment, isDemo);
            using var connection = database.Open();
            using var transaction = connection.BeginTransaction();
            var workspace = WorkspaceOf(connection, given.GetValueOrDefault("workspace", Workspace.Local));
            Action done = arguments switch
            {
                ["create", ..] => Create(connection, workspace, given, output, errors),
                ["list", ..] => List(connection, workspace, output),
                ["revoke", ..] => Revoke(connection, workspace, given, errors),
                _ => throw new ArgumentException("Say what to do."),
            };
            transaction.Commit();
            // A key is shown only once it is stored.
            done();
            return 0;
        }
        catch (Exception failure) when (failure is ArgumentException or UnusableDatabaseException or SqliteException)
        {
            errors.WriteLine(failure.Message);
            errors.WriteLine(Usage);
            return 1;
        }
    }

    private static Action Create(
        SqliteConnection connection,
        WorkspaceRecord workspace,
        Dictionary<string, string> given,
        TextWriter output,
        TextWriter errors
    )
    {
        var scopes = Needed(given, "scopes").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (scopes.Length == 0 || scopes.FirstOrDefault(scope => !Scope.All.Contains(scope)) is { })
            throw new ArgumentException($"--scopes takes {string.Join(", ", Scope.All)}, with commas between.");
        if (workspace.Retired)
            throw new ArgumentException($"The workspace {workspace.Name} is retired; its keys open nothing.");
        var now = DateTimeOffset.UtcNow;
        var (text, made) = KeyText.Make(RecordId.New(TimeProvider.System));
        var key = new KeyRecord
        {
            Id = made.Id,
            Name = Name(Needed(given, "name")),
            Scopes = [.. Scope.All.Where(scopes.Contains)],
            SecretHash = made.SecretHash,
            Fingerprint = "",
            CreatedAt = now,
            ExpiresAt = given.TryGetValue("expires", out var expires) ? Expiry(expires, now) : null,
        };
        KeyStore.Insert(connection, workspace.Id, key);
        AuditStore.Append(connection, workspace.Id, Entry("createKey", key.Id, now));
        return () =>
        {
            errors.WriteLine(
                $"Key {key.Id} for {key.Name} in the workspace {workspace.Name}, scopes {string.Join(", ", key.Scopes)}{(key.ExpiresAt is { } until ? $", until {Instants.Text(until)}" : "")}."
            );
            errors.WriteLine("It is shown this once and stored nowhere. From now on every request needs a key:");
            output.WriteLine(text);
        };
    }

    private static Action List(SqliteConnection connection, WorkspaceRecord workspace, TextWriter output)
    {
        var now = DateTimeOffset.UtcNow;
        string[] lines =
        [
            .. KeyStore
                .List(connection, workspace.Id, "", int.MaxValue)
                .Select(key =>
                    $"{key.Id}  {(key.RevokedAt is not null ? "revoked" : key.IsLive(now) ? "live   " : "expired")}  {string.Join(',', key.Scopes), -36}  last used {(key.LastUsedAt is { } used ? Instants.Text(used) : "never")}  {Printable(key.Name)}"
                ),
        ];
        return () =>
        {
            foreach (var line in lines)
                output.WriteLine(line);
        };
    }

    private static Action Revoke(
        SqliteConnection connection,
        WorkspaceRecord workspace,
        Dictionary<string, string> given,
        TextWriter errors
    )
    {
        var id = Needed(given, "id");
        if (KeyStore.Find(connection, workspace.Id, id) is not { } key)
            throw new ArgumentException($"The workspace {workspace.Name} has no key with the id {id}. 'keys list' shows those it has.");
        if (key.RevokedAt is { } revoked)
            throw new ArgumentException($"This key was revoked at {Instants.Text(revoked)} already.");
        var now = DateTimeOffset.UtcNow;
        KeyStore.Revoke(connection, workspace.Id, id, now, given.GetValueOrDefault("reason", "revoked by the command"));
        AuditStore.Append(connection, workspace.Id, Entry("revokeKey", id, now));
        return () => errors.WriteLine($"Key {id} ({Printable(key.Name)}) opens nothing any more.");
    }

    private static AuditEntry Entry(string action, string key, DateTimeOffset now) =>
        new()
        {
            At = now,
            Actor = AuditEntry.ByCommand,
            Action = action,
            Target = $"/v1/keys/{key}",
        };

    // Pairs of --name value; a value never begins with two dashes.
    private static Dictionary<string, string> Options(string[] arguments)
    {
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        var rest = DemoSeason.OtherArguments([.. arguments.Skip(1)]);
        for (var i = 0; i < rest.Length; i += 2)
        {
            var name = rest[i].StartsWith("--", StringComparison.Ordinal) ? rest[i][2..] : "";
            if (!Names.Contains(name))
                throw new ArgumentException($"'{rest[i]}' is not known here.");
            if (i + 1 == rest.Length || rest[i + 1].StartsWith("--", StringComparison.Ordinal))
                throw new ArgumentException($"--{name} needs a value.");
            if (!given.TryAdd(name, rest[i + 1]))
                throw new ArgumentException($"--{name} is given twice.");
        }

        return given;
    }

    private static string Needed(Dictionary<string, string> given, string name) =>
        given.GetValueOrDefault(name) ?? throw new ArgumentException($"--{name} is missing.");

    private static string Name(string name) =>
        !string.IsNullOrWhiteSpace(name) && name.Length <= KeyRequest.LongestName
            ? name
            : throw new ArgumentException($"--name takes a text of up to {KeyRequest.LongestName} characters.");

    private static WorkspaceRecord WorkspaceOf(SqliteConnection connection, string named)
    {
        var all = WorkspaceStore.ListAll(connection, "", int.MaxValue, withRetired: true).ToArray();
        return all.FirstOrDefault(one => one.Id == named)
            ?? (all.Where(one => one.Name == named).ToArray() is [var only] ? only : null)
            ?? throw new ArgumentException(
                $"There is no workspace '{named}', or more than one of that name. There are: {string.Join("; ", all.Select(one => $"{one.Id} ({Printable(one.Name)})"))}."
            );
    }

    private static DateTimeOffset Expiry(string text, DateTimeOffset now)
    {
        if (
            !EnteredInstant.TryRead(text, out var instant)
            && !DateTimeOffset.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out instant)
        )
            throw new ArgumentException("--expires takes a date such as 2027-03-01, or a time such as 2027-03-01T18:00:00+01:00.");
        return instant > now ? instant : throw new ArgumentException("--expires lies in the past.");
    }

    // Names come from whoever may make keys; a terminal would take some characters for orders.
    private static string Printable(string name) => string.Concat(name.Select(letter => char.IsControl(letter) ? '?' : letter));
}
