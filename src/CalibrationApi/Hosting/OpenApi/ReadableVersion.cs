using System.Globalization;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Writes 3.1.1 as the version of the specification.</summary>
/// <remarks>
/// The library writes the newest one of 3.1. They differ in wording only, and a tool is to read every one (OpenAPI 3.1.1, "Versions";
/// from memory), but some generators know versions by name.
/// </remarks>
internal sealed class ReadableVersion : ISwaggerDocumentSerializer
{
    private const string Version = "3.1.1";

    public void SerializeDocument(OpenApiDocument document, IOpenApiWriter writer, OpenApiSpecVersion specVersion)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        document.SerializeAs(specVersion, new OpenApiJsonWriter(text));
        writer.WriteRaw(WithVersion(text.ToString(), "\"openapi\": \"", "\""));
    }

    /// <summary>The same contract as YAML (RFC 9512).</summary>
    public static string Yaml(OpenApiDocument document)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        document.SerializeAs(OpenApiSpecVersion.OpenApi3_1, new OpenApiYamlWriter(text));
        return WithVersion(text.ToString(), "openapi: '", "'");
    }

    // The version is the first member of the document.
    private static string WithVersion(string contract, string label, string end)
    {
        var at = contract.IndexOf(label, StringComparison.Ordinal) + label.Length;
        return string.Concat(contract.AsSpan(0, at), Version, contract.AsSpan(contract.IndexOf(end, at, StringComparison.Ordinal)));
    }
}
