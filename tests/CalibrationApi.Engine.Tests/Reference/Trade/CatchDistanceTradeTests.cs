using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedingRates;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples on stationary and catch-distance calibration and on field capacity.</summary>
public sealed class CatchDistanceTradeTests : TradeCases<CatchDistanceTradeTests>, ITradeTopic
{
    public static string File => "trade-catch-distance.csv";

    // Field and Solie, table 8.4: grams from twelve of 25 metering units in fifty turns of a wheel of 80 cm, units 20 cm apart.
    private static readonly double[] FieldGrams = [22.6, 22.4, 22.0, 22.9, 22.7, 22.6, 22.0, 22.8, 22.8, 22.7, 22.6, 22.8];

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["CD-02 width / ft"] = () => In("ft", WorkingWidth.OfOpeners(24, LengthOf(7.5, "in")).Metres),
            ["CD-02 area / ft2"] = () => Convert(1.0 / 20, "ac", "ft2"),
            ["CD-02 distance / ft"] = () => CourseFeet(1.0 / 20, WorkingWidth.OfOpeners(24, LengthOf(7.5, "in"))),
            ["CD-02 rolling circumference of 19 turns / ft"] = () => In("ft", RollingWheel.Circumference(LengthOf(145.2, "ft"), 19).Metres),
            ["CD-03 area / ft2"] = () => In("ft2", OneRow.AreaPerTurn.SquareMetres * 20),
            ["CD-03 grams for 25 lb/ac / g"] = () =>
                In("g", OneRow.MassPerTurn(new MassPerArea(Si(25, "lb/ac"))).KilogramsPerRevolution * 20),
            ["CD-04 rate / (lb/ac)"] = () =>
                In("lb/ac", OverCourse("ft", 100, "in", 9).Rate(new MassPerRevolution(Si(18.75, "g") / 5)).KilogramsPerSquareMetre),
            ["CD-05 distance for 19 in / ft"] = () => CourseFeet(1.0 / 128, LengthOf(19, "in")),
            ["CD-05 distance for 12 in / ft"] = () => CourseFeet(1.0 / 128, LengthOf(12, "in")),
            ["CD-05 ounces to lb/ac"] = () => In("lb/ac", Si(1, "oz") / Si(1.0 / 128, "ac")),
            ["CD-07 rate / (kg/ha)"] = () => In("kg/ha", Absurd.Rate!.Value),
            // 6500 mm3 per roller turn at 850 kg/m3, one roller turn for two of a wheel of 400 mm, rows of 200 mm.
            ["CD-09 rate / (kg/ha)"] = () =>
                In(
                    "kg/ha",
                    new DriveWheel(RollingWheel.OfDiameter(LengthOf(400, "mm")), LengthOf(200, "mm"))
                        .Rate(new MassPerRevolution(6500e-9 * 850), 0.5)
                        .KilogramsPerSquareMetre
                ),
            ["CD-10 area of 1/25 ha / m2"] = () => Convert(1.0 / 25, "ha", "m2"),
            ["CD-11 grams over 10 m per metre of row spacing in kg/ha"] = () =>
                In("kg/ha", OverCourse("m", 10, "m", 1).Rate(new MassPerRevolution(Si(1, "g"))).KilogramsPerSquareMetre),
            ["CD-12 distance / in"] = () => Convert(50, "ft", "in"),
            ["CD-12 turns in 50 ft"] = () =>
                new DriveWheel(LengthOf(60, "in"), new Length(1)).TurnsFor(new Area(LengthOf(50, "ft").Metres)),
            ["CD-13 seeds / (1/ha)"] = () => In("/ha", SeedingRate.Seeds(new CountPerArea(Si(6000, "/ha")), 0.75).PerSquareMetre),
            // Four rows of 100 cm from one meter of ten cells; 6000 plants per ha with 75 % emergence; ground wheel of 50 cm.
            ["CD-13 turns of the wheel per turn of the meter"] = () =>
                10
                / (
                    Si(6000, "/ha")
                    / 0.75
                    * new DriveWheel(RollingWheel.OfDiameter(LengthOf(50, "cm")), new Length(4)).AreaPerTurn.SquareMetres
                ),
            ["FC-02 area rate / (ft2/h)"] = () => In("ft2", PerHour("ft", 30, "mi/h", 5)),
            ["FC-02 theoretical capacity / (ac/h)"] = () => In("ac", PerHour("ft", 30, "mi/h", 5)),
            ["FC-02 capacity at 80 % / (ac/h)"] = () => In("ac", PerHour("ft", 30, "mi/h", 5, 0.80)),
            ["FC-02 capacity at 60 % / (ac/h)"] = () => In("ac", PerHour("ft", 30, "mi/h", 5, 0.60)),
            ["FC-03 width / m"] = () => WorkingWidth.OfOpeners(5, LengthOf(22, "cm")).Metres,
            ["FC-03 capacity / (ha/h)"] = () => In("ha", PerHour("m", 1.1, "km/h", 3)),
            ["FC-03 time / (h/ha)"] = () => 1 / In("ha", PerHour("m", 1.1, "km/h", 3)),
            ["FC-03 cost per ha"] = () => 250.0 / 8 / In("ha", PerHour("m", 1.1, "km/h", 3)),
            ["FC-04 speed over 88 ft in 12 s / (mi/h)"] = () =>
                In("mi/h", MeasuredCourse.GroundSpeed(LengthOf(88, "ft"), new Duration(12)).MetresPerSecond),
            ["FIELD-8.4 mass caught / kg"] = () => FieldGrams.Sum(grams => Si(grams, "g")),
            ["FIELD-8.4 rate / (kg/ha)"] = () => In("kg/ha", FieldTest.Rate!.Value),
            ["FIELD-8.4 mean of the units / g"] = () => FieldGrams.Average(),
            ["FIELD-8.4 upper limit of a unit / g"] = () => FieldGrams.Average() * (1 + CatchTestLimits.DefaultTolerance),
            ["FIELD-8.4 lower limit of a unit / g"] = () => FieldGrams.Average() * (1 - CatchTestLimits.DefaultTolerance),
            ["FIELD-8.4 upper limit of the rate / (kg/ha)"] = () => 9.0 * (1 + CatchTestLimits.DefaultTolerance),
            ["FIELD-8.4 lower limit of the rate / (kg/ha)"] = () => 9.0 * (1 - CatchTestLimits.DefaultTolerance),
            ["NTF grams per lb/ac in 6 in rows over 150 ft"] = () => GramsPerRow(6),
            ["NTF grams per lb/ac in 7 in rows over 150 ft"] = () => GramsPerRow(7),
            ["NTF grams per lb/ac in 7.5 in rows over 150 ft"] = () => GramsPerRow(7.5),
            ["NTF grams per lb/ac in 8 in rows over 150 ft"] = () => GramsPerRow(8),
            ["IASRI-6.1 theoretical capacity at 5 km/h and 20 m / (ha/h)"] = () => In("ha", PerHour("m", 20, "km/h", 5)),
            ["IASRI-6.1 capacity at 92.5 % / (ha/h)"] = () => In("ha", PerHour("m", 20, "km/h", 5, 0.925)),
        };

    // A tyre of 8 ft, one row of 7.5 in.
    private static DriveWheel OneRow => new(LengthOf(8, "ft"), LengthOf(7.5, "in"));

    private static DriveWheelResult FieldTest =>
        DriveWheelEvaluation.Evaluate(
            new DriveWheelQuestion
            {
                Wheel = WheelMeasure.OfDiameter(new Length(0.80)),
                Width = WorkingWidth.OfOpeners(25, new Length(0.20)),
                Outlets = 25,
                OutletsCaught = 12,
                TargetRate = new MassPerArea(Si(9.0, "kg/ha")),
                Tests = [TurnTest.Apart(50, [.. FieldGrams.Select(grams => new Mass(Si(grams, "g")))])],
            }
        );

    // 52.5 kg in 15 turns of a wheel of 0.53 m, on a width of 0.76 m.
    private static DriveWheelResult Absurd =>
        DriveWheelEvaluation.Evaluate(
            new DriveWheelQuestion
            {
                Wheel = WheelMeasure.OfDiameter(new Length(0.53)),
                Width = new Length(0.76),
                Tests = [TurnTest.Together(15, new Mass(52.5))],
            }
        );

    // The printed rule is grams / runs / row spacing in inches x 12, where exact units take 43560 x 12 / (100 x 453.59237).
    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void ShortcutShown_GramsOverHundredFeet_IsFourPercentHigh()
    {
        var shortcut = 18.75 / 5 / 9 * 12;

        new PrintedNumber("5.0").AssertReproducedBy(shortcut);
        Assert.Equal(0.0413, shortcut / Computed["CD-04 rate / (lb/ac)"]() - 1, 0.0001);
    }

    // Field and Solie accept the drill: the rate within 5 % of 9.0 kg/ha, every unit within 5 % of their mean.
    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void Field84_AcceptanceRule_IsMet()
    {
        var test = FieldTest;

        Assert.True(test.Acceptance!.Within);
        Assert.Equal(FieldGrams.Length, test.Outlets.Count);
        Assert.All(test.Outlets, outlet => Assert.True(outlet.Within));
    }

    [Fact]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void CD07_RateOfManyTonsPerHectare_IsWarnedOf() =>
        Assert.Contains(Absurd.Findings, finding =>
            finding.Code == DriveWheelCodes.RateImplausible && finding.Severity == Severity.Warning
        );

    private static Length LengthOf(double value, string unit) => new(Si(value, unit));

    private static double CourseFeet(double acres, Length width) => In("ft", MeasuredCourse.For(new Area(Si(acres, "ac")), width).Metres);

    private static double PerHour(string widthUnit, double width, string speedUnit, double speed, double efficiency = 1) =>
        FieldCapacity.PerHour(new Length(Si(width, widthUnit)), new Speed(Si(speed, speedUnit)), efficiency).SquareMetres;

    // Grams caught from one row over 150 ft for one pound per acre.
    private static double GramsPerRow(double rowInches) =>
        In("g", OverCourse("ft", 150, "in", rowInches).MassPerTurn(new MassPerArea(Si(1, "lb/ac"))).KilogramsPerRevolution);

    // A course is one turn of a wheel of its length.
    private static DriveWheel OverCourse(string lengthUnit, double length, string widthUnit, double width) =>
        new(LengthOf(length, lengthUnit), LengthOf(width, widthUnit));
}
