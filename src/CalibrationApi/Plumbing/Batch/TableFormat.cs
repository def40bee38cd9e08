using System.Globalization;
using System.Text.RegularExpressions;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>
/// How a table is written: with commas between cells and decimal points, or, as spreadsheets in much of Europe do, with semicolons and
/// decimal commas, or with tabs, as cells are copied out of spreadsheets.
/// </summary>
/// <param name="Separator">What stands between two cells.</param>
/// <param name="DecimalSign">What stands before the decimals of an answer.</param>
/// <param name="HasMark">It begins with a byte-order mark.</param>
internal sealed partial record TableFormat(char Separator, char DecimalSign, bool HasMark = false)
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    public static TableFormat Commas { get; } = new(',', '.');

    public static TableFormat Semicolons { get; } = new(';', ',');

    public static TableFormat Tabs { get; } = new('\t', '.');

    /// <summary>The format of a table whose first line is given: no name of a column that is read holds a separator.</summary>
    public static TableFormat Of(string header)
    {
        var format =
            header.Contains('\t', StringComparison.Ordinal) ? Tabs
            : header.Contains(';', StringComparison.Ordinal) ? Semicolons
            : Commas;
        return format with { HasMark = header.StartsWith('\uFEFF') };
    }

    /// <summary>The number in a cell, or code and sentence of what is wrong with it.</summary>
    /// <remarks>
    /// A comma is a decimal sign only where it cannot be anything else. A point in a table with semicolons is one too, and a comma in one
    /// with tabs, unless the number would also be a usual way to write thousands.
    /// </remarks>
    public (double Number, (ErrorCode Code, string Detail)? Fault) Read(string cell)
    {
        var shown = Excerpt.Of(cell, 40);
        if (Separator == ',' && cell.Contains(',', StringComparison.Ordinal))
            return (
                0,
                (
                    ErrorCodes.NumberAmbiguous,
                    $"'{shown}' holds a comma, and the cells of this table are separated by commas. Write a decimal point and no thousands separators; decimal commas go with semicolons between the cells."
                )
            );
        if (Separator == ';' && Thousands().IsMatch(cell))
            return (
                0,
                (
                    ErrorCodes.NumberAmbiguous,
                    $"'{shown}' can be read with a decimal point or with thousands. Write {cell.Replace('.', ',')} or {cell.Replace(".", "", StringComparison.Ordinal)}."
                )
            );
        if (Separator == '\t' && ThousandsWithComma().IsMatch(cell))
            return (
                0,
                (
                    ErrorCodes.NumberAmbiguous,
                    $"'{shown}' can be read with a decimal comma or with thousands. Write {cell.Replace(',', '.')} or {cell.Replace(",", "", StringComparison.Ordinal)}."
                )
            );
        return Number().IsMatch(cell) && double.TryParse(cell.Replace(',', '.'), Plain, CultureInfo.InvariantCulture, out var number)
            ? (number, null)
            : (
                0,
                (
                    ErrorCodes.TypeWrong,
                    $"'{shown}' is not a number. Give plain digits with a decimal {(Separator == ';' ? "comma" : "point")}, without unit and thousands separators."
                )
            );
    }

    [GeneratedRegex(@"^[+-]?[1-9][0-9]{0,2}\.[0-9]{3}\z")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"^[+-]?[1-9][0-9]{0,2},[0-9]{3}\z")]
    private static partial Regex ThousandsWithComma();

    [GeneratedRegex(@"^[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]+)?\z")]
    private static partial Regex Number();
}
