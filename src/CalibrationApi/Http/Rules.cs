using System.Globalization;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Quantities;
using FluentValidation;
using FluentValidation.Results;
using FluentValidation.Validators;

namespace CalibrationApi.Http;

/// <summary>The rules that requests are made of. Each one checks, reports with a stable code, and describes itself for the contract.</summary>
internal static class Rules
{
    /// <summary>Characters of a name, of whatever it is the name.</summary>
    public const int LongestName = 100;

    /// <summary>The member has to be there.</summary>
    public static IRuleBuilderOptions<T, TMember> Needed<T, TMember>(this IRuleBuilder<T, TMember> rule) =>
        rule.NotNull().WithErrorCode(ErrorCode.MemberMissing).WithMessage("This member is missing. Add it.");

    /// <summary>A quantity with a unit of its dimension, inside the widest range of that dimension or a narrower one.</summary>
    /// <param name="rule">The member.</param>
    /// <param name="limits">The range this rule enforces.</param>
    /// <param name="told">The range the sender is told, where another rule enforces the rest with a code of its own.</param>
    public static IRuleBuilderOptions<T, TQuantity?> Measured<T, TQuantity>(this IRuleBuilder<T, TQuantity?> rule, QuantityLimits? limits = null, QuantityLimits? told = null)
        where TQuantity : Quantity, new()
    {
        var enforced = limits ?? QuantityLimits.Of(new TQuantity().Dimension);
        return rule.SetValidator(new QuantityRule<T, TQuantity>(enforced, told ?? enforced));
    }

    /// <summary>One word of a closed list.</summary>
    public static IRuleBuilderOptions<T, string?> Word<T>(this IRuleBuilder<T, string?> rule, IReadOnlyList<string> words) =>
        rule.SetValidator(new WordRule<T>(words));

    /// <summary>Tells the contract a closed list that another rule enforces with codes of its own.</summary>
    public static IRuleBuilderOptions<T, string?> ToldWords<T>(this IRuleBuilder<T, string?> rule, IReadOnlyList<string> words) =>
        rule.SetValidator(new ToldWordsRule<T>(words));

    /// <summary>A text of limited length that is not blank.</summary>
    public static IRuleBuilderOptions<T, string?> Text<T>(this IRuleBuilder<T, string?> rule, int most) =>
        rule.SetValidator(new TextRule<T>(most));

    /// <summary>A plain number between two bounds, both allowed: counts, probabilities, degrees of freedom.</summary>
    public static IRuleBuilderOptions<T, double?> Number<T>(this IRuleBuilder<T, double?> rule, double least, double most) =>
        rule.SetValidator(new NumberRule<T>(least, most));

    /// <summary>A plain number up to a bound; another rule refuses what is not above zero with a code of its own.</summary>
    public static IRuleBuilderOptions<T, double?> PositiveNumber<T>(this IRuleBuilder<T, double?> rule, double most) =>
        rule.SetValidator(new PositiveNumberRule<T>(most));

    /// <summary>A whole number between two bounds, both allowed.</summary>
    public static IRuleBuilderOptions<T, int?> Whole<T>(this IRuleBuilder<T, int?> rule, int least, int most) =>
        rule.SetValidator(new WholeRule<T>(least, most));

    /// <summary>A list with so many items.</summary>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem?>?> Items<T, TItem>(this IRuleBuilder<T, IReadOnlyList<TItem?>?> rule, int least, int most) =>
        rule.SetValidator(new ItemsRule<T, TItem>(least, most));

    /// <summary>Reports a fault of a rule that looks at several members.</summary>
    /// <param name="context">The context of the custom rule.</param>
    /// <param name="member">Path below the object under validation, in C# form such as <c>Catches[0].Gross</c>; empty for the object itself.</param>
    /// <param name="code">Stable code.</param>
    /// <param name="detail">What is wrong and what to do.</param>
    public static void Report<T>(this ValidationContext<T> context, string member, string code, string detail)
    {
        var prefix = context.PropertyChain.ToString();
        var path = (prefix.Length, member.Length) switch
        {
            (0, _) => member,
            (_, 0) => prefix,
            _ => $"{prefix}.{member}",
        };
        context.AddFailure(new ValidationFailure(path, detail) { ErrorCode = code });
    }

