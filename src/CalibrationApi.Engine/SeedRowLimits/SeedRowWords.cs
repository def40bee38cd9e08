using CalibrationApi.Engine.PublishedSeedRowLimits;

namespace CalibrationApi.Engine.SeedRowLimits;

/// <summary>How sentences name what the question is about.</summary>
internal static class SeedRowWords
{
    public static string Of(Region? region) =>
        region switch
        {
            null => "any region",
            Region.NorthDakota => "North Dakota",
            Region.SouthDakota => "South Dakota",
            Region.Elsewhere => "this region",
            { } named => named.ToString(),
        };

    /// <summary>Who publishes limits for a region, or will know who does.</summary>
    public static string WhomToAsk(Region? region) =>
        region switch
        {
            Region.Manitoba => "Manitoba Agriculture",
            Region.Saskatchewan => "the Saskatchewan Ministry of Agriculture",
            Region.Kansas => "Kansas State University Extension",
            Region.NorthDakota => "North Dakota State University Extension",
            Region.SouthDakota => "South Dakota State University Extension",
            Region.Alberta => "the agriculture department of Alberta",
            _ => "the agriculture department or the extension service of your region",
        };

    public static string Of(SoilTexture soil) => $"{soil.ToString().ToLowerInvariant()} soil";

    public static string Of(SeedbedMoisture moisture) => moisture == SeedbedMoisture.Good ? "moist seedbed" : "dry seedbed";

    public static string Of(LimitedNutrient nutrient) =>
        nutrient switch
        {
            LimitedNutrient.Nitrogen => "nitrogen",
            LimitedNutrient.UreaNitrogen => "urea nitrogen",
            LimitedNutrient.UreaAndSulfateNitrogen => "nitrogen of urea and ammonium sulfate",
            LimitedNutrient.NitrogenBesidePhosphates => "nitrogen beside that of ammonium phosphate",
            LimitedNutrient.Phosphate => "P2O5",
            LimitedNutrient.Potash => "K2O",
            LimitedNutrient.NitrogenPlusPotash => "nitrogen plus K2O",
            LimitedNutrient.Sulfur => "sulfur",
            LimitedNutrient.AllNutrients => "fertilizer nutrients",
            LimitedNutrient.PhosphateNitrogen => "nitrogen of ammonium phosphate",
            _ => throw new ArgumentOutOfRangeException(nameof(nutrient), nutrient, null),
        };

    public static string Of(Opener opener) => opener == Opener.DoubleDisc ? "double disc" : opener.ToString().ToLowerInvariant();

    /// <summary>"a, b and c".</summary>
    public static string List(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}";
}
