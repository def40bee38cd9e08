using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Products;

namespace CalibrationApi.Records.Plans;

/// <summary>A planned field from its records to the engine and back; nothing is computed here.</summary>
internal static class FieldSetUpMapping
{
    public static FieldSetUpQuestion ToEngine(PlannedField field)
    {
        var (plan, machine) = (field.Plan, field.Machine);
        return new()
        {
            AtOdds = [.. field.AtOdds.Select(error => new OpenPoint(OpenKind.RecordAtOdds, error.Pointer![2..], $"{error.Detail}"))],
            Meters = [.. field.Meters.Select(Read)],
            MetersLeftOut = plan.Meters!.Count - field.Meters.Count,
            GroundSpeeds = plan.WorkingSpeeds is { } working
                ? [plan.GroundSpeed!.Read(), working.Minimum!.Read(), working.Maximum!.Read()]
                : [plan.GroundSpeed!.Read()],
            WorkingWidth = LengthQuantity.Read(machine?.WorkingWidth),
            RowSpacing = LengthQuantity.Read(machine?.RowSpacing),
            OpenerSpread = LengthQuantity.Read(machine?.SeedRowWidth),
            Opener = Words.Read<Opener>(machine?.Opener),
            Area = AreaQuantity.Read(plan.Area),
            FieldEfficiency = plan.FieldEfficiency?.Canonical(),
            FanSpeed = plan.SowingConditions?.FanSpeed is { Value: > 0 } planned ? planned.Read() : null,
            Nutrients = ProductRateCalculation.Read(plan.Nutrients),
            Credits = ProductRateCalculation.Read(plan.NutrientCredits),
            SeedRow = plan.SeedRow is { } row
                ? new SeedRowOfField(
                    Words.Read<Crop>(row.Crop)!.Value,
                    Words.Read<SoilTexture>(row.Soil)!.Value,
                    Words.Read<SeedbedMoisture>(row.Moisture)!.Value,
                    Words.Read<Region>(row.Region),
                    row.AcceptableStandLoss?.Canonical(),
                    SeedRowLimitCalculation.Read(row.LocalLimits)
                )
                : null,
        };
    }

    public static PlanSetUpAnswer ToAnswer(FieldSetUpResult result, PlannedField field, FieldSetUpUnits units) =>
        new()
        {
            Headline = units.Of(result.HeadlineAbout).Text(result.Headline),
            HeadlineParts = units.Of(result.HeadlineAbout).Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Obstacles =
            [
                .. result.Obstacles.Select(one => new ObstacleOfPlan
                {
                    Meter = one.Meter,
                    Detail = units.Of(one.About).Text(one.Detail),
                    Parts = units.Of(one.About).Parts(one.Detail),
                }),
            ],
            Meters = [.. field.Meters.Zip(result.Meters).Select((pair, place) => ToAnswer(pair.First, pair.Second, place, units))],
            Nutrients = result.Nutrients is { } nutrients
                ? ProductRateCalculation.ToAnswer(
                    nutrients,
                    units.Nutrients,
                    nutrients.CostPerSquareMetre is null ? null : CurrencyOf(field)
                )
                : null,
            SeedRow = result.SeedRow is { } seedRow ? SeedRowLimitCalculation.ToAnswer(seedRow, units.SeedRow) : null,
            Fan = result.Fan is { } fan ? FanMapping.ToAnswer(fan, units.Fan) : null,
            Missing =
            [
                .. result.Missing.Select(one => new MissingOfPlan
                {
                    Pointer = $"#/{one.Member}",
                    Kind = Words.Of(one.Kind),
                    Detail = units.Of(one.About).Text(one.Detail),
                    Parts = units.Of(one.About).Parts(one.Detail),
                }),
            ],
            Cautions = units.Of(null).Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };

    /// <summary>What keeps a rate or a value from being told, as a fault of the plan.</summary>
    public static ProblemError Problem(OpenPoint open, FieldSetUpUnits units) =>
        new()
        {
            Pointer = $"#/{open.Member}",
            Code = open.Kind == OpenKind.Refused ? ErrorCodes.NumberOutOfRange : ErrorCodes.ValueMissing,
            Detail = units.Of(open.About).Text(open.Detail),
        };

