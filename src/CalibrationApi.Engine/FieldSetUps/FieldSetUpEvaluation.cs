using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>One view of a field before the first catch: rates, meter speeds, the fan, the seed row, nutrients, new lots.</summary>
public static class FieldSetUpEvaluation
{
    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">The field with its machine and meters.</param>
    /// <remarks>
    /// <para>
    /// Formula: none of its own. Rates by <see cref="FieldRates"/>, speeds by <see cref="MeterSpeedEvaluation"/>, the air by
    /// <see cref="FanEvaluation"/>, the seed row by <see cref="SeedRowEvaluation"/>, lots by <see cref="NewLotEvaluation"/>; then, of all
    /// that stands in the way, the worst first (<see cref="FieldObstacles"/>).
    /// </para>
    /// <para>Range: that of these evaluations. What cannot be told yet is listed, and the rest is answered all the same.</para>
    /// <para>Source: the order of obstacles is judgement, everything else is that of these evaluations.</para>
    /// <para>Accuracy: that of these evaluations, to the last bit; shown in FieldSetUpEvaluationTests and SeedRowSetUpTests.</para>
    /// </remarks>
    public static FieldSetUpResult Evaluate(FieldSetUpQuestion question)
    {
        var rates = FieldRates.Of(question);
        List<OpenPoint> open = [.. question.AtOdds, .. rates.Open];
        MeterSetUp[] meters = [.. rates.Meters.Select(rate => Meter(rate, question, open))];
        var (seedRow, inSeedRow) = SeedRowSetUp.Of(question, rates, open);
        AddNutrients(question, rates, open);
        var fan = Fan(question, meters);
        Obstacle[] obstacles = [.. FieldObstacles.Of(meters, rates.Nutrients, seedRow, fan)];
        return new FieldSetUpResult
        {
            Headline = FieldObstacles.Headline(obstacles, open),
            HeadlineAbout =
                obstacles.Length > 0 ? obstacles[0].About
                : open.Count > 0 ? open[0].About
                : null,
            Obstacles = obstacles,
            Meters = meters,
            Nutrients = rates.Nutrients,
            SeedRow = seedRow,
            InSeedRow = inSeedRow,
            Fan = fan,
            Missing = open,
            Cautions = Cautions(meters, rates, seedRow),
        };
    }

    private static MeterSetUp Meter(MeterRate rate, FieldSetUpQuestion question, List<OpenPoint> open)
    {
        var meter = rate.Meter;
        KnownValue[] values = [.. meter.Elements.Select(meter.ValueOf).OfType<KnownValue>()];
        if (!rate.IsOff && !Array.Exists(values, value => value.Element.Name == meter.Fitted))
            open.Add(meter.WithoutValue());
        var speed =
            rate.IsOn && values.Length > 0
                ? MeterSpeedEvaluation.Evaluate(
                    new MeterSpeedQuestion
                    {
                        CoveredWidth = meter.CoveredWidth,
                        WorkingWidth = question.WorkingWidth,
                        Rates = [rate.Rate!.Value],
                        GroundSpeeds = question.GroundSpeeds,
                        Elements =
                        [
                            .. values.Select(value => new MeteringElement(
                                value.Element.Name,
                                DeliveryCurve.Constant(value.Value),
                                value.Element.Limits,
                                value.Element.Pockets,
                                value.Element.Content(meter.Density)
                            )),
                        ],
                        FieldEfficiency = question.FieldEfficiency,
                        Area = question.Area,
                    }
                )
                : null;
        return new MeterSetUp(rate, values, speed, rate.IsOff ? null : NewLot(rate, question));
    }

    // Only where both lots are known: without the one before nothing says what changed.
    private static NewLotResult? NewLot(MeterRate rate, FieldSetUpQuestion question)
    {
        var meter = rate.Meter;
        if (meter.Lot is not { } lot || meter.FittedElement?.InForce is not { OtherLot: { } before } inForce)
            return null;
        return NewLotEvaluation.Evaluate(
            new NewLotQuestion
            {
                ValueInForce = inForce.Value,
                ValueUncertainty = inForce.RelativeUncertainty,
                Before = before,
                After = lot,
                Seeds = rate.Seeding?.Seeds,
                Area = question.Area,
                // Without an area no price says what a wrong rate costs.
                PricePerKilogram = question.Area is null ? null : meter.Product.Price?.PerKilogram,
            }
        );
    }

    // All products share the air, so the limits of all of them hold at once. It is not looked at as long as no meter can be set up.
    private static FanResult? Fan(FieldSetUpQuestion question, MeterSetUp[] meters)
    {
        MeterRate[] carried = [.. meters.Select(meter => meter.Rate).Where(rate => rate.IsOn)];
        var isStated = Array.Exists(carried, rate => rate.Meter.Product.FanSpeeds is not null);
        if (!isStated || !Array.Exists(meters, meter => meter.MeterSpeed is not null))
            return null;
        return FanEvaluation.Evaluate(
            new FanQuestion { FanSpeed = question.FanSpeed, Products = [.. carried.Select(one => Carried(one.Meter, one.Rate!.Value))] },
            [.. question.GroundSpeeds.Distinct().OrderBy(speed => speed.MetresPerSecond)]
        );
    }

    private static CarriedProduct Carried(MeterToSetUp meter, MassPerArea rate) =>
        new(meter.Product.Name, meter.CoveredWidth, [rate], meter.Product.FanSpeeds ?? default, default);

    private static void AddNutrients(FieldSetUpQuestion question, FieldRates rates, List<OpenPoint> open)
    {
        if (question.Nutrients.Count == 0)
            return;
        MeterRate[] bringing = [.. rates.Meters.Where(meter => meter.Meter.Product.BringsNutrients)];
        if (bringing.Length == 0 && rates.Meters.All(meter => meter.From != MeterRateOrigin.Nutrients))
            open.Add(
                OpenPoint.Missing(
                    "nutrients",
                    $"No product of this plan has a known analysis, so nothing supplies these nutrients. Add the analysis to a product, or leave the nutrients out."
                )
            );
        // With one product to choose, or without any price, nothing is dearer than it has to be.
        if (
            bringing.Where(meter => meter.From == MeterRateOrigin.Nutrients).DistinctBy(meter => meter.Meter.Product.Key).Count() > 1
            && bringing.Any(meter => meter.Meter.Product.Price is not null)
            && !FieldRates.PricesCompare(bringing)
        )
            open.Add(
                OpenPoint.Missing(
                    "nutrients",
                    $"The rates are those of least total mass, not of least cost, because not all products have a price in one currency. Give each product of known analysis such a price."
                )
            );
    }

    // Each once, in whatever part it was said.
    private static Caution[] Cautions(MeterSetUp[] meters, FieldRates rates, SeedRowResult? seedRow) =>
        [
            .. (seedRow?.Cautions ?? [])
                .Concat(rates.Nutrients?.Cautions ?? [])
                .Concat(meters.SelectMany(OfMeter))
                .DistinctBy(caution => (caution.Code, DisplayUnits.Metric.Write(caution.Detail))),
        ];

    private static IEnumerable<Caution> OfMeter(MeterSetUp meter) =>
        [.. meter.Rate.Seeding?.Cautions ?? [], .. meter.NewLot?.Cautions ?? [], .. meter.MeterSpeed?.Cautions ?? []];
}
