using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>Something that keeps a part of a set-up from being computed.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Member">The member of the plan that it is about, camelCase, with slashes between levels.</param>
/// <param name="Detail">What is missing or wrong, and what to do.</param>
/// <param name="About">The part of the set-up that the sentence speaks of; null where it has no quantities.</param>
public sealed record OpenPoint(OpenKind Kind, string Member, Sentence Detail, SetUpPart? About = null)
{
    internal static OpenPoint Missing(string member, Sentence detail) => new(OpenKind.MissingValue, member, detail);
}

/// <summary>What keeps a part of a set-up open.</summary>
public enum OpenKind
{
    /// <summary>A value is missing.</summary>
    MissingValue,

    /// <summary>A record that the plan names was retired or changed since.</summary>
    RecordAtOdds,

    /// <summary>A calculation refused what plan and records say.</summary>
    Refused,

    /// <summary>Nothing published settles it.</summary>
    NoPublishedNumber,
}

/// <summary>A part of a set-up, whose sentences have units of their own.</summary>
/// <param name="Kind">Which one.</param>
/// <param name="Meter">Place of the meter among the meters of the question; null when it is about the field.</param>
public readonly record struct SetUpPart(SetUpPartKind Kind, int? Meter = null);

/// <summary>The parts of a set-up.</summary>
public enum SetUpPartKind
{
    /// <summary>How much to sow for a stand.</summary>
    SeedingRate,

    /// <summary>Meter speeds, windows and elements.</summary>
    MeterSpeed,

    /// <summary>Another lot than behind the value in force.</summary>
    NewLot,

    /// <summary>What lies with the seed.</summary>
    SeedRow,

    /// <summary>The air stream.</summary>
    Fan,

    /// <summary>Nutrients and the rates that supply them.</summary>
    Nutrients,
}
