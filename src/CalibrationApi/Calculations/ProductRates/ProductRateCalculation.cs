using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.ProductRates;

/// <summary>Finds the rates of products that supply the nutrients wanted.</summary>
/// <remarks>
/// The rates that meet every target at the least cost, or the least total mass where there are no prices, after credits and
/// fixed rates are taken off: what each product supplies, what remains over, what it costs, packages over an area. Among
/// equal costs the least mass is taken, then earlier products before later ones. Where the targets cannot be met, the
/// nearest rates: limits (at-most, most) are kept as far as they can be, then the sum over all targets of what is missing,
/// or for exact targets too much, each divided by its target, is least; findings say why. Nothing is stored.
/// </remarks>
/// <request>The nutrients wanted, the products at hand, credits.</request>
/// <response code="200">Rates, supply, surplus and cost.</response>
internal static class ProductRateCalculation
{
    public static Calculation<ProductRateRequest, ProductRateQuestion, ProductRateResult, ProductRateAnswer> Declaration { get; } =
        new(typeof(ProductRateCalculation))
        {
            Name = "product-rate",
            Tag = "Product rates",
            Says = "Which rates of which products supply the nutrients that are wanted, at the least cost.",
            Json = ProductRateJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => ProductRateEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (request, result, units) => ToAnswer(result, units, request.Products![0]!.Price?.Currency),
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Rates follow the first target; masses the first package, else go with the rates.</summary>
    public static AnswerUnits UnitsFor(ProductRateRequest request, string? choice) =>
        UnitsFor(
            choice,
            Quantity.UnitOf(request.Targets![0]!.Amount)!,
            Quantity.UnitOf(request.Area),
            Quantity.UnitOf(request.Products!.FirstOrDefault(product => product!.PackageMass is not null)?.PackageMass)
        );

    /// <summary>The same from the units of the first target, the area and the first package.</summary>
    public static AnswerUnits UnitsFor(string? choice, Unit rate, Unit? area, Unit? package)
    {
        var isPounds = rate.Symbol == "lb/ac";
        return AnswerUnits.For(choice, rate, UnitTable.Get(isPounds ? "ac" : "ha"), UnitTable.Get(isPounds ? "lb" : "kg"), area, package);
    }

    public static ProductRateQuestion ToEngine(ProductRateRequest request) =>
        new()
        {
            Targets = Read(request.Targets),
            Products = [.. request.Products!.Select(product => Read(product!))],
            Credits = Read(request.Credits),
            Area = AreaQuantity.Read(request.Area),
        };

    public static NutrientTarget[] Read(IReadOnlyList<WantedNutrient?>? targets) =>
        [
            .. (targets ?? []).Select(target => new NutrientTarget(
                Form(target!.Nutrient),
                target.Amount!.Read(),
                Words.Read<TargetKind>(target.Kind),
                MassPerAreaQuantity.Read(target.Maximum)
            )),
        ];

    public static NutrientCredit[] Read(IReadOnlyList<CreditedNutrient?>? credits) =>
        [.. (credits ?? []).Select(credit => new NutrientCredit(Form(credit!.Nutrient), credit.Amount!.Read()))];

    /// <param name="result">The rates.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="currency">Currency of the prices; null without any.</param>
    public static ProductRateAnswer ToAnswer(ProductRateResult result, AnswerUnits units, string? currency)
    {
        var money = new MoneyWriter(currency, units.Display);
        return new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Products = [.. result.Products.Select(line => ToAnswer(line, units, money))],
            Nutrients = [.. result.Nutrients.Select(nutrient => ToAnswer(nutrient, units, money))],
            TotalRate = units.Rate(result.TotalRate),
            Blend = [.. result.Blend.Select(one => new BlendShare { Nutrient = one.Form.Symbol, Share = units.Ratio(one.Share) })],
            CostPerArea = money.PerArea(result.CostPerSquareMetre),
            TotalCost = money.Total(result.TotalCost),
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static OfferedProduct Read(ProductOffer product) =>
        new()
        {
            Name = product.Name!,
            Analysis = ShareOfNutrient.Read(product.Analysis!),
            PricePerKilogram = product.Price?.PerKilogram(),
            LeastRate = MassPerAreaQuantity.Read(product.MinimumRate),
            MostRate = MassPerAreaQuantity.Read(product.MaximumRate),
            FixedRate = MassPerAreaQuantity.Read(product.FixedRate),
            Package = MassQuantity.Read(product.PackageMass),
        };

    private static NutrientForm Form(string? word) => NutrientForm.Find(word)!;

    private static ProductRateLine ToAnswer(ProductLine line, AnswerUnits units, MoneyWriter money) =>
        new()
        {
            Name = line.Product.Name,
            Rate = units.Rate(line.Rate),
            IsFixed = line.Product.FixedRate is not null,
            Supplies =
            [
                .. line.Supplies.Select(one => new SuppliedNutrient { Nutrient = one.Form.Symbol, Amount = units.Rate(one.Amount) }),
            ],
            CostPerArea = money.PerArea(line.CostPerSquareMetre),
            TotalMass = line.Total is { } total ? units.Mass(total) : null,
            Packages = line.Packages,
            TotalCost = money.Total(line.TotalCost),
            NutrientCost = line.OnlyNutrient is { } only ? money.OfNutrient(only) : null,
        };

    private static NutrientLine ToAnswer(NutrientBalance nutrient, AnswerUnits units, MoneyWriter money) =>
        new()
        {
            Nutrient = nutrient.Form.Symbol,
            Target = nutrient.Target is { } target ? units.Rate(target.Amount) : null,
            Kind = nutrient.Target is { } asked ? Words.Of(asked.Kind ?? ProductRateDefaults.Kind) : null,
            Credits = units.Rate(nutrient.Credits),
            FromFixedRates = units.Rate(nutrient.FromFixed),
            FromComputedRates = units.Rate(nutrient.FromProducts),
            Total = units.Rate(nutrient.Total),
            Surplus = nutrient.Surplus is { } surplus ? units.Rate(surplus) : null,
            Met = nutrient.Met,
            CostOfNextUnit = money.PerMass(nutrient.NextKilogram),
            CostOfLimit = money.PerMass(nutrient.KilogramOfLimit),
        };

    /// <summary>Writes amounts of money for the units of the answer.</summary>
    private sealed class MoneyWriter(string? currency, DisplayUnits units)
    {
        // Nutrients are priced by the kilogram or the pound, also where whole tonnes are ordered.
        private readonly Unit mass = units[Dimension.MassPerArea].Symbol == "lb/ac" ? UnitTable.Get("lb") : UnitTable.Get("kg");

        public Money? Total(double? amount) =>
            amount is { } known ? new Money { Value = AnswerUnits.Shown(known), Currency = currency! } : null;

        public CostPerUnit? PerArea(double? perSquareMetre) => Per(perSquareMetre, units[Dimension.Area]);

        public CostPerUnit? PerMass(double? perKilogram) => Per(perKilogram, mass);

        public CostOfNutrient OfNutrient(NutrientCost cost) =>
            new()
            {
                Nutrient = cost.Form.Symbol,
                Value = AnswerUnits.Shown(cost.PerKilogram * mass.Canonical(1)),
                Currency = currency!,
                Per = mass.Symbol,
            };

        private CostPerUnit? Per(double? amount, Unit unit) =>
            amount is { } known
                ? new CostPerUnit
                {
                    Value = AnswerUnits.Shown(known * unit.Canonical(1)),
                    Currency = currency!,
                    Per = unit.Symbol,
                }
                : null;
    }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(ProductRateRequest))]
[JsonSerializable(typeof(ProductRateAnswer))]
internal sealed partial class ProductRateJson : JsonSerializerContext;
