using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Storage.Access;

namespace CalibrationApi.Tests.Plumbing.Access;

/// <summary>A key put straight into the database.</summary>
/// <param name="Text">What a request shows.</param>
/// <param name="Id">Its id.</param>
internal sealed record MadeKey(string Text, string Id)
{
    public static MadeKey In(RecordService service, string workspace, params string[] scopes) => In(service, workspace, null, scopes);

    public static MadeKey In(RecordService service, string workspace, DateTimeOffset? expiresAt, params string[] scopes)
    {
        var (text, made) = KeyText.Make(RecordId.New(service.Clock));
        using var connection = service.Database.Open();
        KeyStore.Insert(
            connection,
            workspace,
            new KeyRecord
            {
                Id = made.Id,
                Name = "test",
                Scopes = scopes,
                SecretHash = made.SecretHash,
                Fingerprint = "",
                CreatedAt = service.Clock.Now,
                ExpiresAt = expiresAt,
            }
        );
        return new MadeKey(text, made.Id);
    }

    public void Revoke(RecordService service, string workspace)
    {
        using var connection = service.Database.Open();
        KeyStore.Revoke(connection, workspace, Id, service.Clock.Now, "test");
    }
}
