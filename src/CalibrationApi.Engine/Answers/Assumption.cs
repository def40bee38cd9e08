using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>A value the engine used that the caller did not state, or a choice it made, with where it comes from.</summary>
/// <param name="Name">
/// What it is called, camelCase; the path of the member that overrides it, where one does and <see cref="Member"/> names no other.
/// </param>
/// <param name="Value">The value, where it is a quantity.</param>
/// <param name="Origin">Published source, common practice or judgement, in words.</param>
/// <param name="Meter">The meter it is about, where the question held several.</param>
public sealed record Assumption(string Name, IQuantity? Value, string Origin, string? Meter = null)
{
    /// <summary>The path of the member of the question that overrides it, with places of lists; empty where none does.</summary>
    public string Member { get; init; } = Name;

    /// <summary>The value, where it is a number without a unit.</summary>
    public double? Number { get; init; }

    /// <summary>The value, where it is a word.</summary>
    public string? Word { get; init; }

    /// <summary>The value, where it is yes or no.</summary>
    public bool? Flag { get; init; }
}