    /// <summary>The canonical value of a quantity whose unit fits; null otherwise, because its own rule reports that.</summary>
    public static double? Canonical(Quantity? quantity) =>
        quantity is { Value: { } value, Unit: { } symbol } && UnitTable.Find(symbol) is { } unit && unit.Dimension == quantity.Dimension
            ? unit.Canonical(value)
            : null;

    /// <summary>What is wrong with a unit where one of a dimension is needed; null when it fits.</summary>
    public static (string Code, string Detail)? UnitFault(string? symbol, Dimension dimension)
    {
        if (symbol is not null && UnitTable.Find(symbol) is { } unit && unit.Dimension == dimension)
            return null;
        var units = string.Join(", ", UnitTable.Of(dimension).Select(one => one.Symbol));
        if (string.IsNullOrEmpty(symbol))
            return (ErrorCode.UnitMissing, $"A number without a unit cannot be used. Add one of: {units}.");
        if (UnitTable.Find(symbol) is { } other)
            return (ErrorCode.UnitWrongDimension, $"'{other.Symbol}' does not fit here. Use one of: {units}.");
        return UnitTable.Ambiguous.TryGetValue(symbol, out var meanings)
            ? (ErrorCode.UnitAmbiguous, $"'{symbol}' can mean more than one unit. Write which: {string.Join(", ", meanings)}.")
            : (ErrorCode.UnitUnknown, $"'{Shown(symbol)}' is not a unit known here. Use one of: {units}.");
    }

    private static bool Fail<T>(ValidationContext<T> context, string code, string detail, string suffix = "")
    {
        context.AddFailure(new ValidationFailure(context.PropertyPath + suffix, detail) { ErrorCode = code });
        return true;
    }

    // The rules report failures themselves, with a code and a sentence for each cause, and so always "hold" for the library.
    internal sealed class QuantityRule<T, TQuantity>(QuantityLimits limits, QuantityLimits told) : PropertyValidator<T, TQuantity?>, IQuantityRule
        where TQuantity : Quantity, new()
    {
        public override string Name => nameof(QuantityRule<T, TQuantity>);

        public QuantityLimits Limits => told;

        public override bool IsValid(ValidationContext<T> context, TQuantity? quantity)
        {
            if (quantity is null)
                return true;
            var unit = UnitOf(context, quantity);
            if (quantity.Value is not { } value)
                return Fail(context, ErrorCode.MemberMissing, "The value is missing. Give a number beside the unit.", ".Value");
            if (!double.IsFinite(value))
                return Fail(context, ErrorCode.NumberOutOfRange, $"This number is too large for any machine. It has to be {told}.");
            return unit is null
                || limits.Allows(unit.Canonical(value))
                || Fail(context, ErrorCode.NumberOutOfRange, string.Create(CultureInfo.InvariantCulture, $"{value} {unit.Symbol} is out of range. It has to be {told}. Check the number and its unit."));
        }

        private static Unit? UnitOf(ValidationContext<T> context, TQuantity quantity)
        {
            if (UnitFault(quantity.Unit, quantity.Dimension) is not var (code, detail))
                return UnitTable.Find(quantity.Unit!);
            Fail(context, code, detail);
            return null;
        }
    }

    /// <summary>Lets the contract read the limits of any quantity rule.</summary>
    internal interface IQuantityRule
    {
        QuantityLimits Limits { get; }
    }

    internal sealed class WordRule<T>(IReadOnlyList<string> words) : PropertyValidator<T, string?>, IWordRule
    {
        public override string Name => nameof(WordRule<T>);

        public IReadOnlyList<string> Words => words;

        public override bool IsValid(ValidationContext<T> context, string? word) =>
            word is null || words.Contains(word)
            || Fail(context, ErrorCode.WordUnknown, $"'{Shown(word)}' is not a word known here. Use one of: {string.Join(", ", words)}.");
    }

    internal sealed class ToldWordsRule<T>(IReadOnlyList<string> words) : PropertyValidator<T, string?>, IWordRule
    {
        public override string Name => nameof(ToldWordsRule<T>);

        public IReadOnlyList<string> Words => words;

        public override bool IsValid(ValidationContext<T> context, string? word) => true;
    }

    /// <summary>Lets the contract read the closed list of any word rule.</summary>
    internal interface IWordRule
    {
        IReadOnlyList<string> Words { get; }
    }

    internal sealed class TextRule<T>(int most) : PropertyValidator<T, string?>, ITextRule
    {
        public override string Name => nameof(TextRule<T>);

