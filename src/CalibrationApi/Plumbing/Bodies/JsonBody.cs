using System.Buffers;
using System.IO.Pipelines;
using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Settings;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Plumbing.Bodies;

/// <summary>A request body read strictly, or the problem that kept it from being read.</summary>
/// <remarks>
/// The framework's own binding reports a broken body by an exception whose text names C# types. Reading the whole body
/// first (it is small and capped) lets a fault be found again with its exact place and told in our own words.
/// </remarks>
public sealed class JsonBody<T> : IEndpointParameterMetadataProvider
    where T : class
{
    private static readonly bool IsStored = typeof(T).IsAssignableTo(typeof(IStoredRequest));

    private JsonBody(T? value, ProblemResult? problem)
    {
        Read = value;
        Problem = problem;
    }

    /// <summary>The body as it was sent, for requests that are stored as entered; empty for others.</summary>
    public string Entered { get; private init; } = "";

    /// <summary>SHA-256 of what the body says, for requests that are stored; empty for others.</summary>
    public string Fingerprint { get; private init; } = "";

    /// <summary>The members of an answer that came along although a request cannot set them, as they were sent.</summary>
    internal IReadOnlyDictionary<string, JsonElement> ReadOnly { get; private init; } = ReadOnlyMembersAttribute.None;

    private T? Read { get; }

    /// <summary>Why the body could not be read; null when it could.</summary>
    public ProblemResult? Problem { get; }

    /// <summary>The request; the filter of the route group has turned away bodies that have none.</summary>
    public T Value => Read ?? throw new InvalidOperationException("The body was not read; the request filter is missing on this route.");

    /// <summary>Reads the body of a request for a handler that takes it as a parameter.</summary>
    public static async ValueTask<JsonBody<T>?> BindAsync(HttpContext context, ParameterInfo parameter) => await ReadAsync(context);

    /// <summary>Reads the body of a request.</summary>
    internal static async ValueTask<JsonBody<T>> ReadAsync(HttpContext context)
    {
        if (!MediaTypes.IsUtf8(context.Request.ContentType, JsonAnswer.MediaType))
            return Failed(
                ProblemResult.Of(
                    StatusCodes.Status415UnsupportedMediaType,
                    ErrorCodes.MediaTypeUnsupported,
                    "Send the body as application/json in UTF-8, with that Content-Type."
                )
            );
        var (bytes, length) = await JsonBody.ReadAsync(context.Request);
        if (bytes is null)
            return Failed(ProblemResult.Of(StatusCodes.Status413PayloadTooLarge, ErrorCodes.BodyTooLarge, JsonBody.TooLarge(context)));
        try
        {
            var body = bytes.AsSpan(0, length);
            var readOnly = HttpMethods.IsPut(context.Request.Method) ? ReadOnlyMembersAttribute.TakeFrom(typeof(T), body) : null;
            return Parse(body, context, readOnly ?? ReadOnlyMembersAttribute.None);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new AcceptsMetadata(["application/json"], typeof(T)));

    private static JsonBody<T> Parse(ReadOnlySpan<byte> body, HttpContext context, IReadOnlyDictionary<string, JsonElement> readOnly)
    {
        var options = context.RequestServices.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions;
        var (value, problem) = JsonBody.Parse(ref body, (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T)));
        return new JsonBody<T>(value, problem)
        {
            Entered = IsStored && value is not null ? Encoding.UTF8.GetString(body) : "",
            ReadOnly = readOnly,
            Fingerprint = IsStored && value is not null ? BodyMeaning.Fingerprint(body) : "",
        };
    }

    private static JsonBody<T> Failed(ProblemResult problem) => new(null, problem);
}

/// <summary>Reading that does not depend on the type of the body.</summary>
internal static class JsonBody
{
    // Fewer values than that cannot cost much, whatever they are.
    private const int MostUncounted = 2000;

    /// <summary>What is told of a body that is too large.</summary>
    public static string TooLarge(HttpContext context) => $"The body is larger than {MostBytes(context) / 1024} KiB. Split the request.";

    /// <summary>Reads a request strictly, or says why it cannot be read.</summary>
    /// <param name="body">What was sent; without a byte order mark afterwards.</param>
    /// <param name="type">The contract of what was sent.</param>
    public static (T? Value, ProblemResult? Problem) Parse<T>(ref ReadOnlySpan<byte> body, JsonTypeInfo<T> type)
        where T : class
    {
        // Some scripting tools write a byte order mark; RFC 8259 lets a reader ignore it.
        if (body.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]))
            body = body[3..];
        if (!Utf8.IsValid(body))
            return (
                null,
                ProblemResult.Unreadable(
                    new ProblemError { Code = ErrorCodes.JsonBroken, Detail = "The body is not valid UTF-8. Save or send it as UTF-8." }
                )
            );
        // Lists are counted before anything is made of their items. Every item but one has a comma beside it.
        if (body.Count((byte)',') > MostUncounted && JsonFault.Find(body, type) is { } fault)
            return (null, Refused(fault));
        try
        {
            return JsonSerializer.Deserialize(body, type) is { } value
                ? (value, null)
                : (
                    null,
                    ProblemResult.Unreadable(
                        new ProblemError
                        {
                            Pointer = "#",
                            Code = ErrorCodes.TypeWrong,
                            Detail = "The body is null. Send a JSON object.",
                        }
                    )
                );
        }
        catch (JsonException)
        {
            return (null, Refused(JsonFault.Find(body, type) ?? JsonFault.Unclear));
        }
    }

    // A list that is too long can be read; it breaks a rule.
    private static ProblemResult Refused(ProblemError fault) =>
        fault.Code == ErrorCodes.TooMany ? ProblemResult.Invalid([fault]) : ProblemResult.Unreadable(fault);

    /// <summary>The whole body in a rented array, or no array when it is too large.</summary>
    public static async ValueTask<(byte[]? Bytes, int Length)> ReadAsync(HttpRequest request)
    {
        var most = MostBytes(request.HttpContext);
        if (request.ContentLength > most)
            return (null, 0);
        var reader = request.BodyReader;
        while (true)
        {
            var result = await PartAsync(reader, request.HttpContext.RequestAborted);
            var buffer = result.Buffer;
            if (buffer.Length > most)
            {
                reader.AdvanceTo(buffer.End);
                return (null, 0);
            }

            if (result.IsCompleted)
            {
                var length = (int)buffer.Length;
                var bytes = ArrayPool<byte>.Shared.Rent(Math.Max(1, length));
                buffer.CopyTo(bytes);
                reader.AdvanceTo(buffer.End);
                return (bytes, length);
            }

            reader.AdvanceTo(buffer.Start, buffer.End);
        }
    }

    private static int MostBytes(HttpContext context) => context.RequestServices.GetRequiredService<CalibrationSettings>().Limits.BodyBytes;

    // Either the time for the request is over while its body is still on the way, or its sender is gone and hears nothing.
    private static async ValueTask<ReadResult> PartAsync(PipeReader reader, CancellationToken stop)
    {
        try
        {
            return await reader.ReadAsync(stop);
        }
        catch (OperationCanceledException)
        {
            throw new BadHttpRequestException("The body did not arrive in time.", StatusCodes.Status408RequestTimeout);
        }
    }
}
