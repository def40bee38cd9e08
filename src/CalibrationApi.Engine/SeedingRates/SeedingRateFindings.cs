using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.SeedingRates;

/// <summary>What is unusual about a seeding rate, each by a published range; unusual is possible, so nothing is refused.</summary>
internal static class SeedingRateFindings
{
    // Rates are set to the nearest per cent or two; judgement.
    private const double NoticedDifference = 0.02;

    public static IEnumerable<Finding> Of(
        SeedingRateQuestion question,
        MassPerArea rate,
        CountPerArea seeds,
        StatedRateComparison? stated
    ) =>
        [
            .. stated is null ? [] : OfStatedRate(question, rate, stated),
            .. OfKernel(question),
            .. OfGermination(question),
            .. OfEstablishment(question),
            .. OfSeeds(question, seeds),
        ];

    private static IEnumerable<Finding> OfStatedRate(SeedingRateQuestion question, MassPerArea rate, StatedRateComparison stated)
    {
        var difference = new Ratio(Math.Abs(stated.Difference));
        var corrected = DivideByTen.Corrected(stated.Stated);
        if (question.StatedRateIsShortcut == true)
            yield return Finding.Warning(
                SharedCodes.DivideByTen,
                $"Dividing by 10 makes a rate {new Ratio(DivideByTen.Factor - 1):F2} too high; exact units divide by {DivideByTen.ExactDivisor:F3}. {stated.Stated} becomes {corrected} that way.{Unexplained(corrected, rate)}"
            );
        else if (stated.IsShortcut)
            yield return Finding.Warning(
                SharedCodes.DivideByTen,
                $"{stated.Stated} is {difference:F1} more than {rate}, as it is when somebody divides by 10 where exact units divide by {DivideByTen.ExactDivisor:F3}. Sow {rate} if that is where it comes from; otherwise compare kernel mass, germination and emergence behind both."
            );
        else if (Threshold.IsAbove(difference.Fraction, NoticedDifference))
            yield return Finding.Warning(
                SeedingRateCodes.StatedRateDiffers,
                $"{stated.Stated} is {difference:F1} {(stated.Difference > 0 ? "more" : "less")} than {rate}. Check kernel mass, germination and emergence behind both."
            );
    }

    private static Sentence Unexplained(MassPerArea corrected, MassPerArea rate) =>
        Math.Abs(corrected.KilogramsPerSquareMetre / rate.KilogramsPerSquareMetre - 1) > NoticedDifference
            ? $" The numbers given here make it {rate}: check kernel mass, germination and emergence behind both."
            : (Sentence)$"";

    private static IEnumerable<Finding> OfKernel(SeedingRateQuestion question)
    {
        if (question.SeedsCounted < PublishedSeedRanges.SeedsOfASample)
            yield return Finding.Note(
                SeedingRateCodes.SmallSample,
                $"{question.SeedsCounted} seeds are few for a kernel mass. Count {PublishedSeedRanges.SeedsOfASample} several times (North Dakota State University)."
            );
        if (
            question.Crop is not { } crop
            || Outside(PublishedSeedRanges.KernelMass, crop, question.Kernel.KilogramsPerKernel) is not var (low, high, source)
        )
            yield break;
        yield return Finding.Note(
            SeedingRateCodes.KernelMassUnusual,
            $"{question.Kernel} is {(question.Kernel.KilogramsPerKernel < low ? "lighter" : "heavier")} than the range published for {CropNames.Of(crop)}, {new MassPerThousand(low)} to {new MassPerThousand(high)} ({source}). Check count, mass and unit; if they are right, use them."
        );
    }

    private static IEnumerable<Finding> OfGermination(SeedingRateQuestion question)
    {
        if (question.Establishment.Germination is not { } germination)
            yield break;
        if (question is { Target: SowingTarget.Seeds, Establishment.Emergence: null })
            yield return Finding.Note(
                SeedingRateCodes.GerminationNotUsed,
                $"The germination of {new Ratio(germination)} changes nothing of this rate, which puts down pure seeds whether they germinate or not. If seeds that can germinate are meant, ask for those; for a stand add the emergence."
            );
        var standard = PublishedSeedRanges.Germination.FirstOrDefault(range => question.Crop is { } crop && range.Crops.Contains(crop))
            ?? PublishedSeedRanges.GerminationOfOtherCrops;
        if (!Threshold.IsBelow(germination, standard.Low))
            yield break;
        var seed = question.Crop is { } known ? CropNames.Of(known) : "seed";
        yield return Finding.Warning(
            SeedingRateCodes.GerminationLow,
            $"A germination of {new Ratio(germination)} is low: {standard.Source}, for one, asks {new Ratio(standard.Low)} of {seed}. Weak seed often emerges worse than its germination says; test it again or take another lot."
        );
    }

    private static IEnumerable<Finding> OfEstablishment(SeedingRateQuestion question)
    {
        if (question.Crop is not { } crop || question.Establishment.Survival is not { } survival)
            yield break;
        var ranges = PublishedSeedRanges
            .Establishment.Where(range => range.Crops.Contains(crop))
            .Select(range => (Range: range.AsSurvival(question.Establishment.Germination), range.Source))
            .Where(one => one.Range is not null)
            .Select(one => new PublishedRange([crop], one.Range!.Value.Low, one.Range.Value.High, one.Source))
            .ToArray();
        if (Outside(ranges, crop, survival) is not var (low, high, source))
            yield break;
        yield return Finding.Note(
            SeedingRateCodes.EmergenceUnusual,
            $"{new Ratio(survival)} of the pure seeds are to become plants. For {CropNames.Of(crop)}{(question.Establishment.Germination is null ? "" : " of this germination")} {new Ratio(low)} to {new Ratio(high)} is published ({source}). Counts from your own fields go first."
        );
    }

    private static IEnumerable<Finding> OfSeeds(SeedingRateQuestion question, CountPerArea seeds)
    {
        if (question.Crop is { } crop && Outside(PublishedSeedRanges.SeedsPerArea, crop, seeds.PerSquareMetre) is var (_, most, source))
            yield return Finding.Note(
                SeedingRateCodes.SeedsAbovePublished,
                $"{seeds:seeds} are more than the most published for {CropNames.Of(crop)}, {new CountPerArea(most):seeds} ({source})."
            );
    }

    // The hull of all ranges for a crop, where the value lies outside it; null where it lies inside or nothing is published.
    private static (double Low, double High, string Source)? Outside(IEnumerable<PublishedRange> ranges, Crop crop, double value)
    {
        PublishedRange[] stated = [.. ranges.Where(range => range.Crops.Contains(crop))];
        if (stated.Length == 0)
            return null;
        var (low, high) = (stated.Min(range => range.Low), stated.Max(range => range.High));
        if (!Threshold.IsBelow(value, low) && !Threshold.IsAbove(value, high))
            return null;
        return (low, high, string.Join("; ", stated.Select(range => range.Source).Distinct()));
    }
}
