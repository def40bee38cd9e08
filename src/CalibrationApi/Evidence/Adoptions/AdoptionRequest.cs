using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>A value that was typed into a controller: who, why, from which test or stated by hand.</summary>
public sealed class AdoptionRequest : IEvidenceRequest
{
    /// <summary>
    /// The sender's own id, a UUID of version 7 in lower case: for offline work, and for repeating the request safely at any time. Default:
    /// the service makes one.
    /// </summary>
    [NewId]
    public string? Id { get; init; }

    /// <summary>Id of the machine.</summary>
    [Needed, Text(64)]
    public string? Machine { get; init; }

    /// <summary>Position of the meter on the machine.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Meter { get; init; }

    /// <summary>Metering element fitted.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? Element { get; init; }

    /// <summary>Setting of the meter; none when absent.</summary>
    [Text(Rules.LongestName)]
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    [Needed, Text(64)]
    public string? Product { get; init; }

    /// <summary>Id of the lot in the tank.</summary>
    [Text(64)]
    public string? Lot { get; init; }

    /// <summary>Id of the catch test that the value rests on; absent when it is stated by hand.</summary>
    [Text(64)]
    public string? Test { get; init; }

    /// <summary>The number that was typed in, in the unit of the controller's form.</summary>
    [Needed]
    public TypedNumber? TypedIn { get; init; }

    /// <summary>The meter speed at which a mass per time applies; needed for that form only.</summary>
    [Measured]
    public RotationQuantity? MeterSpeed { get; init; }

    /// <summary>Why it was adopted.</summary>
    [Needed, Text(500)]
    public string? Reason { get; init; }

    /// <summary>
    /// Why the number is right although something speaks against it: one answer for each code of the refusal, which names them all. Only
    /// after a request without it was refused; the record and every later answer show them.
    /// </summary>
    [Items(1, typeof(TypedValueCheck), nameof(TypedValueCheck.Codes))]
    public IReadOnlyList<Despite?>? Despite { get; init; }

    /// <summary>When it was typed in, RFC 3339 with offset.</summary>
    [Needed, InstantPast]
    public string? OccurredAt { get; init; }

    /// <summary>Who typed it in.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? RecordedBy { get; init; }

    /// <summary>The wrong adoption that this one takes the place of.</summary>
    public Supersedes? Supersedes { get; init; }
}

/// <summary>What spoke against a typed number, and why it is right all the same.</summary>
public sealed class Despite
{
    /// <summary>The code that the refusal gave.</summary>
    [KnownWords(typeof(TypedValueCheck), nameof(TypedValueCheck.Codes))]
    [Needed, Word(typeof(TypedValueCheck), nameof(TypedValueCheck.Codes))]
    public string? Code { get; init; }

    /// <summary>Why the number is right, in the words of the person who typed it in.</summary>
    [Needed, Text(500)]
    public string? Reason { get; init; }
}

/// <summary>A number as typed into a controller.</summary>
[CheckedBy(typeof(TypedNumberValidator))]
public sealed class TypedNumber
{
    /// <summary>The number.</summary>
    [Needed, Number(1e-9, 1e9)]
    public double? Value { get; init; }

    /// <summary>Its unit: of mass per revolution, or that of the form in which the meter's controller takes it.</summary>
    [ToldWord(typeof(ControllerUnits), nameof(ControllerUnits.All))]
    public string? Unit { get; init; }
}
