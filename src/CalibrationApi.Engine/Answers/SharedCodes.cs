namespace CalibrationApi.Engine.Answers;

/// <summary>The codes of more than one capability.</summary>
public static class SharedCodes
{
    /// <summary>There is a single run or count, so that nothing shows how such readings scatter.</summary>
    public static NoteOrWarningCode SingleReading { get; } =
        new("single-reading", "Measure more than once: drive a run the other way, or count at four more spots chosen without looking.");

    /// <summary>A stated number fits a division by 10 where exact units divide by something near it.</summary>
    public static WarningCode DivideByTen { get; } =
        new("divide-by-ten", "Use the number of the answer, which is in exact units, or send yours with its own unit.");

    /// <summary>The change is smaller than its uncertainty and well inside the tolerance.</summary>
    public static NoteCode NoPracticalChange { get; } = new("no-practical-change", "Nothing to do: keep the value in force.");

    /// <summary>The value in force is good enough although a small change was detected.</summary>
    public static NoteCode WithinTolerance { get; } =
        new("within-tolerance", "Nothing to do: keep the value in force, or type in the new number if you like.");

    /// <summary>No change was detected, but neither was it shown that the value in force is within tolerance.</summary>
    public static WarningCode WithinToleranceNotShown { get; } =
        new("within-tolerance-not-shown", "Make another catch, or type in the number that the answer gives.");

    /// <summary>There is no value in force to compare with.</summary>
    public static NoteCode NoValueInForce { get; } =
        new(
            "no-value-in-force",
            "Type in the number that the answer gives, then adopt it. If the controller already holds a number, state it as valueInForce."
        );

    /// <summary>The scale or the points caught, not the number of catches, keep the interval wide.</summary>
    public static WarningCode PrecisionOutOfReach { get; } =
        new(
            "precision-out-of-reach",
            "Weigh on a finer or better checked scale, turn the meter longer for each catch, or ask for less precision. More catches do not help."
        );

    /// <summary>The catches scatter more than the repeatability explains.</summary>
    public static WarningOrStopCode CatchesScatterMoreThanExpected { get; } =
        new(
            "catches-scatter-more-than-expected",
            "Look for a cause: level in the tank, air leaks, bridging product, a slipping drive. Then catch again. Do not seed on a severity of stop."
        );

    /// <summary>A catch is small for its purpose.</summary>
    public static WarningCode SmallCatch { get; } = new("small-catch", "Turn the meter longer for each catch.");

    /// <summary>A catch covers few divisions of the scale.</summary>
    public static NoteCode CoarseScale { get; } = new("coarse-scale", "Weigh on a scale with a smaller division, or make larger catches.");

    /// <summary>The resolution of the controller costs a noticeable part of the tolerance.</summary>
    public static WarningOrStopCode EntryResolutionMatters { get; } =
        new(
            "entry-resolution-matters",
            "Use a form or a unit with more digits if the controller has one. Do not seed when it could only take 0."
        );

    /// <summary>A meter would have to turn slower or faster than it may.</summary>
    public static NoteOrWarningCode OutsideMeterWindow { get; } =
        new(
            "outside-meter-window",
            "Choose another metering element, another ground speed, or another rate. On a severity of note nothing needs to be done: another element of the machine serves."
        );

    /// <summary>Two members exclude each other, or settings cannot all be met.</summary>
    public static RefusalCode SettingsAtOdds { get; } =
        new("settings-at-odds", "The sentence names the members. Leave one of them out, or change the one that is wrong.");
}
