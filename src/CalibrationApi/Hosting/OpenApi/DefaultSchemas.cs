using System.Reflection;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Contract;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Says of a member what is used when it is left out, and where that comes from.</summary>
internal sealed class DefaultSchemas : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema.Properties is not { } members)
            return;
        foreach (var property in context.Type.GetProperties().Where(property => members.ContainsKey(Member(property.Name))))
        {
            foreach (var taken in context.Type.GetCustomAttributes<TakenFromAttribute>().Where(taken => taken.Member == property.Name))
                Append(members[Member(property.Name)], taken.Sentence);
            if (property.GetCustomAttribute<DefaultAttribute>() is { Used: var used })
                Append(members[Member(property.Name)], DisplayUnits.Metric.Write($"Default {used.Value}: {used.Origin}."));
        }
    }

    /// <summary>Adds a sentence to a description; in OpenAPI 3.1 one may stand beside a reference.</summary>
    public static void Append(IOpenApiSchema member, string sentence) =>
        member.Description = string.IsNullOrWhiteSpace(member.Description) ? sentence : $"{member.Description.TrimEnd()} {sentence}";

    private static string Member(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
