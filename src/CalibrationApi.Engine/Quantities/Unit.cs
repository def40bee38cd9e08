namespace CalibrationApi.Engine.Quantities;

/// <summary>One unit of measurement: its symbol in payloads, its exact factor, its codes in open standards.</summary>
/// <param name="Symbol">The symbol in payloads, for example <c>kg/ha</c>; unique over all dimensions.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="ToSi">Exact factor: value in this unit times the factor is the value in the SI unit of the dimension.</param>
/// <param name="Ucum">Code in the Unified Code for Units of Measure, where it has one.</param>
/// <param name="UnitedNations">Common code of UN/ECE Recommendation 20, where it has one.</param>
/// <param name="Adapt">Unit code of the AgGateway ADAPT standard, where it has one.</param>
/// <param name="Note">What a reader must know, for example which acre is meant.</param>
/// <param name="OffsetInSi">SI value of zero in this unit; 0 for every unit but those of temperature.</param>
/// <remarks>
/// <para>Formula: x_SI = x n / d + offset and x = (x_SI - offset) d / n, with the exact factor n / d.</para>
/// <para>Range: any finite value. Only temperatures have an offset.</para>
/// <para>Source: the exact definitions in NIST SP 811, appendix B (SOURCES.md, key NIST-SP811), written down in
/// <see cref="UnitTable"/>.</para>
/// <para>Accuracy: two roundings of a double: there and back within 4.5e-16 of the value (for temperatures of the value with its offset),
/// and a round number stays round (UnitTableTests); factors against the unit library or their exact constituents
/// (UnitFactorReferenceTests).</para>
/// </remarks>
public sealed record Unit(
    string Symbol,
    Dimension Dimension,
    ExactRatio ToSi,
    string? Ucum = null,
    string? UnitedNations = null,
    string? Adapt = null,
    string? Note = null,
    double OffsetInSi = 0
)
{
    // Multiplying by a numerator and dividing by a denominator that are both exact rounds twice at most;
    // where the factor is a whole number or its inverse, it rounds once, so 200 lb/ac stays close to 200.
    private readonly double numerator = ToSi.Numerator;
    private readonly double denominator = ToSi.Denominator;

    /// <summary>Converts <paramref name="value"/> from this unit to the SI unit of the dimension.</summary>
    /// <param name="value">A value in this unit.</param>
    public double Canonical(double value) => value * numerator / denominator + OffsetInSi;

    /// <summary>Converts <paramref name="canonical"/> from the SI unit of the dimension to this unit.</summary>
    /// <param name="canonical">A value in the SI unit.</param>
    public double FromCanonical(double canonical) => (canonical - OffsetInSi) * denominator / numerator;
}
