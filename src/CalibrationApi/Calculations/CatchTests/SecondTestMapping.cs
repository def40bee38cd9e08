using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>An earlier test, from the contract to the engine and back.</summary>
internal static class SecondTestMapping
{
    public static EarlierTest Read(EarlierTestOfTest earlier) =>
        new()
        {
            Value = earlier.Read(),
            Catches = earlier.Catches!.Value,
            Scatter = earlier.CatchesUncertainty?.Canonical(),
            DegreesOfFreedom = earlier.DegreesOfFreedom,
            KnownUncertainty = earlier.SharedTareUncertainty?.Canonical() ?? 0,
            Span = earlier.ScaleUncertainty?.Canonical(),
            FromAnotherScale = earlier.FromAnotherScale,
            Name = earlier.Test,
            OccurredAt = earlier.OccurredAt,
        };

    public static SecondTestAnswer ToAnswer(SecondTest second, AnswerUnits units) =>
        new()
        {
            Test = second.Earlier.Name,
            OccurredAt = second.Earlier.OccurredAt,
            MassPerRevolution = units.MassPerRevolution(second.Earlier.Value),
            Difference = units.Ratio(second.Difference),
            LargestHonestDifference = units.Ratio(second.LargestHonestDifference),
            Agrees = second.Agrees,
            Confirms = second.Confirms,
            Combined = units.Measured(second.Combined),
        };
}
