using System.Text;

namespace CalibrationApi.Storage;

/// <summary>
/// The statement of a list, in the order of time or of arrival, which goes on after a line already seen; built from fixed parts, never
/// from a request.
/// </summary>
/// <param name="select">What is read, up to the first condition.</param>
internal sealed class ListStatement(string select)
{
    private readonly StringBuilder sql = new(select);

    /// <summary>Adds a condition where what it asks for is wanted.</summary>
    public ListStatement Where(object? wanted, string condition)
    {
        if (wanted is not null)
            sql.Append(" and ").Append(condition);
        return this;
    }

    /// <summary>
    /// The whole statement. Its parameters are, besides those of the conditions, the last line seen and how many at the most.
    /// </summary>
    /// <param name="time">The column of the time.</param>
    /// <param name="sequence">The column of the order of arrival.</param>
    /// <param name="newestFirst">Newest first instead of oldest first.</param>
    /// <param name="continues">It goes on after a line; from the beginning otherwise.</param>
    public string InOrderOf(string time, string sequence, bool newestFirst, bool continues)
    {
        var (comparison, direction) = newestFirst ? ("<", "desc") : (">", "asc");
        if (continues)
            sql.Append($" and ({time}, {sequence}) {comparison} (@lastTime, @lastSequence)");
        return sql.Append($" order by {time} {direction}, {sequence} {direction} limit @most").ToString();
    }

    /// <summary>The whole statement of a list that is in the order of one column alone.</summary>
    public string InOrderOf(string sequence) => sql.Append($" order by {sequence} limit @most").ToString();
}
