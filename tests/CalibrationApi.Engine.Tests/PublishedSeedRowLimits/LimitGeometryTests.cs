using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Engine.Tests.SeedRowLimits;

namespace CalibrationApi.Engine.Tests.PublishedSeedRowLimits;

/// <summary>Which printed number an opener gets, and when it gets none.</summary>
public sealed class LimitGeometryTests
{
    // Manitoba, medium soil: 8 % 10, 11 % 15, 17 % 20, 22 % 25, 25 % 25, 33 % 30, 50 % 40 lb/ac.
    [Theory]
    [InlineData(1, 9, 15, LimitBasis.PublishedCell)]
    [InlineData(2, 18, 15, LimitBasis.PublishedCell)]
    [InlineData(1, 7.5, 15, LimitBasis.StricterOfTwoCells)]
    [InlineData(2, 10, 20, LimitBasis.StricterOfTwoCells)]
    [InlineData(4, 10, 30, LimitBasis.StricterOfTwoCells)]
    [InlineData(6, 9, 40, LimitBasis.WidestCell)]
    [InlineData(9, 9, 40, LimitBasis.WidestCell)]
    public void ByUtilisation_Opener_GetsThePrintedOrTheStricterNumber(double spread, double row, double pounds, LimitBasis basis)
    {
        var limit = (Sown.Wheat() with { Spread = Sown.Inches(spread), RowSpacing = Sown.Inches(row) }).Limit(
            "MB-SBU",
            LimitedNutrient.UreaNitrogen
        );

        Assert.Equal(pounds, Sown.InPounds(limit.Allowed), 1e-9);
        Assert.Equal(basis, limit.Basis);
        Assert.Equal(basis == LimitBasis.StricterOfTwoCells ? 2 : 1, limit.Cells.Count);
    }

    // Over all openers, what is allowed is one of the printed numbers: nothing in between is made up.
    [Fact]
    public void ByUtilisation_AnyOpener_GetsAPrintedNumberNotAboveItsNeighbours()
    {
        double[] printed = [10, 15, 20, 25, 30, 40];
        var last = 0.0;
        for (var spread = 0.75; spread <= 9; spread += 0.05)
        {
            var limit = (Sown.Wheat() with { Spread = Sown.Inches(spread) }).Limit("MB-SBU", LimitedNutrient.UreaNitrogen);
            var pounds = Math.Round(Sown.InPounds(limit.Allowed), 9);
            Assert.Contains(pounds, printed);
            Assert.True(pounds >= last, $"At {spread} in the limit falls from {last} to {pounds}.");
            last = pounds;
        }
    }

    [Fact]
    public void ByUtilisation_LessThanTheLowest_HasNoNumber()
    {
        var limit = (Sown.Wheat() with { RowSpacing = Sown.Inches(15) }).Limit("MB-SBU", LimitedNutrient.UreaNitrogen);

        Assert.Equal(LimitVerdict.NoPublishedLimit, limit.Verdict);
        Assert.Null(limit.Allowed);
        Assert.Null(limit.Margin);
        Assert.Contains("stands less", limit.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.025, 0.225, LimitBasis.PublishedCell)]
    [InlineData(0.025, 0.230, LimitBasis.PublishedCell)]
    [InlineData(0.024, 0.230, LimitBasis.StricterOfTwoCells)]
    public void ByUtilisation_MetricOpener_IsThePrintedOneWithinTheRoundingOfAnInch(double spread, double row, LimitBasis basis) =>
        Assert.Equal(
            basis,
            (Sown.Wheat() with { Spread = new Length(spread), RowSpacing = new Length(row) })
                .Limit("MB-SBU", LimitedNutrient.UreaNitrogen)
                .Basis
        );

