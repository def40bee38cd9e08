using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Xunit;

namespace CalibrationApi.Testing;

/// <summary>The shell that runs lines as a reader pastes them, with curl.</summary>
public static partial class Shell
{
    // The first one that knows all that the lines use.
    private static readonly Version Needed = new(7, 84);

    private static readonly Lazy<Version?> Curl = new(CurlInBash);

    /// <summary>Why tests that need it cannot run, and the command that brings it; null when it is there.</summary>
    public static string? Missing =>
        Curl.Value is { } found && found >= Needed
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"This test needs bash with curl {Needed} or newer, and found {Curl.Value?.ToString() ?? "none"}. Install it (Debian and Ubuntu: 'sudo apt-get install bash curl'; Windows: Git Bash)."
            );

    private static Version? CurlInBash()
    {
        try
        {
            using var asked = Process.Start(
                new ProcessStartInfo("bash", ["-c", "curl --version"]) { RedirectStandardOutput = true, RedirectStandardError = true }
            )!;
            return VersionOfCurl().Match(asked.StandardOutput.ReadToEnd()) is { Success: true } told
                ? Version.Parse(told.Groups[1].Value)
                : null;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }

    [GeneratedRegex(@"^curl (\d+\.\d+)")]
    private static partial Regex VersionOfCurl();
}

/// <summary>A test with cases that needs the <see cref="Shell"/>; where that is missing it is skipped and says how to bring it.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class ShellTheoryAttribute : TheoryAttribute
{
    /// <summary>Looks for it.</summary>
    public ShellTheoryAttribute() => Skip = Shell.Missing;
}
