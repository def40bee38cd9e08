using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.ControllerEntries;

/// <summary>What to enter, in the form and resolution that the controller takes.</summary>
public sealed class ControllerEntryTests
{
    private const double Found = 0.36269;

    [Theory]
    [InlineData("kg/rev", 3, 0.363, "0.363 kg/rev")]
    [InlineData("kg/rev", 2, 0.36, "0.36 kg/rev")]
    [InlineData("g/rev", 1, 362.7, "362.7 g/rev")]
    [InlineData("lb/rev", 4, 0.7996, "0.7996 lb/rev")]
    [InlineData("oz/rev", 2, 12.79, "12.79 oz/rev")]
    public void For_MassPerRevolution_RoundsInTheUnitOfTheController(string unit, int decimals, double typed, string text)
    {
        var number = ControllerEntry.PerRevolutionOf(UnitTable.Get(unit), decimals).For(Found);

        Assert.Equal(typed, number.Typed);
        Assert.Equal(text, number.ToString());
        NearlyEqual.Assert(UnitTable.Get(unit).Canonical(typed), number.Resulting.KilogramsPerRevolution);
        NearlyEqual.Assert(number.Resulting.KilogramsPerRevolution / Found - 1, number.RoundingError, 1e-9);
    }

    [Fact]
    public void For_StatedRevolutions_IsSoManyTimesTheMass()
    {
        var number = ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 2, 10).For(Found);

