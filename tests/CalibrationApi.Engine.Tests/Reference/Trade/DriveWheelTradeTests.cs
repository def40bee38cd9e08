using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples on turning the drive wheel of a ground-driven machine.</summary>
public sealed class DriveWheelTradeTests : TradeCases<DriveWheelTradeTests>, ITradeTopic
{
    public static string File => "trade-drive-wheel.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            // A course is one turn of a wheel of its length.
            ["UF-1 rate of 20 lb on 435 ft by 10 ft / (lb/ac)"] = () => PoundsPerAcre(20, 1, 435, 10),
            ["UF-2 rate of 20 lb in 43 turns of 9 ft by 8 ft / (lb/ac)"] = () => PoundsPerAcre(20, 43, 9, 8),
            ["EXAM width of 5 x 150 mm / m"] = () => Exam.Width.Metres,
            ["EXAM course for 0.1 ha / m"] = () => MeasuredCourse.For(Tenth, Exam.Width).Metres,
            ["EXAM turns of a wheel of 1200 mm for 0.1 ha"] = () => Exam.TurnsFor(Tenth),
            ["GATE-RATIO meter revolutions for a hectare of 40 cm rows, 38 g each"] = () => Row.TurnsFor(Hectare) / TurnsPerMeterRevolution,
            ["GATE-RATIO turns of a wheel of 60 cm meanwhile"] = () => Row.TurnsFor(Hectare),
            ["GATE-RATIO turns of the wheel per meter revolution"] = () => TurnsPerMeterRevolution,
        };

    private static Area Tenth => new(Si(0.1, "ha"));

    private static Area Hectare => new(Si(1, "ha"));

    private static DriveWheel Exam => new(RollingWheel.OfDiameter(new Length(1.2)), WorkingWidth.OfOpeners(5, new Length(0.15)));

    private static DriveWheel Row => new(RollingWheel.OfDiameter(new Length(0.6)), new Length(0.4));

    private static double TurnsPerMeterRevolution =>
        1 / Row.MeterRevolutionsPerTurn(new MassPerArea(Si(200, "kg/ha")), new MassPerRevolution(Si(38, "g")));

    private static double PoundsPerAcre(double pounds, double turns, double circumferenceFeet, double widthFeet) =>
        In(
            "lb/ac",
            new DriveWheel(new Length(Si(circumferenceFeet, "ft")), new Length(Si(widthFeet, "ft")))
                .Rate(new MassPerRevolution(Si(pounds, "lb") / turns))
                .KilogramsPerSquareMetre
        );
}
