using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Simulation;

/// <summary>How full a metering element is, against its speed: the faster it turns, the less time its cells have to fill.</summary>
/// <param name="AtRest">Share filled at very low speed, above 0.</param>
/// <param name="HalvedAt">Speed at which half of that is left; null when speed does not matter.</param>
public sealed record FillEfficiency(double AtRest, RotationalSpeed? HalvedAt = null)
{
    /// <summary>Share filled at a speed: AtRest / (1 + n / HalvedAt).</summary>
    public double At(RotationalSpeed speed) =>
        HalvedAt is { } halved ? AtRest / (1 + speed.RevolutionsPerSecond / halved.RevolutionsPerSecond) : AtRest;
}
