using System.Globalization;

namespace CalibrationApi.Simulation.Studies;

/// <summary>How often something happened, and how often it may.</summary>
/// <param name="Hits">Trials in which it happened.</param>
/// <param name="Trials">All trials.</param>
/// <param name="AtLeast">Smallest permitted share; null for none.</param>
/// <param name="AtMost">Largest permitted share; null for none.</param>
public sealed record Rate(long Hits, long Trials, double? AtLeast = null, double? AtMost = null)
{
    /// <summary>
    /// Standard errors of a binomial count by which a share may miss its bound before the bound counts as broken. A true share
    /// that lies on its bound is called broken once in 30 000 rates; with 10 000 trials a coverage of 94 % where 95 % is asked
    /// is found broken three times in four, with 50 000 trials always.
    /// </summary>
    public const double StandardErrors = 4;

    /// <summary>Share of the trials in which it happened.</summary>
    public double Share => (double)Hits / Trials;

    /// <summary>The share is inside its bounds as far as the number of trials can tell.</summary>
    public bool Holds =>
        !(AtLeast is { } least && Share < least - Allowance(least)) && !(AtMost is { } most && Share > most + Allowance(most));

    /// <summary>In per cent.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{100 * Share:0.0#}{(Holds ? "" : " (!)")}");

    private double Allowance(double bound) => StandardErrors * Math.Sqrt(bound * (1 - bound) / Trials);
}
