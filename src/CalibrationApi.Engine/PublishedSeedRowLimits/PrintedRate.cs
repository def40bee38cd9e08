using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>A rate as a source prints it, with the unit it prints.</summary>
/// <param name="Value">The number, at least 0.</param>
/// <param name="Unit">Symbol of a unit of mass per area.</param>
public readonly record struct PrintedRate(double Value, string Unit = "lb/ac")
{
    /// <summary>The same as a quantity.</summary>
    public MassPerArea Rate => new(UnitTable.Get(Unit).Canonical(Value));
}

/// <summary>A limit that a source prints for one geometry.</summary>
/// <param name="Geometry">The geometry as the source prints it.</param>
/// <param name="Rate">The limit there.</param>
public sealed record PrintedCell(string Geometry, PrintedRate Rate);
