using System.IO.Compression;
using System.Text;

namespace CalibrationApi.Hostile;

/// <summary>What is done to a request apart from the members of its body. Each takes the draft and a source of chance.</summary>
internal static class Tricks
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

    private static readonly string[] Segments =
    [
        ".",
        "..",
        "%2e%2e",
        "%2E",
        "%2F",
        "%2f..%2f..%2fetc%2fpasswd",
        "%ff",
        "%c0%af",
        "%ed%a0%80",
        "%F0%9F%98%80",
        "%20",
        "%09",
        "%0d%0aX-Injected:%20yes",
        "%252e%252e",
        "%3f",
        "%23",
        "%5c",
        "\\",
        ";x=y",
        "%",
        "%zz",
        "%u0041",
        "null",
        "undefined",
        "0",
        "-1",
        "1e400",
        "*",
        "'",
        "\"",
        "<x>",
        "{id}",
        "[1]",
        "a,b",
        "~",
        "%7e",
        "COM1",
        "id",
        "00000000-0000-0000-0000-000000000000",
        "019d0000-0001-7000-8000-00000000000",
        "019d0000-0001-7000-8000-0000000000011",
    ];

    private static readonly string[] Methods =
    [
        "GET",
        "HEAD",
        "POST",
        "PUT",
        "PATCH",
        "DELETE",
        "OPTIONS",
        "TRACE",
        "PROPFIND",
        "QUERY",
        "get",
        "Post",
        "FOO",
        "CONNECT",
        new('M', 300),
    ];

    private static readonly string[] QueryValues =
    [
        "",
        "%00",
        "%",
        "%zz",
        "%ff",
        "%ed%a0%80",
        "a%26b%3dc",
        "%F0%9F%98%80",
        "0",
        "-1",
        "1",
        "2",
        "1001",
        "1e3",
        "999999999999999999999",
        "all",
        "ALL",
        "us",
        "metric",
        "true",
        "TRUE",
        "null",
        "2026-02-30T00:00:00Z",
        "2026-03-01T00:00:00Z",
        "2026-03-01T00:00:00%2B02:00",
        "2026-03-01T00:00:00+02:00",
        "9999-12-31T23:59:59Z",
        "0001-01-01T00:00:00%2B14:00",
        "newest-first",
        "oldest-first",
        "adopt",
        "passed",
        "'%20or%201=1--",
        "*",
        "%25",
        "_",
        "front",
        "coarse%20roller",
        "a;b",
        "[]",
        "$ne",
        "eyJ2IjoxfQ",
        "AAAA",
        "=",
        "../..",
    ];

    private static readonly byte[] OddBytes = [0xff, 0xc0, 0xed, 0x80, 0x00, 0x1b];

    /// <summary>Names and the tricks with headers.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] WithHeaders =
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

    /// <summary>Names and the tricks with addresses and methods.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] WithAddresses =
    [
        ("segment", (draft, _, random) => Replace(draft, random, One(Segments, random))),
        ("segment", (draft, _, random) => Replace(draft, random, One(Segments, random))),
        ("segment added", (draft, _, random) => draft.Path += "/" + One(Segments, random)),
        ("long segment", (draft, _, random) => Replace(draft, random, new string('a', random.Next(100, 7000)))),
        ("many segments", (draft, _, random) =>
            draft.Path += string.Concat(Enumerable.Repeat(One(["/a", "/..", "/.", "//"], random), random.Next(1, 900)))
        ),
        ("slash at the end", (draft, _, _) => draft.Path += "/"),
        ("two slashes", (draft, _, _) => draft.Path = draft.Path.Replace("/v1/", "/v1//", StringComparison.Ordinal)),
        ("dot segments", (draft, _, random) =>
            draft.Path = draft.Path.Replace(
                "/v1/",
                One(["/v1/./", "/v1/x/../", "/x/%2e%2e/v1/", "/../v1/", "/v1/%2e/"], random),
                StringComparison.Ordinal
            )
        ),
        ("encoded letters", (draft, _, random) =>
            draft.Path = draft.Path.Replace(
                One(["v", "c", "s", "0"], random),
                "%" + One(["76", "63", "73", "30"], random),
                StringComparison.Ordinal
            )
        ),
        ("capitals", (draft, _, _) => draft.Path = draft.Path.ToUpperInvariant()),
        ("letters beyond ASCII", (draft, _, _) => draft.Path += "/%C3%BC%E2%80%AE"),
        ("absolute address", (draft, _, _) => draft.IsAbsolute = true),
        ("other method", (draft, _, random) =>
        {
            draft.Method = One(Methods, random);
            draft.BreaksHttp |= draft.Method == "CONNECT";
        }),
        ("other method", (draft, _, random) => draft.Method = One(Methods[..7], random)),
        ("unknown parameter", (draft, _, random) =>
            draft.Query.Add(
                $"{One(["x", "Limit", "LIMIT", "limit[]", "%00", "", "__proto__", "units%20", "fields"], random)}={One(QueryValues, random)}"
            )
        ),
        ("long query", (draft, _, random) => draft.Query.Add($"units={new string('u', random.Next(500, 6000))}")),
        ("query without value", (draft, _, random) =>
            draft.Query.Add(One(["units", "limit", "cursor", "&&&", "=", "?", "limit=1?cursor=2"], random))
        ),
    ];

    /// <summary>Names and the tricks with the bytes of a body.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] WithBodies =
    [
        ("cut body", (draft, _, random) => draft.Body = draft.Body[..random.Next(draft.Body.Length + 1)]),
        ("body and more", (draft, _, random) =>
            draft.Body = [.. draft.Body, .. Encoding.UTF8.GetBytes(One(["x", "{}", "\0", "]", ",", "\n\n\n{}", "//"], random))]
        ),
        ("empty body", (draft, _, _) => draft.Body = []),
        ("blank body", (draft, _, random) =>
            draft.Body = Encoding.ASCII.GetBytes(new string(One([" ", "\n", "\r"], random)[0], random.Next(1, 2000)))
        ),
        ("byte order mark", (draft, _, _) => draft.Body = [0xEF, 0xBB, 0xBF, .. draft.Body]),
        ("UTF-16", (draft, _, _) => draft.Body = Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(draft.Body))),
        ("byte that is no UTF-8", (draft, _, random) => draft.Body = Inserted(draft.Body, [One(OddBytes, random)], random)),
        ("random bytes", (draft, _, random) =>
        {
            draft.Body = new byte[random.Next(1, 3000)];
            random.NextBytes(draft.Body);
        }),
        ("twisted byte", (draft, _, random) =>
        {
            if (draft.Body.Length > 0)
                draft.Body[random.Next(draft.Body.Length)] ^= (byte)(1 << random.Next(8));
        }),
        ("other root", (draft, _, random) =>
            draft.Body = Encoding.ASCII.GetBytes(One(["null", "[]", "{}", "1", "\"x\"", "true", "[{}]", "[1,2", "1e400"], random))
        ),
        ("member twice", (draft, _, random) =>
            draft.Body = Encoding.UTF8.GetBytes(
                Encoding
                    .UTF8.GetString(draft.Body)
                    .Replace(
                        "{\"",
                        One(["{\"value\":1,\"", "{\"id\":\"x\",\"", "{\"name\":1,\"name\":2,\""], random),
                        StringComparison.Ordinal
                    )
            )
        ),
        ("comment or comma", (draft, _, random) =>
            draft.Body = Inserted(draft.Body, Encoding.ASCII.GetBytes(One(["/*x*/", ",", "//\n", "\\", "\"", "}", "{"], random)), random)
        ),
        ("deep body", (draft, _, random) =>
            draft.Body = Encoding.ASCII.GetBytes(new string(One(["[", "{"], random)[0], random.Next(10, 100_000)))
        ),
        ("large body", (draft, _, random) =>
            draft.Body = [
                .. draft.Body,
                .. Encoding.ASCII.GetBytes(new string(' ', random.Next(20) == 0 ? 1_100_000 : random.Next(70_000))),
            ]
        ),
        ("many lines", (draft, _, random) => draft.Body = Lines(draft.Body, random)),
    ];

    /// <summary>Names and what leaves HTTP behind; the service itself sees nothing of it.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] AgainstHttp =
    [
        ("byte beyond ASCII in a header", (draft, _, _) => draft.Add("X-Odd", "\u00ff\u00fe")),
        ("control character in a header", (draft, _, random) => draft.Add("X-Odd", One(["a\u0000b", "a\rb"], random))),
        ("header without a name", (draft, _, _) => draft.Add("", "x")),
        ("blank in the name of a header", (draft, _, _) => draft.Add("X Odd", "x")),
        ("line longer than allowed", (draft, _, _) => draft.Path += "/" + new string('a', 9000)),
        ("headers longer than allowed", (draft, _, _) => draft.Add("X-Long", new string('a', 33_000))),
        ("more headers than allowed", (draft, _, _) =>
        {
            for (var i = 0; i < 120; i++)
                draft.Add($"X-Header-{i}", "x");
        }),
        ("two lengths", (draft, _, _) =>
        {
            draft.Add("Content-Length", "1");
            draft.Add("Content-Length", "2");
        }),
        ("length that is none", (draft, _, random) => draft.Add("Content-Length", One(["-1", "x", "1e3", "99999999999999999999"], random))),
        ("host that no address can have", (draft, _, random) =>
            draft.Set("Host", One(["127.0.0.1:99999", "localhost:99999999999999999999"], random))
        ),
        ("no host", (draft, _, _) => draft.Set("Host", null)),
        ("two hosts", (draft, _, _) => draft.Add("Host", "evil.example")),
        ("encoded zero in the path", (draft, _, _) => draft.Path += "%00"),
        ("unknown transfer coding", (draft, _, _) => draft.Add("Transfer-Encoding", "gzip")),
        ("broken chunks", (draft, _, _) => BreakChunks(draft)),
    ];

    /// <summary>A value for a parameter of a query.</summary>
    public static string QueryValue(World world, string name, Payloads payloads, Random random) =>
        name switch
        {
            "cursor" when random.Next(2) == 0 => Twisted(One([.. world.Cursors], random), random),
            // Long pages take long to check; a few of them are enough.
            "limit" when random.Next(30) != 0 => random.Next(1, 40).ToString(System.Globalization.CultureInfo.InvariantCulture),
            _ when random.Next(3) == 0 => payloads.AnyId(random),
            _ => One(QueryValues, random),
        };

    private static string Twisted(string cursor, Random random) =>
        random.Next(4) switch
        {
            0 => cursor[..random.Next(cursor.Length)],
            1 => cursor + "A",
            2 => cursor.Replace(cursor[random.Next(cursor.Length)], 'A'),
            _ => cursor,
        };

    private static void BreakChunks(RequestDraft draft)
    {
        // Where no body is read, nobody looks at its chunks.
        if (draft.Body.Length == 0)
            draft.Add("Content-Length", "one");
        else
            (draft.Body, _) = ("zz\r\nx\r\n"u8.ToArray(), draft.Headers.RemoveAll(header => header.Key == "Content-Length"));
        draft.Add("Transfer-Encoding", "chunked");
    }

    private static T One<T>(T[] of, Random random) => of[random.Next(of.Length)];

    private static void Split(RequestDraft draft, string header)
    {
        var colon = header.IndexOf(": ", StringComparison.Ordinal);
        draft.Add(header[..colon], header[(colon + 2)..]);
    }

    private static void Replace(RequestDraft draft, Random random, string segment)
    {
        var segments = draft.Path.Split('/');
        // The version stays in most, or nothing of the service would be reached.
        segments[random.Next(random.Next(4) == 0 ? 1 : Math.Min(2, segments.Length - 1), segments.Length)] = segment;
        draft.Path = string.Join('/', segments);
    }

    private static byte[] Inserted(byte[] body, byte[] piece, Random random)
    {
        var at = random.Next(body.Length + 1);
        return [.. body[..at], .. piece, .. body[at..]];
    }

    private static byte[] Lines(byte[] body, Random random)
    {
        var lines = new List<byte>();
        for (var count = random.Next(2, 150); count > 0; count--)
            lines.AddRange([
                .. random.Next(4) == 0 ? body[..random.Next(body.Length + 1)] : body,
                .. random.Next(3) == 0 ? "\r\n"u8 : "\n"u8,
            ]);
        return [.. lines];
    }

    private static byte[] Compressed(byte[] body)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest))
            gzip.Write(body);
        return packed.ToArray();
    }
}
