using System.Reflection;
using System.Xml;
using System.Xml.XPath;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Contract;

/// <summary>Doc comments at places where the library does not look.</summary>
internal static class DocComments
{
    private static readonly Lazy<XPathNavigator> Comments = new(() =>
    {
        using var reader = XmlReader.Create(Path.Combine(AppContext.BaseDirectory, $"{Assembly.GetExecutingAssembly().GetName().Name}.xml"));
        return new XPathDocument(reader).CreateNavigator();
    });

    public static string? SummaryOf(Type type) => Find($"{Member(XmlCommentsNodeNameHelper.GetMemberNameForType(type))}/summary");

    public static string? SummaryOf(PropertyInfo property) => Find($"{Member(XmlCommentsNodeNameHelper.GetMemberNameForFieldOrProperty(property))}/summary");

    public static string? OfParameter(MethodInfo method, ParameterInfo parameter) =>
        Find($"{Member(XmlCommentsNodeNameHelper.GetMemberNameForMethod(method))}/param[@name='{parameter.Name}']");

    private static string Member(string name) => $"/doc/members/member[@name='{name}']";

    private static string? Find(string path) =>
        // Navigators keep a position, so each search has its own.
        Comments.Value.Clone().SelectSingleNode(path) is { } comment ? XmlCommentsTextHelper.Humanize(comment.InnerXml) : null;
}
