using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// Sends one request over and over on several kept-alive connections, to answers of any length, and notes how long each took.
/// </summary>
/// <remarks>Prepared bytes go out and only the head of an answer is read, so that the client costs little.</remarks>
internal sealed class ExchangeLoad : IDisposable
{
    private const string LengthHeader = "\r\nContent-Length: ";
    private readonly byte[] request;
    private readonly byte[] status;
    private readonly Socket[] sockets;

    private ExchangeLoad(byte[] request, int status, Socket[] sockets)
    {
        this.request = request;
        this.status = Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"HTTP/1.1 {status} "));
        this.sockets = sockets;
    }

    public static Task<ExchangeLoad> PostingAsync(IPEndPoint host, string path, byte[] body, int connections, int status = 201) =>
        ConnectAsync(
            host,
            [
                .. Encoding.ASCII.GetBytes(
                    $"POST {path} HTTP/1.1\r\nHost: {host}\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n"
                ),
                .. body,
            ],
            status,
            connections
        );

    public static Task<ExchangeLoad> GettingAsync(IPEndPoint host, string path, int connections) =>
        ConnectAsync(host, Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: {host}\r\n\r\n"), 200, connections);

    /// <summary>Milliseconds that each request took, sent for <paramref name="time"/>, in ascending order.</summary>
    public async Task<double[]> RunAsync(TimeSpan time)
    {
        var start = Stopwatch.GetTimestamp();
        var took = await Task.WhenAll(
            sockets.Select(socket =>
                Task.Run(async () =>
                {
                    var buffer = new byte[1 << 20];
                    var each = new List<double>();
                    while (Stopwatch.GetElapsedTime(start) < time)
                    {
                        var sent = Stopwatch.GetTimestamp();
                        await socket.SendAsync(request);
                        await ReadAnswerAsync(socket, buffer);
                        each.Add(Stopwatch.GetElapsedTime(sent).TotalMilliseconds);
                    }

                    return each;
                })
            )
        );
        return [.. took.SelectMany(each => each).Order()];
    }

    public void Dispose()
    {
        foreach (var socket in sockets)
            socket.Dispose();
    }

    private static async Task<ExchangeLoad> ConnectAsync(IPEndPoint host, byte[] request, int status, int connections)
    {
        var sockets = new Socket[connections];
        for (var i = 0; i < connections; i++)
        {
            sockets[i] = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
            await sockets[i].ConnectAsync(host);
        }

        return new ExchangeLoad(request, status, sockets);
    }

    private async Task ReadAnswerAsync(Socket socket, byte[] buffer)
    {
        var (length, whole) = (0, 0);
        while (whole == 0 || length < whole)
        {
            var read = await socket.ReceiveAsync(buffer.AsMemory(length));
            length += read > 0 ? read : throw new InvalidOperationException("The service closed the connection.");
            if (whole == 0)
                whole = WholeLength(buffer.AsSpan(0, length));
        }
    }

    // Zero while the head is not there yet.
    private int WholeLength(ReadOnlySpan<byte> answer)
    {
        var end = answer.IndexOf("\r\n\r\n"u8);
        if (end < 0)
            return 0;
        if (!answer.StartsWith(status))
            throw new InvalidOperationException($"The service refused the request of the benchmark: {Encoding.UTF8.GetString(answer)}");
        var head = Encoding.ASCII.GetString(answer[..end]);
        var at = head.IndexOf(LengthHeader, StringComparison.Ordinal) + LengthHeader.Length;
        var line = head.IndexOf('\r', at);
        return end + 4 + int.Parse(head.AsSpan(at, (line < 0 ? head.Length : line) - at), CultureInfo.InvariantCulture);
    }
}
