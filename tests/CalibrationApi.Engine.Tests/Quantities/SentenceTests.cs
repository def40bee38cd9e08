using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

public sealed class SentenceTests
{
    private static readonly DisplayUnits Pounds = DisplayUnits.UnitedStates;

    [Fact]
    public void WriteParts_Quantity_IsNamedAsTheCodeCallsItAndKeptUnrounded()
    {
        var rate = new MassPerArea(0.0123456789);

        var written = DisplayUnits.Metric.WriteParts($"Put down {rate}.");

        Assert.Equal("Put down 123.5 kg/ha.", written.Text);
        Assert.Equal("Put down {rate}.", written.Template);
        var value = Assert.Single(written.Values);
        Assert.Equal(("rate", "123.5 kg/ha", "kg/ha"), (value.Name, value.Text, value.Unit!.Symbol));
        Assert.Equal(123.456789, value.Number!.Value, 9);
    }

    [Fact]
    public void WriteParts_OtherUnits_HasTheSameTemplate()
    {
        var mass = new Mass(1);
        Sentence sentence = $"Catch {mass:F1} once more.";

        Assert.Equal(DisplayUnits.Metric.WriteParts(sentence).Template, Pounds.WriteParts(sentence).Template);
        Assert.Equal("2.2 lb", Pounds.WriteParts(sentence).Values[0].Text);
    }

    [Fact]
    public void WriteParts_SentenceInASentence_BecomesPartOfIt()
    {
        var turns = 12;
        Sentence inner = $"turn the meter {turns} times";

        var written = DisplayUnits.Metric.WriteParts($"First {inner}.");

        Assert.Equal("First turn the meter {turns} times.", written.Template);
        Assert.Equal(12, Assert.Single(written.Values).Number);
    }

    [Fact]
    public void WriteParts_SameNameForAnotherValue_GetsANumberBehindIt()
    {
        var (first, second) = (new { Rate = 1 }, new { Rate = 2 });

        var written = DisplayUnits.Metric.WriteParts($"{first.Rate}, {second.Rate} and {first.Rate}");

        Assert.Equal("{rate}, {rate2} and {rate}", written.Template);
        Assert.Equal(["1", "2"], written.Values.Select(value => value.Text));
    }

    [Fact]
    public void WriteParts_Word_HasNoNumber()
    {
        var product = "canola";

        Assert.Equal(
            new WrittenValue("product", "canola", null, null),
            Assert.Single(DisplayUnits.Metric.WriteParts($"Sow {product}.").Values)
        );
    }

    [Fact]
    public void WriteParts_ValueThatIsEmpty_LeavesNoTrace()
    {
        var nothing = "";

        var written = DisplayUnits.Metric.WriteParts($"Sow{nothing}.");

        Assert.Equal(("Sow.", "Sow.", 0), (written.Text, written.Template, written.Values.Count));
    }

    [Fact]
    public void WriteParts_BraceInAValueOrInTheWords_CannotBeTakenForAName()
    {
        var product = "{rate}";

        var written = DisplayUnits.Metric.WriteParts($"{{{product}}}");

        Assert.Equal("{{{product}}}", written.Template);
        Assert.Equal("{{rate}}", written.Text);
    }

    [Theory]
    [InlineData(1, "{count} catch")]
    [InlineData(2, "{count} catches")]
    public void WriteParts_ChoiceOfWords_IsPartOfTheTemplate(int count, string template) =>
        Assert.Equal(template, DisplayUnits.Metric.WriteParts($"{count} catch{(count == 1 ? "" : "es")}").Template);

    [Theory]
    [InlineData("coarse roller", "from {element}")]
    [InlineData(null, "from this element")]
    public void WriteParts_TextOfTheCallerOrElseWords_IsAValueWhereItIsTheCallers(string? element, string template) =>
        Assert.Equal(template, DisplayUnits.Metric.WriteParts($"from {element ?? "this element"}").Template);

    [Fact]
    public void WriteParts_NamesPutTogether_AreAValue()
    {
        string[] names = ["lid", "hose"];

        Assert.Equal("check {names}", DisplayUnits.Metric.WriteParts($"check {string.Join("; ", names)}").Template);
    }

    [Theory]
    [InlineData("rate", "rate")]
    [InlineData("new Ratio(standard.Low)", "low")]
    [InlineData("line.Product.Name", "product")]
    [InlineData("Math.Abs(second.Difference)", "difference")]
    [InlineData("CropNames.InPlural(row.Crop)", "crop")]
    [InlineData("result.Excluded.Contradicting[0] + 1", "contradicting")]
    [InlineData("(ratio > 1 ? \"above the line\" : \"below\")", "ratio")]
    [InlineData("\"text\"", "word")]
    public void Of_Expression_IsItsLastTellingWord(string expression, string name) => Assert.Equal(name, SentenceNames.Of(expression));
}
