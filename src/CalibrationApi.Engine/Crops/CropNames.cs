namespace CalibrationApi.Engine.Crops;

/// <summary>Crops as sentences write them.</summary>
internal static class CropNames
{
    public static string Of(Crop crop) =>
        crop switch
        {
            Crop.DryBean => "dry bean",
            Crop.RedClover => "red clover",
            Crop.Other => "this crop",
            _ => crop.ToString().ToLowerInvariant(),
        };

    /// <summary>The crop as what is sown and grows, "oats" and "peas".</summary>
    public static string InPlural(Crop crop) =>
        crop is Crop.Oat or Crop.Soybean or Crop.DryBean or Crop.Pea or Crop.Lentil or Crop.Chickpea ? $"{Of(crop)}s" : Of(crop);
}
