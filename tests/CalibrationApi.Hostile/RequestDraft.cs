using System.Text;
using System.Text.Json.Nodes;

namespace CalibrationApi.Hostile;

/// <summary>A request while it is made.</summary>
internal sealed class RequestDraft
{
    private const int LongestLine = 8 * 1024 - 12;
    private const int LongestHeaders = 32 * 1024;
    private const int MostHeaders = 100;

    public required int Number { get; init; }

    public required string Operation { get; init; }

    public required string Method { get; set; }

    public required string Path { get; set; }

    public List<string> Query { get; } = [];

    /// <summary>Headers in order; a name may come twice.</summary>
    public List<KeyValuePair<string, string>> Headers { get; } = [];

    /// <summary>What is sent as JSON, as long as it is still a tree.</summary>
    public JsonNode? Tree { get; set; }

    public byte[] Body { get; set; } = [];

    public bool IsChunked { get; set; }

    /// <summary>Whether the first line names the host as well.</summary>
    public bool IsAbsolute { get; set; }

    public bool BreaksHttp { get; set; }

    public List<string> Tricks { get; } = [];

    /// <summary>Sets a header, in the place of any of that name.</summary>
    public void Set(string name, string? value)
    {
        Headers.RemoveAll(header => header.Key.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (value is not null)
            Add(name, value);
    }

    public void Add(string name, string value) => Headers.Add(new(name, value));

    /// <summary>A text as the characters that stand for the bytes of its UTF-8.</summary>
    public static string Utf8(string text) => Encoding.Latin1.GetString(Encoding.UTF8.GetBytes(text));

    public HostileRequest Done()
    {
        if (IsChunked)
        {
            Add("Transfer-Encoding", "chunked");
            Body =
                Body.Length == 0
                    ? "0\r\n\r\n"u8.ToArray()
                    : [.. Encoding.ASCII.GetBytes($"{Body.Length:x}\r\n"), .. Body, .. "\r\n0\r\n\r\n"u8];
        }
        else if (Body.Length > 0 && !Headers.Any(header => header.Key is "Content-Length" or "Transfer-Encoding"))
        {
            Add("Content-Length", Body.Length.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
        else if (Method is "POST" or "PUT" or "PATCH" && Body.Length == 0)
        {
            Add("Content-Length", "0");
        }

        // In an absolute address the server reads an encoded slash as a slash, which leaves open what was meant.
        if (
            IsAbsolute
            && Path.StartsWith('/')
            && !Path.Contains('%', StringComparison.Ordinal)
            && Headers.FirstOrDefault(header => header.Key == "Host").Value is { } host
        )
            Path = $"http://{host}{Path}";
        var target = Query.Count == 0 ? Path : $"{Path}?{string.Join('&', Query)}";
        // Beyond what the server reads of a head, it refuses a request before the service sees it.
        BreaksHttp |=
            Method.Length + target.Length > LongestLine
            || Headers.Sum(header => header.Key.Length + header.Value.Length + 4) > LongestHeaders
            || Headers.Count > MostHeaders;
        return new HostileRequest(Number, Operation, Tricks, Method, target, Headers, Body, BreaksHttp);
    }
}
