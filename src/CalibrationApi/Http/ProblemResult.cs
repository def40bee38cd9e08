using System.Reflection;
using System.Text.Json;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Http;

/// <summary>Answers with a problem. The only way an error leaves the service.</summary>
public sealed class ProblemResult : IResult, IEndpointMetadataProvider, IStatusCodeHttpResult
{
    public const string MediaType = "application/problem+json";

    /// <summary>Most errors that one answer tells; whoever makes more of them makes the same one again and again.</summary>
    public const int MostErrors = 100;

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
    public static ProblemResult Unreadable(ProblemError error) =>
        new(StatusCodes.Status400BadRequest, error.Detail, error);

    /// <summary>Readable, but rules are broken: 422 with every error, up to <see cref="MostErrors"/>.</summary>
    public static ProblemResult Invalid(IReadOnlyList<ProblemError> errors) =>
        new(StatusCodes.Status422UnprocessableEntity,
            errors.Count == 1 ? errors[0].Detail : $"The request was read, but {errors.Count} things in it have to be put right.",
            errors.Count > MostErrors ? [.. errors.Take(MostErrors)] : errors);

    /// <summary>The engine refuses: 422 with its reasons.</summary>
    internal static ProblemResult Refused(IReadOnlyList<Refusal> refusals, DisplayUnits units) =>
        Invalid([.. refusals.Select(refusal => new ProblemError
        {
            Pointer = "#/" + refusal.Member,
            Code = refusal.Code,
            Detail = units.Write(refusal.Detail),
        })]);

    /// <summary>Any other status, with its one error.</summary>
    public static ProblemResult Of(int status, string code, string detail, string? header = null) =>
        new(status, detail, new ProblemError { Header = header, Code = code, Detail = detail });

    /// <summary>Somebody asked more than a policy of RateLimit-Policy allows: 429.</summary>
    internal static ProblemResult Exceeded(string policy, string detail) =>
        new(StatusCodes.Status429TooManyRequests, detail, new ProblemError { Code = ErrorCode.RateExceeded, Detail = detail }) { Kind = ProblemKind.QuotaExceeded(policy) };

    /// <summary>The service has more to do than it can: 503.</summary>
    internal static ProblemResult Busy(string detail) =>
        new(StatusCodes.Status503ServiceUnavailable, detail, new ProblemError { Code = ErrorCode.ServiceBusy, Detail = detail }) { Kind = ProblemKind.ReducedCapacity };

    /// <summary>What is sent.</summary>
    internal Problem ToProblem(string traceId) => Problem.For(traceId, status, Kind, detail, errors);

    /// <summary>The same problem with its errors told by other places.</summary>
    internal ProblemResult With(Func<ProblemError, ProblemError> place) => new(status, detail, [.. errors.Select(place)]) { Kind = Kind };

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.StatusCode = status;
        response.ContentType = MediaType;
        var options = httpContext.RequestServices.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions;
        var body = JsonSerializer.SerializeToUtf8Bytes(
            ToProblem(Problem.TraceIdOf(httpContext)), options.GetTypeInfo(typeof(Problem)));
        response.ContentLength = body.Length;
        return response.Body.WriteAsync(body).AsTask();
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(MethodInfo method, EndpointBuilder builder)
    {
        int[] whenReadingABody = Array.Exists(method.GetParameters(), parameter => parameter.ParameterType.Name.StartsWith("JsonBody", StringComparison.Ordinal))
            ? [StatusCodes.Status413PayloadTooLarge, StatusCodes.Status415UnsupportedMediaType]
            : [];
        foreach (var declared in (int[])[StatusCodes.Status400BadRequest, .. whenReadingABody, StatusCodes.Status422UnprocessableEntity, StatusCodes.Status500InternalServerError])
            builder.Metadata.Add(new ProducesResponseTypeMetadata(declared, typeof(Problem), [MediaType]));
    }
}
