using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Tests.Plumbing.Validation;

/// <summary>What somebody is told who wrote a unit as people do.</summary>
public sealed class UnitHintTests
{
    [Theory]
    [InlineData("mph", Dimension.Speed, "Write mi/h:")]
    [InlineData("lbs", Dimension.Mass, "Write lb:")]
    [InlineData("revs", Dimension.Revolutions, "Write rev:")]
    [InlineData("plants/ft2", Dimension.CountPerArea, "Write /ft2:")]
    [InlineData("KG", Dimension.Mass, "Write kg:")]
    public void UnitFault_UsualSpelling_SaysWhatToWrite(string text, Dimension dimension, string hint)
    {
        var (code, detail) = Rules.UnitFault(text, dimension)!.Value;

        Assert.Same(ErrorCodes.UnitUnknown, code);
        Assert.StartsWith(hint, detail, StringComparison.Ordinal);
    }

    [Fact]
    public void UnitFault_BushelOfVolume_IsToldApart()
    {
        Assert.Same(ErrorCodes.UnitAmbiguous, Rules.UnitFault("bu", Dimension.Volume)!.Value.Code);
        Assert.Same(ErrorCodes.UnitWrongDimension, Rules.UnitFault("bu", Dimension.Mass)!.Value.Code);
    }
}
