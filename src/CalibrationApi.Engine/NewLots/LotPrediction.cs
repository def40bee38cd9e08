using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.NewLots;

/// <summary>Where the uncertainty of a prediction comes from.</summary>
public enum LotUncertaintySource
{
    /// <summary>The value in force itself.</summary>
    ValueInForce,

    /// <summary>The bulk density of the lot before.</summary>
    DensityBefore,

    /// <summary>The bulk density of the new lot.</summary>
    DensityOfNewLot,

    /// <summary>A density that is not known.</summary>
    UnknownDensity,

    /// <summary>What differs from day to day.</summary>
    DayToDay,

    /// <summary>How another lot fills the element.</summary>
    FillOfLots,

    /// <summary>How another treatment fills the element.</summary>
    FillOfTreatments,
}

/// <summary>One part of the uncertainty of a prediction.</summary>
/// <param name="Source">Where it comes from.</param>
/// <param name="Relative">Standard uncertainty, relative; for what is not known, the scale of a t distribution.</param>
public sealed record LotUncertaintyPart(LotUncertaintySource Source, double Relative);

/// <summary>The mass per revolution expected of another lot in the same element.</summary>
/// <remarks>
/// <para>Formula: an element that displaces a volume delivers mass in proportion to bulk density: k_new = k_old rho_new / rho_old, kg/rev
/// and kg/m3, relative u^2 = u(k_old)^2 + u(rho_old)^2 + u(rho_new)^2 + u(day)^2 + u(fill, lots)^2 + u(fill, treatments)^2, the last two
/// only where the lot or the treatment changes. Where a density is unknown the prediction stays at k_old and a scale for the unknown change
/// of density takes the place of the two. Fill and unknown density are judgement with 3 degrees of freedom, the others are taken as
/// known.</para>
/// <para>Range: values and densities above 0; tolerances above 0. A density that is not known leaves the value as it was.</para>
/// <para>Source: our own derivation from the displaced volume.</para>
/// <para>Accuracy: value, parts and interval within 1e-12 of the formulas, probabilities within 1e-12 of the library's normal distribution
/// where nothing is judged (LotPredictionTests).</para>
/// </remarks>
public sealed record LotPrediction
{
    /// <summary>The value in force.</summary>
    public required MassPerRevolution ValueInForce { get; init; }

    /// <summary>k_new / k_old.</summary>
    public required double Ratio { get; init; }

    /// <summary>What the mass per revolution is expected to change by, relative.</summary>
    /// <remarks>
    /// <para>Formula: k_new / k_old - 1.</para>
    /// <para>Range: ratios above 0.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 (LotPredictionTests).</para>
    /// </remarks>
    public double Change => Ratio - 1;

    /// <summary>Relative uncertainty of the prediction.</summary>
    public required TwoPartUncertainty Uncertainty { get; init; }

    /// <summary>Where it comes from; the squares add up.</summary>
    public required IReadOnlyList<LotUncertaintyPart> Parts { get; init; }

    /// <summary>Both densities are known.</summary>
    public required bool DensitiesKnown { get; init; }

    /// <summary>The densities are known and differ by more than their uncertainty, at 95 %.</summary>
    public required bool DensityDiffers { get; init; }

    /// <summary>The predicted mass per revolution.</summary>
    public MassPerRevolution Value => new(ValueInForce.KilogramsPerRevolution * Ratio);

    /// <summary>It with its interval, kg per revolution.</summary>
    public MeasuredValue Interval =>
        MeasuredValue.Create(
            Value.KilogramsPerRevolution,
            Uncertainty.Times(Value.KilogramsPerRevolution),
            CatchTestLimits.DefaultCoverage
        );

    /// <summary>Probability that the value in force is within a tolerance of the truth (JCGM 106:2012, 7.2).</summary>
    /// <param name="tolerance">Largest deviation that does no harm, relative, above 0.</param>
    public double ProbabilityOfValueInForce(double tolerance) =>
        Conformance.Probability(Ratio, Uncertainty.Times(Ratio), 1 - tolerance, 1 + tolerance);

    /// <summary>Probability that the truth is within a tolerance of the predicted value, were that typed in.</summary>
    /// <param name="tolerance">Largest deviation that does no harm, relative, above 0.</param>
    public double ProbabilityOfPrediction(double tolerance) => Conformance.Probability(1, Uncertainty, 1 - tolerance, 1 + tolerance);

    internal static LotPrediction Of(NewLotQuestion question)
    {
        LotUncertaintyPart[] parts = [.. Known(question), .. Judged(question)];
        var known = Known(question).Sum(part => part.Relative * part.Relative);
        var judged = Judged(question).Sum(part => part.Relative * part.Relative);
        var ratio = Densities(question) is var (before, after) ? after / before : 1;
        return new()
        {
            ValueInForce = question.ValueInForce,
            Ratio = ratio,
            Uncertainty = new(judged, NewLotDefaults.DegreesOfFreedom, known),
            Parts = parts,
            DensitiesKnown = Densities(question) is not null,
            DensityDiffers =
                Densities(question) is not null
                && Math.Abs(Math.Log(ratio))
                    > Statistics.StudentT.CoverageFactor(CatchTestLimits.DefaultCoverage, double.PositiveInfinity)
                        * Math.Sqrt(Square(Stated(question.Before)) + Square(Stated(question.After))),
        };
    }

    private static (double Before, double After)? Densities(NewLotQuestion question) =>
        question.Before.Density is { } before && question.After.Density is { } after
            ? (before.KilogramsPerCubicMetre, after.KilogramsPerCubicMetre)
            : null;

    private static IEnumerable<LotUncertaintyPart> Known(NewLotQuestion question)
    {
        yield return new(LotUncertaintySource.ValueInForce, question.ValueUncertainty ?? NewLotDefaults.ValueUncertainty.Value.Canonical);
        if (Densities(question) is not null)
        {
            yield return new(LotUncertaintySource.DensityBefore, Stated(question.Before));
            yield return new(LotUncertaintySource.DensityOfNewLot, Stated(question.After));
        }

        yield return new(LotUncertaintySource.DayToDay, question.DayToDay ?? NewLotDefaults.DayToDay.Value.Canonical);
    }

    private static IEnumerable<LotUncertaintyPart> Judged(NewLotQuestion question)
    {
        if (Densities(question) is null)
            yield return new(
                LotUncertaintySource.UnknownDensity,
                question.UnknownDensity ?? NewLotDefaults.UnknownDensity(question.SameLot).Value.Canonical
            );
        if (!question.SameLot)
            yield return new(LotUncertaintySource.FillOfLots, question.FillOfLots ?? NewLotDefaults.FillOfLots.Value.Canonical);
        if (!question.SameTreatment)
            yield return new(
                LotUncertaintySource.FillOfTreatments,
                question.FillOfTreatments ?? NewLotDefaults.FillOfTreatments.Value.Canonical
            );
    }

    private static double Stated(SeedLot lot) => lot.DensityUncertainty ?? NewLotDefaults.DensityUncertainty.Value.Canonical;

    private static double Square(double value) => value * value;
}
