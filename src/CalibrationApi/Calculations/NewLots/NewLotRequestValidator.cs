using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>Rules of a question about a new lot.</summary>
internal sealed class NewLotRequestValidator : RequestValidator<NewLotRequest>
{
    /// <summary>A relative uncertainty: something, at most half.</summary>
    internal static readonly QuantityLimits Uncertainty = new(0, 50, "%", ExcludesLeast: true);

    public NewLotRequestValidator()
    {
        RuleFor(question => question.ValueInForce).Needed();
        RuleFor(question => question.ValueInForce).Measured();
        RuleFor(question => question.ValueInForce!).SetValidator(new ValueOfLotBeforeValidator());
        RuleFor(question => question.LotBefore).Needed();
        RuleFor(question => question.LotBefore!).SetValidator(new LotOfChangeValidator());
        RuleFor(question => question.NewLot).Needed();
        RuleFor(question => question.NewLot!).SetValidator(new LotOfChangeValidator());
        RuleFor(question => question.Rate).Measured();
        RuleFor(question => question.SeedsPerArea).Measured();
        RuleFor(question => question.Emergence).Measured(QuantityLimits.SomeShare);
        RuleFor(question => question.Area).Measured();
        RuleFor(question => question.Price!).SetValidator(new PriceValidator());
        RuleFor(question => question.Tolerance).Measured(new(0.1, 50, "%"));
        RuleFor(question => question.DayToDay).Measured(Uncertainty);
        RuleFor(question => question.FillChangeOfLot).Measured(Uncertainty);
        RuleFor(question => question.FillChangeOfTreatment).Measured(Uncertainty);
        RuleFor(question => question.UnknownDensityChange).Measured(Uncertainty);
        RuleFor(question => question).Custom((question, context) =>
        {
            if (question.Rate is not null && question.SeedsPerArea is not null)
                context.Report(nameof(question.SeedsPerArea), ErrorCode.SettingsAtOdds, "The seeds follow from the rate and the kernel mass of the lot before. Leave out rate, or seedsPerArea.");
            if (question.Price is not null && question.Area is null)
                context.Report(nameof(question.Area), ErrorCode.MemberMissing, "A price tells what a wrong rate costs over an area. Add the area, or leave the price out.");
        });
    }
}

internal sealed class ValueOfLotBeforeValidator : RequestValidator<ValueOfLotBefore>
{
    public ValueOfLotBeforeValidator() => RuleFor(value => value.RelativeUncertainty).Measured(NewLotRequestValidator.Uncertainty);
}

internal sealed class LotOfChangeValidator : RequestValidator<LotOfChange>
{
    public LotOfChangeValidator()
    {
        RuleFor(lot => lot.Name).Text(Rules.LongestName);
        RuleFor(lot => lot.ThousandKernelMass).Measured();
        RuleFor(lot => lot.BulkDensity).Measured();
        RuleFor(lot => lot.BulkDensity!).SetValidator(new DensityOfLotValidator());
        RuleFor(lot => lot.Germination).Measured(QuantityLimits.SomeShare);
        RuleFor(lot => lot.Purity).Measured(QuantityLimits.SomeShare);
        RuleFor(lot => lot.Treatment).Text(500);
    }
}

internal sealed class DensityOfLotValidator : RequestValidator<DensityOfLot>
{
    public DensityOfLotValidator() => RuleFor(density => density.RelativeUncertainty).Measured(NewLotRequestValidator.Uncertainty);
}
