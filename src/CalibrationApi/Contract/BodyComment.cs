using System.Reflection;
using System.Xml;
using System.Xml.XPath;
using CalibrationApi.Http;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Finds the doc comment of a handler's body parameter, which the library misses because the body binds itself.</summary>
internal static class BodyComment
{
    private static readonly Lazy<XPathNavigator> Comments = new(() =>
    {
        using var reader = XmlReader.Create(Path.Combine(AppContext.BaseDirectory, $"{Assembly.GetExecutingAssembly().GetName().Name}.xml"));
        return new XPathDocument(reader).CreateNavigator();
    });

    public static string? Of(MethodInfo handler)
    {
        var body = Array.Find(handler.GetParameters(), parameter => parameter.ParameterType is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(JsonBody<>));
        if (body is null)
            return null;
        var member = XmlCommentsNodeNameHelper.GetMemberNameForMethod(handler);
        // Navigators keep a position, so each search has its own.
        var comment = Comments.Value.Clone().SelectSingleNode($"/doc/members/member[@name='{member}']/param[@name='{body.Name}']");
        return comment is null ? null : XmlCommentsTextHelper.Humanize(comment.InnerXml);
    }
}
