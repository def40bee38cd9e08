using Xunit;

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

    /// <summary>Where it is installed.</summary>
    public static string Executable => Found ?? throw new InvalidOperationException(Missing);

    /// <summary>Why tests that need it cannot run, and the command that brings it; null when it is there.</summary>
    public static string? Missing =>
        Found is null
            ? $"This test needs Chromium, and none was found. Install it (Debian and Ubuntu: 'sudo apt-get install chromium'; elsewhere Chromium or Chrome), or name its executable in {Setting}."
            : null;

    private static string? Found => Candidates().FirstOrDefault(File.Exists);

    private static IEnumerable<string> Candidates()
    {
        if (Environment.GetEnvironmentVariable(Setting) is { Length: > 0 } named)
            return [named];
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name))).Concat(Places);
    }
}

/// <summary>A test that needs <see cref="Chromium"/>; where that is missing it is skipped and says how to bring it.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ChromiumFactAttribute : FactAttribute
{
    /// <summary>Looks for it.</summary>
    public ChromiumFactAttribute() => Skip = Chromium.Missing;
}
