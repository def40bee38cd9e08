using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.BulkDensities;

/// <summary>Rules of a question about a bulk density.</summary>
internal sealed class BulkDensityRequestValidator : AbstractValidator<BulkDensityRequest>
{
    public BulkDensityRequestValidator() => RuleFor(question => question).Custom(CheckEvidence);

    private static void CheckEvidence(BulkDensityRequest question, ValidationContext<BulkDensityRequest> context)
    {
        (string Member, bool Given)[] evidence =
        [
            (nameof(question.Weighed), question.Weighed is not null),
            (nameof(question.FilledTank), question.FilledTank is not null),
            (nameof(question.TestWeight), question.TestWeight is not null),
            (nameof(question.StatedDensity), question.StatedDensity is not null),
        ];
        foreach (var (member, _) in evidence.Where(one => one.Given).Skip(1))
            context.Report(
                member,
                SharedCodes.SettingsAtOdds,
                "A density is known from one of weighed, filledTank, testWeight and statedDensity. Keep the best of them and ask for the others on their own."
            );
        if (!evidence.Any(one => one.Given) && question.Reference is null)
            context.Report(
                nameof(question.Weighed),
                ErrorCodes.MemberMissing,
                "Add weighed, filledTank, testWeight or statedDensity; or a reference, for a published value to start from."
            );
        if (question.LotToLot is not null && evidence.Any(one => one.Given))
            context.Report(
                nameof(question.LotToLot),
                SharedCodes.SettingsAtOdds,
                "The member lotToLot goes with a published value only. Leave it out where the density is known."
            );
    }

    /// <summary>Refuses a mass and a volume that make no bulk density.</summary>
    internal static void CheckDensity<T>(double? kilograms, VolumeQuantity? volume, string member, ValidationContext<T> context)
    {
        var limits = QuantityLimits.Of(Dimension.BulkDensity);
        if (
            kilograms is not > 0
            || Rules.Canonical(volume) is not { } cubicMetres
            || cubicMetres <= 0
            || limits.Allows(kilograms.Value / cubicMetres)
        )
            return;
        context.Report(
            member,
            ErrorCodes.NumberOutOfRange,
            string.Create(
                CultureInfo.InvariantCulture,
                $"This mass in that volume makes {kilograms.Value / cubicMetres:G3} kg/m3, which is no bulk density. It has to be {limits}. Check mass, volume and units."
            )
        );
    }
}

internal sealed class WeighedVolumeOfProductValidator : AbstractValidator<WeighedVolumeOfProduct>
{
    public WeighedVolumeOfProductValidator() => RuleFor(weighed => weighed).Custom(CheckMasses);

    private static void CheckMasses(WeighedVolumeOfProduct weighed, ValidationContext<WeighedVolumeOfProduct> context)
    {
        if (weighed.Weighings is not { Count: <= WeighedVolumeOfProduct.MostWeighings } weighings)
            return;
        for (var i = 0; i < weighings.Count; i++)
        {
            if (weighings[i] is { } one)
                CheckMass(weighed, one, string.Create(CultureInfo.InvariantCulture, $"Weighings[{i}]"), context);
        }

        if (weighings.Select(one => one?.Net is not null).Distinct().Skip(1).Any())
            context.Report(
                nameof(weighed.Weighings),
                SharedCodes.SettingsAtOdds,
                "Some weighings give the net mass and some gross and tare. Weigh all of them in one way."
            );
    }

    private static void CheckMass(
        WeighedVolumeOfProduct weighed,
        WeighingOfProduct one,
        string path,
        ValidationContext<WeighedVolumeOfProduct> context
    )
    {
        if (one.Net is not null)
        {
            if (one.Gross is not null || one.Tare is not null)
                context.Report($"{path}.Net", SharedCodes.SettingsAtOdds, "Give either gross and tare or the net mass, not both.");
            else
                BulkDensityRequestValidator.CheckDensity(Rules.Canonical(one.Net), weighed.Volume, $"{path}.Net", context);
            return;
        }

        if (one.Gross is null)
            context.Report($"{path}.Gross", ErrorCodes.MemberMissing, "The mass is missing. Give gross and tare, or net.");
        else if (one.Tare is not null && weighed.SharedTare is not null)
            context.Report($"{path}.Tare", SharedCodes.SettingsAtOdds, "A tare is given here and as sharedTare. Keep one of them.");
        else if (one.Tare is null && weighed.SharedTare is null)
            context.Report(
                $"{path}.Tare",
                ErrorCodes.MemberMissing,
                "The tare is missing. Weigh the empty container, or give the net mass if the scale was zeroed with it."
            );
        else if (Rules.Canonical(one.Gross) is { } gross && Rules.Canonical(one.Tare ?? weighed.SharedTare) is { } tare)
        {
            if (gross <= tare)
                context.Report(
                    $"{path}.Tare",
                    ErrorCodes.TareAboveGross,
                    "The empty container weighs as much as or more than the full one. Check whether the two were swapped and whether both units are right."
                );
            else
                BulkDensityRequestValidator.CheckDensity(gross - tare, weighed.Volume, $"{path}.Gross", context);
        }
    }
}

internal sealed class FilledTankOfProductValidator : AbstractValidator<FilledTankOfProduct>
{
    public FilledTankOfProductValidator()
    {
        RuleFor(tank => tank)
            .Custom(
                (tank, context) =>
                    BulkDensityRequestValidator.CheckDensity(Rules.Canonical(tank.Mass), tank.Volume, nameof(tank.Mass), context)
            );
    }
}
