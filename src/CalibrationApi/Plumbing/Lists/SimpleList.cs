using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Storage;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Answers with a page of a list that is in the order of one text.</summary>
internal static class SimpleList
{
    /// <summary>Reads the query, goes on where its cursor says, and answers.</summary>
    /// <param name="query">Which part is wanted.</param>
    /// <param name="context">The request.</param>
    /// <param name="cursors">Signs and reads cursors.</param>
    /// <param name="scope">What a cursor of this list belongs to: the workspace, the list, its filters.</param>
    /// <param name="table">The list as a table.</param>
    /// <param name="database">The database.</param>
    /// <param name="read">Reads so many items after a position, each with its own position.</param>
    /// <param name="longest">Most items of a page, where an item costs more than elsewhere: a page may then be shorter than was asked
    /// for.</param>
    public static IResult Of(
        PageQuery query,
        HttpContext context,
        Cursors cursors,
        string scope,
        ListTable table,
        CalibrationDatabase database,
        Func<SqliteConnection, string, int, IEnumerable<(JsonObject Item, string Position)>> read,
        int longest = PageQuery.MostItems
    )
    {
        var (format, wrongFormat) = PageFormats.Choose(context.Request);
        var (most, wrongLimit) = query.ReadLimit(format);
        var (written, wrongTable) = query.ReadTable(format, table);
        if ((wrongFormat ?? wrongLimit ?? wrongTable) is { } problem)
            return problem;
        if (most <= PageQuery.MostItems)
            most = Math.Min(most, longest);
        var after = "";
        if (query.Cursor is { } cursor)
        {
            if (cursors.Read(scope, cursor) is not { } position)
                return Pages.WrongCursor();
            after = position;
        }

        var connection = database.Open();
        return new PageResult(
            format,
            read(connection, after, most + 1),
            most,
            position => cursors.Make(scope, position),
            written,
            connection
        );
    }
}
