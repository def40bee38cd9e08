namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>The crops that published limits name. A limit of one is never used for another.</summary>
public enum Crop
{
    /// <summary>Wheat.</summary>
    Wheat,

    /// <summary>Barley.</summary>
    Barley,

    /// <summary>Oats.</summary>
    Oats,

    /// <summary>Canola.</summary>
    Canola,

    /// <summary>Corn (maize).</summary>
    Corn,

    /// <summary>Sunflower.</summary>
    Sunflower,

    /// <summary>Soybeans.</summary>
    Soybeans,

    /// <summary>Dry beans.</summary>
    DryBeans,

    /// <summary>Flax (linseed).</summary>
    Flax,

    /// <summary>Field peas.</summary>
    Peas,

    /// <summary>Lentils.</summary>
    Lentils,

    /// <summary>Chickpeas.</summary>
    Chickpeas,

    /// <summary>Any other crop; no source held here names it.</summary>
    Other,
}
