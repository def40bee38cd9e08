using System.Diagnostics;
using Xunit;

namespace CalibrationApi.Testing;

/// <summary>The Python that runs the Python client and its generator.</summary>
public static class Python
{
    /// <summary>Names the interpreter when it is not the first of its kind on the path.</summary>
    public const string Setting = "CALIBRATION_PYTHON";

    // Old enough for the client, with what makes an environment to install it into.
    private const string Question = "import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 10))";

    private static readonly string[] Names = ["python3", "python"];

    private static readonly Lazy<string?> Found = new(() => Candidates().FirstOrDefault(Serves));

    /// <summary>The interpreter.</summary>
    public static string Executable => Found.Value ?? throw new InvalidOperationException(Missing);

    /// <summary>Why tests that need it cannot run, and the command that brings it; null when it is there.</summary>
    public static string? Missing =>
        Found.Value is null
            ? $"This test needs Python 3.10 or newer with venv, and none was found. Install it (Debian and Ubuntu: 'sudo apt-get install python3 python3-venv'), or name the interpreter in {Setting}."
            : null;

    private static string[] Candidates() => Environment.GetEnvironmentVariable(Setting) is { Length: > 0 } named ? [named] : Names;

    private static bool Serves(string interpreter)
    {
        try
        {
            using var asked = Process.Start(
                new ProcessStartInfo(interpreter, ["-c", Question]) { RedirectStandardError = true, RedirectStandardOutput = true }
            )!;
            asked.WaitForExit();
            return asked.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}

/// <summary>A test that needs <see cref="Python"/>; where that is missing it is skipped and says how to bring it.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PythonFactAttribute : FactAttribute
{
    /// <summary>Looks for it.</summary>
    public PythonFactAttribute() => Skip = Python.Missing;
}

/// <summary>The same for a test with cases.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PythonTheoryAttribute : TheoryAttribute
{
    /// <summary>Looks for it.</summary>
    public PythonTheoryAttribute() => Skip = Python.Missing;
}
