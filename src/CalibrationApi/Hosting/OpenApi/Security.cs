using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Says of each operation which scope it needs.</summary>
internal sealed class Security : IOperationFilter, IDocumentFilter
{
    private const string Scheme = "key";

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        // An empty list says: nothing is needed.
        operation.Security = context.ApiDescription.ActionDescriptor.EndpointMetadata.OfType<NeededScope>().FirstOrDefault() is { } needed
            ? [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(Scheme, context.Document)] = [needed.Scope] }]
            : [];
    }

    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var components = swaggerDoc.Components ??= new OpenApiComponents();
        (components.SecuritySchemes ??= new Dictionary<string, IOpenApiSecurityScheme>())[Scheme] = new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http,
            Scheme = "bearer",
            BearerFormat = KeyText.Pattern,
            Description =
                "A key of a workspace, in the header Authorization: Bearer, one space, and the key. Each operation names the scope that the key must have: "
                + "calculate for calculations, read for records, write for storing, admin for keys and audit of the workspace, operator for workspaces; none implies another. "
                + "While a service has no keys at all, requests from its own machine need none, except for admin and operator.",
        };
    }
}
