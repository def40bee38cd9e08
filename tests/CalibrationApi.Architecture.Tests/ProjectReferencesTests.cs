using System.Reflection;
using System.Xml.Linq;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Storage;
using CalibrationApi.Testing;

namespace CalibrationApi.Architecture.Tests;

/// <summary>Host to storage and to engine, which know nothing of one another.</summary>
public sealed class ProjectReferencesTests
{
    private static readonly Assembly Engine = typeof(CatchTestEvaluation).Assembly;
    private static readonly Assembly Storage = typeof(CalibrationDatabase).Assembly;

    [Fact]
    public void Engine_CompiledReferences_AreTheBaseClassLibraryAndMathNet()
    {
        var references = Engine.GetReferencedAssemblies();

        Assert.Contains(references, reference => reference.Name == "System.Runtime");
        Assert.All(references, reference =>
            Assert.True(reference.Name == "MathNet.Numerics" || IsBaseClassLibrary(reference), reference.Name)
        );
    }

    // A reference that no code uses leaves no trace in the compiled file, so the project file is read as well.
    [Fact]
    public void Engine_ProjectFile_NamesMathNetAndTheBanOfSymbolsOnly()
    {
        Assert.Equal(
            ["PackageReference MathNet.Numerics", "PackageReference Microsoft.CodeAnalysis.BannedApiAnalyzers"],
            ReferencesOf("CalibrationApi.Engine")
        );
    }

    [Fact]
    public void Storage_CompiledReferences_HaveNothingOfTheWeb()
    {
        var references = Storage.GetReferencedAssemblies();

        Assert.Contains(references, reference => reference.Name == "Dapper");
        Assert.DoesNotContain(references, reference => reference.Name!.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal));
        Assert.DoesNotContain(references, reference => reference.Name == typeof(Program).Assembly.GetName().Name);
    }

    [Fact]
    public void Storage_ProjectFile_NamesNoOtherProject()
    {
        var references = ReferencesOf("CalibrationApi.Storage");

        Assert.Contains("PackageReference Dapper", references);
        Assert.DoesNotContain(references, reference => reference.StartsWith("ProjectReference", StringComparison.Ordinal));
        Assert.DoesNotContain(references, reference => reference.StartsWith("FrameworkReference", StringComparison.Ordinal));
    }

    // Its users have the contract and the service's address, nothing else of ours.
    [Fact]
    public void Client_ProjectFile_NamesTheGeneratorsLibrariesAndNothingOfOurs()
    {
        var references = ReferencesIn("src", "Clients", "CSharp", "CalibrationApi.Client.csproj");

        Assert.NotEmpty(references);
        Assert.All(references, reference => Assert.StartsWith("PackageReference Microsoft.Kiota.", reference, StringComparison.Ordinal));
    }

    private static bool IsBaseClassLibrary(AssemblyName reference) =>
        reference.Name == "netstandard" || reference.Name!.StartsWith("System.", StringComparison.Ordinal);

    private static string[] ReferencesOf(string project) => ReferencesIn("src", project, project + ".csproj");

    private static string[] ReferencesIn(params string[] projectFile) =>
        [
            .. XDocument
                .Load(Repository.PathOf(projectFile))
                .Descendants()
                .Where(element => element.Name.LocalName is "PackageReference" or "ProjectReference" or "FrameworkReference" or "Reference")
                .Select(element => $"{element.Name.LocalName} {element.Attribute("Include")?.Value.Replace('\\', '/')}")
                .Order(StringComparer.Ordinal),
        ];
}
