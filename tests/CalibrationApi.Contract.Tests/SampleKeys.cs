using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.Audit;

namespace CalibrationApi.Contract.Tests;

/// <summary>A workspace and keys that the examples of the contract are about, and the key that asks for them.</summary>
internal static class SampleKeys
{
    public const string Workspace = "019d0000-000a-7000-8000-000000000001";
    public const string Read = "019d0000-000b-7000-8000-000000000011";
    public const string Rotated = "019d0000-000b-7000-8000-000000000012";
    public const string Revoked = "019d0000-000b-7000-8000-000000000013";

    private const string Own = "019d0000-000b-7000-8000-000000000010";

    private static readonly (string Text, KeyText Key) Asking = KeyText.Make(Own);

    private static readonly (string Text, KeyText Key) Lesser = KeyText.Make(Read);

    /// <summary>A key that may calculate, read and write.</summary>
    public static string LesserText => Lesser.Text;

    /// <summary>The key with every scope that asks.</summary>
    public static string Text => Asking.Text;

    public static void Insert(CalibrationDatabase database, DateTimeOffset now)
    {
        using var connection = database.Open();
        WorkspaceStore.Insert(connection, Workspace, new WorkspaceRecord(Workspace, 1, "Ottermere", false, "", now, now));
        KeyStore.Insert(connection, "local", Key(Own, "office", Asking.Key, now, [.. Scope.All]));
        foreach (
            var (key, name) in new[]
            {
                (Lesser.Key, "yard tablet"),
                (KeyText.Make(Rotated).Key, "weigh house"),
                (KeyText.Make(Revoked).Key, "old tablet"),
            }
        )
            KeyStore.Insert(connection, "local", Key(key.Id, name, key, now, Scope.Calculate, Scope.Read, Scope.Write));
        RefusalStore.Add(connection, "local", new RefusalCount("2026-05-04", Revoked, "key-revoked", 3, now));
        RefusalStore.Add(connection, RefusalStore.NoWorkspace, new RefusalCount("2026-05-04", "", "key-missing", 12, now));
        // Noted in the same minute already, so that asking changes nothing that is shown.
        KeyStore.NoteUse(connection, "local", Own, now);
    }

    private static KeyRecord Key(string id, string name, KeyText text, DateTimeOffset now, params string[] scopes) =>
        new()
        {
            Id = id,
            Name = name,
            Scopes = scopes,
            SecretHash = text.SecretHash,
            Fingerprint = "",
            CreatedAt = now,
        };
}
