namespace CalibrationApi.Engine.Quantities;

/// <summary>A volume flow, such as that of air.</summary>
/// <param name="CubicMetresPerSecond">Value in m3/s; finite.</param>
public readonly record struct VolumeFlow(double CubicMetresPerSecond) : IQuantity<VolumeFlow>
{
    /// <summary>Value in m3/s.</summary>
    public double CubicMetresPerSecond { get; } = Finite.Require(CubicMetresPerSecond);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.VolumePerTime;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => CubicMetresPerSecond;

    /// <inheritdoc/>
    public static VolumeFlow FromCanonical(double value) => new(value);
}
