using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples of field capacity, beside those of <see cref="CatchDistanceTradeTests"/>.</summary>
public sealed class FieldCapacityTradeTests : TradeCases<FieldCapacityTradeTests>, ITradeTopic
{
    public static string File => "trade-field-capacity.csv";

    public static IReadOnlyDictionary<string, Func<double>> Computed { get; } =
        new Dictionary<string, Func<double>>(StringComparer.Ordinal)
        {
            ["ISU-A3-24 spreader of 40 ft at 6 mi/h and 70 % / (ac/h)"] = () => AcresPerHour(40, 6, 0.70),
            ["ISU-A3-24 spreader of 60 ft at 6 mi/h and 68 % / (ac/h)"] = () => AcresPerHour(60, 6, 0.68),
            ["ISU-A3-24 spreader of 60 ft at 12 mi/h and 68 % / (ac/h)"] = () => AcresPerHour(60, 12, 0.68),
            ["ISU-A3-24 spreader of 80 ft at 6 mi/h and 68 % / (ac/h)"] = () => AcresPerHour(80, 6, 0.68),
            ["ISU-A3-24 spreader of 80 ft at 12 mi/h and 68 % / (ac/h)"] = () => AcresPerHour(80, 12, 0.68),
            ["ISU-A3-24 manure spreader of 15 ft at 5 mi/h and 63 % / (ac/h)"] = () => AcresPerHour(15, 5, 0.63),
            ["ISU-A3-24 manure spreader of 20 ft at 6 mi/h and 63 % / (ac/h)"] = () => AcresPerHour(20, 6, 0.63),
            ["ISU-A3-24 manure spreader of 30 ft at 6 mi/h and 60 % / (ac/h)"] = () => AcresPerHour(30, 6, 0.60),
            ["ISU-A3-24 manure spreader of 36 ft at 5 mi/h and 60 % / (ac/h)"] = () => AcresPerHour(36, 5, 0.60),
            ["ISU-A3-24 manure spreader of 45 ft at 5 mi/h and 60 % / (ac/h)"] = () => AcresPerHour(45, 5, 0.60),
            ["ISU-696 spreader of 50 ft at 6 mi/h and 70 % / (ac/h)"] = () => AcresPerHour(50, 6, 0.70),
            ["DAFF ha in a day of 10 h per km/h and m at full efficiency"] = () =>
                In("ha", FieldCapacity.During(new Length(1), new Speed(Si(1, "km/h")), 1, new Duration(Si(10, "h"))).SquareMetres),
            ["JAM lowest field efficiency of seeders / %"] = () => In("%", FieldCapacity.LowestPublished),
            ["ETH field efficiency of a wheat drill / %"] = () => In("%", FieldCapacity.HighestPublished),
        };

    private static double AcresPerHour(double feet, double milesPerHour, double efficiency) =>
        In("ac", FieldCapacity.PerHour(new Length(Si(feet, "ft")), new Speed(Si(milesPerHour, "mi/h")), efficiency).SquareMetres);
}
