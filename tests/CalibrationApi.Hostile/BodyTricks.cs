using System.Text;
using static CalibrationApi.Hostile.Chance;

namespace CalibrationApi.Hostile;

/// <summary>What is done to the bytes of a request. Each trick takes the draft and a source of chance.</summary>
internal static class BodyTricks
{
    private static readonly byte[] OddBytes = [0xff, 0xc0, 0xed, 0x80, 0x00, 0x1b];

    /// <summary>Names and the tricks with the bytes of a body.</summary>
    public static readonly (string Name, Action<RequestDraft, World, Random> Do)[] All =
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

    private static void BreakChunks(RequestDraft draft)
    {
        // Where no body is read, nobody looks at its chunks.
        if (draft.Body.Length == 0)
            draft.Add("Content-Length", "one");
        else
            (draft.Body, _) = ("zz\r\nx\r\n"u8.ToArray(), draft.Headers.RemoveAll(header => header.Key == "Content-Length"));
        draft.Add("Transfer-Encoding", "chunked");
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
}
