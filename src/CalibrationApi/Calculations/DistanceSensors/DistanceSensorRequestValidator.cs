using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Wheels;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Rules of a question about a distance sensor.</summary>
internal sealed class DistanceSensorRequestValidator : AbstractValidator<DistanceSensorRequest>
{
    public DistanceSensorRequestValidator()
    {
        RuleFor(question => question).Custom(CheckCounts);
        RuleFor(question => question).Custom(CheckForms);
    }

    private static void CheckCounts(DistanceSensorRequest question, ValidationContext<DistanceSensorRequest> context)
    {
        var turns = CountsTurns(question);
        foreach (
            var (name, runs) in new[] { (nameof(question.Runs), question.Runs), (nameof(question.ReferenceRuns), question.ReferenceRuns) }
        )
        {
            for (var i = 0; i < Math.Min(runs?.Count ?? 0, DistanceSensorRequest.MostRuns); i++)
            {
                var path = string.Create(CultureInfo.InvariantCulture, $"{name}[{i}]");
                if (runs![i] is not { } run)
                    continue;
                if (run is { Pulses: null, Turns: null })
                    context.Report(
                        $"{path}.Pulses",
                        ErrorCodes.MemberMissing,
                        "What was counted is missing. Give the pulses, or the turns of the wheel."
                    );
                else if (run.Pulses is not null && run.Turns is not null)
                    context.Report(
                        $"{path}.Turns",
                        SharedCodes.SettingsAtOdds,
                        "Give either pulses or turns. With pulsesPerTurn the one follows from the other."
                    );
                else if (run.Turns is not null != turns)
                    context.Report(
                        path,
                        SharedCodes.SettingsAtOdds,
                        "Some runs count pulses and some count turns. Give the same in all of them, the reference runs included."
                    );
            }
        }
    }

    // A form that the counts cannot tell needs the pulses of a turn.
    private static void CheckForms(DistanceSensorRequest question, ValidationContext<DistanceSensorRequest> context)
    {
        if (question.PulsesPerTurn is not null || question.Runs is not { Count: > 0 })
            return;
        var asked = new List<string?> { question.ControllerEntry?.Form };
        if (question.ValueInForce is { } value)
            asked.AddRange([.. Given(value)]);
        var needed = CountsTurns(question)
            ? new[] { SensorForm.PulsesPerDistance, SensorForm.DistancePerPulse }
            : [SensorForm.WheelCircumference];
        if (needed.Any(form => asked.Contains(Words.Of(form))))
            context.Report(
                nameof(question.PulsesPerTurn),
                ErrorCodes.MemberMissing,
                CountsTurns(question)
                    ? "Runs are counted in turns of the wheel, but the controller counts pulses: add the pulses per turn."
                    : "Runs are counted in pulses, but the controller takes the circumference of the wheel: add the pulses per turn."
            );
    }

    private static IEnumerable<string> Given(ValueOfSensor value)
    {
        if (value.PulsesPerDistance is not null || value.Pulses is not null)
            yield return Words.Of(SensorForm.PulsesPerDistance);
        if (value.DistancePerPulse is not null)
            yield return Words.Of(SensorForm.DistancePerPulse);
        if (value.WheelCircumference is not null)
            yield return Words.Of(SensorForm.WheelCircumference);
    }

    private static bool CountsTurns(DistanceSensorRequest question) =>
        question.Runs?.FirstOrDefault(run => run is not null) is { Pulses: null, Turns: not null };
}

internal sealed class ValueOfSensorValidator : AbstractValidator<ValueOfSensor>
{
    public ValueOfSensorValidator()
    {
        RuleFor(value => value)
            .Custom(
                (value, context) =>
                {
                    object?[] given = [value.PulsesPerDistance, value.Pulses, value.DistancePerPulse, value.WheelCircumference];
                    if (given.All(one => one is null))
                        context.Report(
                            nameof(value.PulsesPerDistance),
                            ErrorCodes.MemberMissing,
                            "The value is missing. Give one of: pulsesPerDistance, pulses with their distance, distancePerPulse, wheelCircumference."
                        );
                    if (value.Pulses is not null && value.Distance is null)
                        context.Report(
                            nameof(value.Distance),
                            ErrorCodes.MemberMissing,
                            "A count of pulses says nothing without its distance. Add the distance over which the controller counts them."
                        );
                    if (value.Pulses is null && value.Distance is not null)
                        context.Report(
                            nameof(value.Distance),
                            SharedCodes.SettingsAtOdds,
                            "A distance goes with pulses only. Leave it out, or give the pulses."
                        );
                    if (given.Count(one => one is not null) > 1)
                        context.Report(
                            "",
                            SharedCodes.SettingsAtOdds,
                            "The value is given in more than one form. Give the one that the controller shows."
                        );
                }
            );
    }
}

internal sealed class EntryOfSensorValidator : AbstractValidator<EntryOfSensor>
{
    public EntryOfSensorValidator()
    {
        RuleFor(entry => entry)
            .Custom(
                (entry, context) =>
                {
                    if (entry.Form is null || !Words.All<SensorForm>().Contains(entry.Form))
                        return;
                    var pulses = entry.Form == Words.Of(SensorForm.PulsesPerDistance);
                    if (pulses && entry.Unit is not null)
                        context.Report(
                            nameof(entry.Unit),
                            SharedCodes.SettingsAtOdds,
                            "A count of pulses has no unit. Leave it out, and give the distance over which the controller counts."
                        );
                    if (!pulses && entry.Unit is null)
                        context.Report(
                            nameof(entry.Unit),
                            ErrorCodes.MemberMissing,
                            "The unit of the length is missing. Add the one that the controller shows."
                        );
                    if (!pulses && entry.Distance is not null)
                        context.Report(
                            nameof(entry.Distance),
                            SharedCodes.SettingsAtOdds,
                            "A distance goes with the form pulses-per-distance only. Leave it out."
                        );
                }
            );
    }
}

internal sealed class WidthOfMachineValidator : AbstractValidator<WidthOfMachine>
{
    public WidthOfMachineValidator()
    {
        RuleFor(width => width)
            .Custom(
                (width, context) =>
                {
                    if (width.Openers is not { } openers || Rules.Canonical(width.Spacing) is not { } spacing)
                        return;
                    foreach (
                        var (name, length) in new[] { (nameof(width.PassToPass), width.PassToPass), (nameof(width.InForce), width.InForce) }
                    )
                    {
                        if (Rules.Canonical(length) is { } metres && WorkingWidth.IsAtOdds(metres, openers, spacing))
                            context.Report(name, SharedCodes.SettingsAtOdds, WorkingWidth.AtOdds);
                    }
                }
            );
    }
}
