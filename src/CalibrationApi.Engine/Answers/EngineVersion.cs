using System.Reflection;

namespace CalibrationApi.Engine.Answers;

/// <summary>The version of the engine that an answer carries.</summary>
public static class EngineVersion
{
    /// <summary>Version of the engine assembly, without build metadata.</summary>
    public static string Current { get; } =
        typeof(EngineVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];
}