        Assert.Equal(3.63, number.Typed);
        NearlyEqual.Assert(0.363, number.Resulting.KilogramsPerRevolution);
        Assert.Equal("3.63 kg", number.ToString());
    }

    [Theory]
    [InlineData(1, 0.363, "0.363 kg per revolution")]
    [InlineData(20, 7.254, "7.254 kg per 20 revolutions")]
    [InlineData(1000, 362.69, "362.690 kg per 1000 revolutions")]
    public void For_AnyNumberOfRevolutions_SaysHowMany(int revolutions, double typed, string words)
    {
        var number = ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 3, revolutions).For(Found);

        Assert.Equal((typed, words), (number.Typed, number.InWords));
        NearlyEqual.Assert(typed / revolutions, number.Resulting.KilogramsPerRevolution);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1001)]
    public void Create_RevolutionsThatNoNumberStandsFor_AreRefused(int revolutions) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 3, revolutions));

    [Fact]
    public void For_Pulses_IsTheMassOfOnePulse()
    {
        var number = ControllerEntry.PerPulse(UnitTable.Get("g"), 3, new PulsesPerRevolution(360)).For(Found);

        Assert.Equal(1.007, number.Typed);
        NearlyEqual.Assert(1.007e-3 * 360, number.Resulting.KilogramsPerRevolution);
    }

    [Fact]
    public void For_VolumePerRevolution_DividesByTheDensity()
    {
        var number = ControllerEntry.VolumePerRevolution(UnitTable.Get("L"), 3, new BulkDensity(620)).For(Found);

        Assert.Equal(0.585, number.Typed);
        NearlyEqual.Assert(0.585e-3 * 620, number.Resulting.KilogramsPerRevolution);
    }

    [Fact]
    public void For_MassPerTime_IsTheFlowAtTheStatedMeterSpeed()
    {
        var number = ControllerEntry.PerTime(UnitTable.Get("kg/min"), 2, new RotationalSpeed(35.0 / 60)).For(Found);

        Assert.Equal(12.69, number.Typed);
        NearlyEqual.Assert(12.69 / 35, number.Resulting.KilogramsPerRevolution);
    }

    [Theory]
    [InlineData(0.3625, 3, 0.363)]
    [InlineData(0.125, 2, 0.13)]
    [InlineData(0.5, 0, 1)]
    public void For_HalfOfTheLastDecimal_RoundsAwayFromZero(double value, int decimals, double typed) =>
        Assert.Equal(typed, ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), decimals).For(value).Typed);

    [Fact]
    public void For_ValueOnTheResolution_HasNoRoundingError() =>
        Assert.Equal(0, ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3).For(0.363).RoundingError, 1e-15);

    [Fact]
    public void RoundingError_NumberAboveTheValueFound_IsPositive()
    {
        var entry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 2);

        Assert.True(entry.For(0.356).RoundingError > 0);
        Assert.True(entry.For(0.364).RoundingError < 0);
    }

    [Fact]
    public void ToString_TrailingZeros_AreTypedToo() =>
        Assert.Equal("0.360 kg/rev", ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3).For(0.36).ToString());

    [Theory]
    [InlineData(ControllerForm.MassPerRevolution, Dimension.MassPerRevolution)]
    [InlineData(ControllerForm.MassPerRevolutions, Dimension.Mass)]
    [InlineData(ControllerForm.MassPerPulse, Dimension.Mass)]
    [InlineData(ControllerForm.VolumePerRevolution, Dimension.Volume)]
    [InlineData(ControllerForm.MassPerTime, Dimension.MassPerTime)]
    public void DimensionOf_EachForm_IsThatOfTheNumberTypedIn(ControllerForm form, Dimension dimension) =>
        Assert.Equal(dimension, ControllerEntry.DimensionOf(form));

    [Fact]
    public void DimensionOf_UnknownForm_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ControllerEntry.DimensionOf((ControllerForm)99));

    [Fact]
    public void Create_UnitOfAnotherDimension_IsRefused() =>
        Assert.Throws<ArgumentException>(() => ControllerEntry.PerRevolutionOf(UnitTable.Get("kg"), 3));

    [Theory]
    [InlineData(-1)]
    [InlineData(10)]
    public void Create_DecimalsThatNoControllerTakes_AreRefused(int decimals) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), decimals));

    [Fact]
    public void Evaluate_VerdictIsAdopt_SaysWhatToEnter()
    {
        var result = (
            Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.342) with
            {
                ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
            }
        ).Evaluated();

        Assert.Equal(Verdict.Adopt, result.Decision.Verdict);
        Assert.Equal(0.363, result.Enter?.Typed);
        Assert.Contains("Adopt 0.363 kg/rev.", result.Headline.InMetric(), StringComparison.Ordinal);
    }

    public static TheoryData<ControllerEntry, string> Forms =>
        new()
        {
            { ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3), "0.363 kg/rev" },
            { ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 2, 10), "3.63 kg per 10 revolutions" },
            { ControllerEntry.PerPulse(UnitTable.Get("g"), 3, new PulsesPerRevolution(360)), "1.007 g per pulse" },
            { ControllerEntry.VolumePerRevolution(UnitTable.Get("L"), 3, new BulkDensity(620)), "0.585 L per revolution" },
            { ControllerEntry.PerTime(UnitTable.Get("kg/min"), 2, new RotationalSpeed(35.0 / 60)), "12.69 kg/min" },
        };

    [Theory]
    [MemberData(nameof(Forms))]
    public void Behind_TheNumberToTypeIn_IsWhatTheControllerThenUses(ControllerEntry entry, string words)
    {
        var number = entry.For(Found);

        Assert.StartsWith(number.ToString(), words, StringComparison.Ordinal);
        Assert.Equal(number.Resulting, entry.Behind(number.Typed));
        Assert.Equal(Found, entry.Behind(number.Typed / (1 + number.RoundingError)).KilogramsPerRevolution, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Step_OfTheLastDigit_IsTheDifferenceOfNeighbouringNumbers(ControllerEntry entry, string words)
    {
        Assert.NotEmpty(words);
        var next = entry.Behind(1 + Math.Pow(10, -entry.Decimals)).KilogramsPerRevolution;

        NearlyEqual.Assert(next - entry.Behind(1).KilogramsPerRevolution, entry.Step.KilogramsPerRevolution, 1e-9);
    }

    [Theory]
    [InlineData(ControllerForm.MassPerRevolution, "kg/rev", 0.5)]
    [InlineData(ControllerForm.MassPerRevolutions, "kg", 0.02)]
    [InlineData(ControllerForm.MassPerPulse, "kg", 0.5 * 360)]
    [InlineData(ControllerForm.VolumePerRevolution, "m3", 0.5 * 620)]
    [InlineData(ControllerForm.MassPerTime, "kg/min", 0.5 / 60 / 2)]
    public void Of_EachForm_ReadsItsNumber(ControllerForm form, string unit, double massPerRevolution) =>
        NearlyEqual.Assert(
            massPerRevolution,
            ControllerEntry
                .Of(form, UnitTable.Get(unit), 3, 25, new PulsesPerRevolution(360), new BulkDensity(620), new RotationalSpeed(2))
                .Behind(0.5)
                .KilogramsPerRevolution
        );

    [Theory]
    [InlineData(ControllerForm.MassPerRevolutions, "kg")]
    [InlineData(ControllerForm.MassPerPulse, "kg")]
    [InlineData(ControllerForm.VolumePerRevolution, "L")]
    [InlineData(ControllerForm.MassPerTime, "kg/min")]
    public void Of_WithoutWhatTheFormNeeds_IsRefusedAsACodingMistake(ControllerForm form, string unit) =>
        Assert.Throws<ArgumentNullException>(() => ControllerEntry.Of(form, UnitTable.Get(unit), 3, null, null, null, null));

    [Theory]
    [MemberData(nameof(Forms))]
    public void InWords_EachForm_SaysWhatTheNumberIsFor(ControllerEntry entry, string words) =>
        Assert.Equal(words, entry.For(Found).InWords);

    [Fact]
    public void Evaluate_VerdictIsKeep_NamesTheNumberThatTheControllerShows()
    {
        var test = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)) with
        {
            ControllerEntry = ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 2, 10),
        };

        Assert.EndsWith("Keep 3.60 kg per 10 revolutions.", test.InForce(0.36).Evaluated().Headline.InMetric(), StringComparison.Ordinal);
        Assert.EndsWith("Keep 0.3604 kg/rev.", test.InForce(0.3604).Evaluated().Headline.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Evaluate_VerdictIsKeep_SaysNothingToEnter()
    {
        var result = (
            Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.362) with
            {
                ControllerEntry = ControllerEntry.PerRevolutionOf(UnitTable.Get("kg/rev"), 3),
            }
        ).Evaluated();

        Assert.Equal(Verdict.Keep, result.Decision.Verdict);
        Assert.Null(result.Enter);
    }

    // Both numbers to look at on the controller; one that is stated more finely than it can show comes with its rounding.
    [Fact]
    public void Evaluate_Keep_GivesBothValuesInTheFormOfTheController()
    {
        var kept = (
            Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.3604) with
            {
                ControllerEntry = ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 2, 10),
            }
        ).Evaluated();

        Assert.Equal(Verdict.Keep, kept.Decision.Verdict);
        Assert.Equal((3.63, 3.6), (kept.MeasuredEntry!.Typed, kept.InForceEntry!.Typed));
        NearlyEqual.Assert(3.6 / 3.604 - 1, kept.InForceEntry.RoundingError, 1e-9);
        Assert.Null(kept.Enter);
        var adopted = (
            Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.342) with
            {
                ControllerEntry = ControllerEntry.PerRevolutionsOf(UnitTable.Get("kg"), 2, 10),
            }
        ).Evaluated();
        Assert.Equal((3.63, 3.42), (adopted.MeasuredEntry!.Typed, adopted.InForceEntry!.Typed));
        var none = (
            Given.Test(Given.Delivering(0.30), Given.Delivering(0.42)).InForce(0.36) with
            {
                ControllerEntry = kept.MeasuredEntry.Entry,
            }
        ).Evaluated();
        Assert.Equal((null, null), (none.MeasuredEntry, none.InForceEntry));
    }
}
