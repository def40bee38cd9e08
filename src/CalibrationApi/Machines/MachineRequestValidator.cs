using System.Globalization;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Http;
using CalibrationApi.Records;
using FluentValidation;
using NodaTime;

namespace CalibrationApi.Machines;

/// <summary>Rules of a machine.</summary>
internal sealed class MachineRequestValidator : DescribedRequestValidator<MachineRequest>
{
    /// <summary>Elements on all meters together. The set-up of a plan tells of each of them, so that more would make its answer too dear.</summary>
    public const int MostElements = 1280;

    public MachineRequestValidator()
    {
        RuleFor(machine => machine.TimeZone).Text(64);
        RuleFor(machine => machine.WorkingWidth).Measured(new(0, 200, "m", ExcludesLeast: true));
        RuleFor(machine => machine.RowSpacing).Measured(new(0, 5, "m", ExcludesLeast: true));
        RuleFor(machine => machine.Opener).Word(Words.All<Opener>());
        RuleFor(machine => machine.OpenerSpread).Measured(new(0, 5, "m", ExcludesLeast: true));
        RuleFor(machine => machine.Drive).Word(Words.All<MeterDrive>());
        RuleFor(machine => machine.Tanks).Items(0, 64);
        RuleForEach(machine => machine.Tanks!).SetValidator(new TankOfMachineValidator()!);
        RuleFor(machine => machine.Meters).Needed();
        RuleFor(machine => machine.Meters).Items(1, 64);
        RuleForEach(machine => machine.Meters!).SetValidator(new MeterOfMachineValidator()!);
        RuleFor(machine => machine.RestorePoints).Items(0, 200);
        RuleForEach(machine => machine.RestorePoints!).SetValidator(new DisturbedPointOfPlanValidator()!);
        RuleFor(machine => machine).Custom(CheckTogether);
    }

    private static void CheckTogether(MachineRequest machine, ValidationContext<MachineRequest> context)
    {
        if (machine.TimeZone is { Length: <= 64 } zone && !DateTimeZoneProviders.Tzdb.Ids.Contains(zone))
            context.Report(nameof(machine.TimeZone), ErrorCode.WordUnknown, "This is not the name of a time zone. Use an IANA name such as Europe/Vienna or America/Regina.");
        if (Rules.Canonical(machine.RowSpacing) is { } row && Rules.Canonical(machine.OpenerSpread) is { } spread && double.IsFinite(row) && double.IsFinite(spread)
            && SeedbedUtilisation.IsWiderThanRow(new Length(spread), new Length(row)))
            context.Report(nameof(machine.OpenerSpread), ErrorCode.SettingsAtOdds, "Seed cannot be spread wider than the rows are apart. Check both widths and their units.");
        Unique(machine.Tanks, tank => tank.Name, nameof(machine.Tanks), nameof(TankOfMachine.Name), context);
        if (machine.Meters?.Sum(meter => meter?.Elements?.Count ?? 0) > MostElements)
            context.Report(nameof(machine.Meters), ErrorCode.TooMany, string.Create(CultureInfo.InvariantCulture, $"The meters of a machine may have {MostElements} elements altogether. Leave out those that are not fitted."));
        Unique(machine.Meters, meter => meter.Position, nameof(machine.Meters), nameof(MeterOfMachine.Position), context);
        for (var i = 0; i < (machine.Meters?.Count ?? 0); i++)
        {
            if (machine.Meters![i] is not { } meter)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"{nameof(machine.Meters)}[{i}]");
            Unique(meter.Elements, element => element.Name, $"{path}.{nameof(meter.Elements)}", nameof(ElementOfMachine.Name), context);
            if (meter.Tank is { } tank && machine.Tanks?.Any(one => one?.Name == tank) != true)
                context.Report($"{path}.{nameof(meter.Tank)}", ErrorCode.RecordsAtOdds, "No tank of this machine has that name. Check the name, or add the tank.");
            if (meter.ControllerEntry?.Form == Words.Of(Engine.CatchTests.ControllerForm.MassPerPulse) && meter.PulsesPerRevolution is null)
                context.Report($"{path}.{nameof(meter.PulsesPerRevolution)}", ErrorCode.MemberMissing, "The controller takes a mass per pulse: add the pulses per revolution.");
        }
    }

    private static void Unique<TItem>(IReadOnlyList<TItem?>? items, Func<TItem, string?> name, string path, string member, ValidationContext<MachineRequest> context)
        where TItem : class
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < (items?.Count ?? 0); i++)
        {
            if (items![i] is { } item && name(item) is { } text && !seen.Add(text))
                context.Report(string.Create(CultureInfo.InvariantCulture, $"{path}[{i}].{member}"), ErrorCode.SettingsAtOdds, "This name is used twice here. Give each its own.");
        }
    }
}

internal sealed class TankOfMachineValidator : RequestValidator<TankOfMachine>
{
    public TankOfMachineValidator()
    {
        RuleFor(tank => tank.Name).Needed();
        RuleFor(tank => tank.Name).Text(Rules.LongestName);
        RuleFor(tank => tank.Volume).Measured();
    }
}

internal sealed class MeterOfMachineValidator : RequestValidator<MeterOfMachine>
{
    public MeterOfMachineValidator()
    {
        RuleFor(meter => meter.Position).Needed();
        RuleFor(meter => meter.Position).Text(Rules.LongestName);
        RuleFor(meter => meter.Tank).Text(Rules.LongestName);
        RuleFor(meter => meter.CoveredWidth).Needed();
        RuleFor(meter => meter.CoveredWidth).Measured(new(0, 200, "m", ExcludesLeast: true));
        RuleFor(meter => meter.Outlets).Whole(1, 500);
        RuleFor(meter => meter.Elements).Needed();
        RuleFor(meter => meter.Elements).Items(1, 50);
        RuleForEach(meter => meter.Elements!).SetValidator(new ElementOfMachineValidator()!);
        RuleFor(meter => meter.SpeedLimits!).SetValidator(new RotationLimitsValidator());
        RuleFor(meter => meter.CounterResolution).Measured(new(0, 10, "rev"));
        RuleFor(meter => meter.PulsesPerRevolution).Measured();
        RuleFor(meter => meter.MeterRevolutionsPerTurn).Measured(new(0.0001, 10_000, "1"));
        RuleFor(meter => meter.ControllerEntry!).SetValidator(new ControllerEntryOfTestValidator());
    }
}

internal sealed class ElementOfMachineValidator : RequestValidator<ElementOfMachine>
{
    public ElementOfMachineValidator()
    {
        RuleFor(element => element.Name).Needed();
        RuleFor(element => element.Name).Text(Rules.LongestName);
        RuleFor(element => element.Kind).Word(Words.All<ElementKind>());
        RuleFor(element => element.DisplacementPerRevolution).Measured(new(0, 1, "m3", ExcludesLeast: true));
        RuleFor(element => element.SpeedLimits!).SetValidator(new RotationLimitsValidator());
        RuleFor(element => element.PocketsPerRevolution).Whole(1, 10_000);
    }
}
