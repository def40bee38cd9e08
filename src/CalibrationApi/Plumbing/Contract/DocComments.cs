using System.Collections.Concurrent;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using System.Xml.XPath;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalibrationApi.Plumbing.Contract;

/// <summary>Doc comments at places where the library does not look.</summary>
internal static partial class DocComments
{
    // One file of comments beside each assembly.
    private static readonly ConcurrentDictionary<Assembly, XPathNavigator> Comments = new();

    public static string? SummaryOf(Type type) => Of(type, "summary");

    /// <summary>An element of the comments of a type.</summary>
    public static string? Of(Type type, string element) =>
        Find(type, $"{Member(XmlCommentsNodeNameHelper.GetMemberNameForType(type))}/{element}");

    public static string? SummaryOf(MemberInfo property) =>
        Find(property.DeclaringType!, $"{Member(XmlCommentsNodeNameHelper.GetMemberNameForFieldOrProperty(property))}/summary");

    public static string? OfParameter(MethodInfo method, ParameterInfo parameter) =>
        Find(method.DeclaringType!, $"{Member(XmlCommentsNodeNameHelper.GetMemberNameForMethod(method))}/param[@name='{parameter.Name}']");

    private static string Member(string name) => $"/doc/members/member[@name='{name}']";

    private static string? Find(Type type, string path) =>
        // Navigators keep a position, so each search has its own.
        Comments.GetOrAdd(type.Assembly, Read).Clone().SelectSingleNode(path)
            is { } comment
            ? XmlCommentsTextHelper.Humanize(comment.InnerXml)
            : null;

    private static XPathNavigator Read(Assembly assembly) => FileOf(assembly).CreateNavigator();

    /// <summary>The comments of an assembly. A line ends in the source where the window does, which says nothing to a reader.</summary>
    public static XPathDocument FileOf(Assembly assembly)
    {
        var file = XDocument.Load(Path.Combine(AppContext.BaseDirectory, $"{assembly.GetName().Name}.xml"));
        foreach (var text in file.DescendantNodes().OfType<XText>())
            text.Value = EndOfLine().Replace(text.Value, " ");
        using var reader = file.CreateReader();
        return new XPathDocument(reader);
    }

    [GeneratedRegex(@"[ \t]*\r?\n[ \t]*")]
    private static partial Regex EndOfLine();
}
