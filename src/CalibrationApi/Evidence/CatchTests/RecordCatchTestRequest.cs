using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>A catch test to be kept as evidence. What is known of machine, product and scale comes from their records.</summary>
[TakenFrom(
    nameof(ValueInForce),
    "Default the value adopted for this meter, element, setting and product, where there is one and no startValue is given."
)]
[TakenFrom(
    nameof(EarlierTest),
    "Default the stored test of the same meter, element, setting, product and lot since the value in force was adopted, not superseded, that bears this one out."
)]
[TakenFrom(nameof(CatchPoints), "Default the points caught, or the outlets of the meter.")]
[TakenFrom(nameof(TargetRate), "Default that of the plan named.")]
[TakenFrom(nameof(Area), "Default that of the plan named.")]
[TakenFrom(nameof(WantedPrecision), "Default that of the plan named; without one:")]
[TakenFrom(
    nameof(Repeatability),
    "Default from the catches of earlier tests of this meter, element, setting and product, once there are enough; before that as said above."
)]
[TakenFrom(nameof(RepeatabilityDegreesOfFreedom), "With a repeatability from earlier tests the default is theirs.")]
[TakenFrom(
    nameof(DayToDay),
    "Default from the earlier tests of this meter, element, setting and product, once there are five; before that:"
)]
public sealed class RecordCatchTestRequest : CatchTestData, IEvidenceRequest
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

    /// <summary>Setting of the meter, in the owner's words, for example a gear; none when absent.</summary>
    [Text(Rules.LongestName)]
    public string? Setting { get; init; }

    /// <summary>Id of the product.</summary>
    [Needed, Text(64)]
    public string? Product { get; init; }

    /// <summary>Id of the lot.</summary>
    [Text(64)]
    public string? Lot { get; init; }

    /// <summary>Id of the scale.</summary>
    [Needed, Text(64)]
    public string? Scale { get; init; }

    /// <summary>Id of the container that the catches fell into.</summary>
    [Text(64)]
    public string? Container { get; init; }

    /// <summary>Id of the plan that the test belongs to; gives target rate, area and sowing conditions.</summary>
    [Text(64)]
    public string? Plan { get; init; }

    /// <summary>When the test was made, RFC 3339 with offset. The offset is given back as entered.</summary>
    [Needed, InstantPast]
    public string? OccurredAt { get; init; }

    /// <summary>Who made it.</summary>
    [Needed, Text(Rules.LongestName)]
    public string? RecordedBy { get; init; }

    /// <summary>Conditions during the test.</summary>
    public Conditions? Conditions { get; init; }

    /// <summary>A remark in the sender's words.</summary>
    [Text(2000)]
    public string? Note { get; init; }

    /// <summary>The wrong record of the same kind that this one takes the place of.</summary>
    public Supersedes? Supersedes { get; init; }
}
