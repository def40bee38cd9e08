using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Describing;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>
/// Writes the rules that stand on members of requests into their schemas, so that the contract cannot say anything else than the code does.
/// </summary>
internal sealed class RuleSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties } concrete)
            return;
        if (context.Type.IsAssignableTo(typeof(IRecordAnswer)) && IsRequest(context.Type.BaseType!))
        {
            // A stored record gives back whatever had to be sent, and says whether it is retired. Its lists stay open.
            foreach (var name in properties.Keys.Where(name => Rules(context.Type, name).OfType<NeededAttribute>().Any()).Append("retired"))
                Require(concrete, name);
            foreach (var (name, property) in properties.Where(property => property.Value is OpenApiSchema))
                Bound((OpenApiSchema)property, Rules(context.Type, name));
        }
        else if (IsRequest(context.Type))
        {
            foreach (var (name, property) in properties.ToArray())
            {
                var rules = Rules(context.Type, name);
                if (rules.OfType<NeededAttribute>().Any())
                    Require(concrete, name);
                else if (IsMeasured(context.Type, name) && property.Description?.Contains("efault", StringComparison.Ordinal) != true)
                    DefaultSchemas.Append(property, "No default.");
                foreach (var rule in rules)
                    Describe(property, Member(context.Type, name)!.PropertyType, rule);
            }
        }
    }

    private static bool IsRequest(Type type) => type.GetProperties().Any(member => member.IsDefined(typeof(MemberRuleAttribute)));

    private static MemberRuleAttribute[] Rules(Type type, string member) =>
        [.. Member(type, member)?.GetCustomAttributes<MemberRuleAttribute>() ?? []];

    private static PropertyInfo? Member(Type type, string member) => type.GetProperty(RequestPlan.Pascal(member));

    // A number or a quantity, for which a reader has to know what is used in its place.
    private static bool IsMeasured(Type type, string member) =>
        Member(type, member)?.PropertyType is { } kind
        && (kind.IsAssignableTo(typeof(Quantity)) || kind == typeof(double?) || kind == typeof(int?));

    // What could be sent at most is what can be answered at most.
    private static void Bound(OpenApiSchema answered, MemberRuleAttribute[] rules)
    {
        foreach (var rule in rules)
        {
            if (rule is TextAttribute text)
                answered.MaxLength = text.Most;
            else if (rule is ItemsAttribute items)
                answered.MaxItems = items.Most;
        }
    }

    private static void Require(OpenApiSchema schema, string member) =>
        (schema.Required ??= new HashSet<string>(StringComparer.Ordinal)).Add(member);

    private static void Describe(IOpenApiSchema property, Type type, MemberRuleAttribute rule)
    {
        if (rule is MeasuredAttribute measured)
            Range(property, measured.Told(Quantity.DimensionOf(RequestPlan.ItemType(type) ?? type)));
        if (property is not OpenApiSchema schema)
            return;
        switch (rule)
        {
            case WordAttribute words:
                // The rule of a list of words is about each of them.
                (schema.Items as OpenApiSchema ?? schema).Enum = [.. words.All.Select(word => JsonValue.Create(word))];
                break;
            case TextRuleAttribute text:
                if (text is TextAttribute { Most: var most })
                    (schema.MinLength, schema.MaxLength) = (1, most);
                schema.Pattern = text.Pattern ?? schema.Pattern;
                schema.Format = text.Format ?? schema.Format;
                break;
            case NumberAttribute numbers:
                var least = numbers.Least.ToString(CultureInfo.InvariantCulture);
                (schema.Minimum, schema.ExclusiveMinimum) = numbers.ExcludesLeast ? (null, least) : (least, (string?)null);
                schema.Maximum = numbers.Most.ToString(CultureInfo.InvariantCulture);
                break;
            case ItemsAttribute items:
                schema.MinItems = items.Least == 0 ? null : items.Least;
                schema.MaxItems = items.Most;
                break;
        }
    }

    // In OpenAPI 3.1 a description may stand beside a reference; the range goes there because it holds in any unit.
    private static void Range(IOpenApiSchema property, QuantityLimits limits)
    {
        var described = property.Description?.TrimEnd() ?? "";
        var text = $"{described}{(described.Length == 0 ? "" : " ")}Range: {limits}.";
        if (property is OpenApiSchemaReference reference)
            reference.Description = text;
        else if (property is OpenApiSchema { Items: not null } list)
            list.Description = text;
    }
}
