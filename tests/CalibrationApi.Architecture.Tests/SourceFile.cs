using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>A file of source code below <c>src/</c>.</summary>
internal sealed record SourceFile(string Path)
{
    public string Text { get; } = File.ReadAllText(Path);

    public string Name => System.IO.Path.GetFileName(Path);

    public int Lines => Text.AsSpan().TrimEnd().Count('\n') + 1;

    /// <summary>Path from the top folder, with slashes.</summary>
    public string Shown => System.IO.Path.GetRelativePath(Repository.Root, Path).Replace('\\', '/');

    /// <summary>What people wrote in a folder: not the output of builds, not what is generated.</summary>
    public static IReadOnlyList<SourceFile> In(params string[] folder)
    {
        SourceFile[] files =
        [
            .. Directory
                .EnumerateFiles(Repository.PathOf(folder), "*.cs", SearchOption.AllDirectories)
                .Where(path =>
                    !path.Split(System.IO.Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "node_modules" or "Generated")
                )
                .Order(StringComparer.Ordinal)
                .Select(path => new SourceFile(path)),
        ];
        Assert.NotEmpty(files);
        return files;
    }
}
