using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>The conditions of a test or of sowing; null members were not stated.</summary>
/// <remarks>
/// <para>Published work shows that tank level, slope, speed and moisture change what a meter delivers (SOURCES.md, keys SPAGNOLO-2020,
/// ENGAGRIC-2017, DURSUN-2007); how far they may differ before it is worth a word is judgement.</para>
/// <para>Formula: differences beyond 30 points of tank level, 3 points of slope, 2 points of moisture, 10 K; tank pressure by 20 % and fan
/// speed by 10 % of the larger.</para>
/// <para>Range: conditions stated on both sides; what is stated on one only is compared with nothing.</para>
/// <para>Source: which conditions matter SOURCES.md, keys SPAGNOLO-2020, ENGAGRIC-2017 and DURSUN-2007; how far is judgement.</para>
/// <para>Accuracy: each condition by itself, far off and near (TestConditionsTests).</para>
/// </remarks>
public sealed record TestConditions
{
    /// <summary>Fill of the tank, 0 to 1.</summary>
    public Ratio? TankLevel { get; init; }

    /// <summary>Pressure in the tank above the air around it.</summary>
    public Pressure? TankPressure { get; init; }

    /// <summary>Slope of the machine along its travel, uphill positive.</summary>
    public Ratio? Slope { get; init; }

    /// <summary>Moisture of the product, by mass.</summary>
    public Ratio? ProductMoisture { get; init; }

    /// <summary>Temperature of the air.</summary>
    public Temperature? AirTemperature { get; init; }

    /// <summary>Speed of the fan.</summary>
    public RotationalSpeed? FanSpeed { get; init; }

    /// <summary>
    /// Fill of a tank below which it counts as nearly empty where nothing was said about sowing; judgement, no published source.
    /// </summary>
    public static Ratio NearlyEmpty { get; } = new(0.10);

    /// <summary>The tank was nearly empty, and it was not said that sowing would be so too.</summary>
    /// <param name="sowing">Conditions of sowing; null when not stated.</param>
    public bool IsNearlyEmpty(TestConditions? sowing) =>
        sowing?.TankLevel is null && TankLevel is { } level && Threshold.IsBelow(level.Fraction, NearlyEmpty.Fraction);

    /// <summary>A finding for every condition that differs from sowing by more than is worth a word, or that no sowing has.</summary>
    /// <param name="sowing">Conditions of sowing; null when not stated.</param>
    public IEnumerable<Finding> DifferingFrom(TestConditions? sowing)
    {
        if (IsNearlyEmpty(sowing))
            yield return Finding.Warning(
                CatchCodes.ConditionsDiffer,
                $"The tank was nearly empty in the test ({TankLevel}): the meter may deliver differently from a filled one. Test again with more product in it."
            );
        foreach (var (what, here, there) in Differences(sowing))
            yield return Finding.Warning(
                CatchCodes.ConditionsDiffer,
                $"The {what} in the test ({here}) differs from that stated for sowing ({there}): the meter may deliver differently. Test again near the conditions of sowing, or check in the field."
            );
    }

    /// <summary>Names of the conditions that differ from sowing by more than is worth a word.</summary>
    /// <param name="sowing">Conditions of sowing; null when not stated.</param>
    public IEnumerable<string> NamesDifferingFrom(TestConditions? sowing) => Differences(sowing).Select(one => one.What);

    private IEnumerable<(string What, IQuantity Test, IQuantity Sowing)> Differences(TestConditions? sowing)
    {
        if (Apart(TankLevel?.Fraction, sowing?.TankLevel?.Fraction, 0.30))
            yield return ("tank level", TankLevel!, sowing!.TankLevel!);
        if (ApartRelative(TankPressure?.Pascals, sowing?.TankPressure?.Pascals, 0.20))
            yield return ("tank pressure", TankPressure!, sowing!.TankPressure!);
        if (Apart(Slope?.Fraction, sowing?.Slope?.Fraction, 0.03))
            yield return ("slope", Slope!, sowing!.Slope!);
        if (Apart(ProductMoisture?.Fraction, sowing?.ProductMoisture?.Fraction, 0.02))
            yield return ("moisture of the product", ProductMoisture!, sowing!.ProductMoisture!);
        if (Apart(AirTemperature?.Kelvin, sowing?.AirTemperature?.Kelvin, 10))
            yield return ("air temperature", AirTemperature!, sowing!.AirTemperature!);
        if (ApartRelative(FanSpeed?.RevolutionsPerSecond, sowing?.FanSpeed?.RevolutionsPerSecond, 0.10))
            yield return ("fan speed", FanSpeed!, sowing!.FanSpeed!);
    }

    private static bool Apart(double? test, double? sowing, double limit) => test is { } a && sowing is { } b && Math.Abs(a - b) > limit;

    private static bool ApartRelative(double? test, double? sowing, double limit) =>
        test is { } a && sowing is { } b && Math.Abs(a - b) > limit * Math.Max(Math.Abs(a), Math.Abs(b));
}
