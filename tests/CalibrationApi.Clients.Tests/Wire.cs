using System.Collections.Concurrent;
using System.Net;

namespace CalibrationApi.Clients.Tests;

/// <summary>Keeps what goes over the wire, in order.</summary>
internal sealed class Wire : DelegatingHandler
{
    private readonly ConcurrentQueue<Sent> sent = new();

    public IReadOnlyList<Sent> Requests => [.. sent];

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var body = request.Content is null ? null : await request.Content.ReadAsStringAsync(cancellationToken);
        sent.Enqueue(
            new Sent(
                request.Method.Method,
                request.RequestUri!.PathAndQuery,
                body,
                request.Headers.TryGetValues("Idempotency-Key", out var keys) ? Assert.Single(keys) : null,
                request.Headers.Authorization?.ToString()
            )
        );
        return await base.SendAsync(request, cancellationToken);
    }

    internal sealed record Sent(string Method, string Target, string? Body, string? Key, string? Authorization);
}

/// <summary>A service that is busy for the first requests.</summary>
internal sealed class BusyAtFirst(int requests, HttpStatusCode status = HttpStatusCode.ServiceUnavailable, string? retryAfter = null)
    : DelegatingHandler
{
    private int left = requests;

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        // As a server does: it reads the body before it answers.
        if (request.Content is { } content)
            await content.CopyToAsync(Stream.Null, cancellationToken);
        if (Interlocked.Decrement(ref left) < 0)
            return await base.SendAsync(request, cancellationToken);
        var busy = new HttpResponseMessage(status);
        if (retryAfter is not null)
            busy.Headers.Add("Retry-After", retryAfter);
        return busy;
    }
}

/// <summary>A network that carries every request, but loses the first answers on their way back, or the second half of them.</summary>
internal sealed class AnswersLost(int answers, bool halfway = false) : DelegatingHandler
{
    private int left = answers;

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var answer = await base.SendAsync(request, cancellationToken);
        if (Interlocked.Decrement(ref left) < 0)
            return answer;
        if (!halfway)
            throw new HttpRequestException("The connection broke.");
        var whole = await answer.Content.ReadAsByteArrayAsync(cancellationToken);
        answer.Content = new BreaksOff(whole[..(whole.Length / 2)]);
        return answer;
    }

    private sealed class BreaksOff(byte[] half) : HttpContent
    {
        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            await stream.WriteAsync(half);
            throw new IOException("The connection broke.");
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
