using System.Reflection;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Tells the words that a text of an answer can hold.</summary>
internal sealed class KnownWordSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema text || context.MemberInfo?.GetCustomAttribute<KnownWordsAttribute>() is not { } known)
            return;
        var words = known.Words ?? Read(known);
        var described = text.Description?.TrimEnd() ?? "";
        // A comment that explains every word already lists them.
        if (!Array.TrueForAll(words, word => described.Contains($"`{word}`", StringComparison.Ordinal)))
            text.Description = $"{described} Known today: {string.Join(", ", words.Select(word => $"`{word}`"))}.";
        // Of a list, each item is a word.
        (text.Items as OpenApiSchema ?? text).Examples = [.. words.Select(word => JsonValue.Create(word))];
    }

    private static string[] Read(KnownWordsAttribute known) =>
        known.Source!.IsEnum ? [.. Words.All(known.Source)]
        : known.List is { } list ? [.. WordAttribute.Read(known.Source, list)]
        : [.. CodesOf.Class(known.Source).Select(one => one.Code.Word)];
}
