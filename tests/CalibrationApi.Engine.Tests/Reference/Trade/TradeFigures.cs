using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>
/// Published examples of a topic that are collected and checked, but are no check of the engine: the sum stands in the test, the
/// figure is an entry of the engine's own table, or nothing is to be computed, with the reason.
/// </summary>
public abstract class TradeFigures<TTopic>
    where TTopic : ITradeTopic
{
    protected const string Engine = "engine";

#pragma warning disable CA1000 // The runner takes test data from static members only.
    public static TheoryData<string, string, string> Apart => Those(by => by != Engine);
#pragma warning restore CA1000

    protected static ReferenceTable Cases { get; } = ReferenceTable.Read(TTopic.File);

    [Theory]
    [MemberData(nameof(Apart))]
    [Trait("Category", "Transcription")]
    public void PublishedCase_ApartFromTheEngine_HasItsStatus(string status, string id, string quantity) =>
        AssertStatus(status, id, quantity);

    [Fact]
    [Trait("Category", "Transcription")]
    public void Computed_EveryFigure_StandsInTheFile() =>
        Assert.Equal(
            TTopic.Computed.Keys.Order(StringComparer.Ordinal),
            Cases
                .Rows.Where(row => row["status"] != "not-applicable")
                .Select(row => $"{row["id"]} {row["quantity"]}")
                .Order(StringComparer.Ordinal)
        );

    [Fact]
    [Trait("Category", "Transcription")]
    public void By_EveryCase_IsAWordThatTheReadmeExplains() =>
        Assert.All(Cases.Rows, row =>
            Assert.Contains(row["by"], row["status"] == "not-applicable" ? (string[])[""] : [Engine, "test", "copy"])
        );

    /// <summary>A value in SI units.</summary>
    protected static double Si(double value, string unit) => UnitTable.Get(unit).Canonical(value);

    /// <summary>An SI value in a unit.</summary>
    protected static double In(string unit, double si) => UnitTable.Get(unit).FromCanonical(si);

    protected static double Convert(double value, string from, string to) => In(to, Si(value, from));

    private protected static TheoryData<string, string, string> Those(Func<string, bool> by)
    {
        var data = new TheoryData<string, string, string>();
        foreach (var row in Cases.Rows.Where(row => by(row["by"])))
            data.Add(row["status"], row["id"], row["quantity"]);
        return data;
    }

    private protected static void AssertStatus(string status, string id, string quantity)
    {
        var row = Cases.Rows.Single(row => row["id"] == id && row["quantity"] == quantity);
        switch (status)
        {
            case "reproduced":
                row.Printed("printed").AssertReproducedBy(Computed(row), row.Number("lastDigits"), $"{id} {quantity}");
                Assert.True(
                    row.Number("lastDigits") <= 0.5 || row["reason"].Length > 0,
                    $"{id} {quantity} is looser than rounding and does not say why."
                );
                break;
            case "shortcut":
            case "misprint":
                // Exact units must not be bent to match a rule of thumb or a slip of the printer, so the difference is asserted.
                var printed = row.Printed("printed");
                Assert.True(
                    Math.Abs(Computed(row) - printed.Value) > printed.LastDigit / 2,
                    $"{id} {quantity} is no {status}: exact units give {Computed(row)}."
                );
                Assert.NotEqual("", row["reason"]);
                break;
            case "not-applicable":
                Assert.Equal("", row["printed"]);
                Assert.NotEqual("", row["reason"]);
                break;
            default:
                Assert.Fail($"{id} {quantity}: '{status}' is no status.");
                break;
        }
    }

    private static double Computed(ReferenceTable.Row row) => TTopic.Computed[$"{row["id"]} {row["quantity"]}"]();
}
