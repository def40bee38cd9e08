namespace CalibrationApi.Plumbing.Batch;

/// <summary>What a table says in a column of its sender.</summary>
public sealed class GivenCell
{
    /// <summary>Name of the column.</summary>
    public required string Column { get; init; }

    /// <summary>Its text; where the rows of a question differ, all of them, separated by semicolons.</summary>
    public required string Text { get; init; }
}
