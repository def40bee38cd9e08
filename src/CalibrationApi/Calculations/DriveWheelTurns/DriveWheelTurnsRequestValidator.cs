using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Wheels;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Rules of a question about turns of a drive wheel.</summary>
internal sealed class DriveWheelTurnsRequestValidator : AbstractValidator<DriveWheelTurnsRequest>
{
    public DriveWheelTurnsRequestValidator()
    {
        RuleFor(question => question).Custom(CheckOutlets);
        RuleFor(question => question)
            .Custom(
                (question, context) =>
                {
                    if (question is { MassPerRevolution: not null, MeterRevolutionsPerTurn: null, TargetRate: null })
                        context.Report(
                            nameof(question.MeterRevolutionsPerTurn),
                            ErrorCodes.MemberMissing,
                            "A mass per revolution of the meter gives a rate with its gearing, or the gearing for a rate: add the meter revolutions per turn of the drive wheel, or the target rate."
                        );
                    if (question is not { Areas.Count: > 0 } and not { TurnTests.Count: > 0 } and not { MassPerRevolution: not null })
                        context.Report(
                            nameof(question.Areas),
                            ErrorCodes.MemberMissing,
                            "Nothing is asked. Give areas for which the turns are wanted, or turn tests, or the mass per revolution of the meter."
                        );
                }
            );
    }

    private static void CheckOutlets(DriveWheelTurnsRequest question, ValidationContext<DriveWheelTurnsRequest> context)
    {
        if (question.OutletsCaught is { } stated)
        {
            if (question.Outlets is not { } all)
                context.Report(
                    nameof(question.Outlets),
                    ErrorCodes.MemberMissing,
                    "Not all outlets may have been caught. Add outlets, how many there are over the working width."
                );
            else if (stated > all)
                context.Report(
                    nameof(question.OutletsCaught),
                    SharedCodes.SettingsAtOdds,
                    "More outlets were caught than there are. Check the two counts."
                );
        }

        if (question.TurnTests is not { Count: > 0 and <= DriveWheelTurnsRequest.MostTests } tests)
            return;
        var listed = tests.Select(test => test?.PerOutlet?.Count ?? 0).ToArray();
        if (listed.Max() == 0)
            return;
        if (question.Outlets is not { } outlets)
            context.Report(
                nameof(question.Outlets),
                ErrorCodes.MemberMissing,
                "Outlets were weighed one by one. Add outlets, how many there are over the working width, so that those not caught can be reckoned in."
            );
        else if (listed.Max() > outlets)
            context.Report(
                nameof(question.Outlets),
                SharedCodes.SettingsAtOdds,
                "More outlets were weighed than there are. Check the two counts."
            );
        for (var i = 0; i < listed.Length; i++)
        {
            if (listed[i] != (question.OutletsCaught ?? listed[0]) && listed[i] != 0)
                context.Report(
                    Path(i),
                    SharedCodes.SettingsAtOdds,
                    "The outlets weighed one by one have to be the same ones in every test, and as many as outletsCaught says. Check the lists."
                );
            else if (listed[i] == 0 && tests[i]?.Caught is not null)
                context.Report(
                    Path(i),
                    SharedCodes.SettingsAtOdds,
                    "Some tests weigh the outlets one by one and some together. Weigh them the same way in all, or send two questions."
                );
        }

        static string Path(int i) => string.Create(CultureInfo.InvariantCulture, $"TurnTests[{i}]");
    }
}

internal sealed class DriveWheelOfMachineValidator : AbstractValidator<DriveWheelOfMachine>
{
    public DriveWheelOfMachineValidator()
    {
        RuleFor(wheel => wheel)
            .Custom(
                (wheel, context) =>
                {
                    object?[] given = [wheel.Circumference, wheel.MeasuredRun, wheel.Diameter];
                    if (given.All(one => one is null))
                        context.Report(
                            nameof(wheel.Circumference),
                            ErrorCodes.MemberMissing,
                            "The size of the wheel is missing. Give one of: circumference, measuredRun, diameter."
                        );
                    if (given.Count(one => one is not null) > 1)
                        context.Report(
                            "",
                            SharedCodes.SettingsAtOdds,
                            "The size of the wheel is given in more than one way. Keep the one that was measured under load."
                        );
                }
            );
    }
}

internal sealed class RollingRunValidator : AbstractValidator<RollingRun>
{
    public RollingRunValidator()
    {
        RuleFor(run => run)
            .Custom(
                (run, context) =>
                {
                    if (
                        Rules.Canonical(run.Distance) is { } metres
                        && Rules.Canonical(run.Turns) is { } turns
                        && RollingWheel.IsNoWheel(metres, turns)
                    )
                        context.Report("", SharedCodes.SettingsAtOdds, RollingWheel.NoWheel);
                }
            );
    }
}

internal sealed class TurnTestOfWheelValidator : AbstractValidator<TurnTestOfWheel>
{
    public TurnTestOfWheelValidator()
    {
        RuleFor(test => test)
            .Custom(
                (test, context) =>
                {
                    if (test is { Caught: null, PerOutlet: null })
                        context.Report(
                            nameof(test.Caught),
                            ErrorCodes.MemberMissing,
                            "What fell is missing. Give caught, the net mass of all outlets caught, or perOutlet."
                        );
                    if (test.Caught is not null && test.PerOutlet is not null)
                        context.Report(
                            nameof(test.PerOutlet),
                            SharedCodes.SettingsAtOdds,
                            "Give either the mass of all outlets together or that of each, not both."
                        );
                    if (test.PerOutlet is { Count: > 0 } masses && masses.All(mass => Rules.Canonical(mass) == 0))
                        context.Report(
                            nameof(test.PerOutlet),
                            ErrorCodes.NumberOutOfRange,
                            "Nothing fell from any outlet. Check that the drive was engaged and the shutters open, and test again."
                        );
                }
            );
    }
}
