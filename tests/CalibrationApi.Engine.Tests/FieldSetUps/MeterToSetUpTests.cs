using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.FieldSetUps;

/// <summary>Which mass per revolution a meter counts with.</summary>
public sealed class MeterToSetUpTests
{
    private static readonly ElementToSetUp Coarse = new("coarse", MeterSpeedLimits.None) { Displacement = new Volume(0.6e-3) };

    private static readonly ElementInForce InForce = new(new MassPerRevolution(0.342), 0.012);

    private static readonly MeterToSetUp Front = Planted.Front with { Elements = [Coarse], StartValue = new MassPerRevolution(0.30) };

    [Fact]
    public void ValueOf_ElementWithAValueInForce_IsThatWithItsUncertainty()
    {
        var known = Front.ValueOf(Coarse with { InForce = InForce })!;

        Assert.Equal((ValueOrigin.ValueInForce, 0.342, 0.012), (known.From, known.Value.KilogramsPerRevolution, known.RelativeUncertainty));
    }

    [Fact]
    public void ValueOf_NothingInForce_IsTheStartValueOfTheElementFittedOnly()
    {
        Assert.Equal((ValueOrigin.StartValue, 0.30), (Front.ValueOfFitted()!.From, Front.ValueOfFitted()!.Value.KilogramsPerRevolution));
        Assert.Equal(ValueOrigin.Displacement, Front.ValueOf(Coarse with { Name = "other" })!.From);
    }

    // 0.6 L of 620 kg/m3 at a usual fill of 0.9.
    [Fact]
    public void ValueOf_NothingKnownButItsVolume_IsWhatThatHolds()
    {
        var known = (Front with { StartValue = null }).ValueOfFitted()!;

        Assert.Equal(ValueOrigin.Displacement, known.From);
        NearlyEqual.Assert(0.9 * 620 * 0.6e-3, known.Value.KilogramsPerRevolution);
        Assert.True(known.RelativeUncertainty >= 0.15);
    }

    [Fact]
    public void ValueOf_LotWithADensityOfItsOwn_CountsWithThat()
    {
        var meter = Front with
        {
            StartValue = null,
            Lot = new SeedLot { Density = new BulkDensity(700) },
        };

        NearlyEqual.Assert(0.9 * 700 * 0.6e-3, meter.ValueOfFitted()!.Value.KilogramsPerRevolution);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void ValueOf_DensityOrDisplacementUnknown_IsNothing(bool withDensity)
    {
        var meter = Front with { StartValue = null, Product = withDensity ? Planted.Barley : Planted.Barley with { Density = null } };

        Assert.Null(meter.ValueOf(withDensity ? Coarse with { Displacement = null } : Coarse));
    }
}
