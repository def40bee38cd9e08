using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Reads the scale of a test or of a plan.</summary>
internal static class ScaleMapping
{
    public static Scale Read(ScaleOfTest scale) =>
        new()
        {
            Division = scale.Division!.Read(),
            AccuracyClass = Words.Read<AccuracyClass>(scale.AccuracyClass),
            VerificationInterval = MassQuantity.Read(scale.VerificationInterval),
            StatedAccuracy = MassQuantity.Read(scale.StatedAccuracy),
            KnownError = scale.KnownError is { } known
                ? new KnownScaleError(known.Error!.Canonical(), known.StandardUncertainty!.Canonical())
                {
                    CheckFailed = known.CheckFailed ?? false,
                }
                : null,
            Capacity = MassQuantity.Read(scale.Capacity),
            ReadingScatter = MassQuantity.Read(scale.ReadingScatter),
        };
}
