using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples on overlap, ground speed over a course, courses for an area, and slip.</summary>
public sealed class DistanceTradeTests : TradeCases<DistanceTradeTests>, ITradeTopic
{
    public static string File => "trade-distance.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["RF-03 area worked twice of each crop / ac"] = () => TwiceOf450Acres,
            // 27 500 seeds per acre at 80 000 in a bag of 250 $; 150 000 per acre at 140 000 in a unit of 50 $.
            ["RF-03 maize seed / $"] = () => TwiceOf450Acres * 27_500 / 80_000 * 250,
            ["RF-03 soybean units"] = () => TwiceOf450Acres * 150_000 / 140_000,
            ["RF-03 soybean seed / $"] = () => TwiceOf450Acres * 150_000 / 140_000 * 50,
            ["RF-04 over-use by 1 ft of 55 ft / %"] = () => In("%", Seeder(1).OverlapShare),
            ["RF-05 100 kg/ha with a skid of 4.53 % / (kg/ha)"] = () => In("kg/ha", RateUnderSkid(Si(100, "kg/ha"), Si(4.53, "%"))),
            ["AB-OVL effective width with 1 ft / ft"] = () => In("ft", Seeder(1).Effective.Metres),
            ["AB-OVL effective width with 5 ft / ft"] = () => In("ft", Seeder(5).Effective.Metres),
            ["AB-OVL area worked twice with 1 ft / ac"] = () => QuarterSection(1, 49, 2424),
            ["AB-OVL area worked twice with 5 ft / ac"] = () => QuarterSection(5, 53, 2440),
            ["AB-OVL cost of 5 ft in canola / $"] = () => QuarterSection(5, 53, 2440) * 86.44,
            ["AB-OVL cost of 1 ft in feed barley / $"] = () => QuarterSection(1, 49, 2424) * 69.29,
            ["AB-OVL share of 160 ac with 1 ft, headlands included / %"] = () => In("%", QuarterSection(1, 49, 2424) / 160),
            ["CORNELL factor from ft/s to mi/h"] = () => MilesPerHour(1, 1),
            ["LAKE 88 ft in a minute / (mi/h)"] = () => MilesPerHour(88, 60),
            ["USU plot of 1/128 ac / ft2"] = () => Convert(1.0 / 128, "ac", "ft2"),
            ["USU course for 9 ft / ft"] = () => Course(9),
            ["USU course for 12 ft / ft"] = () => Course(12),
            ["USU course for 15 ft / ft"] = () => Course(15),
            ["PF-EFF 26 400 ft in an hour / (mi/h)"] = () => MilesPerHour(26_400, 3600),
            ["GATE-SLIP distance without slip in 20 turns / m"] = () => 20 * Rolling.Metres,
            ["GATE-SLIP slip / %"] = () => In("%", Slip(new Length(56), 20)),
        };

    // An overlap of 8 % of the width covered anew, on 450 acres.
    private static double TwiceOf450Acres => 450 * new WorkingWidth(new Length(1.08), new Length(1)).OverlapShare;

    // A nominal radius of 0.5 m, of which the tyre rolls 6 % less.
    private static Length Rolling => RollingWheel.OfDiameter(new Length(2 * 0.5 * 0.94));

    // Turns counted under load, against one turn on the circumference that rolls without slip.
    private static double Slip(Length distance, double turns) => 1 - 1 / (1 - Skid(distance, turns));

    private static double Skid(Length distance, double turns) =>
        DistanceSensorEvaluation
            .Evaluate(
                new DistanceSensorQuestion
                {
                    Runs = [new MeasuredRun(distance, turns)],
                    ReferenceRuns = [new MeasuredRun(Rolling, 1)],
                    Counted = CountedThing.Turns,
                }
            )
            .Result!.Skid!.Value;

    private static WorkingWidth Seeder(double overlapFeet) => new(new Length(Si(55, "ft")), new Length(Si(55 - overlapFeet, "ft")));

    // Between the passes, and along the headlands at both ends of half a mile.
    private static double QuarterSection(double overlapFeet, int passes, double lengthFeet) =>
        Convert((passes - 1) * overlapFeet * lengthFeet + 2 * overlapFeet * 2640, "ft2", "ac");

    private static double RateUnderSkid(double rate, double skid)
    {
        var yard = new DriveWheel(new Length(2), new Length(3));
        return (yard with { Skid = skid }).Rate(yard.MassPerTurn(new MassPerArea(rate))).KilogramsPerSquareMetre;
    }

    private static double MilesPerHour(double feet, double seconds) =>
        In("mi/h", MeasuredCourse.GroundSpeed(new Length(Si(feet, "ft")), new Duration(seconds)).MetresPerSecond);

    private static double Course(double widthFeet) =>
        In("ft", MeasuredCourse.For(new Area(Si(1.0 / 128, "ac")), new Length(Si(widthFeet, "ft"))).Metres);
}
