namespace CalibrationApi.Engine.Quantities;

/// <summary>A length: a width, a distance, a spacing.</summary>
/// <param name="Metres">Value in metres; finite.</param>
public readonly record struct Length(double Metres) : IQuantity<Length>
{
    /// <summary>Value in metres.</summary>
    public double Metres { get; } = Finite.Require(Metres);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Length;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Metres;

    /// <inheritdoc/>
    public static Length FromCanonical(double value) => new(value);
}
