namespace CalibrationApi.Engine.Answers;

/// <summary>Something the engine noticed, with a stable code and a sentence that a vendor can show as it is.</summary>
/// <param name="Code">Stable kebab-case code; see <see cref="FindingCode"/>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Detail">The sentence; its quantities are written in the units of the answer by
/// <see cref="Quantities.DisplayUnits"/>.</param>
/// <param name="Meter">The meter it is about, where the question held several.</param>
public sealed record Finding(string Code, Severity Severity, FormattableString Detail, string? Meter = null)
{
    /// <summary>A finding that is only worth knowing.</summary>
    public static Finding Note(string code, FormattableString detail, string? meter = null) => new(code, Severity.Note, detail, meter);

    /// <summary>A finding that should be looked at.</summary>
    public static Finding Warning(string code, FormattableString detail, string? meter = null) =>
        new(code, Severity.Warning, detail, meter);

    /// <summary>A finding that forbids seeding on the answer.</summary>
    public static Finding Stop(string code, FormattableString detail, string? meter = null) => new(code, Severity.Stop, detail, meter);
}
