namespace CalibrationApi.Client;

/// <summary>The units of an answer.</summary>
public enum UnitSystem
{
    /// <summary>Those of the question, or those in which a record was entered.</summary>
    AsAsked,

    /// <summary>Metric units.</summary>
    Metric,

    /// <summary>Units that are usual in the United States.</summary>
    Us,
}
