namespace CalibrationApi.Engine.Quantities;

/// <summary>Sensor pulses per revolution.</summary>
/// <param name="Count">Value in pulses per revolution; finite.</param>
public readonly record struct PulsesPerRevolution(double Count) : IQuantity<PulsesPerRevolution>
{
    /// <summary>Value in pulses per revolution.</summary>
    public double Count { get; } = Finite.Require(Count);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.PulsesPerRevolution;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Count;

    /// <inheritdoc/>
    public static PulsesPerRevolution FromCanonical(double value) => new(value);
}
