using System.Globalization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Members;

/// <summary>What may be sent as a member of a request. It stands on the member, where validation and contract both read it.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal abstract class MemberRuleAttribute : Attribute;

/// <summary>The member has to be there.</summary>
internal sealed class NeededAttribute : MemberRuleAttribute;

/// <summary>A quantity with a unit of its dimension, or a list of them.</summary>
internal sealed class MeasuredAttribute : MemberRuleAttribute
{
    private readonly (double Least, double Most, string Unit)? range;

    /// <summary>Inside the widest range of the dimension.</summary>
    public MeasuredAttribute() { }

    /// <summary>Inside a range of its own.</summary>
    /// <param name="least">Smallest value.</param>
    /// <param name="most">Largest value.</param>
    /// <param name="unit">Symbol of the unit of the two.</param>
    public MeasuredAttribute(double least, double most, string unit) => range = (least, most, unit);

    /// <summary>The smallest value itself is not allowed.</summary>
    public bool ExcludesLeast { get; init; }

    /// <summary>The sender is told the widest range of the dimension: a rule between members enforces it with a code of its own.</summary>
    public bool TellsWidest { get; init; }

    /// <summary>The range that is enforced.</summary>
    public QuantityLimits Limits(Dimension dimension) =>
        range is var (least, most, unit) ? new QuantityLimits(least, most, unit, ExcludesLeast) : QuantityLimits.Of(dimension);

    /// <summary>The range that the sender is told.</summary>
    public QuantityLimits Told(Dimension dimension) => TellsWidest ? QuantityLimits.Of(dimension) : Limits(dimension);
}

/// <summary>A plain number between two bounds, both allowed: counts, probabilities, degrees of freedom.</summary>
internal class NumberAttribute(double least, double most) : MemberRuleAttribute
{
    public double Least => least;

    public double Most => most;

    public virtual bool ExcludesLeast => false;

    public virtual bool Allows(double value) => value >= Least && value <= Most;

    public virtual string Advice => string.Create(CultureInfo.InvariantCulture, $"This number has to be {Least} to {Most}.");
}

/// <summary>A plain number up to a bound; a rule between members refuses what is not above zero with a code of its own.</summary>
internal sealed class PositiveNumberAttribute(double most) : NumberAttribute(0, most)
{
    public override bool ExcludesLeast => true;

    public override bool Allows(double value) => value <= Most;

    public override string Advice => string.Create(CultureInfo.InvariantCulture, $"This number has to be above 0 and up to {Most}.");
}

/// <summary>A whole number between two bounds, both allowed.</summary>
internal sealed class WholeAttribute(int least, int most) : NumberAttribute(least, most);

/// <summary>A list with so many items.</summary>
internal sealed class ItemsAttribute : MemberRuleAttribute
{
    public ItemsAttribute(int least, int most) => (Least, Most) = (least, most);

    /// <param name="least">Fewest items.</param>
    /// <param name="words">The class that has a list of words, of which as many as there are may be sent.</param>
    /// <param name="list">The static property that is the list.</param>
    public ItemsAttribute(int least, Type words, string list)
        : this(least, WordAttribute.Read(words, list).Count) { }

    public int Least { get; }

    public int Most { get; }

    public string TooFew => $"At least {Least} {(Least == 1 ? "item is" : "items are")} needed here.";

    public string TooMany => TooManyItems(Most);

    /// <summary>What is told of a list that is too long.</summary>
    public static string TooManyItems(int most) =>
        string.Create(CultureInfo.InvariantCulture, $"No more than {most} items are taken here. Split the request.");
}
