using System.Globalization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Rules of a scale check.</summary>
internal sealed class ScaleCheckRequestValidator : AbstractValidator<ScaleCheckRequest>
{
    public ScaleCheckRequestValidator()
    {
        RuleFor(check => check)
            .Custom(
                (check, context) =>
                {
                    for (var i = 0; i < (check.Readings?.Count ?? 0); i++)
                    {
                        if (
                            check.Readings![i] is { } reading
                            && Rules.Canonical(reading.Known) is { } known
                            && Rules.Canonical(reading.Indicated) is { } indicated
                            && KnownMassReading.IsMisread(known, indicated)
                        )
                            context.Report(
                                string.Create(CultureInfo.InvariantCulture, $"Readings[{i}].Indicated"),
                                ErrorCodes.NumberOutOfRange,
                                DisplayUnits.Metric.Write(KnownMassReading.Misread)
                            );
                    }
                }
            );
    }
}
