using System.IO.Compression;
using static CalibrationApi.Hostile.Chance;

namespace CalibrationApi.Hostile;

/// <summary>What is done to the headers of a request. Each trick takes the draft and a source of chance.</summary>
internal static class HeaderTricks
{
    private static readonly string[] MediaTypes =
    [
        "text/plain",
        "application/xml",
        "application/json; charset=utf-16",
        "application/json; charset=utf-8",
        "application/json;charset=\"x",
        ";;;",
        "application/json, text/csv",
        "multipart/form-data; boundary=x",
        "multipart/form-data",
        "application/x-www-form-urlencoded",
        "application/x-ndjson",
        "text/csv",
        "text/csv; header=absent",
        "application/merge-patch+json",
        "APPLICATION/JSON",
        "*/*",
        "json",
        new('a', 5000),
        "application/problem+json",
    ];

    private static readonly string[] Accepts =
    [
        "image/png",
        "*/*;q=0",
        "text/csv",
        "application/x-ndjson",
        "application/json;q=nan",
        "application/json;q=0, */*;q=1",
        ";;,,/",
        "text/csv;q=0.5, application/json;q=0.4",
        new('a', 6000),
        "text/html, application/xhtml+xml",
        "*/json",
        string.Join(',', Enumerable.Repeat("text/csv;q=0.1", 400)),
        "text/event-stream",
        "application/json;profile=\"",
        "",
    ];

    private static readonly string[] EntityTags =
    [
        "",
        "*",
        "\"\"",
        "\"r1\"",
        "W/\"r1\"",
        "r1",
        "\"r1",
        "\"a\", \"b\"",
        "*, \"a\"",
        "\"" + new string('x', 5000) + "\"",
        "null",
        ",,,",
        "W/*",
    ];

    private static readonly string[] IdempotencyKeys =
    [
        "",
        "\"\"",
        "same",
        "\"same\"",
        "\" \"",
        "a\tb",
        new('k', 200),
        new('k', 201),
        "\"" + new string('k', 6000) + "\"",
        "\"a",
        "a, b",
        "\\\"",
        "../../x",
        "'; drop table idempotency_keys; --",
    ];

    private static readonly string[] Others =
    [
        "X-HTTP-Method-Override: DELETE",
        "X-Original-URL: /v1/keys",
        "X-Rewrite-URL: /v1/keys",
        "X-Forwarded-For: 127.0.0.1, ::1, evil",
        "X-Forwarded-Host: evil.example",
        "X-Forwarded-Proto: gopher",
        "Forwarded: for=\"[::1]:x\";proto=;host=\"evil",
        "Range: bytes=0-1",
        "Origin: https://evil.example",
        "Origin: null",
        "Cookie: a=b; .AspNetCore.Antiforgery=x",
        "traceparent: 00-zz-zz-zz",
        "traceparent: 00-00000000000000000000000000000000-0000000000000000-00",
        "tracestate: ,,=,",
        "Accept-Encoding: br;q=x, zstd, *;q=0",
        "Accept-Encoding: gzip, br",
        "Accept-Language: xx-invalid-@@",
        "Expect: 100-continue",
        "Upgrade: h2c",
        "Upgrade: websocket",
        "Prefer: respond-async, wait=99999999999",
        "If-Modified-Since: yesterday",
        "If-Unmodified-Since: Thu, 01 Jan 1970 00:00:00 GMT",
        "Cache-Control: only-if-cached",
        "Date: never",
        "Content-MD5: x",
        "Content-Location: /v1/keys",
        "Connection: close, Authorization",
        "Pragma: akamai-x-get-cache-key",
        "Max-Forwards: 0",
        "TE: trailers",
        "From: x",
        "Content-Encoding: identity",
        "baggage: a=b,,;=",
    ];

