using System.Net.Http.Headers;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Hosting.Demo;

/// <summary>A key for loading the season into a database that has keys; it ends with the loading.</summary>
internal sealed class LoadingKey(CalibrationDatabase database, string id) : IDisposable
{
    private static readonly TimeSpan LongEnough = TimeSpan.FromMinutes(10);

    /// <summary>Gives a key to the client where one is needed; null where none is.</summary>
    public static LoadingKey? Lend(CalibrationDatabase database, HttpClient client)
    {
        if (!database.Read(KeyStore.AnyExists))
            return null;
        using var connection = database.Open();
        var (text, made) = KeyText.Make(RecordId.New(TimeProvider.System));
        var now = DateTimeOffset.UtcNow;
        KeyStore.Insert(
            connection,
            Workspace.Local,
            new KeyRecord
            {
                Id = made.Id,
                Name = "loading the demonstration",
                Scopes = [Scope.Write],
                SecretHash = made.SecretHash,
                Fingerprint = "",
                CreatedAt = now,
                ExpiresAt = now + LongEnough,
            }
        );
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", text);
        return new LoadingKey(database, made.Id);
    }

    public void Dispose()
    {
        using var connection = database.Open();
        KeyStore.Revoke(connection, Workspace.Local, id, DateTimeOffset.UtcNow, "loaded");
    }
}
