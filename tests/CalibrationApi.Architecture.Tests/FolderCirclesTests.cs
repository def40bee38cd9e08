using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>Folders of a project form a tree: what one needs of another, that one does not need of it, by no detour either.</summary>
public sealed partial class FolderCirclesTests
{
    public static TheoryData<string> Projects =>
        [
            .. Directory
                .EnumerateFiles(Repository.Root, "*.csproj", SearchOption.AllDirectories)
                .Select(path => Path.GetRelativePath(Repository.Root, Path.GetDirectoryName(path)!).Replace('\\', '/'))
                .Where(folder => !folder.Split('/').Any(part => part is "bin" or "obj" or "node_modules"))
                .Order(StringComparer.Ordinal),
        ];

    [Fact]
    public void Projects_All_AreLookedAt() => Assert.Contains("src/CalibrationApi", Projects);

    [Theory]
    [MemberData(nameof(Projects))]
    public void Folders_OfAProject_FormNoCircle(string project)
    {
        var needs = NeedsOf(project);

        foreach (var siblings in needs.GroupBy(need => need.Parent))
        {
            var edges = siblings.ToLookup(need => need.From, need => need.To);
            var circle = siblings.FirstOrDefault(need => Reaches(edges, need.To, need.From));
            Assert.True(
                circle is null,
                $"In {project}/{siblings.Key}: {circle?.From} needs {circle?.To} ({circle?.Because}), which needs {circle?.From} in turn."
            );
        }
    }

    [Fact]
    public void Needs_OfTheHost_AreFound()
    {
        var needs = NeedsOf("src/CalibrationApi");

        Assert.Contains(needs, need => need is { Parent: "", From: "Evidence", To: "Records" });
        Assert.Contains(needs, need => need is { Parent: "Plumbing", From: "Batch", To: "Http" });
    }

    // The namespace of a file is its folder; one that says otherwise would hide what it needs.
    [Theory]
    [MemberData(nameof(Projects))]
    public void Namespaces_OfAProject_AreItsFolders(string project)
    {
        // Who uses a client writes one using.
        if (project.StartsWith("src/Clients/", StringComparison.Ordinal))
            return;
        foreach (var file in FilesOf(project).Where(file => file.Namespace.Length > 0))
        {
            var expected = string.Join('.', [RootOf(project), .. file.Folder.Split('/', StringSplitOptions.RemoveEmptyEntries)]);
            Assert.True(file.Namespace == expected, $"{file.Source.Shown} is in {file.Namespace}, not in {expected}.");
        }
    }

    private static List<Need> NeedsOf(string project)
    {
        var root = RootOf(project);
        var files = FilesOf(project);
        var folders = files.Select(file => file.Folder).ToHashSet();
        var needs = new List<Need>();
        foreach (var file in files)
        {
            foreach (var used in file.Usings.Where(used => used.StartsWith(root + ".", StringComparison.Ordinal)))
                Add(file, used[(root.Length + 1)..].Replace('.', '/'), used);
            // What stands in a folder above needs no using, and is found by the names of its types.
            foreach (
                var above in files.Where(other =>
                    other.Folder.Length > 0 && file.Folder.StartsWith(other.Folder + "/", StringComparison.Ordinal)
                )
            )
            {
                if (above.Types.FirstOrDefault(file.Words.Contains) is { } type)
                    Add(file, above.Folder, type);
            }
        }

        return needs;

        void Add(CodeFile file, string to, string because)
        {
            if (!folders.Contains(to) || to == file.Folder)
                return;
            var (from, target) = (file.Folder.Split('/'), to.Split('/'));
            var shared = from.Zip(target).TakeWhile(pair => pair.First == pair.Second).Count();
            needs.Add(new(string.Join('/', from[..shared]), Below(from, shared), Below(target, shared), $"{file.Source.Name}: {because}"));
        }
    }

    // Files that stand in the shared folder itself are looked at as one folder beside those below it.
    private static string Below(string[] path, int depth) =>
        depth < path.Length && path[depth].Length > 0 ? path[depth] : "(its own files)";

    // The files at the top of a project put everything together; nothing below needs them.
    private static CodeFile[] FilesOf(string project) =>
        [
            .. SourceFile
                .In(project.Split('/'))
                .Select(file => new CodeFile(file, project))
                .Where(file => file.Folder.Length > 0 || file.Namespace.Length > 0),
        ];

    private static string RootOf(string project) =>
        FilesOfTop(project).Select(file => NamespaceOfFile().Match(file.Text)).FirstOrDefault(match => match.Success)?.Groups["name"].Value
        ?? Path.GetFileName(project);

    private static IEnumerable<SourceFile> FilesOfTop(string project) =>
        SourceFile.In(project.Split('/')).Where(file => file.Shown == $"{project}/{file.Name}");

    private static bool Reaches(ILookup<string, string> edges, string from, string to)
    {
        var (met, open) = (new HashSet<string>(), new Stack<string>([from]));
        while (open.TryPop(out var at))
        {
            if (at == to)
                return true;
            if (met.Add(at))
            {
                foreach (var next in edges[at])
                    open.Push(next);
            }
        }

        return false;
    }

    [GeneratedRegex(@"^namespace (?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceOfFile();

    [GeneratedRegex(@"^using (static )?(?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex Using();

    [GeneratedRegex(@"^(public|internal) [\w ]*(class|struct|record|interface|enum) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex Declaration();

    [GeneratedRegex(@"\b[A-Z]\w*")]
    private static partial Regex Word();

    private sealed record Need(string Parent, string From, string To, string Because);

    private sealed record CodeFile(SourceFile Source, string Project)
    {
        public string Namespace { get; } = NamespaceOfFile().Match(Source.Text).Groups["name"].Value;

        public string Folder { get; } = Path.GetDirectoryName(Source.Shown)!.Replace('\\', '/')[Project.Length..].TrimStart('/');

        public HashSet<string> Usings { get; } = [.. Using().Matches(Source.Text).Select(match => match.Groups["name"].Value)];

        public string[] Types { get; } = [.. Declaration().Matches(Source.Text).Select(match => match.Groups["name"].Value)];

        public HashSet<string> Words { get; } = [.. Word().Matches(Source.Text).Select(match => match.Value)];
    }
}
