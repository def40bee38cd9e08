using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>
/// Every published example of a topic: reproduced, shown to be a shortcut, or not applicable with the reason.
/// </summary>
[Trait("Category", "Trade")]
[Trait("Category", "Reference")]
public abstract class TradeCases<TTopic>
    where TTopic : ITradeTopic
{
#pragma warning disable CA1000 // The runner takes test data from static members only.
    public static TheoryData<string, string, string> All
#pragma warning restore CA1000
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var row in Cases.Rows)
                data.Add(row["status"], row["id"], row["quantity"]);
            return data;
        }
    }

    protected static ReferenceTable Cases { get; } = ReferenceTable.Read(TTopic.File);

    [Theory]
    [MemberData(nameof(All))]
    public void PublishedCase_Status_IsTrue(string status, string id, string quantity)
    {
        var row = Cases.Rows.Single(row => row["id"] == id && row["quantity"] == quantity);
        switch (status)
        {
            case "reproduced":
                row.Printed("printed").AssertReproducedBy(Computed(row), row.Number("lastDigits"), $"{id} {quantity}");
                Assert.True(row.Number("lastDigits") <= 0.5 || row["reason"].Length > 0, $"{id} {quantity} is looser than rounding and does not say why.");
                break;
            case "shortcut":
                // Exact units must not be bent to match a rule of thumb, so the difference is asserted.
                var printed = row.Printed("printed");
                Assert.True(Math.Abs(Computed(row) - printed.Value) > printed.LastDigit / 2, $"{id} {quantity} is no shortcut: exact units give {Computed(row)}.");
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

    [Fact]
    public void Computed_EveryFigure_StandsInTheFile() => Assert.Equal(
        TTopic.Computed.Keys.Order(StringComparer.Ordinal),
        Cases.Rows.Where(row => row["status"] != "not-applicable").Select(row => $"{row["id"]} {row["quantity"]}").Order(StringComparer.Ordinal));

    /// <summary>A value in SI units.</summary>
    protected static double Si(double value, string unit) => UnitTable.Get(unit).Canonical(value);

    /// <summary>An SI value in a unit.</summary>
    protected static double In(string unit, double si) => UnitTable.Get(unit).FromCanonical(si);

    protected static double Convert(double value, string from, string to) => In(to, Si(value, from));

    private static double Computed(ReferenceTable.Row row) => TTopic.Computed[$"{row["id"]} {row["quantity"]}"]();
}
