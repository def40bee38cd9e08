using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Rules of a catch test that look at several members at once.</summary>
internal static class CatchTestRules
{
    // A catch smaller than this ratio to what the display can resolve is no measurement; its inverse bounds what a ratio can be.
    private const double LeastMass = 1e-6;
    private const double LeastCount = 1e-6;

    /// <summary>What the readings say on their own.</summary>
    public static void CheckReadings<T>(T test, ValidationContext<T> context)
        where T : CatchTestData
    {
        if (test.ValueInForce is not null && test.StartValue is not null)
            context.Report(
                nameof(test.StartValue),
                SharedCodes.SettingsAtOdds,
                "A start value is for a meter that has no value in force. Give one of the two."
            );
        if (test.SharedTare is not null && test.TareReading is not null && test.TareReading != Words.Of(TareReading.Shared))
            context.Report(
                nameof(test.TareReading),
                SharedCodes.SettingsAtOdds,
                "A sharedTare goes with the tare reading 'shared'. Leave one of the two out."
            );
        if (Catches(test) is not { } catches)
            return;
        if (catches.All(one => one?.Excluded is not null))
            context.Report(
                nameof(test.Catches),
                ErrorCodes.CatchesAllExcluded,
                "Every catch is excluded, so nothing is left to evaluate. Let at least one count."
            );
        for (var i = 0; i < catches.Count; i++)
        {
            if (catches[i] is { } one)
            {
                CheckMass(test, one, Path(i), context);
                CheckCount(one, Path(i), context);
            }
        }
    }

    /// <summary>What the readings need beside them to be understood.</summary>
    public static void CheckNeeds(CatchTestRequest test, ValidationContext<CatchTestRequest> context)
    {
        CheckEntry(test, context);
        if (Catches(test) is not { } catches)
            return;
        if (test.PulsesPerRevolution is null && catches.Any(one => one?.Pulses is not null))
            context.Report(
                nameof(test.PulsesPerRevolution),
                ErrorCodes.MemberMissing,
                "Catches are counted in pulses: add the pulses per revolution."
            );
        if (test.MeterRevolutionsPerTurn is null && catches.Any(one => one?.Turns is not null))
            context.Report(
                nameof(test.MeterRevolutionsPerTurn),
                ErrorCodes.MemberMissing,
                "Catches are counted in turns of a crank or wheel: add the meter revolutions per turn."
            );
        if (test.MeterSpeed is null && catches.Any(one => one?.RunTime is not null))
            context.Report(nameof(test.MeterSpeed), ErrorCodes.MemberMissing, "Catches are counted by time: add the meter speed.");
        if (test.ValueTypedIn is null && test.ValueInForce is null && catches.Any(one => one?.IndicatedMass is not null))
            context.Report(
                nameof(test.ValueTypedIn),
                ErrorCodes.MemberMissing,
                "Catches are counted by indicated mass: add the value that was typed into the controller."
            );
    }

    private static IReadOnlyList<CatchOfTest?>? Catches(CatchTestData test) =>
        test.Catches is { Count: > 0 and <= CatchTestData.MostCatches } catches ? catches : null;

    private static string Path(int i) => string.Create(CultureInfo.InvariantCulture, $"Catches[{i}]");

    private static void CheckEntry(CatchTestRequest test, ValidationContext<CatchTestRequest> context)
    {
        if (test.ControllerEntry?.Form is not { } form)
            return;
        if (form == Words.Of(ControllerForm.VolumePerRevolution) && test.Product?.BulkDensity is null)
            context.Report(
                "Product.BulkDensity",
                ErrorCodes.DensityMissing,
                "The controller takes a volume per revolution, which needs the bulk density of the product. Weigh a known volume and add it."
            );
        if (form == Words.Of(ControllerForm.MassPerPulse) && test.PulsesPerRevolution is null)
            context.Report(
                nameof(test.PulsesPerRevolution),
                ErrorCodes.MemberMissing,
                "The controller takes a mass per pulse: add the pulses per revolution."
            );
        if (form == Words.Of(ControllerForm.MassPerTime) && test.MeterSpeed is null)
            context.Report(
                nameof(test.MeterSpeed),
                ErrorCodes.MemberMissing,
                "The controller takes a mass per time: add the meter speed at which it applies."
            );
    }

    private static void CheckMass<T>(T test, CatchOfTest one, string path, ValidationContext<T> context)
        where T : CatchTestData
    {
        if (one.Net is not null && (one.Gross is not null || one.Tare is not null))
        {
            context.Report($"{path}.Net", SharedCodes.SettingsAtOdds, "Give either gross and tare or the net mass, not both.");
            return;
        }

        if (one.Net is not null)
        {
            if (Rules.Canonical(one.Net) is { } net && net < LeastMass)
                context.Report(
                    $"{path}.Net",
                    ErrorCodes.NetNegative,
                    "The net mass has to be above zero. Weigh again; if the scale shows a negative net mass, it was zeroed with a load on it."
                );
            return;
        }

        if (one.Gross is null)
        {
            context.Report($"{path}.Gross", ErrorCodes.MemberMissing, "The mass is missing. Give gross and tare, or net.");
            return;
        }

        if (one.Tare is not null && test.SharedTare is not null)
            context.Report($"{path}.Tare", SharedCodes.SettingsAtOdds, "A tare is given here and as sharedTare. Keep one of them.");
        else if (one.Tare is null && test.SharedTare is null)
            context.Report(
                $"{path}.Tare",
                ErrorCodes.MemberMissing,
                "The tare is missing. Weigh the empty container, or give the net mass if the scale was zeroed with it."
            );
        else if (
            Rules.Canonical(one.Gross) is { } gross
            && Rules.Canonical(one.Tare ?? test.SharedTare!) is { } tare
            && gross - tare < LeastMass
        )
            context.Report(
                $"{path}.Tare",
                ErrorCodes.TareAboveGross,
                "The empty container weighs as much as or more than the full one. Check whether the two were swapped and whether both units are right."
            );
    }

    private static void CheckCount<T>(CatchOfTest one, string path, ValidationContext<T> context)
    {
        var given =
            (one.Revolutions is null ? 0 : 1)
            + (one.Pulses is null ? 0 : 1)
            + (one.Turns is null ? 0 : 1)
            + (one.IndicatedMass is null ? 0 : 1)
            + (one.RunTime is null ? 0 : 1);
        if (given == 0)
            context.Report(
                $"{path}.Revolutions",
                ErrorCodes.MemberMissing,
                "How far the meter turned is missing. Give one of: revolutions, pulses, turns, indicatedMass, runTime."
            );
        if (given > 1)
            context.Report(
                path,
                SharedCodes.SettingsAtOdds,
                "How far the meter turned is given in more than one way. Give one of: revolutions, pulses, turns, indicatedMass, runTime."
            );
        if (Rules.Canonical(one.Revolutions) < LeastCount)
            NotPositive("Revolutions");
        if (Rules.Canonical(one.Turns) < LeastCount)
            NotPositive("Turns");
        if (one.Pulses < LeastCount)
            NotPositive("Pulses");
        void NotPositive(string member) =>
            context.Report(
                $"{path}.{member}",
                ErrorCodes.RevolutionsNotPositive,
                "The meter has to turn forward during a catch. Give a count above zero."
            );
    }
}
