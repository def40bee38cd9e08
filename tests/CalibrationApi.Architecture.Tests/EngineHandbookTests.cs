using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>
/// The engine is its own handbook: every public member that computes says what, by which formula, in which range, from which source and
/// how exactly, and names the tests that show it. What all members of a type share stands on the type.
/// </summary>
public sealed partial class EngineHandbookTests
{
    private static readonly string[] Labels = ["Formula:", "Range:", "Source:", "Accuracy:"];

    private static readonly string[] WithoutPublication = ["common practice", "judgement", "our own derivation", "from memory"];

    private static readonly Assembly Engine = typeof(IQuantity).Assembly;

    private static readonly Dictionary<string, XElement> Documented = XDocument
        .Load(Path.ChangeExtension(Engine.Location, ".xml"))
        .Descendants("member")
        .ToDictionary(member => member.Attribute("name")!.Value);

    private static readonly (MethodInfo Method, XElement? OfMember, XElement? OfType)[] Computing =
    [
        .. Engine
            .GetExportedTypes()
            .SelectMany(ComputingMembers.Of)
            .Select(method => (method, DocumentedAs(IdOf(method)), DocumentedAs("T:" + NameOf(method.DeclaringType!)))),
    ];

    private static readonly HashSet<string> Keys =
    [
        .. KeyOfTable()
            .Matches(File.ReadAllText(Repository.PathOf("src", "CalibrationApi.Engine", "SOURCES.md")))
            .Select(row => row.Groups[1].Value),
    ];

    private static readonly Dictionary<string, string> Tests = SourceFile
        .In("tests")
        .Where(file => file.Name.EndsWith("Tests.cs", StringComparison.Ordinal))
        .GroupBy(file => Path.GetFileNameWithoutExtension(file.Name))
        .ToDictionary(files => files.Key, files => string.Concat(files.Select(file => file.Text)));

    [Fact]
    public void ComputingMembers_AreFound()
    {
        string[] found = [.. Computing.Select(one => Called(one.Method))];

        Assert.True(found.Length > 170);
        Assert.Contains("StudentT.Quantile", found);
        Assert.Contains("Unit.Canonical", found);
        Assert.Contains("OimlR76.LargestLoad", found);
        Assert.Contains("CatchTestEvaluation.Evaluate", found);
        Assert.DoesNotContain("Mass.get_Kilograms", found);
        Assert.DoesNotContain("UnitTable.Find", found);
    }

    [Fact]
    public void ComputingMembers_Each_SayWhatByWhatInWhatRangeFromWhereAndHowExactly() =>
        AssertEach(one =>
        {
            string[] missing = [.. Labels.Where(label => Paragraph(one.OfMember, one.OfType, label).Length < label.Length + 3)];
            if (one.OfMember?.Element("summary") is null && one.OfMember?.Element("inheritdoc") is null && !IsParameter(one))
                missing = ["a summary", .. missing];
            return missing.Length > 0 ? string.Join(", ", missing) : null;
        });

    [Fact]
    public void ComputingMembers_EachArgument_IsDescribed() =>
        AssertEach(one =>
        {
            if (one.OfMember?.Element("inheritdoc") is not null || one.Method.IsSpecialName)
                return null;
            string?[] missing =
            [
                .. one
                    .Method.GetParameters()
                    .Select(parameter => parameter.Name)
                    .Where(name => !Names(one.OfMember, "param", name) && !Names(one.OfMember?.Element("summary"), "paramref", name)),
            ];
            return missing.Length > 0 ? string.Join(", ", missing) : null;
        });

    [Fact]
    public void Source_OfEach_IsAKeyOfTheListOrSaysThatThereIsNone() =>
        AssertEach(one =>
        {
            var source = Paragraph(one.OfMember, one.OfType, "Source:");
            string[] keys =
            [
                .. KeysCited()
                    .Matches(source)
                    .SelectMany(match => match.Groups[1].Captures.Concat(match.Groups[2].Captures))
                    .Select(key => key.Value),
            ];
            if (keys.FirstOrDefault(key => !Keys.Contains(key)) is { } unknown)
                return $"{unknown} is no key of SOURCES.md";
            var isPlain = WithoutPublication.Any(word => source.Contains(word, StringComparison.Ordinal));
            return keys.Length > 0 || isPlain ? null : source;
        });

