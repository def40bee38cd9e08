using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Limits;
using CalibrationApi.Plumbing.Operations;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Writes the headers that operations send into the contract.</summary>
internal sealed class AnswerHeaders : IOperationFilter
{
    // A name means the same everywhere, so its shape stands here once.
    private static readonly Dictionary<string, Shape> Shapes = new()
    {
        ["Accept-Post"] = new(Text("^[a-z]+/[a-z0-9.+-]+(, [a-z]+/[a-z0-9.+-]+)*$", 200), "application/x-ndjson, text/csv"),
        ["Retry-After"] = new(
            new OpenApiSchema
            {
                Type = JsonSchemaType.Integer,
                Format = "int32",
                Minimum = "0",
                Maximum = "86400",
            },
            1
        ),
        ["ETag"] = new(Text("""^(W/)?"[!#-~]*"$""", 100), "\"r3\""),
        ["Location"] = new(Text("^/v1/", 200), "/v1/machines/019a0000-0000-7000-8000-000000000000"),
        ["Cache-Control"] = new(
            Text("^(private|public|no-cache|no-store|max-age=[0-9]+)(, (private|public|no-cache|max-age=[0-9]+))*$", 100),
            "private, no-cache"
        ),
        ["WWW-Authenticate"] = new(
            Text("^Bearer realm=\"calibration\"(, (error|error_description|scope)=\"[^\"\\\\]*\")*$", 1000),
            AccessRefusal.NoKey.Challenge
        ),
        ["Idempotent-Replayed"] = new(Text("^true$", 4), "true"),
        ["Link"] = new(
            Text("""^<[^>]+>; rel="next"$""", 4000),
            "<http://localhost:5000/v1/history?limit=2&cursor=eyJ2IjoxfQ>; rel=\"next\""
        ),
        [RateLimitFields.Policies] = new(
            Text("""^"[a-z]+";q=[0-9]+[^,]*(, "[a-z]+";q=[0-9]+[^,]*)*$""", 500),
            "\"address\";q=6000;w=60, \"key\";q=3000;w=60"
        ),
        [RateLimitFields.Standings] = new(
            Text("""^"[a-z]+";r=[0-9]+[^,]*(, "[a-z]+";r=[0-9]+[^,]*)*$""", 500),
            "\"address\";r=5990;t=42, \"key\";r=2990;t=42"
        ),
        ["Accept-Encoding"] = new(Text("^identity$", 8), "identity"),
        ["Content-Disposition"] = new(Text("""^attachment; filename="?[A-Za-z0-9._-]+"?""", 200), "attachment; filename=history.csv"),
    };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var header in context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<AnswerHeader>())
        {
            if (
                operation.Responses?.GetValueOrDefault(header.Status.ToString(CultureInfo.InvariantCulture)) is not OpenApiResponse response
            )
                continue;
            (response.Headers ??= new Dictionary<string, IOpenApiHeader>())[header.Name] = Written(
                header.Name,
                header.Description,
                header.IsAlwaysSent
            );
        }
    }

    /// <summary>A header as the contract writes it.</summary>
    public static OpenApiHeader Written(string name, string description, bool isAlwaysSent)
    {
        var shape = Shapes.TryGetValue(name, out var known) ? known : new(new OpenApiSchema { Type = JsonSchemaType.String }, null);
        return new()
        {
            Description = description,
            Required = isAlwaysSent,
            Schema = shape.Schema.CreateShallowCopy(),
            Example = shape.Example?.DeepClone(),
        };
    }

    private static OpenApiSchema Text(string pattern, int most) =>
        new()
        {
            Type = JsonSchemaType.String,
            Pattern = pattern,
            MaxLength = most,
        };

    private sealed record Shape(OpenApiSchema Schema, JsonNode? Example);
}
