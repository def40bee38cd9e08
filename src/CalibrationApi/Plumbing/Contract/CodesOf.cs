using System.Reflection;
using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Plumbing.Contract;

/// <summary>Reads codes from where they are declared: the static properties of classes of codes.</summary>
internal static class CodesOf
{
    /// <summary>The codes of a class, in the order in which they stand there.</summary>
    public static IEnumerable<(PropertyInfo Place, Code Code)> Class(Type home) =>
        home.GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType.IsAssignableTo(typeof(Code)))
            .Select(property => (property, (Code)property.GetValue(null)!));

    /// <summary>Every code that the service declares.</summary>
    public static IEnumerable<(PropertyInfo Place, Code Code)> Service() =>
        new[] { typeof(Code).Assembly, typeof(CodesOf).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => type is { IsAbstract: true, IsSealed: true })
            .SelectMany(Class);
}
