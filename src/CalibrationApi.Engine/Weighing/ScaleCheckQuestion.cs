using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>A scale and what it showed of known masses.</summary>
/// <param name="Scale">The scale, without a known error.</param>
/// <param name="Readings">At least one.</param>
public sealed record ScaleCheckQuestion(Scale Scale, IReadOnlyList<KnownMassReading> Readings);

/// <summary>One reading of a known mass.</summary>
/// <param name="Known">The mass, kg, above 0.</param>
/// <param name="Indicated">What the scale showed, kg.</param>
/// <param name="KnownUncertainty">Standard uncertainty of the known mass, kg; 0 when negligible.</param>
public sealed record KnownMassReading(Mass Known, Mass Indicated, Mass KnownUncertainty);
