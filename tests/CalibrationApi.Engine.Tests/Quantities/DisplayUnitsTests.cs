using System.Globalization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

public sealed class DisplayUnitsTests
{
    [Fact]
    public void Metric_EveryDimension_TakesTheFirstUnitOfItsList() =>
        Assert.All(Enum.GetValues<Dimension>(), dimension => Assert.Same(UnitTable.Of(dimension)[0], DisplayUnits.Metric[dimension]));

    [Theory]
    [InlineData(Dimension.Mass, "lb")]
    [InlineData(Dimension.MassPerArea, "lb/ac")]
    [InlineData(Dimension.MassPerRevolution, "lb/rev")]
    [InlineData(Dimension.Speed, "mi/h")]
    [InlineData(Dimension.Area, "ac")]
    [InlineData(Dimension.BulkDensity, "lb/bu-us")]
    [InlineData(Dimension.Pressure, "inH2O")]
    [InlineData(Dimension.Temperature, "degF")]
    [InlineData(Dimension.Time, "s")]
    [InlineData(Dimension.Ratio, "%")]
    public void UnitedStates_Dimension_TakesItsUsualUnit(Dimension dimension, string symbol) =>
        Assert.Equal(symbol, DisplayUnits.UnitedStates[dimension].Symbol);

    [Fact]
    public void With_AnotherUnit_ReplacesItInACopy()
    {
        var changed = DisplayUnits.Metric.With(UnitTable.Get("g"), UnitTable.Get("g/rev"));

        Assert.Equal("g", changed[Dimension.Mass].Symbol);
        Assert.Equal("g/rev", changed[Dimension.MassPerRevolution].Symbol);
        Assert.Equal("kg/ha", changed[Dimension.MassPerArea].Symbol);
        Assert.Equal("kg", DisplayUnits.Metric[Dimension.Mass].Symbol);
    }

    [Fact]
    public void Write_QuantityWithoutFormat_ShowsFourSignificantDigitsAndItsUnit() =>
        Assert.Equal(
            "0.3627 kg/rev, 17.08 kg, 90 kg/ha, 0.001235 kg",
            DisplayUnits.Metric.Write(
                $"{new MassPerRevolution(0.362694)}, {new Mass(17.08)}, {new MassPerArea(0.009)}, {new Mass(0.00123456)}"
            )
        );

    [Fact]
    public void Write_QuantityWithNumericFormat_AppliesItInTheDisplayUnit() =>
        Assert.Equal("6.0 % and 0.3 %", DisplayUnits.Metric.Write($"{new Ratio(0.0605):F1} and {new Ratio(0.003):0.##}"));

    [Fact]
    public void Write_NounAsFormat_StandsBeforeTheUnit()
    {
        Assert.Equal("250 plants/m2", DisplayUnits.Metric.Write($"{new CountPerArea(250):plants}"));
        Assert.Equal("23.23 seeds/ft2", DisplayUnits.UnitedStates.Write($"{new CountPerArea(250):seeds}"));
    }

    [Fact]
    public void Write_LargeNumber_HasNoGroupSeparatorAndKeepsItsWholePart() =>
        Assert.Equal("12346 kg", DisplayUnits.Metric.Write($"{new Mass(12345.6)}"));

    [Fact]
    public void Write_Zero_IsPlainZero() => Assert.Equal("0 kg", DisplayUnits.Metric.Write($"{new Mass(0)}"));

    [Fact]
    public void Write_NegativeQuantity_KeepsItsSign() => Assert.Equal("-261.3 kg", DisplayUnits.Metric.Write($"{new Mass(-261.29)}"));

    [Fact]
    public void Write_UnitedStates_ConvertsEveryQuantityOfTheSentence() =>
        Assert.Equal(
            "15 lb at 100 lb/ac over 10 ac",
            DisplayUnits.UnitedStates.Write(
                $"{new Mass(15 * 0.45359237)} at {new MassPerArea(100 * 0.45359237 / 4046.8564224)} over {new Area(40468.564224)}"
            )
        );

    [Fact]
    public void Write_NestedSentence_IsWrittenInTheSameUnits()
    {
        Sentence inner = $"{new Mass(1)}";

        Assert.Equal("Take 1000 g.", DisplayUnits.Metric.With(UnitTable.Get("g")).Write($"Take {inner}."));
    }

    [Fact]
    public void Write_CultureWithDecimalComma_StillWritesADecimalPoint()
    {
        var before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        CultureInfo.CurrentCulture = comma;
        try
        {
            Assert.Equal("0.5 kg of 2.5", DisplayUnits.Metric.Write($"{new Mass(0.5)} of {2.5}"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Value_AnyQuantity_IsItsNumberInTheDisplayUnit() =>
        Assert.Equal(90, DisplayUnits.Metric.Value(new MassPerArea(0.009)), 1e-12);
}
