using System.Globalization;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;
using NodaTime;

namespace CalibrationApi.Records.Machines;

/// <summary>Rules of a machine.</summary>
internal sealed class MachineRequestValidator : AbstractValidator<MachineRequest>
{
    /// <summary>
    /// Elements on all meters together. The set-up of a plan tells of each of them, so that more would make its answer too dear.
    /// </summary>
    public const int MostElements = 1280;

    public MachineRequestValidator() => RuleFor(machine => machine).Custom(CheckTogether);

    private static void CheckTogether(MachineRequest machine, ValidationContext<MachineRequest> context)
    {
        if (machine.TimeZone is { Length: <= 64 } zone && !DateTimeZoneProviders.Tzdb.Ids.Contains(zone))
            context.Report(
                nameof(machine.TimeZone),
                ErrorCodes.WordUnknown,
                "This is not the name of a time zone. Use an IANA name such as Europe/Vienna or America/Regina."
            );
        SeedSpread.Check(machine.RowSpacing, machine.SeedRowWidth, nameof(machine.SeedRowWidth), context);
        Unique(machine.Tanks, tank => tank.Name, nameof(machine.Tanks), nameof(TankOfMachine.Name), context);
        if (machine.Meters?.Sum(meter => meter?.Elements?.Count ?? 0) > MostElements)
            context.Report(
                nameof(machine.Meters),
                ErrorCodes.TooMany,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The meters of a machine may have {MostElements} elements altogether. Leave out those that are not fitted."
                )
            );
        Unique(machine.Meters, meter => meter.Position, nameof(machine.Meters), nameof(MeterOfMachine.Position), context);
        for (var i = 0; i < (machine.Meters?.Count ?? 0); i++)
        {
            if (machine.Meters![i] is not { } meter)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"{nameof(machine.Meters)}[{i}]");
            Unique(meter.Elements, element => element.Name, $"{path}.{nameof(meter.Elements)}", nameof(ElementOfMachine.Name), context);
            if (meter.Tank is { } tank && machine.Tanks?.Any(one => one?.Name == tank) != true)
                context.Report(
                    $"{path}.{nameof(meter.Tank)}",
                    ErrorCodes.RecordsAtOdds,
                    "No tank of this machine has that name. Check the name, or add the tank."
                );
            if (
                meter.ControllerEntry?.Form == Words.Of(Engine.ControllerEntries.ControllerForm.MassPerPulse)
                && meter.PulsesPerRevolution is null
            )
                context.Report(
                    $"{path}.{nameof(meter.PulsesPerRevolution)}",
                    ErrorCodes.MemberMissing,
                    "The controller takes a mass per pulse: add the pulses per revolution."
                );
        }
    }

    private static void Unique<TItem>(
        IReadOnlyList<TItem?>? items,
        Func<TItem, string?> name,
        string path,
        string member,
        ValidationContext<MachineRequest> context
    )
        where TItem : class
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < (items?.Count ?? 0); i++)
        {
            if (items![i] is { } item && name(item) is { } text && !seen.Add(text))
                context.Report(
                    string.Create(CultureInfo.InvariantCulture, $"{path}[{i}].{member}"),
                    SharedCodes.SettingsAtOdds,
                    "This name is used twice here. Give each its own."
                );
        }
    }
}
