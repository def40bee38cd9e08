namespace CalibrationApi.Plumbing.Lists;

/// <summary>A page of a list.</summary>
public sealed class Page<T>
{
    /// <summary>The records of this page.</summary>
    public required IReadOnlyList<T> Items { get; init; }

    /// <summary>Address of the next page; absent on the last one.</summary>
    public string? Next { get; init; }
}
