using CalibrationApi.Engine.Crops;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>A material of the stand-loss model, and how a product is known to be it.</summary>
/// <param name="Name">What sentences call it.</param>
/// <param name="Form">Form of its nitrogen.</param>
/// <param name="Nitrogen">Share of nitrogen in it.</param>
internal sealed record StandLossMaterial(string Name, NitrogenForm Form, double Nitrogen);

/// <summary>
/// Slopes of the linear stand-loss model of South Dakota State University: emergence in the laboratory against the rate of a
/// material laid with the seed, per cent for 1 lb/ac in furrows of 1 in and rows of 30 in.
/// </summary>
/// <remarks>
/// Source: SOURCES.md, key SDSU-MODEL. Read were urea, urea with a urease inhibitor, 28-0-0 and ammonium nitrate for the crops below; the
/// worksheet has further crops and materials, among them phosphates and potash, whose slopes were not read, and none is carried
/// over from another crop. It lists two kinds of wheat, of which the steeper slope is taken. As printed the inhibitor makes the
/// slope of soybeans a little steeper, while it makes all others flatter.
/// </remarks>
internal static class StandLossSlopes
{
    public static LimitSource Source { get; } =
        new(
            "SDSU-MODEL",
            "South Dakota State University",
            "Maximum fertilizer material to apply with seed, a worksheet",
            null,
            "South Dakota",
            [Region.SouthDakota],
            "docstoc.com/docs/106501970"
        );

    private static readonly StandLossMaterial Urea = new("urea", NitrogenForm.Urea, 0.46);
    private static readonly StandLossMaterial Treated = new("urea with a urease inhibitor", NitrogenForm.UreaWithInhibitor, 0.46);
    private static readonly StandLossMaterial Solution = new("28-0-0", NitrogenForm.UreaAmmoniumNitrate, 0.28);
    private static readonly StandLossMaterial Nitrate = new("ammonium nitrate", NitrogenForm.AmmoniumNitrate, 0.34);

    // As printed, the sign left out: hard red spring wheat and durum beside each other.
    private static readonly (StandLossMaterial Material, Crop Crop, double[] Slopes)[] All =
    [
        (Urea, Crop.Corn, [0.965]),
        (Urea, Crop.Soybean, [3.330]),
        (Urea, Crop.Wheat, [1.436, 1.468]),
        (Urea, Crop.Barley, [1.207]),
        (Urea, Crop.Canola, [4.457]),
        (Treated, Crop.Corn, [0.434]),
        (Treated, Crop.Soybean, [3.403]),
        (Treated, Crop.Wheat, [0.951, 0.900]),
        (Treated, Crop.Barley, [0.772]),
        (Treated, Crop.Canola, [2.509]),
        (Solution, Crop.Corn, [0.236]),
        (Solution, Crop.Soybean, [1.703]),
        (Solution, Crop.Wheat, [0.258, 0.396]),
        (Solution, Crop.Barley, [0.281]),
        (Solution, Crop.Canola, [1.873]),
        (Nitrate, Crop.Corn, [0.215]),
        (Nitrate, Crop.Soybean, [2.378]),
    ];

    /// <summary>Some material has a slope for the crop.</summary>
    public static bool Name(Crop crop) => All.Any(one => one.Crop == crop);

    /// <summary>The steepest slope printed for a material and a crop, per cent for 1 lb/ac; null where none was read.</summary>
    public static double? Of(StandLossMaterial material, Crop crop) =>
        All.Where(one => one.Material == material && one.Crop == crop).Select(one => (double?)one.Slopes.Max()).SingleOrDefault();

    /// <summary>The material that holds a form of nitrogen.</summary>
    public static StandLossMaterial? With(NitrogenForm form) =>
        All.Select(one => one.Material).FirstOrDefault(material => material.Form == form);
}
