using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage;
using Microsoft.AspNetCore.Diagnostics;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>Gives every status that no handler wrote a body, and every exception a clean answer.</summary>
internal static class UnhandledFailures
{
    /// <summary>Comes first in the pipeline.</summary>
    public static void UseProblemBodies(this WebApplication app)
    {
        var told = app.Services.GetRequiredService<FailureLines>();
        app.UseExceptionHandler(
            new ExceptionHandlerOptions
            {
                ExceptionHandler = context => Failed(context).ExecuteAsync(context),
                StatusCodeSelector = failure =>
                    failure switch
                    {
                        BadHttpRequestException bad => bad.StatusCode,
                        _ when DatabaseOutage.Is(failure) => StatusCodes.Status503ServiceUnavailable,
                        _ => StatusCodes.Status500InternalServerError,
                    },
                // A client's mistake is not an error of ours and fills no log; a file that is gone is told once and not with every request.
                // Of ours only so many a minute are told.
                SuppressDiagnosticsCallback = context =>
                    context.Exception is BadHttpRequestException or OperationCanceledException or UnusableDatabaseException
                    || !told.Tells(context.HttpContext),
            }
        );
        app.UseStatusCodePages(context =>
            ReadingMethods.AnswersOptions(context.HttpContext)
                ? Task.CompletedTask
                : ForStatus(context.HttpContext, context.HttpContext.Response.StatusCode).ExecuteAsync(context.HttpContext)
        );
    }

    private static ProblemResult Failed(HttpContext context)
    {
        switch (context.Features.Get<IExceptionHandlerFeature>()?.Error)
        {
            case BadHttpRequestException bad:
                return ForStatus(context, bad.StatusCode);
            case UnusableDatabaseException:
                context.Response.Headers.RetryAfter = "60";
                return ProblemResult.Of(
                    StatusCodes.Status503ServiceUnavailable,
                    ErrorCodes.StorageUnavailable,
                    "The database cannot be used until the operator of the service has put it right, and what this request sent is not safely stored. Tell the operator. Send it again then, with the same Idempotency-Key or id."
                );
            case { } failure when DatabaseOutage.Is(failure):
                context.Response.Headers.RetryAfter = "5";
                return ProblemResult.Of(
                    StatusCodes.Status503ServiceUnavailable,
                    ErrorCodes.StorageUnavailable,
                    "The database cannot be used right now. Nothing was stored by this request. Try again in a few seconds."
                );
            default:
                return OfOurs();
        }
    }

    /// <summary>What is told of a failure of ours.</summary>
    public static ProblemResult OfOurs() =>
        ProblemResult.Of(
            StatusCodes.Status500InternalServerError,
            ErrorCodes.InternalError,
            "The service failed to answer. Nothing was stored. Try again, and tell the service's operator the traceId if it happens again."
        );

    private static ProblemResult ForStatus(HttpContext context, int status) =>
        status switch
        {
            StatusCodes.Status404NotFound => ProblemResult.Of(
                status,
                ErrorCodes.NotFound,
                "There is nothing at this address. The contract is at /openapi/v1.json."
            ),
            StatusCodes.Status405MethodNotAllowed => ProblemResult.Of(
                status,
                ErrorCodes.MethodNotAllowed,
                "This address does not take that method. The Allow header lists those it takes."
            ),
            StatusCodes.Status406NotAcceptable => ProblemResult.Of(
                status,
                ErrorCodes.NotAcceptable,
                "None of the media types asked for can be given. Accept application/json."
            ),
            StatusCodes.Status408RequestTimeout => ProblemResult.Of(
                status,
                ErrorCodes.BodyTooSlow,
                "The body came too slowly, and the service stopped waiting for it. Send it again over a better connection, or in smaller requests."
            ),
            StatusCodes.Status413PayloadTooLarge => ProblemResult.Of(status, ErrorCodes.BodyTooLarge, JsonBody.TooLarge(context)),
            StatusCodes.Status415UnsupportedMediaType => ProblemResult.Of(
                status,
                ErrorCodes.MediaTypeUnsupported,
                "Send the body as application/json in UTF-8, with that Content-Type."
            ),
            _ => ProblemResult.Of(
                status,
                status >= 500 ? ErrorCodes.InternalError : ErrorCodes.RequestBroken,
                "The request could not be understood as HTTP that this service takes."
            ),
        };
}
