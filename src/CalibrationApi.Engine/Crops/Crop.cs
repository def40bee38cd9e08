namespace CalibrationApi.Engine.Crops;

/// <summary>
/// The crops for which something is published that a seed lot can be compared with. What is stated for one is never used for another.
/// </summary>
public enum Crop
{
    /// <summary>Wheat.</summary>
    Wheat,

    /// <summary>Barley.</summary>
    Barley,

    /// <summary>Oat.</summary>
    Oat,

    /// <summary>Rye.</summary>
    Rye,

    /// <summary>Corn (maize).</summary>
    Corn,

    /// <summary>Soybean.</summary>
    Soybean,

    /// <summary>Field pea.</summary>
    Pea,

    /// <summary>Lentil.</summary>
    Lentil,

    /// <summary>Chickpea.</summary>
    Chickpea,

    /// <summary>Dry bean.</summary>
    DryBean,

    /// <summary>Canola (rapeseed).</summary>
    Canola,

    /// <summary>Flax (linseed).</summary>
    Flax,

    /// <summary>Sunflower.</summary>
    Sunflower,

    /// <summary>Alfalfa (lucerne).</summary>
    Alfalfa,

    /// <summary>Red clover.</summary>
    RedClover,

    /// <summary>Vetch.</summary>
    Vetch,

    /// <summary>Ryegrass.</summary>
    Ryegrass,

    /// <summary>Timothy.</summary>
    Timothy,

    /// <summary>Any other crop; no source held here names it.</summary>
    Other,
}
