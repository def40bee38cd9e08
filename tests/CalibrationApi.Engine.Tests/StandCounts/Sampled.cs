using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.StandCounts;

namespace CalibrationApi.Engine.Tests.StandCounts;

/// <summary>Samples to start from.</summary>
internal static class Sampled
{
    /// <summary>Counts on quadrats of one size.</summary>
    public static PlantSample[] Quadrats(double squareMetres, params int[] plants) =>
        [.. plants.Select(count => new PlantSample(count, new Area(squareMetres)))];

    public static PlantDensity Density(double squareMetres, params int[] plants) => new(Quadrats(squareMetres, plants));

    public static CountPerArea PerSquareMetre(double plants) => new(plants);
}
