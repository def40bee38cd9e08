using CalibrationApi.Plumbing.Http;
using Microsoft.Net.Http.Headers;

namespace CalibrationApi.Hosting.Pipeline;

/// <summary>Refuses a host that no address can have: links of an answer begin with it, and much of the framework reads it.</summary>
internal static class AskedHost
{
    /// <summary>Comes before everything that reads the host.</summary>
    public static void UseAskedHost(this WebApplication app) =>
        app.Use((context, next) => IsOfAnAddress(context.Request) ? next(context) : Wrong.ExecuteAsync(context));

    private static ProblemResult Wrong =>
        ProblemResult.Unreadable(
            new ProblemError
            {
                Header = HeaderNames.Host,
                Code = ErrorCodes.TextWrong,
                Detail = "Give the host as in an address: its name, and after a colon a port up to 65535 where one is needed.",
            }
        );

    // Most requests name the host that the one before named.
    private static string? lastOfAnAddress;

    private static bool IsOfAnAddress(HttpRequest request)
    {
        try
        {
            var host = request.Host.Value;
            if (host is not null && host == Volatile.Read(ref lastOfAnAddress))
                return true;
            if (!Uri.TryCreate($"{Uri.UriSchemeHttp}://{host}", UriKind.Absolute, out _))
                return false;
            Volatile.Write(ref lastOfAnAddress, host);
            return true;
        }
        catch (ArgumentException)
        {
            // A name that says it is an international one, and is none.
            return false;
        }
    }
}
