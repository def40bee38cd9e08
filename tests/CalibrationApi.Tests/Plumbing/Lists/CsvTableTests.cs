using System.Buffers;
using System.Text;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Tests.Plumbing.Lists;

/// <summary>
/// Records as a table. The format is RFC 4180; the cells that spreadsheets take for formulas are those that OWASP lists under "CSV
/// Injection".
/// </summary>
public sealed class CsvTableTests
{
    [Fact]
    public void Write_CommasQuotesAndLineBreaks_AreQuoted() =>
        Assert.Equal("\"a, \"\"b\"\"\r\nc\nd\",e\r\n", Written(',', "a, \"b\"\r\nc\nd", "e"));

    [Theory]
    [InlineData(';', "a,b;\"c;d\"\r\n")]
    [InlineData(',', "\"a,b\",c;d\r\n")]
    [InlineData('\t', "a,b\tc;d\r\n")]
    public void Write_Separator_StandsBetweenCellsAndIsQuotedWithin(char separator, string row) =>
        Assert.Equal(row, Written(separator, "a,b", "c;d"));

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1")]
    [InlineData("-1")]
    [InlineData("@SUM(A1)")]
    [InlineData("\t=1")]
    [InlineData("\r=1")]
    [InlineData("\n=1")]
    [InlineData("\uFF1D1+1")]
    [InlineData("\uFF0B1")]
    [InlineData("\uFF0D1")]
    [InlineData("\uFF20SUM(A1)")]
    public void Harmless_TextThatASpreadsheetTakesForAFormula_IsLedByAnApostrophe(string text)
    {
        Assert.Equal("'" + text, CsvTable.Harmless(text));
        Assert.Equal(text, CsvTable.Entered(CsvTable.Harmless(text)));
    }

    [Theory]
    [InlineData("a=1")]
    [InlineData("'=1")]
    [InlineData("")]
    [InlineData("süß und 好")]
    public void Harmless_OtherText_StaysAsItIs(string text) => Assert.Equal(text, CsvTable.Harmless(text));

    private static string Written(char separator, params string[] cells)
    {
        var row = new ArrayBufferWriter<byte>();
        CsvTable.WriteRow(row, cells, separator);
        return Encoding.UTF8.GetString(row.WrittenSpan);
    }
}
