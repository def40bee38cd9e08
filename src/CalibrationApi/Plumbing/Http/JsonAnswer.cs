using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http.Metadata;

namespace CalibrationApi.Plumbing.Http;

/// <summary>Answers 200 with a JSON body of known length.</summary>
/// <remarks>
/// The framework's own result cannot use the generated writing code, because its options carry an encoder; a writer that
/// carries the encoder itself can. The body stands complete before the first byte goes out, so a failure on the way is
/// still a clean 500.
/// </remarks>
public sealed class JsonAnswer<T> : IResult, IEndpointMetadataProvider, IStatusCodeHttpResult
    where T : class
{
    private static readonly JsonTypeInfo<T> Type = JsonSettings.Generated<T>();
    private readonly T value;

    internal JsonAnswer(T value) => this.value = value;

    /// <inheritdoc/>
    public int? StatusCode => StatusCodes.Status200OK;

    /// <summary>What is answered.</summary>
    internal T Value => value;

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var body = WrittenJson.Take();
        try
        {
            WriteTo(body.Json);
            body.Json.Flush();
            var response = httpContext.Response;
            response.ContentType = JsonAnswer.MediaType + "; charset=utf-8";
            response.ContentLength = body.Bytes.Length;
            await response.Body.WriteAsync(body.Bytes, httpContext.RequestAborted);
        }
        finally
        {
            body.GiveBack();
        }
    }

    /// <summary>Writes the answer by itself.</summary>
    internal void WriteTo(Utf8JsonWriter writer) => JsonSerializer.Serialize(writer, value, Type);

    static void IEndpointMetadataProvider.PopulateMetadata(MethodInfo method, EndpointBuilder builder) =>
        builder.Metadata.Add(new ProducesResponseTypeMetadata(StatusCodes.Status200OK, typeof(T), [JsonAnswer.MediaType]));
}

/// <summary>What does not depend on the type of the answer.</summary>
internal static class JsonAnswer
{
    public const string MediaType = "application/json";

    /// <summary>How answers are written, see <see cref="JsonSettings"/>; what the generated code writes needs no second look.</summary>
    public static JsonWriterOptions Writing { get; } = new() { Encoder = JsonSettings.Encoder, SkipValidation = true };

    public static JsonAnswer<T> Of<T>(T value)
        where T : class => new(value);
}
