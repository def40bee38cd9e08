using System.Text.Json.Nodes;
using CalibrationApi.Changes;
using CalibrationApi.Evidence.History;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Storage.History;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>
/// Says what the parameters of addresses can hold. They are bound as text, so that a slip gets a sentence of ours; a name means the same
/// everywhere.
/// </summary>
internal sealed class QueryParameters : IOperationFilter
{
    private static readonly Dictionary<string, Action<OpenApiSchema>> Shapes = new()
    {
        [RequestFilter.UnitsParameter] = schema => Words(schema, UnitsWord.All, UnitsWord.AsAsked),
        ["includeRetired"] = schema => (schema.Type, schema.Default) = (JsonSchemaType.Boolean, false),
        ["limit"] = schema => (schema.Pattern, schema.Default) = ("^([1-9][0-9]{0,2}|1000|all)$", "100"),
        ["separator"] = schema => Words(schema, PageQuery.Separators, PageQuery.Separators[0]),
        ["bom"] = schema => Words(schema, PageQuery.YesOrNo, PageQuery.YesOrNo[1]),
        ["cursor"] = schema => (schema.MinLength, schema.MaxLength) = (1, 500),
        ["after"] = schema => (schema.MinLength, schema.MaxLength) = (1, 500),
        ["wait"] = schema => (schema.Pattern, schema.Default) = (ChangesQuery.WaitPattern, "0s"),
        ["kind"] = schema => Words(schema, ChangesQuery.Kinds, null),
        ["order"] = schema => Words(schema, QueryWord.Orders, QueryWord.Orders[0]),
        ["from"] = schema => schema.Format = "date-time",
        ["until"] = schema => schema.Format = "date-time",
        ["at"] = schema => schema.Format = "date-time",
    };

    private static readonly Dictionary<string, string> Sentences = new()
    {
        ["id"] = "Id of the record.",
        [RequestFilter.UnitsParameter] = "Units of the answer; as-asked keeps what was entered.",
    };

    private static readonly Dictionary<string, string> Examples = new()
    {
        ["id"] = SomeId,
        ["machine"] = SomeId,
        ["product"] = SomeId,
        ["lot"] = SomeId,
        ["scale"] = SomeId,
        ["plan"] = SomeId,
        ["key"] = SomeId,
        ["action"] = "recordCatchTest",
        ["meter"] = "rear",
        ["element"] = "standard roller",
        ["setting"] = "gear 2",
        ["from"] = "2026-04-01T00:00:00Z",
        ["until"] = "2026-05-01T00:00:00Z",
        ["at"] = "2026-04-18T06:40:00Z",
        ["limit"] = "100",
        ["cursor"] = "eyJ2IjoxfQ",
        ["after"] = "eyJ2IjoxfQ",
        ["wait"] = "20s",
    };

    private const string SomeId = "019a0000-0000-7000-8000-000000000000";

    private static readonly Dictionary<string, string?> KindsOfLists = new()
    {
        ["listHistory"] = null,
        ["listCatchTests"] = EvidenceKind.CatchTest,
        ["listAdoptions"] = EvidenceKind.Adoption,
        ["listScaleChecks"] = EvidenceKind.ScaleCheck,
    };

    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        if (KindsOfLists.TryGetValue(operation.OperationId!, out var kind))
            FitTo(kind, operation);
        foreach (var parameter in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            // A comment on the handler goes before the common sentence.
            parameter.Description ??= Sentences.GetValueOrDefault(parameter.Name!);
            // What says its words or is yes or no needs no example.
            if (parameter.Example is null && Examples.TryGetValue(parameter.Name!, out var example))
                parameter.Example = example;
            if (parameter.Schema is not OpenApiSchema schema)
                continue;
            if (parameter.In == ParameterLocation.Query && Shapes.TryGetValue(parameter.Name!, out var shape))
                shape(schema);
            else if (parameter is { In: ParameterLocation.Path, Name: "id" })
                schema.Pattern = context.ApiDescription.RelativePath!.StartsWith("v1/workspaces/", StringComparison.Ordinal)
                    ? RecordId.WorkspacePattern
                    : RecordId.Pattern;
            else if (parameter.In == ParameterLocation.Query)
                schema.MaxLength = RequestFilter.LongestParameter;
        }
    }

    // A list takes only filters that can match.
    private static void FitTo(string? kind, OpenApiOperation operation)
    {
        var unfitting = HistoryQuery.Unfitting(kind);
        operation.Parameters = [.. operation.Parameters!.Where(parameter => !unfitting.Contains(parameter.Name))];
        if (operation.Parameters.FirstOrDefault(parameter => parameter.Name == "verdict")?.Schema is OpenApiSchema schema)
            Words(schema, HistoryQuery.Verdicts(kind), null);
    }

    private static void Words(OpenApiSchema schema, IReadOnlyList<string> words, string? usual)
    {
        schema.Enum = [.. words.Select(word => JsonValue.Create(word))];
        schema.Default = usual;
    }
}