    private static MeterSetUpAnswer ToAnswer(PlannedMeter planned, MeterSetUp meter, int place, FieldSetUpUnits units) =>
        new()
        {
            Meter = planned.Planned.Meter!,
            Element = planned.Planned.Element!,
            Product = planned.Product.Name!,
            Lot = planned.Lot?.Name,
            Rate = meter.Rate.Rate is { } rate ? units.Rate(place).Rate(rate) : null,
            RateFrom = Words.Of(meter.Rate.From),
            SeedingRate = meter.Rate.Seeding is { } seeding
                ? SeedingRateCalculation.ToAnswer(seeding, units.SeedingRate(place), planned.Product.Price?.Currency)
                : null,
            Values = [.. meter.Values.Select(value => ToAnswer(value, units.Value(place, value)))],
            MeterSpeed = meter.MeterSpeed is { } speed ? MeterSpeedCalculation.ToAnswer(speed, units.MeterSpeed(place)) : null,
            NewLot = meter.NewLot is { } lot ? NewLotCalculation.ToAnswer(lot, units.NewLot(place), planned.Product.Price?.Currency) : null,
        };

    private static ValueOfElement ToAnswer(KnownValue known, AnswerUnits units)
    {
        var value = units.MassPerRevolution(known.Value);
        return new()
        {
            Value = value.Value,
            Unit = value.Unit,
            Element = known.Element.Name,
            From = Words.Of(known.From),
        };
    }

    // Where there are costs, all products that bring nutrients have a price in one currency.
    private static string? CurrencyOf(PlannedField field) =>
        field.Meters.First(meter => meter.Product.Analysis is not null).Product.Price?.Currency;

    private static MeterToSetUp Read(PlannedMeter meter) =>
        new()
        {
            Index = meter.Index,
            Position = meter.Planned.Meter!,
            CoveredWidth = meter.Meter.CoveredWidth!.Read(),
            Elements = [.. meter.Meter.Elements!.Select(element => Read(element!, meter))],
            Fitted = meter.Planned.Element!,
            Product = Read(meter.Planned.Product!, meter.Product),
            Lot = meter.Lot is { } lot ? Read(lot) : null,
            TargetRate = MassPerAreaQuantity.Read(meter.Planned.TargetRate),
            Stand = meter.Planned.Stand is { } stand
                ? new WantedStand(stand.Plants!.Read(), stand.Emergence?.Canonical(), stand.Survival?.Canonical())
                : null,
            WithSeed = meter.Planned.WithSeed is true,
            StartValue = MassPerRevolutionQuantity.Read(meter.Planned.StartValue),
        };

    private static ElementToSetUp Read(ElementOfMachine element, PlannedMeter meter) =>
        new(element.Name!, CatchPlanCalculation.Read(element.SpeedLimits ?? meter.Meter.SpeedLimits))
        {
            Kind = Words.Read<ElementKind>(element.Kind),
            Displacement = VolumeQuantity.Read(element.DisplacementPerRevolution),
            Pockets = element.PocketsPerRevolution,
            InForce = meter.InForce.TryGetValue(element.Name!, out var adopted)
                ? new ElementInForce(
                    new MassPerRevolution(adopted.Value),
                    adopted.Random,
                    element == meter.Element && meter.LotBefore is { } before ? Read(before) : null
                )
                : null,
        };

    private static ProductToMeter Read(string key, ProductRequest product) =>
        new(key, product.Name!)
        {
            Density = BulkDensityQuantity.Read(product.BulkDensity),
            Analysis = product.Analysis is { } analysis ? ShareOfNutrient.Read(analysis) : [],
            NitrogenForm = Words.Read<NitrogenForm>(product.NitrogenForm),
            FanSpeeds = product.FanSpeedLimits is { } limits
                ? new StatedLimits<RotationalSpeed>(RotationQuantity.Read(limits.Minimum), RotationQuantity.Read(limits.Maximum))
                : null,
            Price = product.Price is { } price ? new ProductPrice(price.PerKilogram(), price.Currency!) : null,
        };

    // A density of the product, not of the lot, says nothing of how two lots differ.
    private static SeedLot Read(LotRequest lot) =>
        new()
        {
            Kernel = MassPerThousandQuantity.Read(lot.ThousandKernelMass),
            Density = BulkDensityQuantity.Read(lot.BulkDensity),
            Germination = lot.Germination?.Canonical(),
            Purity = lot.Purity?.Canonical(),
            Treatment = lot.Treatment,
        };
}
