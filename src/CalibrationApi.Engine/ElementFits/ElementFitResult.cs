using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.ElementFits;

/// <summary>The displacements that keep a meter inside its speeds, and the elements at hand beside them.</summary>
public sealed record ElementFitResult
{
    /// <summary>Two or three sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>Whether an element fits.</summary>
    public ElementFitVerdict Verdict =>
        WaysOut is not null ? ElementFitVerdict.NoneCanFit
        : Elements is not [var nearest, ..] ? ElementFitVerdict.NoneStated
        : nearest.Fits ? ElementFitVerdict.Fits
        : ElementFitVerdict.NoneFits;

    /// <summary>The displacements that serve every rate at every ground speed.</summary>
    public required DisplacementWindow Window { get; init; }

    /// <summary>The part of the window that serves with the wanted probability; null where nothing does.</summary>
    public (Volume Lower, Volume Upper)? Inner { get; init; }

    /// <summary>Highest rate at the highest ground speed: it sets the lower end.</summary>
    public required ProductNeed HighestNeed { get; init; }

    /// <summary>Lowest rate at the lowest ground speed: it sets the upper end.</summary>
    public required ProductNeed LowestNeed { get; init; }

    /// <summary>What would open an empty window; null when it is open.</summary>
    public WaysOut? WaysOut { get; init; }

    /// <summary>Fill efficiency used, its median with its interval.</summary>
    public required LogInterval<Ratio> FillEfficiency { get; init; }

    /// <summary>Parts of the spread of the window by their source.</summary>
    public required IReadOnlyList<(string Source, double Relative)> Parts { get; init; }

    /// <summary>The elements at hand, nearest to the middle of the window first.</summary>
    public required IReadOnlyList<FittingElement> Elements { get; init; }

    /// <summary>What can hurt somebody who changes an element.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Whether an element at hand fits.</summary>
public enum ElementFitVerdict
{
    /// <summary>The nearest of those at hand keeps the meter inside its speeds.</summary>
    Fits,

    /// <summary>None of those at hand does, but one of another displacement would.</summary>
    NoneFits,

    /// <summary>No element was stated; one of the displacement told would fit.</summary>
    NoneStated,

    /// <summary>No displacement serves all rates at all ground speeds.</summary>
    NoneCanFit,
}

/// <summary>The displacements with which a meter stays inside its speeds.</summary>
/// <param name="Lower">Smallest displacement V_a, above 0: below it the meter would have to turn too fast.</param>
/// <param name="Upper">Largest displacement V_b, above 0: above it the meter would turn too slowly. Less than V_a where none
/// serves.</param>
/// <param name="Spread">Standard deviation s of the natural logarithm of both ends, which move together; at least 0.</param>
/// <remarks>
/// <para>Formula: middle V_m = sqrt(V_a V_b), half width h = ln(V_b / V_a) / 2. Density and fill efficiency are the same at both ends, so
/// that a displacement V stays inside with P = Phi((h - d) / t) - Phi((-h - d) / t), d = ln(V / V_m), t^2 = s^2 + u_V^2. The inner window
/// holds the displacements, known exactly, for which P is at least the wanted probability: V_m exp(-+ d), solved by halving.</para>
/// <para>Range: ends above 0 in any order, spreads at least 0, probabilities from 0.5 and below 1. An empty window has probability 0 and no
/// inner one; without any spread the inner window is the whole.</para>
/// <para>Source: our own derivation; the probability is that of JCGM 106:2012, 7.4, on a logarithmic scale (SOURCES.md, key
/// JCGM-106).</para>
/// <para>Accuracy: middle and ends within 1e-12, probabilities within 1e-12, inner ends within 1e-9 (ElementFitTests).</para>
/// </remarks>
public sealed record DisplacementWindow(Volume Lower, Volume Upper, double Spread)
{
    // After so many halvings nothing is left of the interval in double precision.
    private const int Halvings = 60;

    /// <summary>No displacement serves.</summary>
    public bool IsEmpty => Threshold.IsAbove(Lower.CubicMetres, Upper.CubicMetres);

    /// <summary>The geometric middle: as far from too slow as from too fast.</summary>
    public Volume Middle => new(Math.Sqrt(Lower.CubicMetres) * Math.Sqrt(Upper.CubicMetres));

    /// <summary>Probability in the middle: no displacement, known exactly, has a higher one.</summary>
    public double BestProbability => Probability(new(Middle, 0));

    // Rounding may turn a window of a single displacement round.
    private double HalfWidth => Math.Max(0, Math.Log(Upper.CubicMetres / Lower.CubicMetres) / 2);

