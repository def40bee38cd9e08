using System.Globalization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Members;

/// <summary>The range that a quantity may take: a slip of the decimal point should not pass as a fact.</summary>
/// <param name="Least">Smallest value, in <paramref name="Unit"/>.</param>
/// <param name="Most">Largest value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Symbol of the unit of the two.</param>
/// <param name="ExcludesLeast">The smallest value itself is not allowed.</param>
internal sealed record QuantityLimits(double Least, double Most, string Unit, bool ExcludesLeast = false)
{
    private readonly double canonicalLeast = UnitTable.Get(Unit).Canonical(Least);
    private readonly double canonicalMost = UnitTable.Get(Unit).Canonical(Most);

    // The widest ranges in which any seeding machine can be meant; absurd magnitudes end here.
    private static readonly Dictionary<Dimension, QuantityLimits> Widest = new()
    {
        [Dimension.Mass] = new(0, 1000, "t", ExcludesLeast: true),
        [Dimension.MassPerArea] = new(0, 100_000, "kg/ha", ExcludesLeast: true),
        [Dimension.MassPerRevolution] = new(0, 1000, "kg/rev", ExcludesLeast: true),
        [Dimension.Revolutions] = new(0, 1_000_000, "rev", ExcludesLeast: true),
        [Dimension.Rotation] = new(0, 10_000, "rpm", ExcludesLeast: true),
        [Dimension.Speed] = new(0, 100, "km/h", ExcludesLeast: true),
        [Dimension.Length] = new(0, 1000, "m", ExcludesLeast: true),
        [Dimension.Area] = new(0, 1_000_000, "ha", ExcludesLeast: true),
        [Dimension.Volume] = new(0, 1000, "m3", ExcludesLeast: true),
        [Dimension.BulkDensity] = new(10, 10_000, "kg/m3"),
        [Dimension.Time] = new(0, 24, "h", ExcludesLeast: true),
        [Dimension.MassPerTime] = new(0, 100_000, "kg/min", ExcludesLeast: true),
        [Dimension.VolumePerTime] = new(0, 1_000_000, "m3/h", ExcludesLeast: true),
        [Dimension.Ratio] = new(0, 100, "%"),
        [Dimension.PulsesPerRevolution] = new(0, 1_000_000, "pulses/rev", ExcludesLeast: true),
        [Dimension.PulsesPerDistance] = new(0, 10_000_000, "pulses/100m", ExcludesLeast: true),
        [Dimension.CountPerArea] = new(0, 100_000, "/m2", ExcludesLeast: true),
        [Dimension.CountPerLength] = new(0, 100_000, "/m", ExcludesLeast: true),
        [Dimension.CountPerMass] = new(0, 1_000_000_000, "/kg", ExcludesLeast: true),
        [Dimension.MassPerThousand] = new(0, 5000, "g/1000", ExcludesLeast: true),
    };

    public static QuantityLimits Of(Dimension dimension) => Widest[dimension];

    // A value fifteen orders of magnitude below the largest is zero with a slip of the pen: nothing measures it, and
    // ratios of such numbers overflow.
    private const double AsGoodAsZero = 1e-15;

    public bool Allows(double canonical) =>
        canonical >= canonicalLeast
        && canonical <= canonicalMost
        && (canonicalLeast != 0 || (canonical == 0 ? !ExcludesLeast : canonical > AsGoodAsZero * canonicalMost));

    public override string ToString()
    {
        // A plain ratio reads better without its unit, the figure one.
        var unit = Unit == "1" ? "" : $" {Unit}";
        return ExcludesLeast
            ? string.Create(CultureInfo.InvariantCulture, $"above {Least} and up to {Most}{unit}")
            : string.Create(CultureInfo.InvariantCulture, $"{Least} to {Most}{unit}");
    }
}
