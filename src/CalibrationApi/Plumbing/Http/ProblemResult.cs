using System.Globalization;
using System.Reflection;
using System.Text.Json;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Plumbing.Http;

/// <summary>Answers with a problem. The only way an error leaves the service.</summary>
public sealed class ProblemResult : IResult, IEndpointMetadataProvider, IStatusCodeHttpResult
{
    public const string MediaType = "application/problem+json";

    /// <summary>Most errors that one answer tells; whoever makes more of them makes the same one again and again.</summary>
    public const int MostErrors = 100;

    // About four times what a hundred ordinary errors take; whoever gets more has enough to do.
    private const int MostText = 16 * 1024;

    private readonly int status;
    private readonly string detail;
    private readonly IReadOnlyList<ProblemError> errors;

    private ProblemResult(int status, string detail, params IReadOnlyList<ProblemError> errors)
    {
        this.status = status;
        this.detail = detail;
        this.errors = errors;
    }

    /// <inheritdoc/>
    public int? StatusCode => status;

    /// <summary>What is wrong, thing by thing.</summary>
    internal IReadOnlyList<ProblemError> Errors => errors;

    private ProblemKind Kind { get; init; } = ProblemKind.Plain;

    /// <summary>The body cannot be read as the contract: 400 with the first error found.</summary>
    public static ProblemResult Unreadable(ProblemError error) => new(StatusCodes.Status400BadRequest, error.Detail, error);

    /// <summary>
    /// Readable, but rules are broken: 422 with every error, up to <see cref="MostErrors"/> and as many as a person reads.
    /// </summary>
    public static ProblemResult Invalid(IReadOnlyList<ProblemError> errors)
    {
        if (errors.Count == 1)
            return new(StatusCodes.Status422UnprocessableEntity, errors[0].Detail, errors);
        var told = Told(errors);
        var count =
            errors.Count >= MostErrors
                ? string.Create(CultureInfo.InvariantCulture, $"at least {MostErrors}")
                : errors.Count.ToString(CultureInfo.InvariantCulture);
        var rest =
            told.Length < errors.Count ? string.Create(CultureInfo.InvariantCulture, $" The first {told.Length} are told here.") : "";
        return new(
            StatusCodes.Status422UnprocessableEntity,
            $"The request was read, but {count} things in it have to be put right.{rest}",
            told
        );
    }

    /// <summary>The engine refuses: 422 with its reasons.</summary>
    internal static ProblemResult Refused(IReadOnlyList<Refusal> refusals, DisplayUnits units) => Invalid(Told(refusals, units));

    /// <summary>What the engine refused, to stand beside other errors.</summary>
    internal static List<ProblemError> Told(IReadOnlyList<Refusal> refusals, DisplayUnits units) =>
        [
            .. refusals.Select(refusal => new ProblemError
            {
                Pointer = "#/" + refusal.Member,
                Code = refusal.Code,
                Detail = units.Write(refusal.Detail),
            }),
        ];

    /// <summary>Any other status, with its one error.</summary>
    public static ProblemResult Of(int status, ErrorCode code, string detail, string? header = null) =>
        new(
            status,
            detail,
            new ProblemError
            {
                Header = header,
                Code = code,
                Detail = detail,
            }
        );

    /// <summary>Somebody asked more than a policy of RateLimit-Policy allows: 429.</summary>
    internal static ProblemResult Exceeded(string policy, string detail) =>
        new(StatusCodes.Status429TooManyRequests, detail, new ProblemError { Code = ErrorCodes.RateExceeded, Detail = detail })
        {
            Kind = ProblemKind.QuotaExceeded(policy),
        };

    /// <summary>The service has more to do than it can: 503.</summary>
    internal static ProblemResult Busy(string detail) =>
        new(StatusCodes.Status503ServiceUnavailable, detail, new ProblemError { Code = ErrorCodes.ServiceBusy, Detail = detail })
        {
            Kind = ProblemKind.ReducedCapacity,
        };

    private static ProblemError[] Told(IReadOnlyList<ProblemError> errors)
    {
        var left = MostText;
        return [.. errors.Take(MostErrors).TakeWhile(error => (left -= error.Detail.Length + (error.Pointer?.Length ?? 0)) >= 0)];
    }

    /// <summary>What is sent.</summary>
    /// <remarks>A key that stands in the wrong place is not repeated: answers are kept and passed on more freely than keys.</remarks>
    internal Problem ToProblem(string traceId) =>
        Problem.For(traceId, status, Kind, KeyText.Hidden(detail)!, errors.Any(HoldsKey) ? [.. errors.Select(WithoutKey)] : errors);

    private static bool HoldsKey(ProblemError error) =>
        KeyText.IsIn(error.Detail) || KeyText.IsIn(error.Pointer) || KeyText.IsIn(error.Parameter) || KeyText.IsIn(error.Column);

    private static ProblemError WithoutKey(ProblemError error) =>
        new()
        {
            Pointer = KeyText.Hidden(error.Pointer),
            Parameter = KeyText.Hidden(error.Parameter),
            Header = error.Header,
            Row = error.Row,
            Column = KeyText.Hidden(error.Column),
            Code = error.Code,
            Detail = KeyText.Hidden(error.Detail)!,
        };

    /// <summary>The same problem with its errors told by other places.</summary>
    internal ProblemResult With(Func<ProblemError, ProblemError> place) => new(status, detail, [.. errors.Select(place)]) { Kind = Kind };

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.StatusCode = status;
        response.ContentType = MediaType;
        var options = httpContext.RequestServices.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions;
        var body = JsonSerializer.SerializeToUtf8Bytes(ToProblem(Problem.TraceIdOf(httpContext)), options.GetTypeInfo(typeof(Problem)));
        response.ContentLength = body.Length;
        return response.Body.WriteAsync(body).AsTask();
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        int[] whenReadingABody = Array.Exists(method.GetParameters(), parameter =>
            parameter.ParameterType.Name.StartsWith("JsonBody", StringComparison.Ordinal)
        )
            ? [StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType]
            : [];
        foreach (
            var declared in (int[])
                [
                    StatusCodes.Status400BadRequest,
                    .. whenReadingABody,
                    StatusCodes.Status422UnprocessableEntity,
                    StatusCodes.Status500InternalServerError,
                ]
        )
            builder.Metadata.Add(new ProducesResponseTypeMetadata(declared, typeof(Problem), [MediaType]));
    }
}
