namespace CalibrationApi.Engine.Quantities;

/// <summary>A mass flow.</summary>
/// <param name="KilogramsPerSecond">Value in kg/s; finite.</param>
public readonly record struct MassFlow(double KilogramsPerSecond) : IQuantity<MassFlow>
{
    /// <summary>Value in kg/s.</summary>
    public double KilogramsPerSecond { get; } = Finite.Require(KilogramsPerSecond);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.MassPerTime;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => KilogramsPerSecond;

    /// <inheritdoc/>
    public static MassFlow FromCanonical(double value) => new(value);
}
