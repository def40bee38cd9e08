using CalibrationApi.Engine.Weighing;
using CalibrationApi.Http;
using CalibrationApi.Records;

namespace CalibrationApi.Scales;

/// <summary>Rules of a scale.</summary>
internal sealed class ScaleRequestValidator : DescribedRequestValidator<ScaleRequest>
{
    public ScaleRequestValidator()
    {
        RuleFor(scale => scale.Division).Needed();
        RuleFor(scale => scale.Division).Measured(new(0, 100, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.AccuracyClass).Word(Words.All<AccuracyClass>());
        RuleFor(scale => scale.VerificationInterval).Measured(new(0, 100, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.StatedAccuracy).Measured(new(0, 1000, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.Capacity).Measured();
        RuleFor(scale => scale.DaysBetweenChecks).Whole(1, 3660);
    }
}
