namespace CalibrationApi.Engine.Quantities;

/// <summary>Sensor pulses per distance driven.</summary>
/// <param name="PerMetre">Value in pulses per metre; finite.</param>
public readonly record struct PulsesPerDistance(double PerMetre) : IQuantity<PulsesPerDistance>
{
    /// <summary>Value in pulses per metre.</summary>
    public double PerMetre { get; } = Finite.Require(PerMetre);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.PulsesPerDistance;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => PerMetre;

    /// <inheritdoc/>
    public static PulsesPerDistance FromCanonical(double value) => new(value);
}
