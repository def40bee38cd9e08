using System.Collections.Concurrent;
using System.Reflection;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>Names the validator with the rules between the members of a type.</summary>
/// <param name="validator">Made without arguments.</param>
[AttributeUsage(AttributeTargets.Class, Inherited = false)]
internal sealed class CheckedByAttribute(Type validator) : Attribute
{
    public Type Validator => validator;
}

/// <summary>What is checked of a value of a request type, and in which order.</summary>
internal abstract class RequestPlan
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly;

    // Types of which everything is known to be said: bodies share parts.
    private static readonly HashSet<Type> Said = [];

    private static readonly ConcurrentDictionary<(Type Type, string Member), int> Lengths = new();

    /// <summary>The plan of a type, which is made once.</summary>
    public static RequestPlan Of(Type type) =>
        (RequestPlan)
            typeof(RequestPlan<>)
                .MakeGenericType(type)
                .GetProperty(nameof(RequestPlan<object>.Made), BindingFlags.Public | BindingFlags.Static)!
                .GetValue(null)!;

    public abstract void Check(object value, ref Faults faults);

    /// <summary>Most items of a list, as the contract says.</summary>
    /// <param name="type">The type that holds the list.</param>
    /// <param name="member">Name of the list in JSON.</param>
    public static int MostItems(Type type, string member) =>
        Lengths.GetOrAdd((type, member), static list =>
            list.Type.GetProperty(Pascal(list.Member))?.GetCustomAttribute<ItemsAttribute>()?.Most ?? int.MaxValue
        );

    /// <summary>The name of a member in C#.</summary>
    public static string Pascal(string member) => char.ToUpperInvariant(member[0]) + member[1..];

    /// <summary>Ends the start of a service with a body that has a member of which nothing is said.</summary>
    public static void MustSay(Type body)
    {
        lock (Said)
        {
            var met = new HashSet<Type>(Said);
            if (Undescribed(body, met).FirstOrDefault() is { } member)
                throw new InvalidOperationException($"Nothing says what may be sent as {member}, which is in the body {body.Name}.");
            Said.UnionWith(met);
        }
    }

    /// <summary>Members of a body and of its parts that nothing is said about.</summary>
    public static IEnumerable<string> Undescribed(Type body) => Undescribed(body, []);

    private static IEnumerable<string> Undescribed(Type body, HashSet<Type> met)
    {
        var open = new Stack<Type>([body]);
        while (open.TryPop(out var type))
        {
            if (!met.Add(type))
                continue;
            foreach (var member in Levels(type).SelectMany(MembersOf))
            {
                if (!IsDescribed(member))
                    yield return $"{type.Name}.{member.Name}";
                if (IsPart(ItemType(member.PropertyType) ?? member.PropertyType))
                    open.Push(ItemType(member.PropertyType) ?? member.PropertyType);
            }
        }
    }

    /// <summary>The types whose members make up a type, what it derives from first.</summary>
    protected static IEnumerable<Type> Levels(Type type) =>
        type.BaseType is null || type == typeof(Quantity) ? [] : Levels(type.BaseType).Append(type);

    protected static PropertyInfo[] MembersOf(Type level) => level.GetProperties(Declared);

    /// <summary>What a list is of; null for anything else.</summary>
    public static Type? ItemType(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GenericTypeArguments[0] : null;

    /// <summary>A type with members of its own.</summary>
    protected static bool IsPart(Type type) =>
        type.IsClass && type.Assembly == typeof(RequestPlan).Assembly && Levels(type).Any(level => MembersOf(level).Length > 0);

    private static bool IsDescribed(PropertyInfo member)
    {
        var items = ItemType(member.PropertyType);
        if (items is not null && !member.IsDefined(typeof(ItemsAttribute)))
            return false;
        var type = items ?? member.PropertyType;
        if (type == typeof(double?) || type == typeof(int?))
            return member.IsDefined(typeof(NumberAttribute));
        if (type == typeof(string))
            return member.IsDefined(typeof(TextRuleAttribute));
        return type.IsAssignableTo(typeof(Quantity)) ? member.IsDefined(typeof(MeasuredAttribute)) : type == typeof(bool?) || IsPart(type);
    }
}

/// <summary>
/// The plan of a type: rules of its members as they are declared, then those between them; what it derives from goes first.
/// </summary>
internal sealed class RequestPlan<T> : RequestPlan
    where T : class
{
    private static readonly Lazy<RequestPlan<T>> Only = new(() => new RequestPlan<T>());
    private readonly MemberCheck<T>[] steps = [.. Levels(typeof(T)).SelectMany(StepsOf)];

    public static RequestPlan<T> Made => Only.Value;

    public override void Check(object value, ref Faults faults) => Check((T)value, ref faults);

    public void Check(T value, ref Faults faults)
    {
        if (faults.AreEnough)
            return;
        foreach (var step in steps)
            step.Run(value, ref faults);
    }

    private static IEnumerable<MemberCheck<T>> StepsOf(Type level)
    {
        foreach (var member in MembersOf(level))
        {
            if (StepOf(member, member.GetCustomAttributes<MemberRuleAttribute>(inherit: false).ToArray()) is { } step)
                yield return step;
        }

        if (level.GetCustomAttribute<CheckedByAttribute>(inherit: false) is { } between)
            yield return new RulesBetween<T>(between.Validator);
    }

    // A getter is called as it is: neither compiled at run time nor through reflection, and no number is boxed.
    private static MemberCheck<T>? StepOf(PropertyInfo member, MemberRuleAttribute[] rules)
    {
        var (name, type, read) = (member.Name, member.PropertyType, member.GetMethod!);
        var needed = rules.OfType<NeededAttribute>().Any();
        if (type == typeof(double?))
            return new NumberMember<T>(name, needed, Rule<NumberAttribute>(), read.CreateDelegate<Func<T, double?>>());
        if (type == typeof(int?))
            return new WholeMember<T>(name, needed, Rule<NumberAttribute>(), read.CreateDelegate<Func<T, int?>>());
        if (ItemType(type) is { } item)
            return new ListMember<T>(
                name,
                needed,
                Rule<ItemsAttribute>(),
                ValueCheckOf(item, rules)!,
                read.CreateDelegate<Func<T, IReadOnlyList<object?>?>>()
            );
        return ValueCheckOf(type, rules) is { } check
            ? new ValueMember<T>(name, needed, check, read.CreateDelegate<Func<T, object?>>())
            : null;

        TRule? Rule<TRule>()
            where TRule : MemberRuleAttribute => rules.OfType<TRule>().SingleOrDefault();
    }

    private static ValueCheck? ValueCheckOf(Type type, MemberRuleAttribute[] rules)
    {
        if (type == typeof(string))
            return new TextCheck(rules.OfType<TextRuleAttribute>().Single());
        var part = IsPart(type) ? new PartCheck(type) : null;
        return type.IsAssignableTo(typeof(Quantity))
            ? new QuantityCheck(Quantity.DimensionOf(type), rules.OfType<MeasuredAttribute>().Single(), part)
            : part;
    }
}
