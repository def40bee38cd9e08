namespace CalibrationApi.Testing;

/// <summary>The folder that the tests run in a build of.</summary>
public static class Repository
{
    private const string Landmark = "CalibrationApi.sln";

    /// <summary>The top folder.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path below the top folder.</summary>
    public static string PathOf(params ReadOnlySpan<string> parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, Landmark)))
            folder = folder.Parent ?? throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds {Landmark}.");
        return folder.FullName;
    }
}
