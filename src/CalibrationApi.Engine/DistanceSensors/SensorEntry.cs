using System.Globalization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DistanceSensors;

/// <summary>How a controller takes the value of a distance sensor.</summary>
public sealed record SensorEntry
{
    /// <summary>Most decimals a controller is believed to take.</summary>
    public const int MostDecimals = 9;

    private SensorEntry(SensorForm form, Unit unit, double distance, int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, MostDecimals);
        if (unit.Dimension != Dimension.Length)
            throw new ArgumentException($"A length is needed, not {unit.Symbol}.", nameof(unit));
        (Form, Unit, Distance, Decimals) = (form, unit, distance, decimals);
    }

    /// <summary>The form.</summary>
    public SensorForm Form { get; }

    /// <summary>Unit of the number, or of the distance over which pulses are counted.</summary>
    public Unit Unit { get; }

    /// <summary>Distance over which pulses are counted, in <see cref="Unit"/>; 1 for the other forms.</summary>
    public double Distance { get; }

    /// <summary>Decimals the controller takes, 0 to <see cref="MostDecimals"/>.</summary>
    public int Decimals { get; }

    /// <summary>Nobody stated the distance over which pulses are counted.</summary>
    public bool DistanceIsAssumed { get; private init; }

    /// <summary>Pulses over the usual distance (<see cref="DistanceSensorDefaults.EntryDistance"/>), where none is stated.</summary>
    /// <param name="decimals">Decimals the controller takes.</param>
    public static SensorEntry PulsesOverUsualDistance(int decimals) =>
        PulsesOver(DistanceSensorDefaults.EntryDistance.Value.Canonical, UnitTable.Get("m"), decimals) with
        {
            DistanceIsAssumed = true,
        };

    /// <summary>Pulses over a distance.</summary>
    /// <param name="distance">The distance in <paramref name="unit"/>, above 0.</param>
    /// <param name="unit">A unit of length.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    public static SensorEntry PulsesOver(double distance, Unit unit, int decimals) =>
        new(SensorForm.PulsesPerDistance, unit, distance, decimals);

    /// <summary>A length: the distance per pulse or the circumference of the wheel.</summary>
    /// <param name="form">One of these two.</param>
    /// <param name="unit">A unit of length.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    public static SensorEntry LengthOf(SensorForm form, Unit unit, int decimals) => new(form, unit, 1, decimals);

    /// <summary>What to type in for so many counts per metre, and what the rounding costs.</summary>
    /// <param name="countsPerMetre">Counts per metre, above 0.</param>
    /// <param name="counts">What the counts are.</param>
    /// <remarks>
    /// <para>Formula: typed = round(x, d) with x the value in the form and unit, d decimals; error = K(typed) / K - 1. Rounded half away
    /// from zero, as people round.</para>
    /// <para>Range: counts per metre above 0; where only 0 can be typed in, the error is -1.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: the number exactly, its error within 1e-9 (SensorEntryTests).</para>
    /// </remarks>
    public SensorNumber For(double countsPerMetre, SensorCounts counts)
    {
        var canonical = counts.Convert(Form, countsPerMetre);
        var exact = Form == SensorForm.PulsesPerDistance ? canonical * Unit.Canonical(Distance) : Unit.FromCanonical(canonical);
        var typed = Math.Round(exact, Decimals, MidpointRounding.AwayFromZero);
        var resulting = Form == SensorForm.PulsesPerDistance ? typed / Unit.Canonical(Distance) : Unit.Canonical(typed);
        // Nothing but zero can be typed in: no counts per metre come of it.
        var rounding = typed > 0 ? counts.Convert(Form, resulting) / countsPerMetre - 1 : -1;
        return new SensorNumber(this, typed, rounding);
    }
}

/// <summary>A number for a controller.</summary>
/// <param name="Entry">Form, unit and decimals.</param>
/// <param name="Typed">The number to type in.</param>
/// <param name="RoundingError">Relative error of the counts per metre that its resolution causes: positive when the controller then counts
/// too little distance.</param>
public sealed record SensorNumber(SensorEntry Entry, double Typed, double RoundingError)
{
    /// <summary>The number with what it counts.</summary>
    public string InWords
    {
        get
        {
            var number = Typed.ToString("F" + Entry.Decimals, CultureInfo.InvariantCulture);
            return Entry.Form switch
            {
                SensorForm.PulsesPerDistance => string.Create(
                    CultureInfo.InvariantCulture,
                    $"{number} pulses per {Entry.Distance} {Entry.Unit.Symbol}"
                ),
                SensorForm.DistancePerPulse => $"{number} {Entry.Unit.Symbol} per pulse",
                _ => $"{number} {Entry.Unit.Symbol} per turn of the wheel",
            };
        }
    }
}
