namespace CalibrationApi.Engine.CatchTests;

/// <summary>What makes a catch large enough to be worth its trouble.</summary>
public static class CatchSize
{
    /// <summary>
    /// Least catch of a bulk product, kg: 15 lb. Common practice, no published source; never for small seed, where turns
    /// and scale divisions decide.
    /// </summary>
    public const double LeastBulkCatch = 15 * 0.45359237;

    /// <summary>Revolutions from which start and stop hardly matter; judgement, no published source.</summary>
    public const double UsualRevolutions = 20;

    /// <summary>
    /// Scale divisions from which rounding hardly matters: the first step of class III in OIML R 76 (SOURCES.md, key OIML-R76) as a
    /// yardstick; judgement.
    /// </summary>
    public const double FineDivisions = 500;
}
