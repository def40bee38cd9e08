using System.Globalization;
using CalibrationApi.CatchTests;
using CalibrationApi.Http;
using CalibrationApi.Storing;
using FluentValidation;

namespace CalibrationApi.ScaleChecks;

/// <summary>Rules of a scale check.</summary>
internal sealed class ScaleCheckRequestValidator : RequestValidator<ScaleCheckRequest>
{
    // A scale that is half off is not measured but misread: most often pounds as kilograms.
    private const double MostError = 0.2;

    public ScaleCheckRequestValidator(TimeProvider clock)
    {
        RuleFor(check => check.Id).NewId();
        RuleFor(check => check.Scale).Needed();
        RuleFor(check => check.Scale).Text(64);
        RuleFor(check => check.Readings).Needed();
        RuleFor(check => check.Readings).Items(1, 100);
        RuleForEach(check => check.Readings!).SetValidator(new KnownMassReadingOfCheckValidator()!);
        RuleFor(check => check.OccurredAt).Needed();
        RuleFor(check => check.OccurredAt).Instant(clock);
        RuleFor(check => check.RecordedBy).Needed();
        RuleFor(check => check.RecordedBy).Text(Rules.LongestName);
        RuleFor(check => check.Note).Text(2000);
        RuleFor(check => check.Supersedes!).SetValidator(new SupersedesValidator());
        RuleFor(check => check).Custom((check, context) =>
        {
            for (var i = 0; i < (check.Readings?.Count ?? 0); i++)
            {
                if (check.Readings![i] is { } reading && Rules.Canonical(reading.Known) is { } known && Rules.Canonical(reading.Indicated) is { } indicated
                    && known > 0 && Math.Abs(indicated - known) > MostError * known)
                    context.Report(string.Create(CultureInfo.InvariantCulture, $"Readings[{i}].Indicated"), ErrorCode.NumberOutOfRange, "The scale shows more than 20 % beside the known mass. Check both numbers and both units.");
            }
        });
    }
}

internal sealed class KnownMassReadingOfCheckValidator : RequestValidator<KnownMassReadingOfCheck>
{
    public KnownMassReadingOfCheckValidator()
    {
        RuleFor(reading => reading.Known).Needed();
        RuleFor(reading => reading.Known).Measured();
        RuleFor(reading => reading.Indicated).Needed();
        RuleFor(reading => reading.Indicated).Measured(new(0, 1000, "t"));
        RuleFor(reading => reading.KnownUncertainty).Measured(new(0, 1000, "kg"));
    }
}
