namespace CalibrationApi.Plumbing.Batch;

/// <summary>
/// How the questions of a calculation are read from a table: a row for each item of a list of the question, rows of a question together.
/// </summary>
internal sealed class QuestionTable
{
    /// <summary>The column that says to which question a row belongs.</summary>
    public const string TestColumn = "test";

    /// <summary>A column of the sender's own that is given back and otherwise read over.</summary>
    public const string NoteColumn = "note";

    /// <summary>How the name of any other column of the sender's own begins.</summary>
    public const string OwnColumns = "x-";

    /// <summary>A column of the question that is given back too, so that the sender knows an answer again.</summary>
    public const string MeterColumn = "meter";

    /// <param name="question">Type of a question.</param>
    /// <param name="items">The list of which each row is an item.</param>
    /// <param name="mostItems">Most items of a question.</param>
    public QuestionTable(Type question, string items, int mostItems)
    {
        Items = items;
        MostItems = mostItems;
        Columns = TableColumn.Of(question, items);
        ByName = Columns.ToDictionary(column => column.Name, StringComparer.Ordinal);
    }

    public string Items { get; }

    public int MostItems { get; }

    public IReadOnlyList<TableColumn> Columns { get; }

    public IReadOnlyDictionary<string, TableColumn> ByName { get; }
}
