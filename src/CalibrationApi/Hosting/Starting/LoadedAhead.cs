using System.Reflection;
using System.Security.Cryptography;

namespace CalibrationApi.Hosting.Starting;

/// <summary>Loads everything that the service is made of soon after it has started, in the background.</summary>
/// <remarks>
/// The runtime opens a file for each assembly when something in it is first used. While connections hold all the files that a
/// process may open, it cannot; it then remembers that for good, so that what needs the assembly fails ever after, or ends the
/// whole process. So nothing is left to be loaded at such a moment.
/// </remarks>
internal static class LoadedAhead
{
    // The first answer does not share the machine with it.
    private static readonly TimeSpan AfterTheStart = TimeSpan.FromSeconds(1);

    public static void UseLoadedAhead(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() =>
            new Thread(LoadInItsTime)
            {
                IsBackground = true,
                Priority = ThreadPriority.BelowNormal,
                Name = nameof(LoadedAhead),
            }.Start()
        );

    private static void LoadInItsTime()
    {
        Thread.Sleep(AfterTheStart);
        LoadAll();
    }

    /// <summary>Loads whatever our assemblies refer to, and whatever that refers to.</summary>
    public static void LoadAll()
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        var toFollow = new Stack<Assembly>([typeof(LoadedAhead).Assembly]);
        while (toFollow.TryPop(out var assembly))
        {
            foreach (var name in assembly.GetReferencedAssemblies())
            {
                if (met.Add(name.FullName) && TryLoad(name) is { } referred)
                    toFollow.Push(referred);
            }
        }

        // The library behind these is no assembly.
        HMACSHA256.HashData(SHA256.HashData([]), Array.Empty<byte>());
    }

    // Packages refer to some that only other uses of them need, and do not bring those.
    private static Assembly? TryLoad(AssemblyName name)
    {
        try
        {
            return Assembly.Load(name);
        }
        catch (Exception failure) when (failure is IOException or BadImageFormatException)
        {
            return null;
        }
    }
}
