namespace CalibrationApi.Engine.Catches;

/// <summary>Where a count of revolutions begins within its smallest step.</summary>
public enum CountStart
{
    /// <summary>Anywhere within a step: start and stop are both rounded.</summary>
    Free,

    /// <summary>On an edge of the sensor: only the stop is rounded.</summary>
    OnEdge,
}
