using System.Runtime.CompilerServices;
using System.Web;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Http.HttpClientLibrary.Middleware.Options;

namespace CalibrationApi.Client.Http;

/// <summary>Sends requests that the generated code has put together, and reads their answers.</summary>
internal sealed class Exchange(IRequestAdapter adapter)
{
    /// <summary>Sends a request and reads its answer.</summary>
    public async Task<T> SendAsync<T>(RequestInformation request, ParsableFactory<T> read, CancellationToken cancellationToken)
        where T : IParsable =>
        await adapter.SendAsync(request, read, cancellationToken: cancellationToken).ConfigureAwait(false)
        ?? throw new InvalidDataException("The service answered without a body. Is the address that of a Calibration API?");

    /// <summary>Sends a request and reads its answer with the version that the answer stands for.</summary>
    public async Task<(T Answer, string ETag)> SendVersionedAsync<T>(
        RequestInformation request,
        ParsableFactory<T> read,
        CancellationToken cancellationToken
    )
        where T : IParsable
    {
        var headers = new HeadersInspectionHandlerOption { InspectResponseHeaders = true };
        request.AddRequestOptions([headers]);
        var answer = await SendAsync(request, read, cancellationToken).ConfigureAwait(false);
        return headers.ResponseHeaders.TryGetValue("ETag", out var tags)
            ? (answer, tags.First())
            : throw new InvalidDataException(
                "The answer has no ETag. A proxy must not remove it: without it, changes of others would be overwritten unseen."
            );
    }

    /// <summary>Reads a list page by page, no further than the caller goes.</summary>
    public async IAsyncEnumerable<TItem> FollowAsync<TPage, TItem>(
        RequestInformation request,
        ParsableFactory<TPage> read,
        [EnumeratorCancellation] CancellationToken cancellationToken
    )
        where TPage : IPage<TItem>, IParsable
    {
        while (true)
        {
            cancellationToken.ThrowIfCancellationRequested();
            var page = await SendAsync(request, read, cancellationToken).ConfigureAwait(false);
            foreach (var item in page.Items ?? [])
                yield return item;
            if (page.Next is not { } next)
                yield break;
            request.QueryParameters["cursor"] = CursorOf(next);
        }
    }

    // Only the cursor of the address is used: behind a proxy the service may know itself by another name than its callers,
    // and a key must not follow a link to somebody else.
    private static string CursorOf(string next) =>
        HttpUtility.ParseQueryString(new Uri(next).Query)["cursor"]
        ?? throw new InvalidDataException("The address of the next page has no cursor. Is the address that of a Calibration API?");
}
