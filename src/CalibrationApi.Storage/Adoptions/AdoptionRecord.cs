using CalibrationApi.Storage.History;

namespace CalibrationApi.Storage.Adoptions;

/// <summary>A value that was typed into a controller, as stored.</summary>
public sealed record AdoptionRecord : IEvidenceRecord
{
    /// <summary>UUIDv7, lower case.</summary>
    public required string Id { get; init; }

    /// <summary>The series it is in force for.</summary>
    public required Series Series { get; init; }

    /// <summary>Lot at the time.</summary>
    public string? Lot { get; init; }

    /// <summary>The test it rests on; null when stated by hand.</summary>
    public string? Test { get; init; }

    /// <summary>The number typed in.</summary>
    public required double EnteredValue { get; init; }

    /// <summary>Its unit.</summary>
    public required string EnteredUnit { get; init; }

    /// <summary>The mass per revolution that follows, kg per revolution.</summary>
    public required double Value { get; init; }

    /// <summary>When it was typed in.</summary>
    public required DateTimeOffset OccurredAt { get; init; }

    /// <summary>When the service received it.</summary>
    public required DateTimeOffset ReceivedAt { get; init; }

    /// <summary>The request as entered, JSON.</summary>
    public required string Body { get; init; }

    /// <summary>Of the request: a repetition is recognised.</summary>
    public required string Fingerprint { get; init; }
}

/// <summary>What calculations need of an adoption.</summary>
/// <param name="Lot">Lot at the time.</param>
/// <param name="EnteredUnit">Unit of the number typed in.</param>
/// <param name="Value">The mass per revolution that follows, kg per revolution.</param>
/// <param name="Random">Random standard uncertainty of the test behind it, relative; null when there is none or nothing stands of
/// it.</param>
public sealed record AdoptedValue(string? Lot, string EnteredUnit, double Value, double? Random);

/// <summary>Which series are wanted; of anything where a part is null.</summary>
/// <param name="Meter">Position of the meter.</param>
/// <param name="Element">Metering element.</param>
/// <param name="Setting">Setting of the meter.</param>
/// <param name="Product">Id of the product.</param>
public sealed record SeriesFilter(string? Meter, string? Element, string? Setting, string? Product);

/// <summary>A value in force for a product.</summary>
/// <param name="Product">Id of the product.</param>
/// <param name="Value">The value.</param>
public sealed record ValueOfProduct(string Product, AdoptedValue Value);