        public int Most => most;

        public override bool IsValid(ValidationContext<T> context, string? text)
        {
            if (text is null)
                return true;
            // The contract counts characters as JSON Schema does, by code points; a char of C# is half of some.
            if (text.Length > most && (text.Length > 2 * most || text.EnumerateRunes().Count() > most))
                return Fail(context, ErrorCode.TextTooLong, $"This text is longer than {most} characters. Shorten it.");
            // Where a text is handed on, many a reader ends it here; the database counts its length so.
            if (text.Contains('\0', StringComparison.Ordinal))
                return Fail(context, ErrorCode.TextWrong, "This text holds the character U+0000, which ends a text for many programs. Leave it out.");
            return !string.IsNullOrWhiteSpace(text) || Fail(context, ErrorCode.TextWrong, "This text is blank. Write something or leave the member out.");
        }
    }

    /// <summary>Lets the contract read the length of any text rule.</summary>
    internal interface ITextRule
    {
        int Most { get; }
    }

    internal sealed class NumberRule<T>(double least, double most) : PropertyValidator<T, double?>, INumberRule
    {
        public override string Name => nameof(NumberRule<T>);

        public double Least => least;

        public double Most => most;

        public override bool IsValid(ValidationContext<T> context, double? value) =>
            value is null || (value >= least && value <= most)
            || Fail(context, ErrorCode.NumberOutOfRange, string.Create(CultureInfo.InvariantCulture, $"This number has to be {least} to {most}."));
    }

    internal sealed class PositiveNumberRule<T>(double most) : PropertyValidator<T, double?>, INumberRule
    {
        public override string Name => nameof(PositiveNumberRule<T>);

        public double Least => 0;

        public double Most => most;

        public bool ExcludesLeast => true;

        public override bool IsValid(ValidationContext<T> context, double? value) =>
            value is null || value <= most
            || Fail(context, ErrorCode.NumberOutOfRange, string.Create(CultureInfo.InvariantCulture, $"This number has to be above 0 and up to {most}."));
    }

    internal sealed class WholeRule<T>(int least, int most) : PropertyValidator<T, int?>, INumberRule
    {
        public override string Name => nameof(WholeRule<T>);

        public double Least => least;

        public double Most => most;

        public override bool IsValid(ValidationContext<T> context, int? value) =>
            value is null || (value >= least && value <= most)
            || Fail(context, ErrorCode.NumberOutOfRange, string.Create(CultureInfo.InvariantCulture, $"This number has to be {least} to {most}."));
    }

    /// <summary>Lets the contract read the bounds of any number rule.</summary>
    internal interface INumberRule
    {
        double Least { get; }

        double Most { get; }

        bool ExcludesLeast => false;
    }

    internal sealed class ItemsRule<T, TItem>(int least, int most) : PropertyValidator<T, IReadOnlyList<TItem?>?>, IItemsRule
    {
        public override string Name => nameof(ItemsRule<T, TItem>);

        public int Least => least;

        public int Most => most;

        public override bool IsValid(ValidationContext<T> context, IReadOnlyList<TItem?>? items)
        {
            if (items is null)
                return true;
            if (items.Count < least)
                return Fail(context, ErrorCode.TooFew, $"At least {least} {(least == 1 ? "item is" : "items are")} needed here.");
            if (items.Count > most)
                return Fail(context, ErrorCode.TooMany, TooManyItems(most));
            for (var i = 0; i < items.Count; i++)
            {
                if (items[i] is null)
                    Fail(context, ErrorCode.MemberMissing, "This item is null. Give it or leave it out.", string.Create(CultureInfo.InvariantCulture, $"[{i}]"));
            }

            return true;
        }
    }

    /// <summary>Marks the rule of an instant, for the contract.</summary>
    internal interface IInstantRule;

    /// <summary>Marks the rule of an id, for the contract.</summary>
    internal interface IIdRule;

    /// <summary>Lets the contract read the bounds of any items rule.</summary>
    internal interface IItemsRule
    {
        int Least { get; }

        int Most { get; }
    }

    /// <summary>What is told of a list that is too long.</summary>
    public static string TooManyItems(int most) => string.Create(CultureInfo.InvariantCulture, $"No more than {most} items are taken here. Split the request.");

    private static string Shown(string text) => Excerpt.Of(text, 40);
}
