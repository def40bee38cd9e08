namespace CalibrationApi.Engine.Weighing;

/// <summary>How the empty container was taken into account.</summary>
public enum TareReading
{
    /// <summary>Gross and tare are two displayed readings for every catch.</summary>
    Each,

    /// <summary>One displayed tare reading serves all catches.</summary>
    Shared,

    /// <summary>The scale was set to zero with the empty container on it before each catch.</summary>
    Zeroed,
}
