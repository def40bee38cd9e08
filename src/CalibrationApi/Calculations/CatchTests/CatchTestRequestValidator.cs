using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Rules of what is read at the machine, for every request that carries it.</summary>
internal sealed class CatchTestDataValidator : AbstractValidator<CatchTestData>
{
    public CatchTestDataValidator() => RuleFor(test => test).Custom(CatchTestRules.CheckReadings);
}

/// <summary>Rules of a catch test.</summary>
internal sealed class CatchTestRequestValidator : AbstractValidator<CatchTestRequest>
{
    public CatchTestRequestValidator() => RuleFor(test => test).Custom(CatchTestRules.CheckNeeds);
}

internal sealed class CaughtPointsOfTestValidator : AbstractValidator<CaughtPointsOfTest>
{
    public CaughtPointsOfTestValidator()
    {
        RuleFor(points => points)
            .Custom(
                (points, context) =>
                {
                    if (points.Caught > points.Total)
                        context.Report(
                            nameof(points.Caught),
                            SharedCodes.SettingsAtOdds,
                            "More points were caught than the meter feeds. Check the two counts."
                        );
                }
            );
    }
}

internal sealed class ControllerEntryOfTestValidator : AbstractValidator<ControllerEntryOfTest>
{
    public ControllerEntryOfTestValidator()
    {
        RuleFor(entry => entry)
            .Custom(
                (entry, context) =>
                {
                    var isPerRevolutions = entry.Form == Words.Of(ControllerForm.MassPerRevolutions);
                    if (isPerRevolutions && entry.Revolutions is null)
                        context.Report(
                            nameof(entry.Revolutions),
                            ErrorCodes.MemberMissing,
                            "The controller takes a mass for several revolutions: add how many revolutions its number stands for."
                        );
                    if (!isPerRevolutions && entry.Form is not null && entry.Revolutions is not null)
                        context.Report(
                            nameof(entry.Revolutions),
                            SharedCodes.SettingsAtOdds,
                            $"Revolutions go with the form {Words.Of(ControllerForm.MassPerRevolutions)} alone. Leave them out, or state that form."
                        );
                }
            );
        RuleFor(entry => entry)
            .Custom(
                (entry, context) =>
                {
                    if (entry.Unit is null || entry.Form is null || !Words.All<ControllerForm>().Contains(entry.Form))
                        return;
                    var units = UnitTable.Of(ControllerEntry.DimensionOf(Words.Read(entry.Form, default(ControllerForm))));
                    if (units.Any(unit => unit.Symbol == entry.Unit))
                        return;
                    var code =
                        UnitTable.Ambiguous.ContainsKey(entry.Unit) ? ErrorCodes.UnitAmbiguous
                        : UnitTable.Find(entry.Unit) is null ? ErrorCodes.UnitUnknown
                        : ErrorCodes.UnitWrongDimension;
                    context.Report(
                        nameof(entry.Unit),
                        code,
                        $"A controller entry of the form {entry.Form} takes one of: {string.Join(", ", units.Select(unit => unit.Symbol))}."
                    );
                }
            );
    }
}
