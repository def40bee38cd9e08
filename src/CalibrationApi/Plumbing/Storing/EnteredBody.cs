using System.Text.Json.Nodes;

namespace CalibrationApi.Plumbing.Storing;

/// <summary>A body as it was sent, for an answer.</summary>
internal static class EnteredBody
{
    /// <summary>As a tree, without the members that are null: they say no more than absent ones, and the contract knows no null.</summary>
    public static JsonObject Node(string json)
    {
        var body = JsonNode.Parse(json)!.AsObject();
        DropNulls(body);
        return body;
    }

    private static void DropNulls(JsonNode? node)
    {
        if (node is JsonArray items)
        {
            foreach (var item in items)
                DropNulls(item);
        }
        else if (node is JsonObject members)
        {
            foreach (var name in members.Where(member => member.Value is null).Select(member => member.Key).ToArray())
                members.Remove(name);
            foreach (var (_, member) in members)
                DropNulls(member);
        }
    }
}
