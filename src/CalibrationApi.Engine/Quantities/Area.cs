namespace CalibrationApi.Engine.Quantities;

/// <summary>An area.</summary>
/// <param name="SquareMetres">Value in m2; finite.</param>
public readonly record struct Area(double SquareMetres) : IQuantity<Area>
{
    /// <summary>Value in m2.</summary>
    public double SquareMetres { get; } = Finite.Require(SquareMetres);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Area;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => SquareMetres;

    /// <inheritdoc/>
    public static Area FromCanonical(double value) => new(value);
}
