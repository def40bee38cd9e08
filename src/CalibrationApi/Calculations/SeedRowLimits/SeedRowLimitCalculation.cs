using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>Compares fertilizer placed with the seed with published limits.</summary>
/// <remarks>
/// The share of the seedbed that is used, the nutrients that lie with the seed in the worst zone, and every limit that is
/// held for the crop and the region, with its source, year, place and conditions. A limit is used for its own crop, soil,
/// moisture, opener and place only; where a source prints no number, there is none here. Where sources differ, all are
/// shown and the stricter one leads. No answer says that a load is safe: local guidance, the product label and a licensed
/// adviser go first. Nothing is stored.
/// </remarks>
/// <request>Crop, soil, opener and what is placed with the seed.</request>
/// <units>Units of the answer; as-asked takes those of the question. Printed numbers keep the unit of their source.</units>
/// <response code="200">Loads, limits and their verdicts.</response>
internal static class SeedRowLimitCalculation
{
    public static Calculation<SeedRowLimitRequest, SeedRowQuestion, SeedRowResult, SeedRowLimitAnswer> Declaration { get; } =
        new(typeof(SeedRowLimitCalculation))
        {
            Name = "seed-row-limit",
            Tag = "Seed-row limits",
            Says = "What published limits say to fertilizer placed with the seed, with their conditions.",
            Json = SeedRowLimitJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => SeedRowEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (_, result, units) => ToAnswer(result, units),
            Verdict = answer => answer.Verdict,
        };

    public static AnswerUnits UnitsFor(SeedRowLimitRequest request, string? choice)
    {
        var first = request.Products![0]!;
        return AnswerUnits.For(
            choice,
            Quantity.UnitOf(first.Rates?[0] ?? first.Nutrients?[0]!.Amount),
            Quantity.UnitOf(request.SeedRowWidth)
        );
    }

    public static SeedRowQuestion ToEngine(SeedRowLimitRequest request) =>
        new()
        {
            Crop = Words.Read<Crop>(request.Crop)!.Value,
            Soil = Words.Read<SoilTexture>(request.Soil)!.Value,
            Moisture = Words.Read<SeedbedMoisture>(request.Moisture)!.Value,
            Region = Words.Read<Region>(request.Region),
            RowSpacing = request.RowSpacing!.Read(),
            Spread = request.SeedRowWidth!.Read(),
            Opener = Words.Read<Opener>(request.Opener),
            Products = [.. request.Products!.Select(product => Read(product!))],
            AcceptableStandLoss = request.AcceptableStandLoss?.Canonical(),
            Sources = request.Sources is { } keys ? [.. keys.Select(key => key!)] : null,
            LocalLimits = Read(request.LocalLimits),
        };

    public static LocalLimit[] Read(IReadOnlyList<LocalLimitWithSeed?>? limits) =>
        [
            .. (limits ?? []).Select(limit => new LocalLimit(
                limit!.Source!,
                Words.Read<LimitedNutrient>(limit.Nutrient)!.Value,
                new PrintedRate(limit.Rate!.Value!.Value, limit.Rate.Unit!)
            )),
        ];

    public static SeedRowLimitAnswer ToAnswer(SeedRowResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            SeedbedUtilisation = units.Ratio(result.SeedbedUtilisation),
            Loads =
            [
                .. result.Loads.Select(load => new NutrientLoadAnswer
                {
                    Nutrient = Words.Of(load.Nutrient),
                    Rate = units.Rate(load.Rate),
                    Zone = load.Zone,
                }),
            ],
            Limits = [.. result.Limits.Select(limit => ToAnswer(limit, units))],
            StandLoss = result.StandLoss is { } loss ? ToAnswer(loss, units) : null,
            Reductions =
            [
                .. result.Reductions.Select(reduction => new StatedReductionAnswer
                {
                    Detail = reduction.Statement,
                    Left = reduction.Left is { } left ? units.Ratio(left) : null,
                    Applied = result.Limits.Any(limit => limit.Reduction == reduction) || result.StandLoss?.Reduction == reduction,
                    Source = ToAnswer(reduction.Source),
                }),
            ],
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };

    private static PlacedProduct Read(ProductWithSeed product)
    {
        var form = Words.Read<NitrogenForm>(product.NitrogenForm);
        if (product.Nutrients is { } nutrients)
            return PlacedProduct.OfNutrients(
                product.Name!,
                [.. nutrients.Select(one => (NutrientForm.Find(one!.Nutrient)!, one.Amount!.Read()))],
                form
            );
        return new PlacedProduct
        {
            Name = product.Name!,
            Analysis = NutrientAnalysis.Of(ShareOfNutrient.Read(product.Analysis!)),
            Rates = [.. product.Rates!.Select(rate => rate!.Read())],
            NitrogenForm = form,
        };
    }

    private static SeedRowLimitOfSource ToAnswer(LimitJudgement one, AnswerUnits units) =>
        new()
        {
            Verdict = Words.Of(one.Verdict),
            Nutrient = Words.Of(one.Limit.Nutrient),
            Load = units.Rate(one.Load),
            Zone = one.Zone,
            Limit = one.Allowed is { } allowed ? units.Rate(allowed) : null,
            Margin = one.Margin is { } margin ? units.Rate(margin) : null,
            AsPrinted = one.AsPrinted is { } printed ? Printed(printed) : null,
            Basis = one.Basis is { } basis ? Words.Of(basis) : null,
            Cells = [.. one.Cells.Select(cell => new PrintedLimit { Geometry = cell.Geometry, Limit = Printed(cell.Rate) })],
            Reason = one.Reason,
            Conditions = one.Limit.Conditions,
            Source = ToAnswer(one.Limit.Source),
        };

    private static StandLossAnswer ToAnswer(StandLoss loss, AnswerUnits units) =>
        new()
        {
            Accepted = units.Ratio(loss.Accepted),
            Expected = loss.Expected is { } expected ? units.Ratio(expected) : null,
            IsWhole = loss.IsWhole,
            Zone = loss.Zone,
            Judged = loss.IsJudged,
            Products =
            [
                .. loss.Products.Select(one => new StandLossOfProduct
                {
                    Name = one.Product.Name,
                    Material = one.Material,
                    Expected = one.Expected is { } lost ? units.Ratio(lost) : null,
                    Maximum = one.Most is { } most ? units.Rate(most) : null,
                }),
            ],
            Reason = loss.Reason,
            Conditions = StandLoss.Conditions,
            Source = ToAnswer(loss.Source),
        };

    private static MassPerAreaQuantity Printed(PrintedRate rate) => new() { Value = AnswerUnits.Shown(rate.Value), Unit = rate.Unit };

    private static LimitSourceAnswer ToAnswer(LimitSource source) =>
        new()
        {
            Key = source.Word,
            Publisher = source.Publisher,
            Title = source.Title,
            Year = source.Year,
            Region = source.Place,
            Address = source.Address,
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(SeedRowLimitRequest))]
[JsonSerializable(typeof(SeedRowLimitAnswer))]
internal sealed partial class SeedRowLimitJson : JsonSerializerContext;
