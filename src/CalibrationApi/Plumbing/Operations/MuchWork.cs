namespace CalibrationApi.Plumbing.Operations;

/// <summary>Says of a route that a request on it is much work, so that only so many of them run at once.</summary>
internal sealed class MuchWork
{
    /// <summary>Name of the time limit of operations that may take long.</summary>
    public const string LongTime = "long";

    public static MuchWork Metadata { get; } = new();
}
