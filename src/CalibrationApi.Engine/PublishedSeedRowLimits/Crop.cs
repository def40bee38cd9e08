namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>The crops that published limits name. A limit of one is never used for another.</summary>
public enum Crop
{
    /// <summary>Wheat.</summary>
    Wheat,

    /// <summary>Barley.</summary>
    Barley,

    /// <summary>Oats.</summary>
    Oat,

    /// <summary>Canola.</summary>
    Canola,

    /// <summary>Corn (maize).</summary>
    Corn,

    /// <summary>Sunflower.</summary>
    Sunflower,

    /// <summary>Soybeans.</summary>
    Soybean,

    /// <summary>Dry beans.</summary>
    DryBean,

    /// <summary>Flax (linseed).</summary>
    Flax,

    /// <summary>Field peas.</summary>
    Pea,

    /// <summary>Lentils.</summary>
    Lentil,

    /// <summary>Chickpeas.</summary>
    Chickpea,

    /// <summary>Any other crop; no source held here names it.</summary>
    Other,
}
