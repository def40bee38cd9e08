using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.History;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Machines;

namespace CalibrationApi.Tests.Plumbing.Lists;

/// <summary>A list as a table, whose columns follow from the type of its records.</summary>
public sealed class ListTableTests
{
    [Fact]
    public void Columns_WithUnits_HaveThemInTheHeader()
    {
        var names = Names(ListTable.Of<HistoryItem>(), DisplayUnits.UnitedStates);

        Assert.Contains("massPerRevolution [lb/rev]", names);
        Assert.Contains("massPerRevolution.expandedUncertainty [lb/rev]", names);
        Assert.DoesNotContain("massPerRevolution unit", names);
    }

    [Fact]
    public void Columns_WithoutUnits_HaveAColumnForThem()
    {
        var names = Names(ListTable.Of<HistoryItem>(), null);

        Assert.Equal(1, names.IndexOf("massPerRevolution unit") - names.IndexOf("massPerRevolution"));
        Assert.DoesNotContain(names, name => name.Contains('[', StringComparison.Ordinal));
    }

    [Fact]
    public void Columns_Leading_ComeFirst() =>
        Assert.Equal(["revision", "name"], Names(ListTable.Of<MachineRequest>("revision", "name"), null)[..2]);

    [Fact]
    public void Cells_OfAList_StandInOneCellInStep()
    {
        var record = JsonNode.Parse(
            """
            { "name": "=A", "meters": [
                { "position": "front", "coveredWidth": { "value": 9, "unit": "m" }, "elements": [ { "name": "a" }, { "name": "b" } ] },
                { "position": "rear" },
                { "position": "side", "coveredWidth": { "value": -4.5, "unit": "m" }, "elements": [ { "name": "c" } ] } ] }
            """
        )!;
        var columns = ListTable.Of<MachineRequest>().Columns(DisplayUnits.Metric);

        Assert.Equal("'=A", Cell("name", TableStyle.Commas));
        Assert.Equal("front; rear; side", Cell("meters.position", TableStyle.Commas));
        Assert.Equal("a | b; ; c", Cell("meters.elements.name", TableStyle.Commas));
        Assert.Equal("9; ; -4,5", Cell("meters.coveredWidth [m]", TableStyle.Semicolons));
        Assert.Equal("", Cell("note", TableStyle.Commas));

        string Cell(string name, TableStyle style) => columns.Single(column => column.Name == name).Cell(record, style);
    }

    private static List<string> Names(ListTable table, DisplayUnits? units) => [.. table.Columns(units).Select(column => column.Name)];
}
