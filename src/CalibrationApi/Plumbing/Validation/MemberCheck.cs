using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using FluentValidation;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>One step of checking a value of a request type.</summary>
internal abstract class MemberCheck<T>
{
    public abstract void Run(T owner, ref Faults faults);
}

internal sealed class NumberMember<T>(string name, bool needed, NumberAttribute? rule, Func<T, double?> read) : MemberCheck<T>
{
    public override void Run(T owner, ref Faults faults)
    {
        if (read(owner) is not { } value)
            MissingMember.Tell(needed, name, ref faults);
        else if (rule?.Allows(value) == false)
            faults.Add(new(name), ErrorCodes.NumberOutOfRange, rule.Advice);
    }
}

internal sealed class WholeMember<T>(string name, bool needed, NumberAttribute? rule, Func<T, int?> read) : MemberCheck<T>
{
    public override void Run(T owner, ref Faults faults)
    {
        if (read(owner) is not { } value)
            MissingMember.Tell(needed, name, ref faults);
        else if (rule?.Allows(value) == false)
            faults.Add(new(name), ErrorCodes.NumberOutOfRange, rule.Advice);
    }
}

/// <summary>A text, a quantity or a part of its own.</summary>
internal sealed class ValueMember<T>(string name, bool needed, ValueCheck check, Func<T, object?> read) : MemberCheck<T>
{
    public override void Run(T owner, ref Faults faults)
    {
        if (read(owner) is { } value)
            check.Run(value, new(name), ref faults);
        else
            MissingMember.Tell(needed, name, ref faults);
    }
}

internal sealed class ListMember<T>(string name, bool needed, ItemsAttribute? rule, ValueCheck item, Func<T, IReadOnlyList<object?>?> read)
    : MemberCheck<T>
{
    public override void Run(T owner, ref Faults faults)
    {
        if (read(owner) is not { } items)
        {
            MissingMember.Tell(needed, name, ref faults);
            return;
        }

        if (rule is not null)
            Count(items, rule, ref faults);
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is { } value)
                item.Run(value, new(name, i), ref faults);
        }
    }

    private void Count(IReadOnlyList<object?> items, ItemsAttribute allowed, ref Faults faults)
    {
        if (items.Count < allowed.Least)
        {
            faults.Add(new(name), ErrorCodes.TooFew, allowed.TooFew);
        }
        else if (items.Count > allowed.Most)
        {
            faults.Add(new(name), ErrorCodes.TooMany, allowed.TooMany);
        }
        else
        {
            for (var i = 0; i < items.Count; i++)
            {
                if (items[i] is null)
                    faults.Add(new(name, i), ErrorCodes.MemberMissing, "This item is null. Give it or leave it out.");
            }
        }
    }
}

/// <summary>The rules between the members of a type or of one that it derives from.</summary>
/// <param name="validator">The class that has them; made when the first value comes, because its library compiles each rule.</param>
internal sealed class RulesBetween<T>(Type validator) : MemberCheck<T>
{
    private readonly Lazy<IValidator<T>> rules = new(() => (IValidator<T>)Activator.CreateInstance(validator)!);

    public override void Run(T owner, ref Faults faults) => faults.Add(rules.Value.Validate(owner).Errors);
}

internal static class MissingMember
{
    public static void Tell(bool needed, string name, ref Faults faults)
    {
        if (needed)
            faults.Add(new(name), ErrorCodes.MemberMissing, "This member is missing. Add it.");
    }
}
