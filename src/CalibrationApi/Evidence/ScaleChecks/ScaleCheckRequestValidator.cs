using System.Globalization;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Rules of a scale check.</summary>
internal sealed class ScaleCheckRequestValidator : AbstractValidator<ScaleCheckRequest>
{
    // A scale that is half off is not measured but misread: most often pounds as kilograms.
    private const double MostError = 0.2;

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
                            && known > 0
                            && Math.Abs(indicated - known) > MostError * known
                        )
                            context.Report(
                                string.Create(CultureInfo.InvariantCulture, $"Readings[{i}].Indicated"),
                                ErrorCodes.NumberOutOfRange,
                                "The scale shows more than 20 % beside the known mass. Check both numbers and both units."
                            );
                    }
                }
            );
    }
}