    /// <summary>How far a displacement is from the middle: below 0 smaller, above 0 larger.</summary>
    /// <param name="displacement">V, above 0.</param>
    public double Distance(Volume displacement) => Math.Log(displacement.CubicMetres / Middle.CubicMetres);

    /// <summary>Probability that the meter stays inside its speeds at all rates and ground speeds.</summary>
    /// <param name="displacement">V, above 0, with its uncertainty.</param>
    public double Probability(Uncertain<Volume> displacement)
    {
        if (IsEmpty)
            return 0;
        var own = displacement.RelativeUncertainty ?? ElementDefaults.Displacement.Value.Canonical;
        var spread = Math.Sqrt(Spread * Spread + own * own);
        if (spread > 0)
            return Inside(Distance(displacement.Value), spread);
        var volume = displacement.Value.CubicMetres;
        return Threshold.IsBelow(volume, Lower.CubicMetres) || Threshold.IsAbove(volume, Upper.CubicMetres) ? 0 : 1;
    }

    /// <summary>The displacements, known exactly, that stay inside with a probability; null where none does.</summary>
    /// <param name="probability">From 0.5 and below 1.</param>
    public (Volume Lower, Volume Upper)? Inner(double probability)
    {
        if (IsEmpty || BestProbability < probability)
            return null;
        if (Spread == 0)
            return (Lower, Upper);
        // At an end of the window the probability is below one half.
        var (inside, outside) = (0.0, HalfWidth);
        for (var i = 0; i < Halvings; i++)
        {
            var between = (inside + outside) / 2;
            if (Inside(between, Spread) >= probability)
                inside = between;
            else
                outside = between;
        }

        var middle = Middle.CubicMetres;
        return (new Volume(middle * Math.Exp(-inside)), new Volume(middle * Math.Exp(inside)));
    }

    private double Inside(double distance, double spread) =>
        Conformance.Probability(distance, TwoPartUncertainty.Of(spread, double.PositiveInfinity), -HalfWidth, HalfWidth);
}

/// <summary>One combination of rate and ground speed, with what it takes.</summary>
/// <param name="Rate">Rate R.</param>
/// <param name="GroundSpeed">Ground speed v.</param>
/// <param name="Flow">R W v.</param>
public sealed record ProductNeed(MassPerArea Rate, Speed GroundSpeed, MassFlow Flow);

/// <summary>What would open an empty window, each by itself; null where that alone is not enough.</summary>
/// <param name="HighestGroundSpeed">Highest ground speed beside the lowest.</param>
/// <param name="LowestGroundSpeed">Lowest ground speed beside the highest.</param>
/// <param name="HighestRate">Highest rate beside the lowest.</param>
/// <param name="LowestRate">Lowest rate beside the highest.</param>
/// <param name="Shares">The rates shared out among several elements; empty where that does not help.</param>
public sealed record WaysOut(
    Speed? HighestGroundSpeed,
    Speed? LowestGroundSpeed,
    MassPerArea? HighestRate,
    MassPerArea? LowestRate,
    IReadOnlyList<ShareOfRates> Shares
);

/// <summary>Rates that one of several elements serves.</summary>
/// <param name="LowestRate">Lowest of them.</param>
/// <param name="HighestRate">Highest of them: there the next element takes over.</param>
/// <param name="Window">The displacements that serve them at all ground speeds.</param>
public sealed record ShareOfRates(MassPerArea LowestRate, MassPerArea HighestRate, DisplacementWindow Window);

/// <summary>An element at hand against the window.</summary>
/// <param name="Element">The element.</param>
/// <param name="Delivery">Mass per revolution to be expected, its median with its interval.</param>
/// <param name="LowestMeterSpeed">Meter speed at the lowest rate and ground speed.</param>
/// <param name="HighestMeterSpeed">Meter speed at the highest rate and ground speed.</param>
/// <param name="Fits">Both are inside the limits.</param>
/// <param name="TooSlow">By how much the lowest meter speed would have to rise, relative; null when it is high enough.</param>
/// <param name="TooFast">By how much the highest meter speed is above its limit, relative; null when it is not.</param>
/// <param name="Distance">Natural logarithm of its displacement over the middle of the window.</param>
/// <param name="Probability">Probability that the meter stays inside its limits at all combinations.</param>
public sealed record FittingElement(
    ElementAtHand Element,
    LogInterval<MassPerRevolution> Delivery,
    RotationalSpeed LowestMeterSpeed,
    RotationalSpeed HighestMeterSpeed,
    bool Fits,
    double? TooSlow,
    double? TooFast,
    double Distance,
    double Probability
);
