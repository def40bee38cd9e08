namespace CalibrationApi.Engine.Quantities;

/// <summary>A volume.</summary>
/// <param name="CubicMetres">Value in m3; finite.</param>
public readonly record struct Volume(double CubicMetres) : IQuantity<Volume>
{
    /// <summary>Value in m3.</summary>
    public double CubicMetres { get; } = Finite.Require(CubicMetres);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Volume;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => CubicMetres;

    /// <inheritdoc/>
    public static Volume FromCanonical(double value) => new(value);
}
