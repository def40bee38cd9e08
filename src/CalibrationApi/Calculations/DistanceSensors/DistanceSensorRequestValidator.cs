using System.Globalization;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Rules of a question about a distance sensor.</summary>
internal sealed class DistanceSensorRequestValidator : RequestValidator<DistanceSensorRequest>
{
    private const int MostRuns = 50;

    public DistanceSensorRequestValidator()
    {
        RuleFor(question => question.Runs).Needed();
        RuleFor(question => question.Runs).Items(1, MostRuns);
        RuleForEach(question => question.Runs!).SetValidator(new RunOfSensorValidator()!);
        RuleFor(question => question.ReferenceRuns).Items(0, MostRuns);
        RuleForEach(question => question.ReferenceRuns!).SetValidator(new RunOfSensorValidator()!);
        RuleFor(question => question.PulsesPerTurn).Measured();
        RuleFor(question => question.DistanceResolution).Measured(new(0, 10, "m"));
        RuleFor(question => question.TurnResolution).Measured(new(0, 10, "rev"));
        RuleFor(question => question.TapeLimit).Measured(new(0, 20, "%"));
        RuleFor(question => question.Repeatability).Measured(new(0.01, 30, "%"));
        RuleFor(question => question.RepeatabilityDegreesOfFreedom).Number(1, 1000);
        RuleFor(question => question.ValueInForce!).SetValidator(new ValueOfSensorValidator());
        RuleFor(question => question.ControllerEntry!).SetValidator(new EntryOfSensorValidator());
        RuleFor(question => question.Width!).SetValidator(new WidthOfMachineValidator());
        RuleFor(question => question.MeterDrive).Word(Words.All<MeterDrive>());
        RuleFor(question => question.TargetRate).Measured();
        RuleFor(question => question.Area).Measured();
        RuleFor(question => question.Price!).SetValidator(new PriceValidator());
        RuleFor(question => question.Tolerance).Measured(new(0.1, 50, "%"));
        RuleFor(question => question.WantedPrecision).Measured(new(0.1, 50, "%"));
        RuleFor(question => question.SecondRunChange).Measured(new(0.1, 100, "%"));
        RuleFor(question => question).Custom(CheckCounts);
        RuleFor(question => question).Custom(CheckForms);
    }

