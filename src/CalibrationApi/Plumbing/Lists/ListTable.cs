using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>A list as a table: one row for each record, one column for each value that a record can have.</summary>
/// <remarks>
/// The columns follow from the type of the records and from the units asked for, never from what the records hold, so that all pages of
/// a list fit together. A member within a member becomes <c>outer.inner</c>. With one system of units the unit of a quantity stands in the
/// header in brackets; otherwise records can differ in it, so it stands in a column beside. What a record has several of stands in one
/// cell.
/// </remarks>
internal sealed class ListTable
{
    // The inner one stands within what the outer one separates.
    private const string Between = "; ";
    private const string BetweenInner = " | ";

    private readonly JsonTypeInfo type;
    private readonly IReadOnlyList<string> leading;

    private ListTable(Type record, IReadOnlyList<string> leading)
    {
        type = TypeInfo(record);
        this.leading = leading;
    }

    /// <summary>The table of a list of records.</summary>
    /// <param name="leading">
    /// Columns that come first, also those that the service adds to what the type describes; the others follow in the order of the
    /// contract.
    /// </param>
    public static ListTable Of<TRecord>(params IReadOnlyList<string> leading) => new(typeof(TRecord), leading);

    /// <summary>The columns, in order.</summary>
    /// <param name="units">The units that all quantities are in; null where each has its own.</param>
    public IReadOnlyList<Column> Columns(DisplayUnits? units)
    {
        var all = Below(type, [], units).ToArray();
        return
        [
            .. leading.Select(name => Array.Find(all, column => column.Name == name) ?? new Column(name, [name])),
            .. all.Where(column => !leading.Contains(column.Name)),
        ];
    }

    private static IEnumerable<Column> Below(JsonTypeInfo type, string[] path, DisplayUnits? units) =>
        type
            .Properties.Where(member => !member.PropertyType.IsDefined(typeof(NotInTablesAttribute), inherit: true))
            .SelectMany(member =>
            {
                string[] here = [.. path, member.Name];
                var inner = TypeInfo(member.PropertyType);
                if (inner.Kind == JsonTypeInfoKind.Enumerable)
                    inner = TypeInfo(inner.ElementType!);
                if (inner.Kind != JsonTypeInfoKind.Object)
                    return [new Column(Joined(here), here)];
                return inner.Properties.Any(one => one.Name == "unit") && inner.Properties.Any(one => one.Name == "value")
                    ? OfQuantity(inner, here, units)
                    : Below(inner, here, units);
            });

    private static IEnumerable<Column> OfQuantity(JsonTypeInfo type, string[] path, DisplayUnits? units)
    {
        // A number for a controller keeps the unit of the controller.
        var symbol =
            units is not null && type.Type.IsAssignableTo(typeof(Quantity)) && type.Properties.All(one => one.Name != "form")
                ? units[Quantity.DimensionOf(type.Type)].Symbol
                : null;
        var inBrackets = symbol is null ? "" : $" [{symbol}]";
        yield return new Column(Joined(path) + inBrackets, [.. path, "value"]);
        if (symbol is null)
            yield return new Column($"{Joined(path)} unit", [.. path, "unit"]);
        foreach (var column in Below(type, path, units))
        {
            if (column.Path.Count > path.Length + 1 || column.Path[^1] is not ("value" or "unit"))
                yield return column.Path[^1] == "expandedUncertainty" ? column with { Name = column.Name + inBrackets } : column;
        }
    }

    private static string Joined(string[] path) => string.Join('.', path);

    private static JsonTypeInfo TypeInfo(Type type) => JsonSettings.Contract.GetTypeInfo(type);

    /// <summary>A column.</summary>
    /// <param name="Name">What stands in the header.</param>
    /// <param name="Path">The members that lead to its values.</param>
    internal sealed record Column(string Name, IReadOnlyList<string> Path)
    {
        /// <summary>The cell of a record.</summary>
        public string Cell(JsonNode record, TableStyle style) => CsvTable.Harmless(Text(record, 0, Between, style));

        private string Text(JsonNode? node, int step, string between, TableStyle style) =>
            node switch
            {
                null => "",
                JsonArray items => Several(items.Select(item => Text(item, step, BetweenInner, style)), between),
                JsonObject members when step < Path.Count => Text(members[Path[step]], step + 1, between, style),
                JsonValue value when value.GetValueKind() == JsonValueKind.String => value.GetValue<string>(),
                JsonValue value when value.GetValueKind() == JsonValueKind.Number => value.ToJsonString().Replace('.', style.DecimalSign),
                _ => node.ToJsonString(JsonSettings.Writing),
            };

        // An empty place keeps the others in step with the cells beside.
        private static string Several(IEnumerable<string> texts, string between)
        {
            string[] all = [.. texts];
            return Array.TrueForAll(all, text => text.Length == 0) ? "" : string.Join(between, all);
        }
    }
}

/// <summary>A table as it is asked for.</summary>
/// <param name="Columns">Its columns.</param>
/// <param name="Style">How it is written.</param>
internal sealed record WrittenTable(IReadOnlyList<ListTable.Column> Columns, TableStyle Style);
