using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using CalibrationApi.Http;
using FluentValidation;
using FluentValidation.Validators;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Writes the rules of the validators into the schemas of requests, so that the contract cannot say anything else than the code does.</summary>
internal sealed class RuleSchemas : ISchemaFilter
{
    private static readonly Dictionary<Type, IValidator> Validators = Assembly.GetExecutingAssembly().GetTypes()
        .Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(IValidator)))
        .ToDictionary(
            type => type.GetInterfaces().Single(one => one.IsGenericType && one.GetGenericTypeDefinition() == typeof(IValidator<>)).GenericTypeArguments[0],
            type => (IValidator)Activator.CreateInstance(type, type.GetConstructor([]) is null ? [TimeProvider.System] : [])!);

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { } properties } concrete || !Validators.TryGetValue(context.Type, out var validator))
            return;
        var descriptor = validator.CreateDescriptor();
        foreach (var (name, property) in properties.ToArray())
        {
            var rules = descriptor.GetRulesForMember(char.ToUpperInvariant(name[0]) + name[1..]).SelectMany(rule => rule.Components.Select(component => component.Validator)).ToArray();
            if (rules.OfType<INotNullValidator>().Any())
                (concrete.Required ??= new HashSet<string>(StringComparer.Ordinal)).Add(name);
            var target = property as OpenApiSchema;
            foreach (var rule in rules)
                properties[name] = Describe(properties[name], target, rule);
        }
    }

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
            case Rules.IWordRule words when schema is not null:
                schema.Enum = [.. words.Words.Select(word => JsonValue.Create(word))];
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
            case IRegularExpressionValidator pattern when schema is not null:
                schema.Pattern = pattern.Expression;
                break;
        }

        return property;
    }
}
