using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>How bulk density was found to change with moisture in a published study: information, never a correction.</summary>
/// <param name="Material">The material.</param>
/// <param name="Dry">Bulk density at the lower moisture.</param>
/// <param name="Moist">Bulk density at the higher moisture.</param>
/// <param name="DryMoisture">The lower moisture.</param>
/// <param name="MoistMoisture">The higher moisture.</param>
/// <param name="DryBasis">Moisture is water over dry matter; otherwise over the whole.</param>
/// <param name="Source">The publication, in words.</param>
/// <remarks>
/// <para>Formula: change rho_moist / rho_dry - 1; for one point, that over the points between the two moistures.</para>
/// <para>Range: the studies held; a straight line between two printed ends, no more.</para>
/// <para>Source: SOURCES.md, keys DURSUN-2007, TABATABAEEFAR-2003, KARIMI-2009.</para>
/// <para>Accuracy: printed figures to every digit (BulkDensityTradeTests); a point of moisture within 1e-9
/// (BulkDensityEvaluationTests).</para>
/// </remarks>
public sealed record MoistureEffect(
    ReferenceMaterial Material,
    BulkDensity Dry,
    BulkDensity Moist,
    Ratio DryMoisture,
    Ratio MoistMoisture,
    bool DryBasis,
    string Source
)
{
    /// <summary>Every published study.</summary>
    public static IReadOnlyList<MoistureEffect> All { get; } =
    [
        new(ReferenceMaterial.SugarBeet, new(447), new(418), new(0.0839), new(0.14), DryBasis: true, "Dursun et al. 2007, sugar-beet seed"),
        new(
            ReferenceMaterial.Wheat,
            new(740),
            new(538.8),
            new(0),
            new(0.22),
            DryBasis: true,
            "Tabatabaeefar 2003, five varieties of wheat, moistened again"
        ),
        // Printed as 0.72 and 0.66 kg/m3, which can only be tonnes.
        new(
            ReferenceMaterial.Wheat,
            new(720),
            new(660),
            new(0.08),
            new(0.18),
            DryBasis: false,
            "Karimi et al. 2009, three varieties of wheat, moistened again"
        ),
    ];

    /// <summary>Relative change of bulk density over the moistures of the study.</summary>
    public double Change => Moist.KilogramsPerCubicMetre / Dry.KilogramsPerCubicMetre - 1;

    /// <summary>Relative change of bulk density for one percentage point of moisture, on average over the study.</summary>
    public double ChangePerPoint => Change / (100 * (MoistMoisture.Fraction - DryMoisture.Fraction));

    /// <summary>The studies of a material; often none.</summary>
    public static IReadOnlyList<MoistureEffect> Of(ReferenceMaterial material) => [.. All.Where(one => one.Material == material)];
}
