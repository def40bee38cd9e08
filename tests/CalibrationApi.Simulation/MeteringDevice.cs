using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Simulation;

/// <summary>A metering device whose truth is known.</summary>
public sealed record MeteringDevice
{
    /// <summary>Volume that its element encloses in one revolution.</summary>
    public required Volume Displacement { get; init; }

    /// <summary>Bulk density of the product in it.</summary>
    public required BulkDensity BulkDensity { get; init; }

    /// <summary>How full the element is.</summary>
    public FillEfficiency Fill { get; init; } = new(0.9);

    /// <summary>Standard deviation from catch to catch, relative.</summary>
    public double CatchScatter { get; init; }

    /// <summary>Standard deviation from day to day, relative; one draw for a test.</summary>
    public double DayToDay { get; init; }

    /// <summary>
    /// What the first catch lacks although the meter was primed as well as people prime: half-normal with this scale, never
    /// too much.
    /// </summary>
    public Mass PrimingDeficit { get; init; }

    /// <summary>Pockets that discharge one after the other in one revolution; null for an even flow.</summary>
    public int? Pockets { get; init; }

    /// <summary>The long-run truth at a speed: k = V rho eta(n).</summary>
    public MassPerRevolution MassPerRevolutionAt(RotationalSpeed speed) =>
        new(Displacement.CubicMetres * BulkDensity.KilogramsPerCubicMetre * Fill.At(speed));

    /// <summary>Mass that falls while the shaft makes so many turns, before scatter.</summary>
    /// <remarks>
    /// With pockets, whole pockets fall: those whose edge is passed between start and stop, which both lie anywhere within a
    /// pocket. The error is triangular with variance (1/pockets)^2 / 6 revolutions^2.
    /// </remarks>
    internal double Discharged(double perRevolution, double turns, SeededRandom random)
    {
        if (Pockets is not { } pockets)
            return perRevolution * turns;
        var start = random.NextDouble();
        return perRevolution / pockets * Math.Floor(start + turns * pockets);
    }
}
