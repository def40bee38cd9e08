using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Architecture.Tests;

/// <summary>The engine is the part that others have to trust, so each of its public members says what it is.</summary>
public sealed class EngineDocumentationTests
{
    private static readonly Assembly Engine = typeof(CatchTestEvaluation).Assembly;

    private static readonly Dictionary<string, XElement> Documented = XDocument
        .Load(Path.ChangeExtension(Engine.Location, ".xml"))
        .Descendants("member")
        .ToDictionary(member => member.Attribute("name")!.Value);

    [Fact]
    public void PublicTypes_Each_HaveASummary()
    {
        var types = Engine.GetExportedTypes();

        Assert.True(types.Length > 50);
        Assert.Empty(types.Where(type => !HasWords("T:" + NameOf(type))).Select(NameOf));
    }

    [Fact]
    public void PublicMembers_Each_AreDescribed()
    {
        var members = Engine
            .GetExportedTypes()
            .SelectMany(type =>
                type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
                    .Where(IsWritten)
                    .Select(member => (Type: type, Member: member))
            )
            .ToArray();

        Assert.True(members.Length > 200);
        Assert.Empty(members.Where(one => !IsDescribed(one.Type, one.Member)).Select(one => $"{NameOf(one.Type)}.{one.Member.Name}"));
    }

    // What the compiler makes by itself (accessors, equality of records, fields of enumerations) has no author.
    private static bool IsWritten(MemberInfo member) =>
        member switch
        {
            Type => false,
            MethodInfo method => !method.IsSpecialName
                && !method.IsDefined(typeof(CompilerGeneratedAttribute))
                && method.GetBaseDefinition() == method,
            ConstructorInfo constructor => constructor.GetParameters().Length > 0 && !IsRecord(constructor.DeclaringType!),
            FieldInfo field => !field.IsSpecialName,
            PropertyInfo property => property.Name != "EqualityContract",
            _ => true,
        };

    // A positional member of a record is described as a parameter of its type; an interface's promise is inherited.
    private static bool IsDescribed(Type type, MemberInfo member)
    {
        var letter = member.MemberType switch
        {
            MemberTypes.Field => 'F',
            MemberTypes.Property => 'P',
            MemberTypes.Event => 'E',
            _ => 'M',
        };
        var name = member is ConstructorInfo ? "#ctor" : member.Name;
        var id = $"{letter}:{NameOf(type)}.{name}";
        return Documented.Any(entry =>
                (
                    entry.Key == id
                    || entry.Key.StartsWith(id + "(", StringComparison.Ordinal)
                    || entry.Key.StartsWith(id + "`", StringComparison.Ordinal)
                ) && HasWords(entry.Key)
            )
            || IsParameterOf(type, member.Name)
            || type.GetInterfaces().Any(promise => promise.GetMember(member.Name).Length > 0);
    }

    private static bool IsParameterOf(Type type, string name) =>
        Documented.TryGetValue("T:" + NameOf(type), out var entry)
        && entry.Elements("param").Any(parameter => parameter.Attribute("name")?.Value == name && parameter.Value.Trim().Length > 0);

    private static bool HasWords(string id) =>
        Documented.TryGetValue(id, out var entry)
        && (entry.Element("inheritdoc") is not null || entry.Element("summary")?.Value.Trim().Length > 0);

    private static bool IsRecord(Type type) =>
        type.GetMethod("<Clone>$") is not null
        || type.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null;

    private static string NameOf(Type type) => type.FullName!.Replace('+', '.');
}
