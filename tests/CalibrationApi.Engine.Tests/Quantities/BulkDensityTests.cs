using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

public sealed class BulkDensityTests
{
    // A pail of 20 litres holds 15 kg of a product of 750 kg/m3.
    [Fact]
    public void MassOf_AVolume_IsDensityTimesVolume() => NearlyEqual.Assert(15, new BulkDensity(750).MassOf(new Volume(0.02)).Kilograms);
}
