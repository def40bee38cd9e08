using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Rules of a question about meter speeds.</summary>
internal sealed class MeterSpeedRequestValidator : AbstractValidator<MeterSpeedRequest>
{
    public MeterSpeedRequestValidator()
    {
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    if (question.Stops is not null && question.FieldEfficiency is not null)
                        context.Report(
                            nameof(question.Stops),
                            SharedCodes.SettingsAtOdds,
                            "The field efficiency is stated or follows from the stops. Give one of the two."
                        );
                    if (question.Rates is { Count: > 0 } rates && rates.All(rate => Rules.Canonical(rate) == 0))
                        context.Report(
                            nameof(question.Rates),
                            ErrorCodes.NumberOutOfRange,
                            "Every rate is zero, so no meter turns. Give at least one rate above zero."
                        );
                }
            );
    }
}

internal sealed class ElementOfMeterValidator : AbstractValidator<ElementOfMeter>
{
    public ElementOfMeterValidator()
    {
        RuleFor(element => element)
            .Custom(
                (element, context) =>
                {
                    if (element.MassPerRevolution is null && element.MeasuredAt is null)
                        context.Report(
                            nameof(element.MassPerRevolution),
                            ErrorCodes.MemberMissing,
                            "Add the mass per revolution, or measuredAt with its values at several meter speeds."
                        );
                    if (element.MassPerRevolution is not null && element.MeasuredAt is not null)
                        context.Report(
                            nameof(element.MeasuredAt),
                            SharedCodes.SettingsAtOdds,
                            "Give either one mass per revolution or measuredAt, not both."
                        );
                    CheckCurve(element, context);
                }
            );
    }

    private static void CheckCurve(ElementOfMeter element, ValidationContext<ElementOfMeter> context)
    {
        if (element.MeasuredAt is not { Count: > 1 } points)
            return;
        var read = points
            .Select(point => (Speed: Rules.Canonical(point?.MeterSpeed), Value: Rules.Canonical(point?.MassPerRevolution)))
            .ToArray();
        if (
            read.Any(point =>
                point is not ({ } speed, { } value) || !double.IsFinite(speed) || !double.IsFinite(value) || speed <= 0 || value <= 0
            )
        )
            return;
        if (read.Select(point => point.Speed).Distinct().Count() < read.Length)
            context.Report(
                nameof(element.MeasuredAt),
                SharedCodes.SettingsAtOdds,
                "Two values are given at one meter speed. Keep one, or give their mean."
            );
        else if (
            DeliveryCurve.Through(
                read.Select(point =>
                    (new Engine.Quantities.RotationalSpeed(point.Speed!.Value), new Engine.Quantities.MassPerRevolution(point.Value!.Value))
                )
            )
            is null
        )
            context.Report(
                nameof(element.MeasuredAt),
                SharedCodes.SettingsAtOdds,
                "Somewhere between these points a faster meter would deliver less mass per minute, so no single speed gives a rate. Check the points."
            );
    }
}
