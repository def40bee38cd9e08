using System.Globalization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Http;
using FluentValidation;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Rules of a question about turns of a drive wheel.</summary>
internal sealed class DriveWheelTurnsRequestValidator : RequestValidator<DriveWheelTurnsRequest>
{
    private const int MostTests = 50;

    public DriveWheelTurnsRequestValidator()
    {
        RuleFor(question => question.Wheel).Needed();
        RuleFor(question => question.Wheel!).SetValidator(new DriveWheelOfMachineValidator());
        RuleFor(question => question.WorkingWidth).Needed();
        RuleFor(question => question.WorkingWidth).Measured(new(0.01, 200, "m"));
        RuleFor(question => question.Outlets).Whole(1, 1000);
        RuleFor(question => question.Skid).Measured(new(-50, 90, "%"));
        RuleFor(question => question.Areas).Items(0, 20);
        RuleForEach(question => question.Areas).Measured(new(0.0001, 10_000, "ha"));
        RuleFor(question => question.TargetRate).Measured();
        RuleFor(question => question.MeterRevolutionsPerTurn).Measured(new(0.0001, 10_000, "1"));
        RuleFor(question => question.MassPerRevolution).Measured();
        RuleFor(question => question.TurnTests).Items(0, MostTests);
        RuleForEach(question => question.TurnTests!).SetValidator(new TurnTestOfWheelValidator()!);
        RuleFor(question => question.OutletsCaught).Whole(1, 1000);
        RuleFor(question => question.OutletSpread).Measured(new(0, 100, "%"));
        RuleFor(question => question.Scale!).SetValidator(new ScaleOfTestValidator());
        RuleFor(question => question.TurnResolution).Measured(new(0, 10, "rev"));
        RuleFor(question => question.Setting).Number(0.001, 1_000_000);
        RuleFor(question => question.Tolerance).Measured(new(0.1, 50, "%"));
        RuleFor(question => question.Repeatability).Measured(new(0.01, 30, "%"));
        RuleFor(question => question.RepeatabilityDegreesOfFreedom).Number(1, 1000);
        RuleFor(question => question).Custom(CheckOutlets);
        RuleFor(question => question).Custom((question, context) =>
        {
            if (question.MassPerRevolution is not null && question.MeterRevolutionsPerTurn is null)
                context.Report(nameof(question.MeterRevolutionsPerTurn), ErrorCode.MemberMissing, "A mass per revolution of the meter gives no rate without its gearing: add the meter revolutions per turn of the drive wheel.");
            if (question is not { Areas.Count: > 0 } and not { TurnTests.Count: > 0 } and not { MassPerRevolution: not null })
                context.Report(nameof(question.Areas), ErrorCode.MemberMissing, "Nothing is asked. Give areas for which the turns are wanted, or turn tests, or the mass per revolution of the meter.");
        });
    }

    private static void CheckOutlets(DriveWheelTurnsRequest question, ValidationContext<DriveWheelTurnsRequest> context)
    {
        if (question.OutletsCaught is { } stated)
        {
            if (question.Outlets is not { } all)
                context.Report(nameof(question.Outlets), ErrorCode.MemberMissing, "Not all outlets may have been caught. Add outlets, how many there are over the working width.");
            else if (stated > all)
                context.Report(nameof(question.OutletsCaught), ErrorCode.SettingsAtOdds, "More outlets were caught than there are. Check the two counts.");
        }

        if (question.TurnTests is not { Count: > 0 and <= MostTests } tests)
            return;
        var listed = tests.Select(test => test?.PerOutlet?.Count ?? 0).ToArray();
        if (listed.Max() == 0)
            return;
        if (question.Outlets is not { } outlets)
            context.Report(nameof(question.Outlets), ErrorCode.MemberMissing, "Outlets were weighed one by one. Add outlets, how many there are over the working width, so that those not caught can be reckoned in.");
        else if (listed.Max() > outlets)
            context.Report(nameof(question.Outlets), ErrorCode.SettingsAtOdds, "More outlets were weighed than there are. Check the two counts.");
        for (var i = 0; i < listed.Length; i++)
        {
            if (listed[i] != (question.OutletsCaught ?? listed[0]) && listed[i] != 0)
                context.Report(Path(i), ErrorCode.SettingsAtOdds, "The outlets weighed one by one have to be the same ones in every test, and as many as outletsCaught says. Check the lists.");
            else if (listed[i] == 0 && tests[i]?.Caught is not null)
                context.Report(Path(i), ErrorCode.SettingsAtOdds, "Some tests weigh the outlets one by one and some together. Weigh them the same way in all, or send two questions.");
        }

        static string Path(int i) => string.Create(CultureInfo.InvariantCulture, $"TurnTests[{i}]");
    }
}

