using System.Globalization;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>The rows that a question was made of, so that what is wrong with it is told by row and column.</summary>
/// <param name="Test">Name of the test; null where it is missing.</param>
/// <param name="Header">The columns.</param>
/// <param name="Numbers">Number of each row.</param>
/// <param name="Given">What stands in the columns that are given back, in their order.</param>
internal sealed record TableRows(string? Test, TableHeader Header, IReadOnlyList<long> Numbers, IReadOnlyList<string> Given)
{
    /// <summary>The same error with row and column.</summary>
    public ProblemError Place(ProblemError error)
    {
        if (error.Row is not null || error.Pointer is not { } pointer)
            return error;
        string[] path = pointer.Split('/')[1..];
        var item =
            path.Length > 1
            && path[0] == Header.Table.Items
            && int.TryParse(path[1], NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            && index < Numbers.Count
                ? index
                : -1;
        return new ProblemError
        {
            Pointer = pointer,
            Row = Numbers[Math.Max(0, item)],
            Column = item < 0 ? Header.ColumnOf(false, path) : Header.ColumnOf(true, path.AsSpan(2)),
            Code = error.Code,
            Detail = error.Detail,
        };
    }
}
