using static CalibrationApi.Hostile.Chance;

namespace CalibrationApi.Hostile;

/// <summary>What is done to the address and the method of a request. Each trick takes the draft and a source of chance.</summary>
internal static class AddressTricks
{
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

    /// <summary>Names and the tricks with addresses and methods.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] All =
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

    private static void Replace(RequestDraft draft, Random random, string segment)
    {
        var segments = draft.Path.Split('/');
        // The version stays in most, or nothing of the service would be reached.
        segments[random.Next(random.Next(4) == 0 ? 1 : Math.Min(2, segments.Length - 1), segments.Length)] = segment;
        draft.Path = string.Join('/', segments);
    }
}
