using System.Text.RegularExpressions;

namespace CalibrationApi.Architecture.Tests;

/// <summary>A capability of the host leans on another one only where that is meant.</summary>
public sealed partial class CapabilityDependenciesTests
{
    // What every capability may use. They are no capabilities themselves, with the exceptions below.
    private static readonly string[] Foundation = ["Access", "Batch", "Contract", "Http", "Limits", "Nutrients", "Observability", "Quantities", "Records", "Settings", "Storing"];

    // The demonstration knows all capabilities by its nature.
    private static readonly string[] KnowEverything = ["Demo"];

    private static readonly Dictionary<string, string> Meant = new()
    {
        ["Adoptions -> Calculations"] = "A value in force has the unit and the form that a test gives it.",
        ["CatchTests -> Calculations"] = "A kept test is evaluated as a stated one.",
        ["Machines -> Calculations"] = "A machine keeps what a question states of it: limits, disturbed points, its controller.",
        ["Plans -> Calculations"] = "A kept plan is evaluated as a stated one, and the parts of its set-up are told as the calculations tell them.",
        ["Products -> Calculations"] = "A product keeps limits of the fan's speed as a meter does of its own.",
        ["ScaleChecks -> Calculations"] = "A check states masses as a test states its scale.",
        ["Contract -> Codes"] = "The page of codes stands beside the reference page.",
        ["Contract -> History"] = "The contract tells the words that the history is filtered and ordered by.",
        ["Plans -> CatchTests"] = "A kept plan names conditions and starting values as a test does.",
        ["Plans -> Containers"] = "A kept plan names a container.",
        ["Plans -> Lots"] = "A kept plan names lots.",
        ["Plans -> Products"] = "A kept plan names products.",
        ["Plans -> Machines"] = "A kept plan names a machine.",
        ["Plans -> Scales"] = "A kept plan names a scale.",
        ["ScaleChecks -> CatchTests"] = "A check finds the error that a test corrects.",
        ["ScaleChecks -> Scales"] = "A check is of a scale.",
        ["CatchTests -> Containers"] = "A kept test names its container.",
        ["CatchTests -> Lots"] = "A kept test names a lot.",
        ["CatchTests -> Machines"] = "A kept test names a machine.",
        ["CatchTests -> Plans"] = "A kept test names its plan.",
        ["CatchTests -> Products"] = "A kept test names a product.",
        ["CatchTests -> Scales"] = "A kept test names a scale.",
        ["Adoptions -> CatchTests"] = "A value is adopted from a test.",
        ["Adoptions -> Lots"] = "A value is adopted for a lot.",
        ["Adoptions -> Machines"] = "A value is adopted for a meter of a machine.",
        ["Adoptions -> Products"] = "A value is adopted for a product.",
        ["History -> Adoptions"] = "The history lists adoptions.",
        ["History -> CatchTests"] = "The history lists tests.",
        ["History -> Machines"] = "The history is of a machine.",
        ["History -> ScaleChecks"] = "The history lists checks of scales.",
        ["Keys -> Demo"] = "The command can work on the database of the demonstration.",
        ["Storing -> CatchTests"] = "Evidence says what it supersedes.",
    };

    [Fact]
    public void Capabilities_LeanOnOneAnother_OnlyWhereItIsMeant()
    {
        var found = Dependencies();

        Assert.NotEmpty(found);
        Assert.Empty(found.Where(one => !Meant.ContainsKey(one.Key)).Select(one => $"{one.Key} in {string.Join(", ", one.Value)}"));
    }

    [Fact]
    public void Capabilities_DependencyThatIsMeant_IsStillThere()
    {
        Assert.Empty(Meant.Keys.Except(Dependencies().Keys));
    }

    private static Dictionary<string, SortedSet<string>> Dependencies()
    {
        var files = SourceFile.In("src", "CalibrationApi").Where(file => FolderOf(file).Length > 0).ToArray();
        var capabilities = files.Select(FolderOf).Except(Foundation).ToHashSet();
        var types = typeof(Program).Assembly.GetTypes()
            .Where(type => type.Namespace?.StartsWith("CalibrationApi.", StringComparison.Ordinal) == true)
            .ToLookup(type => type.Namespace!["CalibrationApi.".Length..].Split('.')[0], type => type.Name.Split('`')[0]);
        Assert.True(capabilities.Count >= 4);
        var found = new Dictionary<string, SortedSet<string>>();
        foreach (var file in files.Where(file => !KnowEverything.Any(path => file.Shown.StartsWith("src/CalibrationApi/" + path, StringComparison.Ordinal))))
        {
            foreach (var other in Used(file, types).Where(other => other != FolderOf(file) && capabilities.Contains(other)))
            {
                var dependency = $"{FolderOf(file)} -> {other}";
                if (!found.TryGetValue(dependency, out var places))
                    found[dependency] = places = new(StringComparer.Ordinal);
                places.Add(file.Name);
            }
        }

        return found;
    }

    // A directive at the top, or a type named through its namespace. A property that happens to have the name of a
    // namespace is no dependency, so the second part has to be one of its types.
    private static IEnumerable<string> Used(SourceFile file, ILookup<string, string> types) =>
        Directive().Matches(file.Text).Select(match => match.Groups[1].Value)
            .Concat(Qualified().Matches(Comment().Replace(file.Text, "")).Where(match => types[match.Groups[1].Value].Contains(match.Groups[2].Value)).Select(match => match.Groups[1].Value))
            .Distinct();

    private static string FolderOf(SourceFile file)
    {
        var parts = file.Shown.Split('/');
        return parts.Length > 3 ? parts[2] : "";
    }

    [GeneratedRegex(@"^using (?:static )?CalibrationApi\.(\w+)", RegexOptions.Multiline)]
    private static partial Regex Directive();

    [GeneratedRegex(@"(?<![\w.])(?:CalibrationApi\.)?(\w+)\.(\w+)")]
    private static partial Regex Qualified();

    [GeneratedRegex("//.*")]
    private static partial Regex Comment();
}
