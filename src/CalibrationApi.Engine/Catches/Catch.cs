using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>One catch: what fell into the container while the meter turned.</summary>
public sealed record Catch
{
    private Catch(double indicatedNet, Mass? tare, CountedRevolutions revolutions, string? excludedBecause)
    {
        if (!(indicatedNet > 0))
            throw new ArgumentOutOfRangeException(nameof(indicatedNet), indicatedNet, "A net mass above 0 is needed.");
        if (!(revolutions.Count > 0 && revolutions.Resolution >= 0) || !double.IsFinite(revolutions.Count + revolutions.Resolution))
            throw new ArgumentOutOfRangeException(
                nameof(revolutions),
                revolutions,
                "Revolutions above 0 with a resolution of at least 0 are needed."
            );
        IndicatedNet = new Mass(indicatedNet);
        Tare = tare;
        Revolutions = revolutions;
        ExcludedBecause = excludedBecause;
    }

    /// <summary>Net mass as the scale showed it, before any correction of the scale; above 0.</summary>
    public Mass IndicatedNet { get; }

    /// <summary>Mass of the empty container that was taken off; null when only the net mass is known.</summary>
    public Mass? Tare { get; }

    /// <summary>Revolutions of the meter during the catch.</summary>
    public CountedRevolutions Revolutions { get; }

    /// <summary>Why the caller left this catch out; null when it counts. Nothing is ever dropped by the engine itself.</summary>
    public string? ExcludedBecause { get; }

    /// <summary>True when the catch counts.</summary>
    public bool Counts => ExcludedBecause is null;

    /// <summary>A catch weighed with its container and the empty container.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Gross is not above tare, or the revolutions are not above 0.</exception>
    public static Catch Weighed(Mass gross, Mass tare, CountedRevolutions revolutions, string? excludedBecause = null) =>
        new(gross.Kilograms - tare.Kilograms, tare, revolutions, excludedBecause);

    /// <summary>A catch of which only the net mass is known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The net mass or the revolutions are not above 0.</exception>
    public static Catch Net(Mass net, CountedRevolutions revolutions, string? excludedBecause = null) =>
        new(net.Kilograms, null, revolutions, excludedBecause);
}
