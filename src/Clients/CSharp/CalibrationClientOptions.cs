using System.Globalization;
using System.Text;

namespace CalibrationApi.Client;

/// <summary>How a client sends its requests. The defaults suit most programs.</summary>
public sealed record CalibrationClientOptions
{
    /// <summary>
    /// The key that the service asks for. It goes to the address of the service and nowhere else, and is never shown. Default
    /// none: a service without keys takes requests from its own machine only.
    /// </summary>
    public string? Key { get; init; }

    /// <summary>How often a request is sent again when the service is busy or the connection breaks. Default 3; 0 for never.</summary>
    public int Retries { get; init; } = 3;

    /// <summary>Wait before the first repetition where the service names none; it doubles with each. Default one second.</summary>
    public TimeSpan FirstWait { get; init; } = TimeSpan.FromSeconds(1);

    /// <summary>
    /// The longest wait before one repetition. When the service asks for more, the request fails at once, and its message says how long to
    /// wait. Default 30 seconds.
    /// </summary>
    public TimeSpan LongestWait { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>The longest time for one request with its repetitions. Default 100 seconds.</summary>
    public TimeSpan Timeout { get; init; } = TimeSpan.FromSeconds(100);

    /// <summary>
    /// What carries the requests: a handler with your proxy, certificates or headers, or one of the host's
    /// <c>IHttpMessageHandlerFactory</c>. It stays yours to dispose. Default: one of the client's own, with pooled connections.
    /// </summary>
    public HttpMessageHandler? Transport { get; init; }

    /// <summary>The clock that waits go by. Default the system's.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    // Options end up in logs; a key must not.
    private bool PrintMembers(StringBuilder builder)
    {
        builder.Append(
            CultureInfo.InvariantCulture,
            $"Key = {(Key is null ? "none" : "hidden")}, Retries = {Retries}, FirstWait = {FirstWait}, LongestWait = {LongestWait}, Timeout = {Timeout}"
        );
        return true;
    }
}
