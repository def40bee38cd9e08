using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ProductRates;

/// <summary>What is said about rates of products.</summary>
internal sealed class ProductRateSentences(
    ProductRateQuestion question,
    IReadOnlyList<ProductLine> lines,
    IReadOnlyList<NutrientBalance> balances
)
{
    /// <summary>What to apply, and whether that does.</summary>
    public Sentence Headline(bool meetsTargets)
    {
        Sentence[] applied =
        [
            .. lines.Where(line => line.Rate.KilogramsPerSquareMetre > 0).Select(line => (Sentence)$"{line.Rate} of {line.Product.Name}"),
        ];
        if (meetsTargets)
        {
            return applied.Length == 0
                ? (Sentence)$"Nothing needs to be applied: the targets are met already."
                : $"Apply {All(applied)}. That meets every target.";
        }

        Sentence[] missed = [.. balances.Where(balance => !balance.Met).Select(Missed)];
        return applied.Length == 0
            ? (Sentence)$"These products cannot meet the targets: {All(missed)}."
            : $"No rates of these products meet every target. The nearest are {All(applied)}: {All(missed)}.";
    }

    /// <summary>Why a target is missed.</summary>
    /// <param name="conflict">What stands against it.</param>
    /// <param name="free">The products whose rates were computed, in the order of the conflict's indexes.</param>
    public Finding Explain(BlendConflict conflict, OfferedProduct[] free)
    {
        var target = question.Targets[conflict.Row];
        var missed = Missed(balances.Single(balance => balance.Form.Nutrient == target.Form.Nutrient));
        if (conflict.IsAlone)
        {
            return conflict.IsShort
                ? Finding.Warning(
                    ProductRateCodes.NutrientWithoutSource,
                    free.Length == 0
                        ? (Sentence)$"{missed}, because every rate is fixed."
                        : $"{missed}, because none of the products whose rates are open holds any."
                )
                : Finding.Warning(ProductRateCodes.CreditsAboveTarget, $"{missed}, because credits and fixed rates alone bring more.");
        }

        Sentence[] against =
        [
            .. conflict.MostRates.Select(i => (Sentence)$"no more than {free[i].MostRate} of {free[i].Name}"),
            .. conflict.LeastRates.Select(i => (Sentence)$"no less than {free[i].LeastRate} of {free[i].Name}"),
            .. conflict.MostOf.Select(k => question.Targets[k]).Select(other => (Sentence)$"no more than {Most(other)} of {other.Form}"),
            .. conflict.LeastOf.Select(k => question.Targets[k]).Select(other => (Sentence)$"no less than {other.Amount} of {other.Form}"),
        ];
        if (conflict.IsBetweenTargets)
        {
            var brings = conflict.MostOf.Concat(conflict.LeastOf).Select(k => question.Targets[k].Form).ToArray();
            var both = free.Where(product => product.Share(target.Form) > 0 && brings.Any(form => product.Share(form) > 0))
                .Select(product => product.Name)
                .ToArray();
            return Finding.Warning(
                ProductRateCodes.TargetsConflict,
                both.Length == 0
                    ? (Sentence)$"{missed}. What stands against it: {All(against)}."
                    : $"{missed}. What stands against it: {All(against)}. {Names(both)} {(both.Length == 1 ? "holds" : "hold")} {target.Form} together with {Names([.. brings.Distinct().Select(form => form.Symbol)])}."
            );
        }

        return conflict.IsShort
            ? Finding.Warning(ProductRateCodes.MostRateBinds, $"{missed}, because there may be {All(against)}.")
            : Finding.Warning(ProductRateCodes.LeastRateBinds, $"{missed}, because there has to be {All(against)}.");
    }

    /// <summary>What is unusual.</summary>
    public IEnumerable<Finding> Findings()
    {
        foreach (var balance in balances)
        {
            if (
                balance is { Target: { } target, Met: true, Surplus: { } surplus }
                && target.Kind is not TargetKind.AtMost
                && target.Amount.KilogramsPerSquareMetre > 0
                && surplus.KilogramsPerSquareMetre > ProductRateDefaults.LargeSurplus * target.Amount.KilogramsPerSquareMetre
            )
            {
                yield return Finding.Note(
                    ProductRateCodes.LargeSurplus,
                    $"{surplus} of {balance.Form} more than asked are given or there already, {new Ratio(surplus.KilogramsPerSquareMetre / target.Amount.KilogramsPerSquareMetre):F0} of the target."
                );
            }
        }

        foreach (var line in lines)
        {
            if (line.Rate.KilogramsPerSquareMetre > ProductRateDefaults.UnusualRate)
            {
                yield return Finding.Warning(
                    ProductRateCodes.UnusualProductRate,
                    $"{line.Rate} of {line.Product.Name} is more than machines that meter seed and fertilizer usually put down. Check its analysis and the targets for a slip of the decimal point."
                );
            }

            if (line.Product.Analysis.Any(one => one.Form == NutrientForm.K && one.Share > ProductRateDefaults.MostPotassium))
            {
                yield return Finding.Warning(
                    ProductRateCodes.ElementOrOxide,
                    $"{line.Product.Name} is said to hold {new Ratio(line.Product.Share(NutrientForm.K)):F1} potassium as the element, more than pure muriate of potash, {new Ratio(ProductRateDefaults.MostPotassium):F1}. Most labels state K2O."
                );
            }
        }
    }

    private static Sentence Missed(NutrientBalance balance)
    {
        var limit = Most(balance.Target!);
        if (balance.Total.KilogramsPerSquareMetre == 0)
            return $"{balance.Form} stays at nothing in place of {balance.Target!.Amount}";
        return
            balance.Total.KilogramsPerSquareMetre < balance.Target!.Amount.KilogramsPerSquareMetre
            && balance.Target.Kind is not TargetKind.AtMost
            ? (Sentence)$"{balance.Form} stays {Apart(balance.Target.Amount, balance.Total)} short of {balance.Target.Amount}"
            : $"{balance.Form} goes {Apart(balance.Total, limit)} over {limit}";
    }

    private static MassPerArea Apart(MassPerArea more, MassPerArea less) =>
        new(more.KilogramsPerSquareMetre - less.KilogramsPerSquareMetre);

    private static MassPerArea Most(NutrientTarget target) => target.Most ?? target.Amount;

    private static string Names(string[] names) => names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";

    private static Sentence All(Sentence[] parts) =>
        parts switch
        {
            [var only] => only,
            [var one, var other] => $"{one} and {other}",
            [var first, .. var others] => $"{first}, {All(others)}",
            [] => $"",
        };
}
