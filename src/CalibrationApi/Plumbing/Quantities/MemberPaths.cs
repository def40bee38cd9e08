using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Text.Json;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>Tells which paths lead to a member of a body.</summary>
internal static class MemberPaths
{
    private static readonly ConcurrentDictionary<(Type Body, string Path), string?> Known = new();

    /// <summary>The path as a JSON pointer; null where the body has no such member.</summary>
    public static string? Pointer(Type body, string path) =>
        Known.GetOrAdd((body, path), static key => Leads(key.Body, key.Path) ? $"#/{key.Path}" : null);

    private static bool Leads(Type body, string path)
    {
        Type? at = body;
        foreach (var part in path.Split('/'))
        {
            at = int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out _) ? ItemOf(at) : MemberOf(at, part);
            if (at is null)
                return false;
        }
        return true;
    }

    private static Type? MemberOf(Type type, string name) =>
        type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .FirstOrDefault(property => JsonNamingPolicy.CamelCase.ConvertName(property.Name) == name)
            ?.PropertyType;

    private static Type? ItemOf(Type type) =>
        type.GetElementType()
        ?? type.GetInterfaces()
            .Append(type)
            .FirstOrDefault(one => one.IsGenericType && one.GetGenericTypeDefinition() == typeof(IEnumerable<>))
            ?.GetGenericArguments()[0];
}
