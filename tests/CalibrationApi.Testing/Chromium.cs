namespace CalibrationApi.Testing;

/// <summary>The browser for tests of pages.</summary>
public static class Chromium
{
    /// <summary>Names it when it is not where it usually is.</summary>
    public const string Setting = "CALIBRATION_CHROMIUM";

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

    private static readonly string[] Places =
    [
        "/Applications/Chromium.app/Contents/MacOS/Chromium",
        "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ProgramFiles), "Google", "Chrome", "Application", "chrome.exe"),
    ];

    /// <summary>Where it is installed; an exception says how to install it when it is not.</summary>
    public static string Executable => Candidates().FirstOrDefault(File.Exists) ?? throw new InvalidOperationException(
        $"Tests of pages need Chromium, and none was found. Install it (Debian and Ubuntu: 'sudo apt-get update && sudo apt-get install chromium'; elsewhere Chromium or Chrome), or name its executable in {Setting}.");

    private static IEnumerable<string> Candidates()
    {
        if (Environment.GetEnvironmentVariable(Setting) is { Length: > 0 } named)
            return [named];
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name))).Concat(Places);
    }
}