    /// <summary>Names and the tricks with headers.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] All =
    [
        ("media type", (draft, _, random) => draft.Set("Content-Type", One(MediaTypes, random))),
        ("no media type", (draft, _, _) => draft.Set("Content-Type", null)),
        ("two media types", (draft, _, random) => draft.Add("Content-Type", One(MediaTypes, random))),
        ("accept", (draft, _, random) => draft.Set("Accept", One(Accepts, random))),
        ("two accepts", (draft, _, random) =>
        {
            draft.Set("Accept", One(Accepts, random));
            draft.Add("Accept", One(Accepts, random));
        }),
        ("if-match", (draft, _, random) => draft.Set("If-Match", One(EntityTags, random))),
        ("no if-match", (draft, _, _) => draft.Set("If-Match", null)),
        ("two if-match", (draft, _, random) => draft.Add("If-Match", One(EntityTags, random))),
        ("if-none-match", (draft, _, random) => draft.Set("If-None-Match", One(EntityTags, random))),
        ("idempotency key", (draft, _, random) => draft.Set("Idempotency-Key", One(IdempotencyKeys, random))),
        ("idempotency key beyond ASCII", (draft, _, _) => draft.Set("Idempotency-Key", RequestDraft.Utf8("schlüssel😀"))),
        ("two idempotency keys", (draft, _, random) =>
        {
            draft.Add("Idempotency-Key", "a");
            draft.Add("Idempotency-Key", One(IdempotencyKeys, random));
        }),
        ("header of another purpose", (draft, _, random) => Split(draft, One(Others, random))),
        ("header of another purpose", (draft, _, random) => Split(draft, One(Others, random))),
        ("many headers", (draft, _, random) =>
        {
            for (var i = random.Next(30, 80); i > 0; i--)
                draft.Add($"X-Header-{i}", "x");
        }),
        ("compressed body", (draft, _, _) =>
        {
            draft.Set("Content-Encoding", "gzip");
            draft.Body = Compressed(draft.Body);
        }),
        ("unknown coding", (draft, _, random) => draft.Set("Content-Encoding", One(["gzip", "br", "zstd", "gzip, gzip", "x", ""], random))),
        ("chunks", (draft, _, _) => draft.IsChunked = true),
        ("no key", (draft, _, _) => draft.Set("Authorization", null)),
        ("key of another workspace", (draft, world, _) => draft.Set("Authorization", $"Bearer {world.ForeignKey}")),
        ("key that may only read", (draft, world, _) => draft.Set("Authorization", $"bearer {world.ReadingKey}")),
        ("revoked key", (draft, world, _) => draft.Set("Authorization", $"Bearer {world.RevokedKey}")),
        ("two keys", (draft, world, _) => draft.Add("Authorization", $"Bearer {world.ForeignKey}")),
        ("cut key", (draft, world, random) => draft.Set("Authorization", $"Bearer {world.Key[..random.Next(world.Key.Length)]}")),
        ("key in the query", (draft, world, _) => draft.Query.Add($"access_token={world.Key}")),
        ("odd credentials", (draft, _, random) =>
            draft.Set(
                "Authorization",
                One(
                    [
                        "Basic dXNlcjpwYXNz",
                        "Bearer",
                        "",
                        "Bearer  ",
                        "Negotiate x",
                        "Bearer " + RequestDraft.Utf8("schlüssel"),
                        "Bearer " + new string('a', 7000),
                        "Bearer eyJhbGciOiJub25lIn0.e30.",
                        "Digest username=\"x",
                    ],
                    random
                )
            )
        ),
        ("other host", (draft, _, random) => draft.Set("Host", One(["evil.example", "localhost", "[::1]", "a.b.c.d.e"], random))),
    ];

    private static void Split(RequestDraft draft, string header)
    {
        var colon = header.IndexOf(": ", StringComparison.Ordinal);
        draft.Add(header[..colon], header[(colon + 2)..]);
    }

    private static byte[] Compressed(byte[] body)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
            gzip.Write(body);
        return packed.ToArray();
    }
}
