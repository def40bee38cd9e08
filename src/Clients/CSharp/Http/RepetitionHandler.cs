using System.Net;
using CalibrationApi.Client.Batches;

namespace CalibrationApi.Client.Http;

/// <summary>
/// Sends a request again when the service is busy (429, 503) or still works on an earlier try (409 with Retry-After), and when the
/// connection broke.
/// </summary>
/// <remarks>
/// Bounded in number and in time: a longer wait than allowed is left to the caller, who finds it in
/// <see cref="CalibrationException.RetryAfter"/>. Nothing is stored twice: calculations store nothing, storing requests carry
/// a key. A replacement is not sent again after a broken connection, because if the first one arrived, the second would meet
/// its own change and report a conflict that is none.
/// </remarks>
internal sealed class RepetitionHandler(CalibrationClientOptions options, HttpMessageHandler inner) : DelegatingHandler(inner)
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        // A body that can be read once only would be empty the second time.
        if (request.Content is { } content)
            await BufferedAsync(content, cancellationToken).ConfigureAwait(false);

        for (var tries = 1; ; tries++)
        {
            var wait = options.FirstWait * Math.Pow(2, tries - 1);
            try
            {
                var response = await base.SendAsync(request, cancellationToken).ConfigureAwait(false);
                wait = AskedFor(response, options.Clock) ?? wait;
                if (!IsWorthAnotherTry(response) || tries > options.Retries || wait > options.LongestWait)
                    return await ArrivedAsync(request, response, cancellationToken).ConfigureAwait(false);
                response.Dispose();
            }
            catch (HttpRequestException) when (tries <= options.Retries && request.Method != HttpMethod.Put) { }

            await Task.Delay(wait < options.LongestWait ? wait : options.LongestWait, options.Clock, cancellationToken)
                .ConfigureAwait(false);
        }
    }

    /// <summary>The wait that the service asks for; null when it does not.</summary>
    public static TimeSpan? AskedFor(HttpResponseMessage response, TimeProvider clock) =>
        response.Headers.RetryAfter switch
        {
            { Delta: { } delta } => delta,
            { Date: { } date } => date > clock.GetUtcNow() ? date - clock.GetUtcNow() : TimeSpan.Zero,
            _ => null,
        };

    // A connection can break in the middle of an answer too. Streams are the exception: they may be longer than the memory.
    private static async Task<HttpResponseMessage> ArrivedAsync(
        HttpRequestMessage request,
        HttpResponseMessage response,
        CancellationToken cancellationToken
    )
    {
        if (!request.Headers.Accept.Contains(Batch.Accepted))
            await BufferedAsync(response.Content, cancellationToken).ConfigureAwait(false);
        return response;
    }

#if NET9_0_OR_GREATER
    private static Task BufferedAsync(HttpContent content, CancellationToken cancellationToken) =>
        content.LoadIntoBufferAsync(cancellationToken);
#else
    private static Task BufferedAsync(HttpContent content, CancellationToken cancellationToken) =>
        content.LoadIntoBufferAsync().WaitAsync(cancellationToken);
#endif

    private static bool IsWorthAnotherTry(HttpResponseMessage response) =>
        response.StatusCode switch
        {
            HttpStatusCode.TooManyRequests or HttpStatusCode.ServiceUnavailable => true,
            HttpStatusCode.Conflict => response.Headers.RetryAfter is not null,
            _ => false,
        };
}
