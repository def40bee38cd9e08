namespace CalibrationApi.Engine.Answers;

/// <summary>How much a finding matters to the person who reads it.</summary>
public enum Severity
{
    /// <summary>Worth knowing; nothing needs to be done.</summary>
    Note,

    /// <summary>The answer stands, but something should be looked at before relying on it.</summary>
    Warning,

    /// <summary>Do not seed on this answer before it is resolved.</summary>
    Stop,
}
