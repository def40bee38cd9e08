using System.Globalization;

namespace CalibrationApi.Plumbing.Limits;

/// <summary>How many connections can be open without taking from the service the files that it needs itself.</summary>
/// <remarks>
/// Each connection is an open file to the system, and a process may have only so many. Without any left the runtime can start
/// no thread, and ends the process. So connections end where the rest begins; those beyond are closed at once.
/// </remarks>
internal static class OpenFiles
{
    /// <summary>What the service holds open by itself: two files for each of its assemblies, the database, the log.</summary>
    private const int OwnFiles = 550;

    /// <summary>A connection, and the database and its log while a request on it reads.</summary>
    private const int FilesOfAConnection = 3;

    private const int FewestConnections = 8;
    private const string Limits = "/proc/self/limits";

    /// <summary>How many files the system lets this process open; null where it does not say.</summary>
    public static long? Most { get; } = Read();

    /// <summary>As many connections as are wanted, or fewer.</summary>
    public static int Connections(int wanted) =>
        Most is { } most ? (int)Math.Min(wanted, Math.Max(FewestConnections, (most - OwnFiles) / FilesOfAConnection)) : wanted;

    private static long? Read()
    {
        // Max open files            1024                 524288               files
        var line = File.Exists(Limits)
            ? File.ReadLines(Limits).FirstOrDefault(line => line.StartsWith("Max open files", StringComparison.Ordinal))
            : null;
        var words = line?.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is [_, _, _, var soft, ..] && long.TryParse(soft, NumberStyles.None, CultureInfo.InvariantCulture, out var most)
            ? most
            : null;
    }
}
