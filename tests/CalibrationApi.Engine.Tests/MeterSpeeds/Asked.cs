using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeterSpeeds;

/// <summary>Questions to start from.</summary>
internal static class Asked
{
    private static readonly MeterSpeedLimits FourToNinety = new(Planned.Rpm(4), Planned.Rpm(90));

    /// <summary>A meter of 9 m with one roller of 0.342 kg/rev.</summary>
    public static MeterSpeedQuestion Question(double[] kilogramsPerHectare, double[] kilometresPerHour) =>
        new()
        {
            CoveredWidth = new Length(9),
            Rates = [.. kilogramsPerHectare.Select(rate => new MassPerArea(rate / 10_000))],
            GroundSpeeds = [.. kilometresPerHour.Select(speed => new Speed(speed / 3.6))],
            Elements = [Element("roller", 0.342)],
        };

    public static MeteringElement Element(string name, double perRevolution, MeterSpeedLimits? limits = null) =>
        new(name, DeliveryCurve.Constant(new MassPerRevolution(perRevolution)), limits ?? FourToNinety);
}
