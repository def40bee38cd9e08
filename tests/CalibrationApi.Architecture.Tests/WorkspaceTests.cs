namespace CalibrationApi.Architecture.Tests;

/// <summary>The workspace of a request comes from its caller and from nowhere else, and what is written is noted.</summary>
public sealed class WorkspaceTests
{
    [Theory]
    // Whoever has no key, the database before there were keys, the demonstration.
    [InlineData("Workspace.Local", "Plumbing/Access/KeyScheme.cs", "Hosting/Demo/", "Hosting/Starting/KeysCommand.cs")]
    // The one that the caller was found to belong to.
    [InlineData("Workspace.Of(", "Plumbing/Access/Caller.cs")]
    // Requests write through StoringRequest, which notes who did what; the others note what no request waits for, and exports.
    [InlineData(
        "SingleWriter writer",
        "Plumbing/Keeping/StoringRequest.cs",
        "Plumbing/Access/KeyUse.cs",
        "Plumbing/Access/RefusalCounts.cs",
        "Administration/Audit/ExportNotes.cs",
        "Hosting/Health/StorageHealth.cs"
    )]
    public void Source_NamesIt_OnlyWhereItIsMeant(string text, params string[] places)
    {
        var files = SourceFile
            .In("src", "CalibrationApi")
            .Where(file => file.Text.Contains(text, StringComparison.Ordinal))
            .Select(file => file.Shown["src/CalibrationApi/".Length..])
            .ToArray();

        Assert.All(places, place => Assert.Contains(files, file => file.StartsWith(place, StringComparison.Ordinal)));
        Assert.DoesNotContain(files, file => !places.Any(place => file.StartsWith(place, StringComparison.Ordinal)));
    }
}
