using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;

namespace CalibrationApi.Engine.NewLots;

/// <summary>What another lot or treatment changes: rate, mass per revolution, and whether to test.</summary>
public static class NewLotEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">The value in force, and what is known of both lots.</param>
    /// <remarks>
    /// <para>Formula: the rule, with p the probability that the value in force is within the tolerance of the truth
    /// (<see cref="LotPrediction"/>): a density that is unknown while lot or treatment changes: test now. Otherwise p under 0.80: test now;
    /// p from 0.80, or from 0.95 although lot, treatment, kernel or density changed or a density is unknown: test at the next fill; p from
    /// 0.95 with the same lot, the same treatment, the same kernel and the same density within their uncertainty: no test needed.</para>
    /// <para>Range: values, densities, rates and kernels above 0; a number that is missing widens the prediction and is named.</para>
    /// <para>Source: the two probabilities are judgement. Published advice is to calibrate again for each lot (SOURCES.md, keys UKY-81 and
    /// CCC-LOTS). Effects of what stays as it was: rate times k_new over the value in force.</para>
    /// <para>Accuracy: rates and deviations within 1e-12, masses and money within 1e-9 (LotSowingTests), the prediction as
    /// <see cref="LotPrediction"/>; decisions case by case (NewLotDecisionTests).</para>
    /// </remarks>
    public static NewLotResult Evaluate(NewLotQuestion question)
    {
        var tolerance = question.Tolerance ?? NewLotDefaults.Tolerance.Value.Canonical;
        var prediction = LotPrediction.Of(question);
        var probability = prediction.ProbabilityOfValueInForce(tolerance);
        var sowing = new LotSowing(question, prediction);
        var verdict = Decide(question, prediction, probability);
        return new NewLotResult
        {
            Headline = Headline(question, verdict, prediction, probability, tolerance, sowing.Rate),
            Verdict = verdict,
            Reasons = [.. Reasons(question, prediction, probability, tolerance)],
            Prediction = prediction,
            ProbabilityOfValueInForce = probability,
            ProbabilityOfPrediction = prediction.ProbabilityOfPrediction(tolerance),
            Rate = sowing.Rate,
            IfValueStays = sowing.IfValueStays,
            IfNothingIsChanged = sowing.IfNothingIsChanged,
            Assumptions = [.. Assumptions(question, prediction, sowing.Rate)],
            Findings = [.. Findings(question, prediction, sowing.Rate)],
            Cautions = question.Before.Treatment is null && question.After.Treatment is null ? [] : [Caution.TreatedSeed],
        };
    }

    private static LotVerdict Decide(NewLotQuestion question, LotPrediction prediction, double probability)
    {
        if (NobodyKnows(question, prediction) || probability < NewLotDefaults.GoodEnoughForOneFill)
            return LotVerdict.TestNow;
        return probability >= NewLotDefaults.SureEnough && NothingChanged(question, prediction)
            ? LotVerdict.NoTestNeeded
            : LotVerdict.TestAtNextFill;
    }

    // A lot is even, so another delivery of it in the same coat flows much as before also where nobody weighed it.
    private static bool NobodyKnows(NewLotQuestion question, LotPrediction prediction) =>
        !prediction.DensitiesKnown && !(question.SameLot && question.SameTreatment);

    private static bool NothingChanged(NewLotQuestion question, LotPrediction prediction) =>
        question.SameLot
        && question.SameTreatment
        && prediction is { DensitiesKnown: true, DensityDiffers: false }
        && !KernelsContradict(question);

    private static bool KernelsContradict(NewLotQuestion question) =>
        question.SameLot
        && question.SameTreatment
        && question.Before.Kernel is { } before
        && question.After.Kernel is { } after
        && Math.Abs(Math.Log(after.KilogramsPerKernel / before.KilogramsPerKernel)) > NewLotDefaults.KernelsOfOneLot;

    private static bool DensitiesFarApart(LotPrediction prediction) =>
        prediction.DensitiesKnown && Math.Abs(Math.Log(prediction.Ratio)) > NewLotDefaults.DensitiesFarApart;

    private static Sentence Headline(
        NewLotQuestion question,
        LotVerdict verdict,
        LotPrediction prediction,
        double probability,
        double tolerance,
        LotRate? rate
    )
    {
        var within = new Ratio(tolerance);
        var chance = Chance.Of(probability);
        Sentence test = verdict switch
        {
            LotVerdict.TestNow when NobodyKnows(question, prediction) =>
                $"Test now, before sowing: without the bulk density of both lots nobody can say what the meter delivers. Plan the catch with {prediction.Value}, and expect it to be off.",
            LotVerdict.TestNow =>
                $"Test now, before sowing: the value in force holds within {within} with a probability of {chance}. Plan the catch with {prediction.Value}.",
            LotVerdict.TestAtNextFill =>
                $"Test at the next fill: the value in force holds within {within} with a probability of {chance}. Plan the catch with {prediction.Value}.",
            _ =>
                $"No test is needed for this lot: nothing has changed that changes the flow, and the value in force holds within {within} with a probability of {chance}.",
        };
        var checkedFirst = DensitiesFarApart(prediction)
            ? (Sentence)$"Check the bulk densities first: {question.After.Density} is far from {question.Before.Density}. {test}"
            : test;
        return rate?.SameSeeds is not { } same ? checkedFirst
            : KernelsContradict(question) ? (Sentence)$"{checkedFirst} Check the kernel masses before you change the rate."
            : $"{checkedFirst} Set the rate to {same} for the same seeds per area.";
    }

    private static IEnumerable<Finding> Reasons(NewLotQuestion question, LotPrediction prediction, double probability, double tolerance)
    {
        var (within, chance) = (new Ratio(tolerance), Chance.Of(probability));
        if (!prediction.DensitiesKnown)
            yield return Finding.Warning(
                NewLotCodes.DensityUnknown,
                $"The bulk density of {Missing(question)} is not known. The prediction stays at the value in force and is {(NobodyKnows(question, prediction) ? "wide" : "wider for it")}. Weigh a known volume of {(question.SameLot ? "both deliveries" : "each lot")}."
            );
        else if (prediction.DensityDiffers)
            yield return Finding.Warning(
                NewLotCodes.DensityDiffers,
                $"The bulk density is {question.After.Density} now against {question.Before.Density} before. An element that displaces a volume then delivers {new Ratio(Math.Abs(prediction.Change)):F1} {(prediction.Ratio > 1 ? "more" : "less")} per revolution."
            );
        if (!question.SameLot)
            yield return Finding.Note(
                NewLotCodes.OtherLot,
                $"It is another lot: kernels or granules of another size and shape fill the element differently, even at the same density."
            );
        if (!question.SameTreatment)
            yield return Finding.Warning(
                NewLotCodes.TreatmentChanged,
                $"The treatment is another one: a coating changes friction and kernel mass."
            );
        if (KernelsContradict(question))
            yield return Finding.Warning(
                NewLotCodes.KernelsOfOneLotDiffer,
                $"It is said to be the same lot in the same treatment, yet the kernel mass is {question.After.Kernel} against {question.Before.Kernel} before. Either it is another lot, or one sample is off: count and weigh again before the rate is changed."
            );
        if (NothingChanged(question, prediction))
            yield return Finding.Note(
                NewLotCodes.NothingChanged,
                $"Lot and treatment are the same, and so is the density within its uncertainty."
            );
        yield return probability >= NewLotDefaults.SureEnough
            ? Finding.Note(
                SharedCodes.WithinTolerance,
                $"The value in force is within {within} of the truth with a probability of {chance}."
            )
            : Finding.Warning(
                SharedCodes.WithinToleranceNotShown,
                $"The value in force is within {within} of the truth with a probability of {chance}; {new Ratio(NewLotDefaults.SureEnough)} is asked to go without a test, {new Ratio(NewLotDefaults.GoodEnoughForOneFill)} to wait for the next fill."
            );
    }

    private static Sentence Missing(NewLotQuestion question) =>
        (question.Before.Density, question.After.Density) switch
        {
            (null, null) => question.SameLot ? (Sentence)$"both deliveries" : $"both lots",
            (null, _) => question.SameLot ? (Sentence)$"the delivery before" : $"the lot before",
            _ => question.SameLot ? (Sentence)$"the new delivery" : $"the new lot",
        };

    private static IEnumerable<Finding> Findings(NewLotQuestion question, LotPrediction prediction, LotRate? rate)
    {
        // The same seed in the same coat weighs what it weighed.
        var kernelsMayDiffer = !question.SameLot || !question.SameTreatment;
        if (kernelsMayDiffer && (question.Rate is not null || question.Seeds is not null) && rate?.SameSeeds is null)
            yield return Finding.Note(
                NewLotCodes.RateNotRecomputed,
                $"If this is seed, the rate for the same seeds takes the kernel mass of {(rate is null ? "both lots" : "the new lot")}: count and weigh a sample."
            );
        if (DensitiesFarApart(prediction))
            yield return Finding.Warning(
                NewLotCodes.DensitiesFarApart,
                $"{question.After.Density} is far from {question.Before.Density} for two lots of one product. Check both numbers and their units."
            );
        if (rate?.SameStand is { } stand && rate.SameSeeds is { } seeds && stand != seeds)
            yield return Finding.Note(
                NewLotCodes.GerminationChanged,
                $"Germination is {new Ratio(question.After.Germination!.Value)} against {new Ratio(question.Before.Germination!.Value)} before. For as many plants as before sow {stand} in place of {seeds}."
            );
    }

    private static IEnumerable<Assumption> Assumptions(NewLotQuestion question, LotPrediction prediction, LotRate? rate)
    {
        if (question.ValueUncertainty is null)
            yield return NewLotDefaults.ValueUncertainty.Assumed("valueInForce/relativeUncertainty");
        if (prediction.DensitiesKnown && question.Before.DensityUncertainty is null)
            yield return NewLotDefaults.DensityUncertainty.Assumed("lotBefore/bulkDensity/relativeUncertainty");
        if (prediction.DensitiesKnown && question.After.DensityUncertainty is null)
            yield return NewLotDefaults.DensityUncertainty.Assumed("newLot/bulkDensity/relativeUncertainty");
        if (!prediction.DensitiesKnown && question.UnknownDensity is null)
            yield return NewLotDefaults.UnknownDensity(question.SameLot).Assumed("unknownDensityChange");
        if (question.DayToDay is null)
            yield return NewLotDefaults.DayToDay.Assumed("dayToDay");
        if (!question.SameLot && question.FillOfLots is null)
            yield return NewLotDefaults.FillOfLots.Assumed("fillChangeOfLot");
        if (!question.SameTreatment && question.FillOfTreatments is null)
            yield return NewLotDefaults.FillOfTreatments.Assumed("fillChangeOfTreatment");
        if (question.Tolerance is null)
            yield return NewLotDefaults.Tolerance.Assumed("tolerance");
        if (rate is not null && question.Seeds is null && question.Before.Purity is null)
            yield return SownSeedDefaults.Purity.Assumed("lotBefore/purity");
        if (rate?.SameSeeds is not null && question.After.Purity is null)
            yield return SownSeedDefaults.Purity.Assumed("newLot/purity");
    }
}