    // Canola on medium soil: only 11 and 17 % were read, so that nothing above is known.
    [Theory]
    [InlineData(1, 7.5, true)]
    [InlineData(2, 9, false)]
    public void ByUtilisation_TableReadInPart_EndsWhereReadingEnded(double spread, double row, bool hasNumber)
    {
        var limit = (Sown.Wheat() with { Crop = Crop.Canola, Spread = Sown.Inches(spread), RowSpacing = Sown.Inches(row) }).Limit(
            "MB-SBU2",
            LimitedNutrient.UreaAndSulfateNitrogen
        );

        Assert.Equal(hasNumber, limit.Allowed is not null);
        Assert.NotEqual(hasNumber, limit.Reason?.Contains("not held here", StringComparison.Ordinal) ?? false);
    }

    // Kansas prints rows of 6 to 8, 10 and 15 in and no spread: rows of 12 in are not between anything.
    [Theory]
    [InlineData(7.5, 30.0)]
    [InlineData(10, 24.0)]
    [InlineData(9, null)]
    [InlineData(12, null)]
    [InlineData(20, null)]
    public void ByRowSpacing_RowsThatAreNotPrinted_HaveNoNumber(double row, double? pounds)
    {
        var limit = (Kansas() with { RowSpacing = Sown.Inches(row) }).Limit("KSU-WHEAT", LimitedNutrient.NitrogenPlusPotash);

        if (pounds is { } printed)
            Assert.Equal(printed, Sown.InPounds(limit.Allowed), 1e-9);
        else
            Assert.Contains("rows of 6 to 8 in", limit.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(15, LimitVerdict.NoPublishedLimit)]
    [InlineData(30, LimitVerdict.Above)]
    public void ByRowSpacing_RowsWiderThan_BeginAboveTheBound(double row, LimitVerdict verdict) =>
        Assert.Equal(
            verdict,
            (Sown.Wheat() with { Crop = Crop.Soybean, RowSpacing = Sown.Inches(row) }).Limit("MB-SOY", LimitedNutrient.AllNutrients).Verdict
        );

    [Theory]
    [InlineData(1, 9, true)]
    [InlineData(0.98, 9, true)]
    [InlineData(0.75, 9, false)]
    [InlineData(2, 9, false)]
    [InlineData(1, 10, false)]
    public void OneOpener_AnyOther_HasNoNumber(double spread, double row, bool hasNumber) =>
        Assert.Equal(
            hasNumber,
            (
                Sown.Wheat() with
                {
                    Crop = Crop.Canola,
                    Region = Region.Saskatchewan,
                    Spread = Sown.Inches(spread),
                    RowSpacing = Sown.Inches(row),
                }
            )
                .Limit("SK-CANOLA", LimitedNutrient.UreaNitrogen)
                .Allowed
                is not null
        );

    [Theory]
    [InlineData(1.5, 0.0)]
    [InlineData(1.6, 20.0)]
    public void AboveUtilisation_Peas_GetPhosphateOnlyAboveIt(double spread, double pounds) =>
        Assert.Equal(
            pounds,
            Sown.InPounds(
                (Sown.Wheat() with { Crop = Crop.Pea, Spread = Sown.Inches(spread), RowSpacing = Sown.Inches(10) })
                    .Limit("MPSG-PEA", LimitedNutrient.Phosphate)
                    .Allowed
            ),
            1e-9
        );

    [Theory]
    [InlineData(1.4, false)]
    [InlineData(1.5, true)]
    public void AboveUtilisation_NumberOfAStudy_HoldsFromItsUtilisationOn(double spread, bool hasNumber) =>
        Assert.Equal(
            hasNumber,
            (
                Sown.Wheat() with
                {
                    Crop = Crop.Lentil,
                    Region = Region.Saskatchewan,
                    Spread = Sown.Inches(spread),
                    RowSpacing = Sown.Inches(10),
                }
            )
                .Limit("USASK-PULSE", LimitedNutrient.Nitrogen)
                .Allowed
                is not null
        );

    private static SeedRowQuestion Kansas() => Sown.Wheat(Sown.Potash(10)) with { Region = Region.Kansas };
}
