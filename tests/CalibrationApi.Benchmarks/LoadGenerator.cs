using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace CalibrationApi.Benchmarks;

/// <summary>Sends one request over and over on several kept-alive connections.</summary>
/// <remarks>
/// It writes prepared bytes and counts the bytes that come back, so that the client costs little and the same for every
/// address: the answer to one request always has the same length.
/// </remarks>
internal sealed class LoadGenerator : IDisposable
{
    private readonly byte[] request;
    private readonly int answerLength;
    private readonly Socket[] sockets;

    private LoadGenerator(byte[] request, int answerLength, Socket[] sockets)
    {
        this.request = request;
        this.answerLength = answerLength;
        this.sockets = sockets;
    }

    /// <summary>Connects, and learns from one answer how long all of them are.</summary>
    public static async Task<LoadGenerator> PostingAsync(IPEndPoint host, string path, byte[] body, int connections)
    {
        var head = string.Create(
            CultureInfo.InvariantCulture,
            $"POST {path} HTTP/1.1\r\nHost: {host}\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n"
        );
        byte[] request = [.. Encoding.ASCII.GetBytes(head), .. body];
        var sockets = new Socket[connections];
        for (var i = 0; i < connections; i++)
        {
            sockets[i] = new Socket(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
            await sockets[i].ConnectAsync(host);
        }

        return new LoadGenerator(request, await FirstAnswerAsync(sockets[0], request), sockets);
    }

    /// <summary>Requests per second over <paramref name="time"/>.</summary>
    public async Task<double> RateAsync(TimeSpan time)
    {
        var start = Stopwatch.GetTimestamp();
        var counts = await Task.WhenAll(
            sockets.Select(socket =>
                Task.Run(async () =>
                {
                    var buffer = new byte[answerLength];
                    var count = 0;
                    for (; Stopwatch.GetElapsedTime(start) < time; count++)
                    {
                        await socket.SendAsync(request);
                        var left = answerLength;
                        while (left > 0)
                        {
                            var read = await socket.ReceiveAsync(buffer.AsMemory(0, left));
                            left -= read > 0 ? read : throw new InvalidOperationException("The service closed the connection.");
                        }
                    }

                    return count;
                })
            )
        );
        return counts.Sum() / Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    public void Dispose()
    {
        foreach (var socket in sockets)
            socket.Dispose();
    }

    private static async Task<int> FirstAnswerAsync(Socket socket, byte[] request)
    {
        await socket.SendAsync(request);
        var buffer = new byte[1 << 20];
        var length = 0;
        while (true)
        {
            length += await socket.ReceiveAsync(buffer.AsMemory(length));
            var answer = Encoding.ASCII.GetString(buffer, 0, length);
            if (!answer.StartsWith("HTTP/1.1 200 ", StringComparison.Ordinal))
                throw new InvalidOperationException($"The service refused the request of the benchmark: {answer}");
            if (IsWhole(answer))
                return length;
        }
    }

    private static bool IsWhole(string answer)
    {
        var end = answer.IndexOf("\r\n\r\n", StringComparison.Ordinal);
        if (end < 0)
            return false;
        const string Announced = "Content-Length: ";
        var at = answer.IndexOf(Announced, StringComparison.Ordinal);
        if (at < 0 || at > end)
            return answer.EndsWith("\r\n0\r\n\r\n", StringComparison.Ordinal);
        at += Announced.Length;
        var body = int.Parse(answer[at..answer.IndexOf('\r', at)], CultureInfo.InvariantCulture);
        return answer.Length == end + 4 + body;
    }
}
