using System.Globalization;
using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions;

namespace CalibrationApi.Client;

/// <summary>Changes in the order in which they were stored, each once.</summary>
public sealed class ChangeFeed : IAsyncEnumerable<ChangeItem>
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(20);

    private readonly Exchange exchange;
    private readonly Func<RequestInformation> makeRequest;
    private readonly CalibrationClientOptions options;
    private readonly bool isEndless;
    private readonly CancellationToken ending;

    internal ChangeFeed(
        Exchange exchange,
        Func<RequestInformation> makeRequest,
        CalibrationClientOptions options,
        string? after,
        bool isEndless,
        CancellationToken ending
    )
    {
        this.exchange = exchange;
        this.makeRequest = makeRequest;
        this.options = options;
        this.isEndless = isEndless;
        this.ending = ending;
        After = after;
    }

    /// <summary>
    /// The cursor behind the change that was handed out last. Store it together with what you did with that change, and hand it over
    /// after a restart: each change comes once. It stays good for ever. Null before the first answer of a feed from the beginning.
    /// </summary>
    public string? After { get; private set; }

    /// <inheritdoc/>
    public async IAsyncEnumerator<ChangeItem> GetAsyncEnumerator(CancellationToken cancellationToken = default)
    {
        using var both = CancellationTokenSource.CreateLinkedTokenSource(ending, cancellationToken);
        for (var failures = 0; ; )
        {
            ChangePage page;
            try
            {
                page = await ReadAsync(both.Token).ConfigureAwait(false);
                failures = 0;
            }
            catch (Exception failure) when (isEndless && !both.IsCancellationRequested && IsPassing(failure))
            {
                await Task.Delay(Pause(failure, ++failures), options.Clock, both.Token).ConfigureAwait(false);
                continue;
            }

            foreach (var change in page.Items ?? [])
            {
                both.Token.ThrowIfCancellationRequested();
                After = change.Cursor ?? throw WithoutCursor();
                yield return change;
            }

            After = page.After ?? throw WithoutCursor();
            if (!isEndless && page.Next is null)
                yield break;
        }
    }

    private Task<ChangePage> ReadAsync(CancellationToken cancellationToken)
    {
        var request = makeRequest().Where("after", After);
        if (isEndless)
            request.Where("wait", string.Create(CultureInfo.InvariantCulture, $"{(int)Wait.TotalSeconds}s"));
        return exchange.SendAsync(request, ChangePage.CreateFromDiscriminatorValue, cancellationToken);
    }

    // Well within the time that the client gives a request.
    private TimeSpan Wait =>
        options.Timeout == Timeout.InfiniteTimeSpan || options.Timeout / 2 > LongestWait ? LongestWait : options.Timeout / 2;

    // A service that is away, busy or broken comes back; what it refuses, it refuses again.
    private static bool IsPassing(Exception failure) =>
        failure is HttpRequestException or IOException or OperationCanceledException
        || failure is CalibrationException { Status: 408 or 429 or >= 500 };

    private TimeSpan Pause(Exception failure, int failures)
    {
        if (failure is CalibrationException { RetryAfter: { } asked })
            return asked;
        // Doubled so often and no more, or it would be too long to be a time.
        var pause = options.FirstWait * Math.Pow(2, Math.Min(failures - 1, 16));
        return pause < options.LongestWait ? pause : options.LongestWait;
    }

    private static InvalidDataException WithoutCursor() =>
        new("The changes came without a cursor. Is the address that of a Calibration API?");
}
