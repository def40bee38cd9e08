using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>A stored adoption.</summary>
public sealed class AdoptionAnswer
{
    /// <summary>Id, a UUID of version 7.</summary>
    public required string Id { get; init; }

    /// <summary>When it was typed in, with the offset it was entered with.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>The date of that in the machine's time zone.</summary>
    public required string LocalDate { get; init; }

    /// <summary>When the service received it.</summary>
    public required string ReceivedAt { get; init; }

    /// <summary>The value, and the gravest of what was noticed about it, in sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>The mass per revolution that the controller uses since then.</summary>
    public required MassPerRevolutionQuantity MassPerRevolution { get; init; }

    /// <summary>The request exactly as entered.</summary>
    public required AsKept<AdoptionRequest> Entered { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(TypedValueCodes), nameof(TypedValueCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>The record that took its place, with the reason; absent while it stands.</summary>
    public Supersedes? SupersededBy { get; init; }
}

/// <summary>A value in force: the number in the controller, since when, and under which conditions it was found.</summary>
public sealed class ValueInForceAnswer
{
    /// <summary>Id of the machine.</summary>
    public required string Machine { get; init; }

    /// <summary>Position of the meter.</summary>
    public required string Meter { get; init; }

    /// <summary>Metering element.</summary>
    public required string Element { get; init; }

    /// <summary>Setting of the meter; absent for none.</summary>
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    public required string Product { get; init; }

    /// <summary>The value, and the gravest of what was noticed about it, in sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>What it is good for: <c>usable</c>, <c>check-first</c> (a finding warns) or <c>do-not-use</c> (one stops).</summary>
    [KnownWords(typeof(Usability))]
    public required string Verdict { get; init; }

    /// <summary>The mass per revolution that the controller uses.</summary>
    public required MassPerRevolutionQuantity MassPerRevolution { get; init; }

    /// <summary>The number typed in.</summary>
    public required AnyQuantity TypedIn { get; init; }

    /// <summary>Id of the adoption.</summary>
    public required string Adoption { get; init; }

    /// <summary>Since when, with the offset it was entered with.</summary>
    public required string Since { get; init; }

    /// <summary>The date of that in the machine's time zone.</summary>
    public required string SinceLocalDate { get; init; }

    /// <summary>Who adopted it.</summary>
    public required string RecordedBy { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>All that spoke against the number when it was typed in, each with the reason given; absent when nothing did.</summary>
    public IReadOnlyList<Despite?>? Despite { get; init; }

    /// <summary>Id of the lot that it was found with.</summary>
    public string? Lot { get; init; }

    /// <summary>Treatment of that lot.</summary>
    public string? Treatment { get; init; }

    /// <summary>Id of the test that it rests on; absent when stated by hand.</summary>
    public string? Test { get; init; }

    /// <summary>What that test measured.</summary>
    public MeasuredMassPerRevolution? Measured { get; init; }

    /// <summary>Conditions of that test, as entered.</summary>
    public Conditions? Conditions { get; init; }

    /// <summary>The test that superseded the one it rests on: adopt its value.</summary>
    public Supersedes? BasisSupersededBy { get; init; }

    /// <summary>What was noticed.</summary>
    [SentCodes(typeof(TypedValueCodes), nameof(TypedValueCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }
}