internal sealed class DriveWheelOfMachineValidator : RequestValidator<DriveWheelOfMachine>
{
    public DriveWheelOfMachineValidator()
    {
        RuleFor(wheel => wheel.Circumference).Measured(new(0.1, 30, "m"));
        RuleFor(wheel => wheel.MeasuredRun!).SetValidator(new RollingRunValidator());
        RuleFor(wheel => wheel.Diameter).Measured(new(0.03, 10, "m"));
        RuleFor(wheel => wheel.RelativeUncertainty).Measured(new(0, 20, "%"));
        RuleFor(wheel => wheel).Custom((wheel, context) =>
        {
            object?[] given = [wheel.Circumference, wheel.MeasuredRun, wheel.Diameter];
            if (given.All(one => one is null))
                context.Report(nameof(wheel.Circumference), ErrorCode.MemberMissing, "The size of the wheel is missing. Give one of: circumference, measuredRun, diameter.");
            if (given.Count(one => one is not null) > 1)
                context.Report("", ErrorCode.SettingsAtOdds, "The size of the wheel is given in more than one way. Keep the one that was measured under load.");
        });
    }
}

internal sealed class RollingRunValidator : RequestValidator<RollingRun>
{
    public RollingRunValidator()
    {
        RuleFor(run => run.Distance).Needed();
        RuleFor(run => run.Distance).Measured(new(0.1, 10_000, "m"));
        RuleFor(run => run.Turns).Needed();
        RuleFor(run => run.Turns).Measured(new(0.1, 100_000, "rev"));
        RuleFor(run => run).Custom((run, context) =>
        {
            if (Rules.Canonical(run.Distance) / Rules.Canonical(run.Turns) is < 0.1 or > 30)
                context.Report("", ErrorCode.SettingsAtOdds, "By these two numbers the wheel rolls less than 10 cm or more than 30 m in a turn. Check both and their units.");
        });
    }
}

internal sealed class TurnTestOfWheelValidator : RequestValidator<TurnTestOfWheel>
{
    public TurnTestOfWheelValidator()
    {
        RuleFor(test => test.Turns).Needed();
        RuleFor(test => test.Turns).Measured(new(0.1, 100_000, "rev"));
        RuleFor(test => test.Caught).Measured();
        RuleFor(test => test.PerOutlet).Items(1, 1000);
        RuleForEach(test => test.PerOutlet).Measured(new(0, 1000, "t"));
        RuleFor(test => test).Custom((test, context) =>
        {
            if (test is { Caught: null, PerOutlet: null })
                context.Report(nameof(test.Caught), ErrorCode.MemberMissing, "What fell is missing. Give caught, the net mass of all outlets caught, or perOutlet.");
            if (test.Caught is not null && test.PerOutlet is not null)
                context.Report(nameof(test.PerOutlet), ErrorCode.SettingsAtOdds, "Give either the mass of all outlets together or that of each, not both.");
            if (test.PerOutlet is { Count: > 0 } masses && masses.All(mass => Rules.Canonical(mass) == 0))
                context.Report(nameof(test.PerOutlet), ErrorCode.NumberOutOfRange, "Nothing fell from any outlet. Check that the drive was engaged and the shutters open, and test again.");
        });
    }
}
