using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>What stands against going on, and what the headline makes of it.</summary>
internal static class FieldObstacles
{
    /// <summary>
    /// A rate that no meter can reach comes first, because the field cannot be sown so at all; then what kills seed, then what only
    /// makes it uneven, the air, nutrients, and lots to be tested. Judgement.
    /// </summary>
    public static IEnumerable<Obstacle> Of(
        IReadOnlyList<MeterSetUp> meters,
        ProductRateResult? nutrients,
        SeedRowResult? seedRow,
        FanResult? fan
    )
    {
        var outside = meters
            .Index()
            .Select(one => (Place: one.Index, one.Item.Rate.Meter, Element: FittedOf(one.Item)))
            .Where(one => one.Element is { Fits: false })
            .OrderBy(one => one.Element!.Room)
            .ToLookup(one => one.Element!.TooFast is not null);
        foreach (var (place, meter, element) in outside[true])
            yield return new Obstacle(new(SetUpPartKind.MeterSpeed, place), element!.TooFast!, meter.Position);
        if (seedRow is { Verdict: LimitVerdict.Above })
            yield return new Obstacle(new(SetUpPartKind.SeedRow), seedRow.Headline);
        foreach (var (place, meter, element) in outside[false])
            yield return new Obstacle(new(SetUpPartKind.MeterSpeed, place), element!.TooSlow!, meter.Position);
        if (fan is { Verdict: not FanVerdict.Suits })
            yield return new Obstacle(new(SetUpPartKind.Fan), fan.Headline);
        if (nutrients is { Verdict: TargetsVerdict.Missed })
            yield return new Obstacle(new(SetUpPartKind.Nutrients), nutrients.Headline);
        foreach (var (place, meter) in meters.Index())
        {
            if (meter.NewLot is { Verdict: LotVerdict.TestNow } lot)
                yield return new Obstacle(new(SetUpPartKind.NewLot, place), lot.Headline, meter.Rate.Meter.Position);
        }
    }

    /// <summary>The worst obstacle, or the first thing open, and how much there is besides.</summary>
    public static Sentence Headline(IReadOnlyList<Obstacle> obstacles, IReadOnlyList<OpenPoint> open)
    {
        if (obstacles is not [var worst, ..])
        {
            return open switch
            {
                [] => $"Every meter has its rate, its value and room for its speed. Go on with the catch plan.",
                [var only] => (Sentence)$"One thing is still missing: {only.Detail}",
                [var first, ..] => $"{open.Count} things are still missing. The first: {first.Detail}",
            };
        }

        var lead = worst.Meter is { } meter ? (Sentence)$"{meter}: {worst.Detail}" : worst.Detail;
        return (obstacles.Count - 1, open.Count) switch
        {
            (0, 0) => lead,
            (var more, 0) => $"{lead} {Things(more)} more in the way; see obstacles.",
            (0, var still) => $"{lead} Besides, {Things(still)} still missing; see missing.",
            (var more, var still) =>
                $"{lead} {Things(more)} more in the way, and {Things(still)} still missing; see obstacles and missing.",
        };
    }

    private static ElementResult? FittedOf(MeterSetUp meter) =>
        meter.MeterSpeed?.Elements.FirstOrDefault(element => element.Element.Name == meter.Rate.Meter.Fitted);

    private static Sentence Things(int count) => count == 1 ? (Sentence)$"1 thing is" : $"{count} things are";
}
