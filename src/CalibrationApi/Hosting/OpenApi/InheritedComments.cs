using System.Reflection;
using CalibrationApi.Plumbing.Contract;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Describes a member that inherits its comment, which the library leaves without one.</summary>
internal sealed class InheritedComments : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (context.MemberInfo is not PropertyInfo { DeclaringType: { } type } property || !string.IsNullOrEmpty(schema.Description))
            return;
        // An interface that the type itself adds says more of it than one that came with its base.
        var own = type.GetInterfaces().Except(type.BaseType?.GetInterfaces() ?? []);
        schema.Description = own.Concat(type.GetInterfaces())
            .Append(type.BaseType)
            .Select(parent => parent?.GetProperty(property.Name))
            .OfType<PropertyInfo>()
            .Select(DocComments.SummaryOf)
            .FirstOrDefault(summary => summary is not null);
    }
}
