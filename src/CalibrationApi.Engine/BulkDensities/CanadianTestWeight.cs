using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>Canadian official test weights, which allow for the settling of the grain, and the loose density behind them.</summary>
/// <remarks>
/// <para>The Canadian Grain Commission weighs half a litre of loosely poured grain and converts it by a line. Formula: T = a + b g, turned
/// round 2 (T - a) / b grams in a litre, which is kg/m3: T in kg/hL as a settling method would give it, g the grams in half a litre. Pounds
/// per imperial bushel (Avery) are T / 1.247, so they allow for settling too; pounds per US bushel (Winchester) are the loose
/// weight.</para>
/// <para>Source: SOURCES.md, key CGC-TW, the conversion equations.</para>
/// <para>The equations are regressions between two ways of weighing, funnel and half a litre against a settling method. For heavy soybeans
/// (above 46 kg/hL) and corn (above 52 kg/hL) they put the half litre above the test weight, which no settling does; there they tell
/// nothing of loose grain, and nothing is said of it.</para>
/// <para>Range: usual test weights of each grain.</para>
/// <para>Accuracy: 1e-12 of the printed equation, checked in CanadianTestWeightTests.</para>
/// </remarks>
public static class CanadianTestWeight
{
    // a in kg/hL and b in kg/hL for a gram in half a litre, as printed.
    private static readonly Dictionary<ReferenceMaterial, (double A, double B)> Equations = new()
    {
        [ReferenceMaterial.Wheat] = (1.4767, 0.2012),
        [ReferenceMaterial.Oat] = (4.3122, 0.1986),
        [ReferenceMaterial.Barley] = (-0.3063, 0.2089),
        [ReferenceMaterial.Rye] = (2.2266, 0.1995),
        [ReferenceMaterial.Flax] = (6.3164, 0.192),
        [ReferenceMaterial.Corn] = (2.1025, 0.192),
        [ReferenceMaterial.Soybean] = (2.3696, 0.1896),
        [ReferenceMaterial.Sunflower] = (2.2156, 0.194),
        [ReferenceMaterial.Canola] = (1.9922, 0.1957),
    };

    private static readonly Unit KilogramsPerHectolitre = UnitTable.Get("kg/hL");

    /// <summary>The grains that have an equation.</summary>
    public static IReadOnlyCollection<ReferenceMaterial> Grains => Equations.Keys;

    /// <summary>The loose density behind an official test weight: two half litres of g = (T - a) / b.</summary>
    /// <param name="grain">One of <see cref="Grains"/>.</param>
    /// <param name="testWeight">Official test weight.</param>
    /// <exception cref="KeyNotFoundException">The grain has no equation.</exception>
    public static BulkDensity Loose(ReferenceMaterial grain, BulkDensity testWeight)
    {
        var (a, b) = Equations[grain];
        // kg/m3 is grams in a litre.
        return new((KilogramsPerHectolitre.FromCanonical(testWeight.KilogramsPerCubicMetre) - a) / b * 2);
    }
}
