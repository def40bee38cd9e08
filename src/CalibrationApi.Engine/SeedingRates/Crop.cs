namespace CalibrationApi.Engine.SeedingRates;

/// <summary>Crops for which something is published that a seed lot can be compared with.</summary>
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
}

/// <summary>Crops as sentences write them.</summary>
internal static class CropNames
{
    public static string Of(Crop crop) =>
        crop switch
        {
            Crop.DryBean => "dry bean",
            Crop.RedClover => "red clover",
            _ => crop.ToString().ToLowerInvariant(),
        };
}
