using System.Text.Json.Serialization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Quantities;

// Members can be set because the generated reading code passes init-only ones through an array of arguments, which
// costs half as much again; quantities are most of what is read.

/// <summary>A number with its unit. The number alone means nothing, so both are required.</summary>
public abstract class Quantity
{
    /// <summary>The number, in the unit beside it.</summary>
    [JsonPropertyOrder(-2)]
    public double? Value { get; set; }

    /// <summary>The unit, written exactly as in <c>GET /v1/units</c>.</summary>
    [JsonPropertyOrder(-1)]
    public string? Unit { get; set; }

    /// <summary>The dimension of the quantities of a type.</summary>
    internal static Dimension DimensionOf(Type type) => ((Quantity)Activator.CreateInstance(type)!).Dimension;

    // Not public: an ignored public member would be accepted in a request without a word.
    internal abstract Dimension Dimension { get; }

    /// <summary>Value in the SI unit of the dimension; only for a quantity that passed validation.</summary>
    internal double Canonical() => UnitTable.Get(Unit!).Canonical(Value!.Value);

    /// <summary>The unit of a quantity that passed validation; null for an absent one.</summary>
    internal static Unit? UnitOf(Quantity? quantity) => quantity is null ? null : UnitTable.Get(quantity.Unit!);
}

/// <summary>A quantity of one dimension, readable as the engine's type.</summary>
public abstract class Quantity<T> : Quantity
    where T : struct, IQuantity<T>
{
    internal override Dimension Dimension => T.Of;

    /// <summary>The engine's value of a quantity that passed validation.</summary>
    internal T Read() => T.FromCanonical(Canonical());

    /// <summary>The engine's value, or null for an absent quantity.</summary>
    internal static T? Read(Quantity<T>? quantity) => quantity?.Read();
}