    private static void CheckCounts(DistanceSensorRequest question, ValidationContext<DistanceSensorRequest> context)
    {
        var turns = CountsTurns(question);
        foreach (var (name, runs) in new[] { (nameof(question.Runs), question.Runs), (nameof(question.ReferenceRuns), question.ReferenceRuns) })
        {
            for (var i = 0; i < Math.Min(runs?.Count ?? 0, MostRuns); i++)
            {
                var path = string.Create(CultureInfo.InvariantCulture, $"{name}[{i}]");
                if (runs![i] is not { } run)
                    continue;
                if (run is { Pulses: null, Turns: null })
                    context.Report($"{path}.Pulses", ErrorCode.MemberMissing, "What was counted is missing. Give the pulses, or the turns of the wheel.");
                else if (run.Pulses is not null && run.Turns is not null)
                    context.Report($"{path}.Turns", ErrorCode.SettingsAtOdds, "Give either pulses or turns. With pulsesPerTurn the one follows from the other.");
                else if (run.Turns is not null != turns)
                    context.Report(path, ErrorCode.SettingsAtOdds, "Some runs count pulses and some count turns. Give the same in all of them, the reference runs included.");
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
            context.Report(nameof(question.PulsesPerTurn), ErrorCode.MemberMissing, CountsTurns(question)
                ? "Runs are counted in turns of the wheel, but the controller counts pulses: add the pulses per turn."
                : "Runs are counted in pulses, but the controller takes the circumference of the wheel: add the pulses per turn.");
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

    private static bool CountsTurns(DistanceSensorRequest question) => question.Runs?.FirstOrDefault(run => run is not null) is { Pulses: null, Turns: not null };
}

internal sealed class RunOfSensorValidator : RequestValidator<RunOfSensor>
{
    public RunOfSensorValidator()
    {
        RuleFor(run => run.Distance).Needed();
        RuleFor(run => run.Distance).Measured(new(1, 10_000, "m"));
        RuleFor(run => run.Pulses).Number(1, 1_000_000_000);
        RuleFor(run => run.Turns).Measured(new(0.1, 1_000_000, "rev"));
        RuleFor(run => run.DistanceUncertainty).Measured(new(0, 100, "m"));
        RuleFor(run => run.Direction).Word(Words.All<RunDirection>());
        RuleFor(run => run.Time).Measured();
    }
}

internal sealed class ValueOfSensorValidator : RequestValidator<ValueOfSensor>
{
    public ValueOfSensorValidator()
    {
        RuleFor(value => value.PulsesPerDistance).Measured();
        RuleFor(value => value.Pulses).Number(1, 1_000_000_000);
        RuleFor(value => value.Distance).Measured(new(1, 10_000, "m"));
        RuleFor(value => value.DistancePerPulse).Measured(new(0, 100, "m", ExcludesLeast: true));
        RuleFor(value => value.WheelCircumference).Measured(new(0, 100, "m", ExcludesLeast: true));
        RuleFor(value => value).Custom((value, context) =>
        {
            object?[] given = [value.PulsesPerDistance, value.Pulses, value.DistancePerPulse, value.WheelCircumference];
            if (given.All(one => one is null))
                context.Report(nameof(value.PulsesPerDistance), ErrorCode.MemberMissing, "The value is missing. Give one of: pulsesPerDistance, pulses with their distance, distancePerPulse, wheelCircumference.");
            if (value.Pulses is not null && value.Distance is null)
                context.Report(nameof(value.Distance), ErrorCode.MemberMissing, "A count of pulses says nothing without its distance. Add the distance over which the controller counts them.");
            if (value.Pulses is null && value.Distance is not null)
                context.Report(nameof(value.Distance), ErrorCode.SettingsAtOdds, "A distance goes with pulses only. Leave it out, or give the pulses.");
            if (given.Count(one => one is not null) > 1)
                context.Report("", ErrorCode.SettingsAtOdds, "The value is given in more than one form. Give the one that the controller shows.");
        });
    }
}

internal sealed class EntryOfSensorValidator : RequestValidator<EntryOfSensor>
{
    public EntryOfSensorValidator()
    {
        RuleFor(entry => entry.Form).Needed();
        RuleFor(entry => entry.Form).Word(Words.All<SensorForm>());
        RuleFor(entry => entry.Distance).Measured(new(1, 10_000, "m"));
        RuleFor(entry => entry.Unit).Word([.. UnitTable.Of(Dimension.Length).Select(unit => unit.Symbol)]);
        RuleFor(entry => entry.Decimals).Needed();
        RuleFor(entry => entry.Decimals).Whole(0, SensorEntry.MostDecimals);
        RuleFor(entry => entry).Custom((entry, context) =>
        {
            if (entry.Form is null || !Words.All<SensorForm>().Contains(entry.Form))
                return;
            var pulses = entry.Form == Words.Of(SensorForm.PulsesPerDistance);
            if (pulses && entry.Unit is not null)
                context.Report(nameof(entry.Unit), ErrorCode.SettingsAtOdds, "A count of pulses has no unit. Leave it out, and give the distance over which the controller counts.");
            if (!pulses && entry.Unit is null)
                context.Report(nameof(entry.Unit), ErrorCode.MemberMissing, "The unit of the length is missing. Add the one that the controller shows.");
            if (!pulses && entry.Distance is not null)
                context.Report(nameof(entry.Distance), ErrorCode.SettingsAtOdds, "A distance goes with the form pulses-per-distance only. Leave it out.");
        });
    }
}

internal sealed class WidthOfMachineValidator : RequestValidator<WidthOfMachine>
{
    // A pass-to-pass width of another size than the machine is a slip, not an overlap.
    private const double MostRatio = 2;

    public WidthOfMachineValidator()
    {
        RuleFor(width => width.Openers).Needed();
        RuleFor(width => width.Openers).Whole(1, 1000);
        RuleFor(width => width.Spacing).Needed();
        RuleFor(width => width.Spacing).Measured(new(0.01, 10, "m"));
        RuleFor(width => width.PassToPass).Measured(new(0.01, 200, "m"));
        RuleFor(width => width.InForce).Measured(new(0.01, 200, "m"));
        RuleFor(width => width).Custom((width, context) =>
        {
            if (width.Openers is not { } openers || Rules.Canonical(width.Spacing) is not { } spacing)
                return;
            foreach (var (name, length) in new[] { (nameof(width.PassToPass), width.PassToPass), (nameof(width.InForce), width.InForce) })
            {
                if (Rules.Canonical(length) / (openers * spacing) is > MostRatio or < 1 / MostRatio)
                    context.Report(name, ErrorCode.SettingsAtOdds, "This width is less than half or more than twice openers times spacing. Check the three numbers and their units.");
            }
        });
    }
}
