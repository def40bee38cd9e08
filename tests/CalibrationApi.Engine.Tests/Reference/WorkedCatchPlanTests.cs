using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;

namespace CalibrationApi.Engine.Tests.Reference;

/// <summary>Our own worked example of a catch plan, NOT published: catch-plan-worked-example.csv.</summary>
[Trait("Category", "Reference")]
public sealed class WorkedCatchPlanTests
{
    private static readonly ReferenceTable Printed = ReferenceTable.Read("catch-plan-worked-example.csv");

    private static readonly CatchPlanResult Result = Planned
        .Plan(
            Planned.Front with
            {
                Repeatability = 0.01,
            },
            Planned.Middle with
            {
                Repeatability = 0.01,
            },
            Planned.Rear with
            {
                Repeatability = 0.02,
            }
        )
        .Evaluated();

    private static readonly Dictionary<string, Func<MeterPlan, double>> Columns = new(StringComparer.Ordinal)
    {
        ["catch / kg"] = meter => meter.CatchMass.Kilograms,
        ["revolutions"] = meter => meter.Revolutions.Count,
        ["run time / s"] = meter => meter.RunTime.Seconds,
        ["meter speed / rpm"] = meter => meter.MeterSpeed.Rpm(),
        ["container fill / %"] = meter => 100 * meter.ContainerFill!.Value.Fraction,
        ["simulated area / ha"] = meter => meter.SimulatedArea.SquareMetres / 10_000,
        ["catches"] = meter => meter.Catches!.Value,
        ["expected precision / %"] = meter => 100 * meter.ExpectedPrecision.Fraction,
        ["bound / kg"] = meter => meter.LimitedBy.Mass.Kilograms,
    };

    public static TheoryData<string, string> Cells
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var row in Printed.Rows)
            {
                foreach (var column in Columns.Keys)
                    data.Add(row["meter"], column);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public void Evaluate_WorkedExample_RoundsToThePrintedFigure(string meter, string column) =>
        Printed.Only("meter", meter).Printed(column).AssertReproducedBy(Columns[column](Of(meter)), what: $"{meter}, {column}");

    [Theory]
    [InlineData("front")]
    [InlineData("middle")]
    [InlineData("rear")]
    public void Evaluate_WorkedExample_NamesTheBoundThatActs(string meter) =>
        Assert.Equal(Printed.Only("meter", meter)["limited by"], Of(meter).LimitedBy.Kind.ToString());

    [Fact]
    public void StopOrder_WorkedExample_IsFrontMiddleRear() =>
        Assert.Equal(
            ["front 79.4", "middle 183.6", "rear 298.5"],
            Result.StopOrder.Select(stop =>
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{Assert.Single(stop.Meters)} {Assert.Single(stop.Times).Seconds:F1}"
                )
            )
        );

    [Fact]
    public void Findings_WorkedExample_IsTheCoarseScaleForTheRearMeterOnly()
    {
        var finding = Assert.Single(Result.Findings);

        Assert.Equal(SharedCodes.CoarseScale, finding.Code);
        Assert.Equal("rear", finding.Meter);
        // 4.03 kg / 0.02 kg is 201.5 divisions.
        Assert.Contains("4.03 kg", finding.Detail.InMetric(), StringComparison.Ordinal);
        Assert.Contains("divisions of 0.02 kg", finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    private static MeterPlan Of(string meter) => Result.Meters.Single(each => each.Meter.Name == meter);
}
