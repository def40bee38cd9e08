using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.ProductRates;
using CalibrationApi.Engine.SeedRowLimits;

namespace CalibrationApi.Engine.FieldSetUps;

/// <summary>The codes of the set-up of a field: its own answer gathers the cautions of its parts.</summary>
public static class FieldSetUpCodes
{
    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } =
    [.. SeedRowCodes.Cautions, .. ProductRateCodes.Cautions, CautionCodes.TreatedSeed, .. MeterSpeedCodes.Cautions];
}
