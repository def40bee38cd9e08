using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>
/// Writes every quantity inside a stored answer in other units. Sentences stay as they were written, with their own units.
/// </summary>
internal static class QuantityConversion
{
    /// <summary>The display units of a word of the query; null for as asked.</summary>
    public static DisplayUnits? For(string? word) =>
        word switch
        {
            UnitsWord.Metric => DisplayUnits.Metric,
            UnitsWord.UnitedStates => DisplayUnits.UnitedStates,
            _ => null,
        };

    public static void Apply(JsonNode? node, DisplayUnits units)
    {
        if (node is JsonArray array)
        {
            foreach (var item in array)
                Apply(item, units);
        }
        else if (node is JsonObject members)
        {
            foreach (var (_, member) in members)
                Apply(member, units);
            Convert(members, units);
        }
    }

    // A number for a controller keeps the controller's unit: it has a form beside it.
    private static void Convert(JsonObject members, DisplayUnits units)
    {
        if (
            members["unit"] is not JsonValue symbol
            || members["value"] is not JsonValue value
            || members.ContainsKey("form")
            || !symbol.TryGetValue<string>(out var text)
            || !value.TryGetValue<double>(out var number)
            || UnitTable.Find(text) is not { } from
        )
            return;
        var to = units[from.Dimension];
        if (to == from)
            return;
        members["value"] = AnswerUnits.Shown(to.FromCanonical(from.Canonical(number)));
        members["unit"] = to.Symbol;
        if (members["expandedUncertainty"] is JsonValue expanded && expanded.TryGetValue<double>(out var width))
            members["expandedUncertainty"] = AnswerUnits.Shown(
                to.FromCanonical(from.Canonical(width)) - to.FromCanonical(from.Canonical(0))
            );
    }
}
