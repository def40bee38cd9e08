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
                Code = ErrorCode.TextWrong,
                Detail = "Give the host as in an address: its name, and after a colon a port up to 65535 where one is needed.",
            }
        );

    private static bool IsOfAnAddress(HttpRequest request)
    {
        try
        {
            return Uri.TryCreate($"{Uri.UriSchemeHttp}://{request.Host.Value}", UriKind.Absolute, out _);
        }
        catch (ArgumentException)
        {
            // A name that says it is an international one, and is none.
            return false;
        }
    }
}
