namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>How a number of a source was found for an opener and its rows.</summary>
public enum LimitBasis
{
    /// <summary>The source prints a number for this geometry.</summary>
    PublishedCell,

    /// <summary>The geometry lies between two that the source prints; the stricter one is taken.</summary>
    StricterOfTwoCells,

    /// <summary>
    /// More of the seedbed is used than in any geometry that the source prints; the widest one is taken, which is stricter.
    /// </summary>
    WidestCell,
}
