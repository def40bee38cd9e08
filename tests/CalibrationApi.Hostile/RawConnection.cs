using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace CalibrationApi.Hostile;

/// <summary>Sends requests byte for byte, which no ordinary client would, and reads their answers.</summary>
public sealed class RawConnection(Uri address) : HttpMessageHandler
{
    /// <summary>The request to send; the rest of the message only tells others what it is about.</summary>
    public static readonly HttpRequestOptionsKey<HostileRequest> Sent = new("hostile");

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private TcpClient? client;
    private NetworkStream? network;
    private BufferedStream? stream;

    /// <inheritdoc/>
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        limit.CancelAfter(Patience);
        request.Options.TryGetValue(Sent, out var hostile);
        var kept = client is not null;
        try
        {
            return await ExchangeAsync(hostile!, limit.Token);
        }
        catch (Exception failure) when (kept && failure is IOException or SocketException)
        {
            // The server may close a connection that it kept; on a new one that is no excuse.
            Close();
            return await ExchangeAsync(hostile!, limit.Token);
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Close();
        base.Dispose(disposing);
    }

    private async Task<HttpResponseMessage> ExchangeAsync(HostileRequest request, CancellationToken cancellationToken)
    {
        if (client is null)
        {
            client = new TcpClient { NoDelay = true };
            await client.ConnectAsync(address.Host, address.Port, cancellationToken);
            network = client.GetStream();
            stream = new BufferedStream(network, 64 * 1024);
        }

        try
        {
            await network!.WriteAsync(request.Bytes(), cancellationToken);
        }
        catch (IOException)
        {
            // A body that is too large is refused while it is still being sent; the answer is there all the same.
        }

        var (response, isLast) = await ReadAsync(request.Method, cancellationToken);
        if (isLast || request.BreaksHttp)
            Close();
        return response;
    }

    private async Task<(HttpResponseMessage Response, bool IsLast)> ReadAsync(string method, CancellationToken cancellationToken)
    {
        string[] first;
        var fields = new List<KeyValuePair<string, string>>();
        do
        {
            first = (await LineAsync(cancellationToken)).Split(' ', 3);
            fields.Clear();
            while (await LineAsync(cancellationToken) is { Length: > 0 } line)
            {
                var colon = line.IndexOf(':', StringComparison.Ordinal);
                fields.Add(new(line[..colon], line[(colon + 1)..].Trim()));
            }
        } while (first[1][0] == '1');

        string? Field(string name) => fields.FirstOrDefault(field => field.Key.Equals(name, StringComparison.OrdinalIgnoreCase)).Value;
        var status = int.Parse(first[1], CultureInfo.InvariantCulture);
        byte[] body =
            method == "HEAD" || status is 204 or 304 ? []
            : Field("Transfer-Encoding") is not null ? await ChunksAsync(cancellationToken)
            : await BytesAsync(int.Parse(Field("Content-Length") ?? "0", CultureInfo.InvariantCulture), cancellationToken);
        var response = new HttpResponseMessage((HttpStatusCode)status) { Content = new ByteArrayContent(body) };
        foreach (
            var (name, value) in fields.Where(field =>
                !field.Key.Equals("Content-Length", StringComparison.OrdinalIgnoreCase)
                && !field.Key.Equals("Transfer-Encoding", StringComparison.OrdinalIgnoreCase)
            )
        )
        {
            if (!response.Headers.TryAddWithoutValidation(name, value))
                response.Content.Headers.TryAddWithoutValidation(name, value);
        }

        return (response, Field("Connection")?.Contains("close", StringComparison.OrdinalIgnoreCase) == true);
    }

    private async Task<byte[]> ChunksAsync(CancellationToken cancellationToken)
    {
        using var body = new MemoryStream();
        while (int.Parse(await LineAsync(cancellationToken), NumberStyles.HexNumber, CultureInfo.InvariantCulture) is > 0 and var length)
        {
            body.Write(await BytesAsync(length, cancellationToken));
            await LineAsync(cancellationToken);
        }

        await LineAsync(cancellationToken);
        return body.ToArray();
    }

    private async Task<byte[]> BytesAsync(int count, CancellationToken cancellationToken)
    {
        var bytes = new byte[count];
        await stream!.ReadExactlyAsync(bytes, cancellationToken);
        return bytes;
    }

    private async Task<string> LineAsync(CancellationToken cancellationToken)
    {
        var line = new StringBuilder();
        var one = new byte[1];
        while (true)
        {
            if (await stream!.ReadAsync(one, cancellationToken) == 0)
                throw new EndOfStreamException("The connection was closed before the answer was whole.");
            if (one[0] == '\n')
                return line.ToString().TrimEnd('\r');
            line.Append((char)one[0]);
        }
    }

    private void Close()
    {
        stream?.Dispose();
        client?.Dispose();
        (client, network, stream) = (null, null, null);
    }
}
