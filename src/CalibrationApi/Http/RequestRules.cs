using System.Collections.Concurrent;
using System.Reflection;
using FluentValidation;
using FluentValidation.Validators;

namespace CalibrationApi.Http;

/// <summary>The rules of every contract type, by type and member, for whoever needs them without validating.</summary>
internal static class RequestRules
{
    private static readonly Lazy<Dictionary<Type, IValidator>> Validators = new(() => Assembly.GetExecutingAssembly().GetTypes()
        .Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(IValidator)))
        .ToDictionary(
            type => type.GetInterfaces().Single(one => one.IsGenericType && one.GetGenericTypeDefinition() == typeof(IValidator<>)).GenericTypeArguments[0],
            type => (IValidator)Activator.CreateInstance(type, type.GetConstructor([]) is null ? [TimeProvider.System] : [])!));

    private static readonly ConcurrentDictionary<(Type, string), int> Lengths = new();

    /// <summary>The validator of a type; null when it has none.</summary>
    public static IValidator? Of(Type type) => Validators.Value.GetValueOrDefault(type);

    /// <summary>The rules of a member, by its name in JSON.</summary>
    public static IPropertyValidator[] Of(IValidator validator, string member) =>
        [.. validator.CreateDescriptor().GetRulesForMember(Pascal(member)).SelectMany(rule => rule.Components.Select(component => component.Validator))];

    /// <summary>Most items of a list, as the contract says.</summary>
    /// <param name="type">The type that holds the list.</param>
    /// <param name="member">Name of the list in JSON.</param>
    public static int MostItems(Type type, string member) => Lengths.GetOrAdd((type, member), static list =>
        Of(list.Item1) is { } validator && Of(validator, list.Item2).OfType<Rules.IItemsRule>().FirstOrDefault() is { } rule ? rule.Most : int.MaxValue);

    /// <summary>The name of a member in C#.</summary>
    public static string Pascal(string member) => char.ToUpperInvariant(member[0]) + member[1..];
}
