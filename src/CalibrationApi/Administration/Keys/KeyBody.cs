using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Access;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Administration.Keys;

/// <summary>The representation of a key.</summary>
internal static class KeyBody
{
    public static ListTable Table { get; } = ListTable.Of<KeyAnswer>();

    public static JsonObject Node(string workspace, KeyRecord key, DateTimeOffset now) =>
        JsonSerializer
            .SerializeToNode(
                new KeyAnswer
                {
                    Id = key.Id,
                    Start = KeyText.Start(key.Id),
                    Workspace = workspace,
                    Name = key.Name,
                    Scopes = key.Scopes,
                    State =
                        key.RevokedAt is not null ? "revoked"
                        : key.IsLive(now) ? "live"
                        : "expired",
                    CreatedAt = Instants.Text(key.CreatedAt),
                    CreatedBy = key.CreatedBy,
                    ExpiresAt = Text(key.ExpiresAt),
                    RevokedAt = Text(key.RevokedAt),
                    RevokedBecause = key.RevokedBecause,
                    Replaces = key.Replaces,
                    ReplacedBy = key.ReplacedBy,
                    LastUsedAt = Text(key.LastUsedAt),
                },
                JsonSettings.Contract.GetTypeInfo(typeof(KeyAnswer))
            )!
            .AsObject();

    public static byte[] Write(string workspace, KeyRecord key, DateTimeOffset now) => Bytes(Node(workspace, key, now));

    public static StoredAnswer Stored(string workspace, KeyRecord key, DateTimeOffset now, int status)
    {
        var body = Write(workspace, key, now);
        return new StoredAnswer(status, $"/v1/keys/{key.Id}", RecordResult.Tag(body), body);
    }

    /// <summary>The same with the text of the key, for the one time that it is shown.</summary>
    public static byte[] WithText(byte[] body, string text)
    {
        var node = JsonNode.Parse(body)!.AsObject();
        node["key"] = text;
        return Bytes(node);
    }

    private static byte[] Bytes(JsonObject node) => Encoding.UTF8.GetBytes(node.ToJsonString(JsonSettings.Writing));

    private static string? Text(DateTimeOffset? instant) => instant is { } known ? Instants.Text(known) : null;
}
