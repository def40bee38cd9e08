using CalibrationApi.Engine.Crops;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.FieldSetUps;

/// <summary>
/// Fields to start from. The scenario is invented: a machine of 9 m with a front meter for barley and a rear one for fertilizer.
/// </summary>
internal static class Planted
{
    private static readonly MeterSpeedLimits FourToNinety = new(Planned.Rpm(4), Planned.Rpm(90));

    public static ProductToMeter Barley { get; } =
        new("barley", "malting barley") { Density = new BulkDensity(620), Price = new ProductPrice(0.42, "EUR") };

    public static ProductToMeter Urea { get; } = Fertilizer("urea", NutrientForm.N, 0.46) with { NitrogenForm = NitrogenForm.Urea };

    public static SeedLot Lot { get; } =
        new()
        {
            Kernel = Kernel(45),
            Germination = 0.96,
            Purity = 0.99,
            Treatment = "fungicide",
        };

    /// <summary>0.342 kg/rev in force in front; 90 kg/ha at 9 km/h take 35.5 rpm of 4 to 90.</summary>
    public static MeterToSetUp Front { get; } =
        new()
        {
            Index = 0,
            Position = "front",
            CoveredWidth = new Length(9),
            Elements = [new ElementToSetUp("coarse", FourToNinety) { InForce = new ElementInForce(new MassPerRevolution(0.342)) }],
            Fitted = "coarse",
            Product = Barley,
            Lot = Lot,
            TargetRate = PerHectare(90),
        };

    /// <summary>Fertilizer whose rate follows from the nutrients.</summary>
    public static MeterToSetUp Rear { get; } =
        new()
        {
            Index = 1,
            Position = "rear",
            CoveredWidth = new Length(9),
            Elements = [new ElementToSetUp("fine", MeterSpeedLimits.None)],
            Fitted = "fine",
            Product = Urea,
            StartValue = new MassPerRevolution(0.9),
        };

    /// <summary>Wheat in rows of 9 in with a spread of 1 in, where 15 lb/ac of urea nitrogen are printed for Manitoba.</summary>
    public static SeedRowOfField Wheat { get; } = new(Crop.Wheat, SoilTexture.Medium, SeedbedMoisture.Good, Region.Manitoba, null, []);

    public static FieldSetUpQuestion Field(params MeterToSetUp[] meters) =>
        new()
        {
            GroundSpeeds = [new Speed(2.5)],
            WorkingWidth = new Length(9),
            RowSpacing = Inches(9),
            OpenerSpread = Inches(1),
            Area = new Area(480_000),
            Meters = [.. meters.Select((meter, i) => meter with { Index = i })],
        };

    public static FieldSetUpQuestion Wanting(this FieldSetUpQuestion field, double nitrogen, double there = 0) =>
        field with
        {
            Nutrients = [new NutrientTarget(NutrientForm.N, PerHectare(nitrogen))],
            Credits = there > 0 ? [new NutrientCredit(NutrientForm.N, PerHectare(there))] : [],
        };

    public static FieldSetUpResult SetUp(this FieldSetUpQuestion field) => FieldSetUpEvaluation.Evaluate(field);

    public static ProductToMeter Fertilizer(string key, NutrientForm form, double share) =>
        new(key, key) { Analysis = [new NutrientShare(form, share)] };

    public static MassPerArea PerHectare(double kilograms) => new(kilograms / 10_000);

    public static double InPerHectare(this MassPerArea? rate) => rate!.Value.KilogramsPerSquareMetre * 10_000;

    public static MassPerThousand Kernel(double grams) => new(UnitTable.Get("g/1000").Canonical(grams));

    private static Length Inches(double value) => new(UnitTable.Get("in").Canonical(value));
}
