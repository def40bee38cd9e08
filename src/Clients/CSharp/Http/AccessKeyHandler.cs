using System.Net.Http.Headers;

namespace CalibrationApi.Client.Http;

/// <summary>Shows the caller's key to the service, and to nobody else.</summary>
/// <remarks>
/// It stands next to the transport and so sees where each try goes: a request made by hand, or one that was led elsewhere and
/// is tried again, is on its way to another address. The platform's own transport drops the header when it is led elsewhere.
/// </remarks>
internal sealed class AccessKeyHandler(Uri address, string key, HttpMessageHandler inner) : DelegatingHandler(inner)
{
    private readonly Uri service = new(address.GetLeftPart(UriPartial.Path).TrimEnd('/') + "/");
    private readonly AuthenticationHeaderValue authorization = new("Bearer", Checked(key));

    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        if (service.IsBaseOf(request.RequestUri!))
            request.Headers.Authorization ??= authorization;
        return base.SendAsync(request, cancellationToken);
    }

    // Left to the header, a key read with the line break behind it would stand in the message of an exception.
    private static string Checked(string key) =>
        key.Length > 0 && key.All(letter => letter is > ' ' and <= '~')
            ? key
            : throw new ArgumentException(
                "The key is empty, or holds a space, a line break or another letter that no key has. Check that it was read whole and without what stands around it.",
                nameof(key)
            );
}
