using System.Globalization;
using System.Text;

namespace CalibrationApi.Hostile;

/// <summary>A request as the bytes that go over the wire. Its number and the seed of the run are enough to make it again.</summary>
/// <param name="Number">Its number in the run.</param>
/// <param name="Operation">The operation of the contract that it began as.</param>
/// <param name="Tricks">What was done to it; empty for a request that the contract allows.</param>
/// <param name="Method">Method of the first line.</param>
/// <param name="Target">Path and query of the first line.</param>
/// <param name="Headers">Its headers, in order.</param>
/// <param name="Body">Its body, framed as the headers say.</param>
/// <param name="BreaksHttp">It is not HTTP any more: the server refuses it before the service sees it, and then closes the
/// connection.</param>
public sealed record HostileRequest(
    int Number,
    string Operation,
    IReadOnlyList<string> Tricks,
    string Method,
    string Target,
    IReadOnlyList<KeyValuePair<string, string>> Headers,
    byte[] Body,
    bool BreaksHttp
)
{
    private const int LongestShown = 4000;

    /// <summary>The bytes; every character of the head stands for one.</summary>
    public byte[] Bytes()
    {
        var head = new StringBuilder($"{Method} {Target} HTTP/1.1\r\n");
        foreach (var (name, value) in Headers)
            head.Append(CultureInfo.InvariantCulture, $"{name}: {value}\r\n");
        return [.. Encoding.Latin1.GetBytes(head.Append("\r\n").ToString()), .. Body];
    }

    /// <summary>The request to read: what cannot be printed is written as an escape.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(
            $"request {Number}, {Operation}, {(Tricks.Count == 0 ? "as the contract allows" : string.Join(" + ", Tricks))}\n"
        );
        var bytes = Bytes();
        foreach (var one in bytes.Take(LongestShown))
            text.Append(
                one is (byte)'\n' or (>= 0x20 and < 0x7f) ? ((char)one).ToString()
                : one == '\r' ? ""
                : $"\\x{one:x2}"
            );
        return bytes.Length > LongestShown
            ? text.Append(CultureInfo.InvariantCulture, $"... {bytes.Length} bytes in all").ToString()
            : text.ToString();
    }
}
