using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Lists;

namespace CalibrationApi.Tests.Plumbing.Lists;

/// <summary>
/// Records as a table. The format is RFC 4180; the cells that spreadsheets take for formulas are those that OWASP lists under "CSV
/// Injection".
/// </summary>
public sealed class CsvTableTests
{
    [Fact]
    public void Write_Records_IsOneRowEachWithUnitsInTheHeader() =>
        Assert.Equal(
            "id,meters.0.width [m],meters.0.name,meters.1.width [m],used\r\n" + "a,9,front,4.5,true\r\n",
            Written(
                """{ "id": "a", "meters": [ { "width": { "value": 9, "unit": "m" }, "name": "front" }, { "width": { "value": 4.5, "unit": "m" } } ], "used": true }"""
            )
        );

    [Fact]
    public void Write_MeasuredValue_KeepsItsUncertaintyInTheSameUnit() =>
        Assert.Equal(
            "k [kg/rev],k.expandedUncertainty [kg/rev],k.coverageFactor\r\n0.363,0.006,2.49\r\n",
            Written("""{ "k": { "value": 0.363, "unit": "kg/rev", "expandedUncertainty": 0.006, "coverageFactor": 2.49 } }""")
        );

    [Fact]
    public void Write_DifferentUnits_HaveColumnsOfTheirOwn() =>
        Assert.Equal(
            "rate [kg/ha],rate [lb/ac]\r\n90,\r\n,200\r\n",
            Written("""{ "rate": { "value": 90, "unit": "kg/ha" } }""", """{ "rate": { "value": 200, "unit": "lb/ac" } }""")
        );

    [Fact]
    public void Write_AbsentMembers_AreEmptyCells() =>
        Assert.Equal("a,b,c\r\n1,,\r\n,2,\r\n,,3\r\n", Written("""{ "a": 1 }""", """{ "b": 2 }""", """{ "c": 3 }"""));

    [Fact]
    public void Write_CommasQuotesAndLineBreaks_AreQuoted() =>
        Assert.Equal("note\r\n\"a, \"\"b\"\"\r\nc\nd\"\r\n", Written("""{ "note": "a, \"b\"\r\nc\nd" }"""));

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
    public void Write_TextThatASpreadsheetTakesForAFormula_IsLedByAnApostrophe(string text)
    {
        var cell = Assert.Single(Rfc4180.Read(Written(new JsonObject { ["note"] = text }.ToJsonString())))["note"];

        Assert.Equal("'" + text, cell);
    }

    [Theory]
    [InlineData("a=1")]
    [InlineData("'=1")]
    [InlineData("")]
    [InlineData("süß und 好")]
    public void Write_OtherText_StaysAsItIs(string text) =>
        Assert.Equal(text, Assert.Single(Rfc4180.Read(Written(new JsonObject { ["note"] = text, ["x"] = 1 }.ToJsonString())))["note"]);

    // A number is no text: a negative slope stays a number that a spreadsheet can add.
    [Fact]
    public void Write_NegativeNumber_StaysANumber() =>
        Assert.Equal("slope [%]\r\n-3.5\r\n", Written("""{ "slope": { "value": -3.5, "unit": "%" } }"""));

    [Fact]
    public void Write_Anything_IsUtf8WithoutAByteOrderMark() => Assert.NotEqual(0xEF, CsvTable.Write([new JsonObject { ["a"] = 1 }])[0]);

    private static string Written(params string[] records) =>
        Encoding.UTF8.GetString(CsvTable.Write([.. records.Select(record => JsonNode.Parse(record)!.AsObject())]));
}
