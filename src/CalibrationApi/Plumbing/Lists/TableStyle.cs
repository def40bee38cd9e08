namespace CalibrationApi.Plumbing.Lists;

/// <summary>How a table is written.</summary>
/// <param name="Separator">What stands between two cells.</param>
/// <param name="DecimalSign">What stands before decimals.</param>
/// <param name="HasMark">It begins with a byte-order mark, by which some spreadsheets tell UTF-8.</param>
internal sealed record TableStyle(char Separator, char DecimalSign, bool HasMark)
{
    /// <summary>With commas between cells and decimal points.</summary>
    public static TableStyle Commas { get; } = new(',', '.', false);

    /// <summary>With semicolons between cells and decimal commas, as spreadsheets in much of Europe write.</summary>
    public static TableStyle Semicolons { get; } = new(';', ',', false);
}
