using System.Reflection;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Storage.Tests.History;

/// <summary>Filters by one member or several; a member added to <see cref="HistoryFilter"/> is among them at once.</summary>
internal static class HistoryFilters
{
    public static IReadOnlyList<PropertyInfo> Members { get; } =
    [.. typeof(HistoryFilter).GetProperties().Where(member => member.Name is not nameof(HistoryFilter.NewestFirst) && member.CanWrite)];

    /// <summary>A filter that <see cref="Given.Line"/> passes.</summary>
    public static HistoryFilter By(params PropertyInfo[] members)
    {
        var filter = new HistoryFilter();
        foreach (var member in members)
            member.SetValue(filter, Value(member));
        return filter;
    }

    private static object? Value(PropertyInfo member) =>
        member.Name switch
        {
            nameof(HistoryFilter.From) => Given.Noon.AddMinutes(-1),
            nameof(HistoryFilter.Until) => Given.Noon.AddMinutes(1),
            _ => typeof(HistoryEntry).GetProperty(member.Name)!.GetValue(Given.Line(1)),
        };
}
