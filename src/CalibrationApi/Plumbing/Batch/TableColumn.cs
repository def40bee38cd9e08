using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>A member of a question that a column of a table can give.</summary>
/// <param name="Path">Names of the members that lead to it.</param>
/// <param name="IsOfItem">It belongs to what a row stands for, not to the question as a whole.</param>
/// <param name="Type">Type of the member, without the marks of an absent one.</param>
internal sealed record TableColumn(IReadOnlyList<string> Path, bool IsOfItem, Type Type)
{
    /// <summary>Its name in a header: the members joined by points, as in the tables that lists come in.</summary>
    public string Name { get; } = string.Join('.', Path);

    /// <summary>The dimension of a quantity, which needs a unit; null for anything else.</summary>
    public Dimension? Dimension { get; } =
        Type.IsAssignableTo(typeof(Quantity)) ? ((Quantity)Activator.CreateInstance(Type)!).Dimension : null;

    /// <summary>Every column that a question can be read from.</summary>
    /// <param name="question">Type of a question.</param>
    /// <param name="items">The list of which each row is an item.</param>
    public static IReadOnlyList<TableColumn> Of(Type question, string items) => [.. Below(TypeInfo(question), [], false, items)];

    private static IEnumerable<TableColumn> Below(JsonTypeInfo type, string[] path, bool isOfItem, string? items)
    {
        foreach (var member in type.Properties)
        {
            string[] here = [.. path, member.Name];
            var inner = TypeInfo(member.PropertyType);
            IEnumerable<TableColumn> columns = inner.Kind switch
            {
                JsonTypeInfoKind.Enumerable when member.Name == items => Below(TypeInfo(inner.ElementType!), [], true, null),
                JsonTypeInfoKind.Enumerable => [],
                JsonTypeInfoKind.Object when inner.Type.IsAssignableTo(typeof(Quantity)) =>
                [
                    new(here, isOfItem, inner.Type),
                    .. Below(inner, here, isOfItem, null)
                        .Where(column => column.Path[^1] is not ("value" or "unit") || column.Path.Count > here.Length + 1),
                ],
                JsonTypeInfoKind.Object => Below(inner, here, isOfItem, null),
                _ => [new(here, isOfItem, Nullable.GetUnderlyingType(inner.Type) ?? inner.Type)],
            };
            foreach (var column in columns)
                yield return column;
        }
    }

    private static JsonTypeInfo TypeInfo(Type type) => JsonSettings.Contract.GetTypeInfo(type);
}
