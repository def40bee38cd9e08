using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.StandCounts;

/// <summary>What is worth a word about counts of plants.</summary>
internal static class StandCountFindings
{
    // Purdue and Tennessee ask for at least five counts, North Dakota works with ten (SOURCES.md, keys PURDUE-HOOP, UTC-CORN, NDSU-HOOP).
    private const int LeastCounts = 5;

    // A published hoop of 56 cm is called a quarter of a square metre and is 1.5 % smaller (SOURCES.md, key CCC-COUNT).
    private static readonly Length QuarterMetreHoop = new(0.56);
    private static readonly Area QuarterMetre = new(0.25);

    // Judgement, no published source: differences that are worth a word, and plain clumping.
    private const double WorthAWord = 0.005;
    private const double LittleByChance = 0.01;
    private const double StrongClumping = 2;

    // Squared variation from spot to spot, from where the interval holds the truth in 83 to 94 of 100 cases only (simulated).
    private const double VeryPatchy = 1;
    private const double LittleDoubt = 0.05;

    // In spreads of the prior; judgement.
    private const double FarFromPrior = 3;

    public static IEnumerable<Finding> Of(StandCountQuestion question, StandCountResult result) =>
        [
            .. Areas(question),
            .. Stated(question, result),
            .. Counting(question, result),
            .. Seeds(result),
            .. Prior(question, result),
            .. Minimum(question, result),
        ];

    private static IEnumerable<Finding> Areas(StandCountQuestion question)
    {
        foreach (
            var (area, called) in question
                .Samples.Where(sample => sample.CalledArea is not null)
                .Select(sample => (sample.Area, sample.CalledArea!.Value))
                .Distinct()
        )
        {
            var off = area.SquareMetres / called.SquareMetres - 1;
            if (Math.Abs(off) > WorthAWord)
                yield return Finding.Warning(
                    StandCountCodes.SampleAreaMiscalled,
                    off < 0
                        ? (Sentence)
                            $"This sample is {new Ratio(-off):F1} smaller than the area it is called. Plants per area from the called area read as much too low; here the measured size was used."
                        : (Sentence)
                            $"This sample is {new Ratio(off):F1} larger than the area it is called. Plants per area from the called area read as much too high; here the measured size was used."
                );
        }

        if (question.Samples.Any(IsQuarterMetreHoop))
            yield return Finding.Note(
                StandCountCodes.SampleAreaMiscalled,
                $"A hoop of {QuarterMetreHoop} is often called a quarter of a square metre, but is 1.5 % smaller: four times the count reads 1.5 % low. A true quarter is {new Length(Math.Sqrt(1 / Math.PI)):0.####} across."
            );
    }

    private static IEnumerable<Finding> Stated(StandCountQuestion question, StandCountResult result)
    {
        if (question.StatedStand is not { } stated || result.Density.Plants == 0)
            yield break;
        // Plants per m2 divided by 10 stand in place of plants per ft2, which are m2 / 10.7639.
        var shortcut = UnitTable.Get("/ft2").Canonical(1) / 10;
        var called =
            result.Density.Plants
            / question.Samples.Sum(sample => (IsQuarterMetreHoop(sample) ? QuarterMetre : sample.CalledArea ?? sample.Area).SquareMetres);
        if (
            question.StatedPerSquareFoot
            && (Near(stated.PerSquareMetre, shortcut * result.Density.PerSquareMetre) || Near(stated.PerSquareMetre, shortcut * called))
        )
            yield return Finding.Warning(
                SharedCodes.DivideByTen,
                $"The stated stand fits plants per m2 divided by 10 and called plants per ft2. That reads 7.64 % high: a square metre has 10.764 square feet. The stand is {result.Stand:plants}."
            );
        else if (!Near(stated.PerSquareMetre, result.Density.PerSquareMetre))
            yield return Finding.Note(
                StandCountCodes.StatedStandDiffers,
                $"The stated stand is {new Ratio(Math.Abs(stated.PerSquareMetre / result.Density.PerSquareMetre - 1)):F1} {(stated.PerSquareMetre > result.Density.PerSquareMetre ? "above" : "below")} what these counts give. Check its factor and the size of the samples."
            );
    }

