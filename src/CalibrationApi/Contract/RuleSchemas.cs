using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using FluentValidation;
using FluentValidation.Validators;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Writes the rules of the validators into the schemas of requests, so that the contract cannot say anything else than the code does.</summary>
internal sealed class RuleSchemas : ISchemaFilter
{
    /// <summary>A UUID of version 7 (RFC 9562) in lower case.</summary>
    public const string RecordIdPattern = "^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$";

    /// <summary>The same, or the workspace that every database begins with.</summary>
    public const string WorkspaceIdPattern = "^(local|[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12})$";

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties } concrete)
            return;
        if (RequestRules.Of(context.Type) is { } validator)
        {
            foreach (var (name, property) in properties.ToArray())
            {
                var rules = RequestRules.Of(validator, name);
                if (rules.OfType<INotNullValidator>().Any())
                    Require(concrete, name);
                else if (IsMeasured(context.Type, name) && property.Description?.Contains("efault", StringComparison.Ordinal) != true)
                    DefaultSchemas.Append(property, "No default.");
                foreach (var rule in rules)
                    properties[name] = Describe(properties[name], property as OpenApiSchema, rule);
            }
        }
        else if (context.Type.IsAssignableTo(typeof(IRecordAnswer)) && RequestRules.Of(context.Type.BaseType!) is { } sent)
        {
            // A stored record gives back whatever had to be sent, and says whether it is retired. Its lists stay open.
            foreach (var name in properties.Keys.Where(name => RequestRules.Of(sent, name).OfType<INotNullValidator>().Any()).Append("retired"))
                Require(concrete, name);
            foreach (var (name, property) in properties.Where(property => property.Value is OpenApiSchema))
                Bound((OpenApiSchema)property, RequestRules.Of(sent, name));
        }
    }

    // A number or a quantity, for which a reader has to know what is used in its place.
    private static bool IsMeasured(Type type, string member) =>
        type.GetProperty(RequestRules.Pascal(member))?.PropertyType is { } kind && (kind.IsAssignableTo(typeof(Quantity)) || kind == typeof(double?) || kind == typeof(int?));

    // What could be sent at most is what can be answered at most.
    private static void Bound(OpenApiSchema answered, IPropertyValidator[] rules)
    {
        foreach (var rule in rules)
        {
            if (rule is Rules.ITextRule text)
                answered.MaxLength = text.Most;
            else if (rule is Rules.IItemsRule items)
                answered.MaxItems = items.Most;
        }
    }

    private static void Require(OpenApiSchema schema, string member) => (schema.Required ??= new HashSet<string>(StringComparer.Ordinal)).Add(member);

    private static IOpenApiSchema Describe(IOpenApiSchema property, OpenApiSchema? schema, IPropertyValidator rule)
    {
        switch (rule)
        {
            case Rules.IQuantityRule quantity:
                // In OpenAPI 3.1 a description may stand beside a reference; the range goes there because it holds in any unit.
                var described = property.Description?.TrimEnd() ?? "";
                var text = $"{described}{(described.Length == 0 ? "" : " ")}Range: {quantity.Limits}.";
                if (property is OpenApiSchemaReference reference)
                    reference.Description = text;
                else if (schema is { Items: not null })
                    schema.Description = text;
                break;
            case Rules.IWordRule words when schema is { Items: OpenApiSchema item }:
                item.Enum = [.. words.Words.Select(word => JsonValue.Create(word))];
                break;
            case Rules.IWordRule words when schema is not null:
                // The rule of a list of words is about each of them.
                (schema.Items as OpenApiSchema ?? schema).Enum = [.. words.Words.Select(word => JsonValue.Create(word))];
                break;
            case Rules.ITextRule lengths when schema is not null:
                schema.MinLength = 1;
                schema.MaxLength = lengths.Most;
                // Not blank.
                schema.Pattern = @"\S";
                break;
            case Rules.INumberRule numbers when schema is not null:
                var least = numbers.Least.ToString(CultureInfo.InvariantCulture);
                (schema.Minimum, schema.ExclusiveMinimum) = numbers.ExcludesLeast ? (null, least) : (least, (string?)null);
                schema.Maximum = numbers.Most.ToString(CultureInfo.InvariantCulture);
                break;
            case Rules.IItemsRule items when schema is not null:
                schema.MinItems = items.Least == 0 ? null : items.Least;
                schema.MaxItems = items.Most;
                break;
            case Rules.IIdRule when schema is not null:
                schema.Pattern = RecordIdPattern;
                break;
            case Rules.IInstantRule when schema is not null:
                schema.Format = "date-time";
                break;
            case IRegularExpressionValidator pattern when schema is not null:
                schema.Pattern = pattern.Expression;
                break;
        }

        return property;
    }
}