    [Fact]
    public void Accuracy_OfEach_NamesTestsThatLookAtTheMember() =>
        AssertEach(one =>
        {
            string[] named = [.. TestClass().Matches(Paragraph(one.OfMember, one.OfType, "Accuracy:")).Select(match => match.Value)];
            if (named.FirstOrDefault(test => !Tests.ContainsKey(test)) is { } unknown)
                return $"there is no {unknown}";
            return named.Any(test => LooksAt(test, one.Method)) ? null : $"none of [{string.Join(", ", named)}] looks at it";
        });

    // Of code that is not public too.
    [Fact]
    public void Comments_TestsThatTheyName_Exist()
    {
        string[] named =
        [
            .. SourceFile
                .In("src", "CalibrationApi.Engine")
                .SelectMany(file => file.Text.Split('\n').Where(line => line.TrimStart().StartsWith("//", StringComparison.Ordinal)))
                .SelectMany(line => TestClass().Matches(line))
                .Select(match => match.Value)
                .Distinct(),
        ];

        Assert.True(named.Length > 50);
        Assert.All(named, test => Assert.Contains(test, Tests.Keys));
    }

    private static XElement? DocumentedAs(string id) => Documented.GetValueOrDefault(id);

    private static bool LooksAt(string test, MethodInfo method)
    {
        var type = NameOf(method.DeclaringType!).Split('.')[^1].Split('`')[0];
        var member = method.Name.Replace("get_", "", StringComparison.Ordinal);
        return test == type + "Tests" || Regex.IsMatch(Tests[test], method.IsStatic ? $@"\b{type}\b" : $@"\b{type}\b|\.{member}\b");
    }

    // A label is that of the member, or of its type; the text goes on to the next label.
    private static string Paragraph(XElement? member, XElement? type, string label) => Of(member, label) ?? Of(type, label) ?? "";

    private static string? Of(XElement? documented, string label)
    {
        var text = Spaces().Replace(documented?.Element("remarks")?.Value ?? "", " ");
        var from = text.IndexOf(label, StringComparison.Ordinal);
        if (from < 0)
            return null;
        var next = Labels.Select(other => text.IndexOf(other, from + label.Length, StringComparison.Ordinal)).Where(at => at > 0);
        return text[from..next.DefaultIfEmpty(text.Length).Min()];
    }

    private static bool IsParameter((MethodInfo Method, XElement? OfMember, XElement? OfType) one) =>
        Names(one.OfType, "param", one.Method.Name.Replace("get_", "", StringComparison.Ordinal));

    private static bool Names(XElement? documented, string element, string? name) =>
        documented?.Elements(element).Any(each => each.Attribute("name")?.Value == name) is true;

    private static void AssertEach(Func<(MethodInfo Method, XElement? OfMember, XElement? OfType), string?> complaint)
    {
        Assert.NotEmpty(Computing);
        string[] complaints =
        [
            .. Computing
                .Select(one => (one.Method, Complaint: complaint(one)))
                .Where(one => one.Complaint is not null)
                .Select(one => $"{Called(one.Method)}: {one.Complaint}"),
        ];
        Assert.True(complaints.Length == 0, string.Join(Environment.NewLine, complaints));
    }

    private static string Called(MethodInfo method) => $"{NameOf(method.DeclaringType!).Split('.')[^1]}.{method.Name}";

    // The identifier of a member in a documentation file.
    private static string IdOf(MethodInfo method)
    {
        if (method.Name.StartsWith("get_", StringComparison.Ordinal))
            return $"P:{NameOf(method.DeclaringType!)}.{method.Name[4..]}";
        var parameters = string.Join(",", method.GetParameters().Select(parameter => WrittenOut(parameter.ParameterType)));
        var name = $"M:{NameOf(method.DeclaringType!)}.{method.Name}";
        return parameters.Length == 0 ? name : $"{name}({parameters})";
    }

    private static string WrittenOut(Type type) =>
        type.IsArray ? WrittenOut(type.GetElementType()!) + "[]"
        : !type.IsGenericType ? NameOf(type)
        : $"{NameOf(type.GetGenericTypeDefinition()).Split('`')[0]}{{{string.Join(",", type.GetGenericArguments().Select(WrittenOut))}}}";

    private static string NameOf(Type type) => type.FullName!.Replace('+', '.');

    [GeneratedRegex(@"^\| ([A-Z0-9-]+) \|", RegexOptions.Multiline)]
    private static partial Regex KeyOfTable();

    [GeneratedRegex(@"keys? ([A-Z0-9]+[A-Z0-9-]+)(?:(?:,| and|, and)? ([A-Z0-9]+-?[A-Z0-9-]+))*")]
    private static partial Regex KeysCited();

    [GeneratedRegex(@"\b\w+Tests\b")]
    private static partial Regex TestClass();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
