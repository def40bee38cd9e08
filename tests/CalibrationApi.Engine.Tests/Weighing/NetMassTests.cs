using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Tests.Weighing;

public sealed class NetMassTests
{
    [Theory]
    [InlineData(17.25, 0.75, 16.5)]
    [InlineData(0.75, 17.25, -16.5)]
    public void Of_FullAndEmpty_IsWhatIsInside(double gross, double tare, double net) =>
        NearlyEqual.Assert(net, NetMass.Of(new Mass(gross), new Mass(tare)).Kilograms, 1e-12);
}
