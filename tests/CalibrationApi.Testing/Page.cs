using System.Text;
using System.Text.RegularExpressions;

namespace CalibrationApi.Testing;

/// <summary>A Markdown page of the repository, read for what a test can hold it to.</summary>
public sealed partial class Page
{
    private static readonly string[] Unread = ["bin", "obj", "node_modules", "TestResults"];

    private static readonly Lazy<IReadOnlyList<Page>> AllOnce = new(() =>
        [.. Below(new DirectoryInfo(Repository.Root)).Select(file => new Page(BelowTheTop(file.FullName)))]
    );

    private Page(string name)
    {
        Name = name;
        Text = File.ReadAllText(Repository.PathOf(name)).ReplaceLineEndings("\n");
        (Blocks, Prose) = Read(Text);
    }

    /// <summary>Every page, whatever its folder.</summary>
    public static IReadOnlyList<Page> All => AllOnce.Value;

    /// <summary>Its path below the top folder, with slashes.</summary>
    public string Name { get; }

    /// <summary>What it says.</summary>
    public string Text { get; }

    /// <summary>Its fenced blocks, in order.</summary>
    public IReadOnlyList<PageBlock> Blocks { get; }

    /// <summary>Where links of other pages may lead in it, as the usual renderers name headings.</summary>
    public IReadOnlyCollection<string> Anchors =>
        Heading()
            .Matches(Prose)
            .Select(heading => NotInAnAnchor().Replace(heading.Groups[1].Value.ToLowerInvariant(), "").Replace(' ', '-'))
            .GroupBy(anchor => anchor)
            .SelectMany(same => same.Select((anchor, number) => number == 0 ? anchor : $"{anchor}-{number}"))
            .ToHashSet(StringComparer.Ordinal);

    /// <summary>What it links to in the repository: a path below the top folder, and a place in that page or nothing.</summary>
    public IReadOnlyList<(string Path, string Anchor)> Links =>
        [
            .. Link()
                .Matches(Prose)
                .Select(link =>
                {
                    var parts = link.Groups[1].Value.Split('#', 2);
                    var target = parts[0].Length == 0 ? Name : BelowTheTop(Repository.PathOf(Path.GetDirectoryName(Name)!, parts[0]));
                    return (target, parts.ElementAtOrDefault(1) ?? "");
                }),
        ];

    private string Prose { get; }

    /// <summary>A page by its path.</summary>
    public static Page At(string name) => All.Single(page => page.Name == name);

    public override string ToString() => Name;

    private static IEnumerable<FileInfo> Below(DirectoryInfo folder) =>
        folder
            .GetFiles("*.md")
            .Concat(folder.GetDirectories().Where(inner => !inner.Name.StartsWith('.') && !Unread.Contains(inner.Name)).SelectMany(Below));

    private static string BelowTheTop(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');

    // The prose keeps everything outside the blocks, without comments.
    private static (IReadOnlyList<PageBlock> Blocks, string Prose) Read(string text)
    {
        var blocks = new List<PageBlock>();
        var prose = new StringBuilder();
        var (mark, region) = ("", 0);
        foreach (var part in Part().Matches(text).Select(match => match.Groups))
        {
            if (part["mark"].Success)
                (mark, region) = (part["mark"].Value, region + 1);
            else if (part["end"].Success)
                mark = "";
            else if (part["kind"].Success)
                blocks.Add(new(mark, region, part["kind"].Value, part["body"].Value, part["outputKind"].Value, part["output"].Value));
            else
                prose.Append(part[0].Value);
        }

        return (blocks, prose.ToString());
    }

    // A mark, its end, a fenced block with the output below it if there is one, or a line of anything else.
    [GeneratedRegex(
        """
            ^(?:
                <!--[ ]/(?<end>[a-z ]+)[ ]-->$
              | <!--[ ](?<mark>[a-z ]+)(?::[^>]*)?[ ]-->$
              | ```(?<kind>\w*)\n(?<body>(?:(?!```).*\n)*)```(?:\n\n```(?<outputKind>json|text)\n(?<output>(?:(?!```).*\n)*)```)?$
              | .*(?:\n|\z)
            )
            """,
        RegexOptions.Multiline | RegexOptions.IgnorePatternWhitespace
    )]
    private static partial Regex Part();

    [GeneratedRegex("^#+ (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w -]")]
    private static partial Regex NotInAnAnchor();

    // Those with a scheme leave the repository.
    [GeneratedRegex(@"\]\((?![a-z]+:)([^)\s]+)\)")]
    private static partial Regex Link();
}

/// <summary>A fenced block of a page with the block of its output.</summary>
/// <param name="Mark">The mark it stands behind, which says what a test does with it; empty when it stands behind none.</param>
/// <param name="Region">Counts the marks of the page; blocks behind the same one have the same number.</param>
/// <param name="Kind">Its language.</param>
/// <param name="Body">What stands in it.</param>
/// <param name="OutputKind">The language of its output; empty when none is shown.</param>
/// <param name="Output">Its output.</param>
public sealed record PageBlock(string Mark, int Region, string Kind, string Body, string OutputKind, string Output);
