namespace CalibrationApi.Client.Models;

// Some types of the contract carry more than a quantity. Where the quantity alone is enough, it can stand in their place.

public partial class ReferenceOfTest
{
    /// <summary>A mass per revolution to compare with, of which nothing more is known.</summary>
    /// <param name="quantity">The mass per revolution.</param>
    public static implicit operator ReferenceOfTest?(MassPerRevolutionQuantity? quantity) =>
        quantity is null
            ? null
            : new() { Value = quantity.Value, Unit = Word.Same<MassPerRevolutionQuantity_unit, ReferenceOfTest_unit>(quantity.Unit) };
}

public partial class TypedNumber
{
    /// <summary>A mass per revolution as typed in.</summary>
    /// <param name="quantity">The mass per revolution.</param>
    public static implicit operator TypedNumber?(MassPerRevolutionQuantity? quantity) =>
        quantity is null
            ? null
            : new() { Value = quantity.Value, Unit = Word.Same<MassPerRevolutionQuantity_unit, TypedNumber_unit>(quantity.Unit) };

    /// <summary>A mass as typed in, for a controller that takes a mass per some revolutions or per pulse.</summary>
    /// <param name="quantity">The mass.</param>
    public static implicit operator TypedNumber?(MassQuantity? quantity) =>
        quantity is null ? null : new() { Value = quantity.Value, Unit = Word.Same<MassQuantity_unit, TypedNumber_unit>(quantity.Unit) };

    /// <summary>A volume as typed in, for a controller that takes a volume per revolution.</summary>
    /// <param name="quantity">The volume.</param>
    public static implicit operator TypedNumber?(VolumeQuantity? quantity) =>
        quantity is null ? null : new() { Value = quantity.Value, Unit = Word.Same<VolumeQuantity_unit, TypedNumber_unit>(quantity.Unit) };

    /// <summary>The number that an evaluation says to enter, as typed in.</summary>
    /// <param name="entry">What to enter.</param>
    public static implicit operator TypedNumber?(EntryAnswer? entry) =>
        entry is null ? null : new() { Value = entry.Value, Unit = Word.Read<TypedNumber_unit>(entry.Unit) };
}
