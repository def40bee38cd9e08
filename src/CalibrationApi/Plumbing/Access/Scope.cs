namespace CalibrationApi.Plumbing.Access;

/// <summary>What a key may do. None implies another.</summary>
internal static class Scope
{
    /// <summary>Calculations, which store nothing.</summary>
    public const string Calculate = "calculate";

    /// <summary>Reading records and what follows from them.</summary>
    public const string Read = "read";

    /// <summary>Storing records.</summary>
    public const string Write = "write";

    /// <summary>Keys and audit of the workspace.</summary>
    public const string Admin = "admin";

    /// <summary>Workspaces of the installation. Only the command gives it.</summary>
    public const string Operator = "operator";

    /// <summary>Those that an administrator of a workspace can give.</summary>
    public static IReadOnlyList<string> OfWorkspace { get; } = [Calculate, Read, Write, Admin];

    public static IReadOnlyList<string> All { get; } = [.. OfWorkspace, Operator];
}
