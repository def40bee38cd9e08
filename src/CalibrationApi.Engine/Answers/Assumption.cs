using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>A value the engine used that the caller did not state, or a choice it made, with where it comes from.</summary>
/// <param name="Name">The name of the parameter that overrides it, camelCase.</param>
/// <param name="Value">The value, where it is a quantity.</param>
/// <param name="Origin">Published source, common practice or judgement, in words.</param>
/// <param name="Meter">The meter it is about, where the question held several.</param>
public sealed record Assumption(string Name, IQuantity? Value, string Origin, string? Meter = null);
