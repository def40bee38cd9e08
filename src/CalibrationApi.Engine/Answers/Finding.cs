using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Answers;

/// <summary>Something the engine noticed, with a stable code and a sentence that a vendor can show as it is.</summary>
public sealed record Finding
{
    private Finding(FindingCode code, Severity severity, Sentence detail, string? meter)
    {
        Code = code;
        Severity = severity;
        Detail = detail;
        Meter = meter;
    }

    /// <summary>Its code.</summary>
    public FindingCode Code { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>The sentence; its quantities are written in the units of the answer by <see cref="Quantities.DisplayUnits"/>.</summary>
    public Sentence Detail { get; init; }

    /// <summary>The meter it is about, where the question held several.</summary>
    public string? Meter { get; init; }

    /// <summary>A finding that is only worth knowing.</summary>
    public static Finding Note<T>(T code, Sentence detail, string? meter = null)
        where T : FindingCode, IMayNote => new(code, Severity.Note, detail, meter);

    /// <summary>A finding that should be looked at.</summary>
    public static Finding Warning<T>(T code, Sentence detail, string? meter = null)
        where T : FindingCode, IMayWarn => new(code, Severity.Warning, detail, meter);

    /// <summary>A finding that forbids seeding on the answer.</summary>
    public static Finding Stop<T>(T code, Sentence detail, string? meter = null)
        where T : FindingCode, IMayStop => new(code, Severity.Stop, detail, meter);

    /// <summary>The same, only to be looked at, of a code that may stop as well as warn.</summary>
    internal Finding AsWarning() =>
        Code is IMayWarn ? new(Code, Severity.Warning, Detail, Meter) : throw new InvalidOperationException($"{Code} does not warn.");
}
