using System.Reflection;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Hosting.OpenApi;

/// <summary>Finds the description of a body, which the library misses because the body binds itself.</summary>
internal static class BodyComment
{
    /// <summary>The comment of the handler's parameter; where the handler has none, that of the type.</summary>
    public static string? Of(MethodInfo handler)
    {
        var body = Array.Find(handler.GetParameters(), parameter =>
            parameter.ParameterType is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(JsonBody<>)
        );
        return body is null
            ? null
            : DocComments.OfParameter(handler, body) ?? DocComments.SummaryOf(body.ParameterType.GenericTypeArguments[0]);
    }
}
