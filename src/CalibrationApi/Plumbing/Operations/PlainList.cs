namespace CalibrationApi.Plumbing.Operations;

/// <summary>Says of a route that it answers with a list, in which nothing of the request stands but its address.</summary>
internal sealed class PlainList
{
    public static PlainList Metadata { get; } = new();
}
