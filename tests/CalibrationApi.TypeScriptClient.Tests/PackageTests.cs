namespace CalibrationApi.TypeScriptClient.Tests;

/// <summary>What is in the package, and what its types refuse.</summary>
[Collection(OnePackage.Name)]
public sealed class PackageTests(InstalledPackage package)
{
    [Fact]
    public void Tarball_Packed_HoldsCodeTypesAndReadmeOnly()
    {
        Assert.Contains("dist/index.js", package.Packed);
        Assert.Contains("dist/index.d.ts", package.Packed);
        Assert.Contains("dist/schema.d.ts", package.Packed);
        Assert.Empty(
            package.Packed.Where(file => !file.StartsWith("dist/", StringComparison.Ordinal)).Except(["README.md", "package.json"])
        );
    }

    [Fact]
    public async Task Uses_ThatFitTheContract_Compile()
    {
        var compiled = await package.CompileAsync("right-uses.ts", "--noEmit");

        Assert.True(compiled.ExitCode == 0, compiled.Everything);
    }

    [Fact]
    public async Task Uses_ThatDoNotFitTheContract_AreErrorsWhereTheyStand()
    {
        // Each line that has to fail says so at its end, with the code of the compiler's error.
        var expected = File.ReadLines(Path.Combine(package.Folder, "wrong-uses.ts"))
            .Index()
            .Where(line => line.Item.Contains("// wrong: TS", StringComparison.Ordinal))
            .Select(line => $"{line.Index + 1} {line.Item.Split("// wrong: ")[1].Split(' ')[0]}")
            .ToArray();

        var compiled = await package.CompileAsync("wrong-uses.ts", "--noEmit");

        var found = compiled
            .Output.Split('\n')
            .Where(line => line.StartsWith("wrong-uses.ts(", StringComparison.Ordinal))
            .Select(line => $"{line.Split('(')[1].Split(',')[0]} {line.Split("error ")[1].Split(':')[0]}");
        Assert.True(expected.Length >= 10, "The wrong uses are missing.");
        Assert.Equal(expected, found);
    }
}
