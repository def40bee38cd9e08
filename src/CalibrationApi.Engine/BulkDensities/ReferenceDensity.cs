using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>What a published bulk density is.</summary>
public enum ReferenceDensityKind
{
    /// <summary>Typical values, given by their publisher as a guide.</summary>
    TypicalRange,

    /// <summary>Values measured in a study.</summary>
    MeasuredRange,

    /// <summary>The weight by which the law counts bushels; a lot can be lighter or heavier.</summary>
    LegalBushelWeight,

    /// <summary>A rounded factor from the volume of a store to the mass in it.</summary>
    StorageFactor,
}

/// <summary>A published bulk density, as printed.</summary>
/// <param name="Material">The material.</param>
/// <param name="Low">Lowest printed value, in <paramref name="Unit"/>.</param>
/// <param name="High">Highest printed value; the lowest where one value is printed.</param>
/// <param name="Unit">Unit of the printed values.</param>
/// <param name="Kind">What the values are.</param>
/// <param name="Source">The publication, in words.</param>
public sealed record ReferenceDensity(
    ReferenceMaterial Material,
    double Low,
    double High,
    Unit Unit,
    ReferenceDensityKind Kind,
    string Source
)
{
    /// <summary>Lowest printed value.</summary>
    public BulkDensity Lowest => new(Unit.Canonical(Low));

    /// <summary>Highest printed value.</summary>
    public BulkDensity Highest => new(Unit.Canonical(High));
}