    private static IEnumerable<Finding> Counting(StandCountQuestion question, StandCountResult result)
    {
        var density = result.Density;
        if (density.Plants == 0)
            yield return Finding.Warning(
                StandCountCodes.NoPlantsFound,
                $"No plant was found anywhere. Check whether the crop is up yet and whether this is where it was sown."
            );
        if (density.Counts == 1)
            yield return Finding.Warning(
                SharedCodes.SingleReading,
                $"One count cannot show how the stand differs from spot to spot. The interval only holds for plants placed by chance; the true one is wider. Count at four more spots at least."
            );
        else if (density.Counts < LeastCounts)
            yield return Finding.Note(
                StandCountCodes.FewCounts,
                $"Purdue and Tennessee extension ask for at least five counts in a field, North Dakota for ten; these are {new CountInWords(density.Counts)}. Few counts make a wide interval."
            );
        var isClumped = density is { ProbabilityByChance: < LittleByChance, IndexOfDispersion: > StrongClumping };
        // Where plants stand clumped the cause goes first; the number of counts is in the answer all the same.
        if (!isClumped && result.CountsNeeded is { } needed && needed > density.Counts)
            yield return Finding.Note(
                StandCountCodes.MoreCountsNeeded,
                $"For an interval of +- {new Ratio(question.WantedPrecision ?? StandCountDefaults.WantedPrecision.Value.Canonical):0.##} count at {needed} spots like these in all."
            );
        if (isClumped)
            yield return Finding.Warning(
                StandCountCodes.StronglyClumped,
                $"The plants stand clumped: counts vary {density.IndexOfDispersion!.Value:F1} times as much as chance explains, {new Ratio(density.SpotToSpot):F0} from spot to spot. Look for skips, plugged openers, residue or wet spots before taking the mean for the field.{(density.SpotVariance > VeryPatchy ? " In a stand so patchy the interval is too narrow." : "")}"
            );
        if (question.Samples.Where(sample => sample.Row is not null).GroupBy(sample => sample.Row).Any(row => row.Count() > 1))
            yield return Finding.Note(
                StandCountCodes.CountsInSameRow,
                $"Some counts are from the same row. They share what its opener does right or wrong, so they say less than counts from as many rows would."
            );
    }

    private static IEnumerable<Finding> Seeds(StandCountResult result)
    {
        if ((result.Emergence ?? result.Survival) is { Value: > 1 } share)
            yield return Finding.Warning(
                StandCountCodes.MorePlantsThanSeeds,
                share.Lower > 1
                    ? (Sentence)
                        $"More plants stand here than {Kind(result)} seeds were sown, and the counts are too sure to put it down to chance. Check the rate sown, the kernel mass, the germination and the row spacing, and look for volunteers or weeds among the plants."
                    : (Sentence)
                        $"More plants were counted than {Kind(result)} seeds were sown. Chance can do that; count at more spots, and check the rate sown and the kernel mass."
            );
    }

    private static IEnumerable<Finding> Prior(StandCountQuestion question, StandCountResult result)
    {
        if (result.Learned is not { } learned || question.Prior is not { } prior)
            yield break;
        var counted = (prior.Reading == SeedReading.Emergence ? result.Emergence : result.Survival)!;
        if (
            Math.Abs(counted.Value - prior.Mean) > FarFromPrior * prior.Spread
            && (prior.Mean < counted.Lower || prior.Mean > counted.Upper)
        )
            yield return Finding.Warning(
                StandCountCodes.CountsAtOddsWithPrior,
                $"{new Ratio(counted.Value):F0} was counted where {new Ratio(prior.Mean):F0} was believed, give or take {new Ratio(prior.Spread):F0}. Find out what happened in this field before you carry the learned share to another season."
            );
        if (learned.Weight < 0.5)
            yield return Finding.Note(
                StandCountCodes.PriorOutweighsCounts,
                $"The counts carried {new Ratio(learned.Weight):F0} of the learned share; the rest is the share that was believed before."
            );
    }

    private static IEnumerable<Finding> Minimum(StandCountQuestion question, StandCountResult result)
    {
        if (result.ProbabilityBelowMinimum is not { } probability || probability < LittleDoubt)
            yield break;
        yield return probability > 0.5
            ? Finding.Warning(
                StandCountCodes.StandBelowMinimum,
                $"The stand is below {question.MinimumStand!.Value:plants} with a probability of {Chance.Of(probability)}."
            )
            : Finding.Note(
                StandCountCodes.StandBelowMinimum,
                $"The stand may still be below {question.MinimumStand!.Value:plants}, with a probability of {Chance.Of(probability)}."
            );
    }

    private static bool IsQuarterMetreHoop(PlantSample sample) =>
        sample.CalledArea is null && sample.HoopDiameter is { } diameter && Math.Abs(diameter.Metres - QuarterMetreHoop.Metres) < 0.0005;

    private static Sentence Kind(StandCountResult result) => result.Emergence is null ? (Sentence)$"pure" : $"viable";

    private static bool Near(double one, double other) => Math.Abs(one / other - 1) <= WorthAWord;
}
