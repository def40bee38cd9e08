using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Records.Describing;

/// <summary>The representation of a described record: what the service knows of it, then the description as entered.</summary>
internal static class RecordBody
{
    private static readonly string[] WrittenFirst = ["id", "revision", "retired", "createdAt", "updatedAt"];

    /// <summary>Members that every record has.</summary>
    public static IReadOnlyList<string> Leading { get; } = [.. WrittenFirst, "name"];

    public static string ETag(DescribedRecord record) => $"\"r{record.Revision}\"";

    public static byte[] Write(DescribedRecord record) => JsonSerializer.SerializeToUtf8Bytes(Node(record, null), JsonSettings.Writing);

    /// <summary>As a tree; quantities in <paramref name="units"/> where given, else as entered.</summary>
    public static JsonObject Node(DescribedRecord record, DisplayUnits? units)
    {
        var node = new JsonObject
        {
            ["id"] = record.Id,
            ["revision"] = record.Revision,
            ["retired"] = record.Retired,
            ["createdAt"] = Instants.Text(record.CreatedAt),
            ["updatedAt"] = Instants.Text(record.UpdatedAt),
        };
        foreach (var (name, value) in EnteredBody.Node(record.Body))
        {
            if (!WrittenFirst.Contains(name))
                node[name] = value!.DeepClone();
        }

        if (units is not null)
            QuantityConversion.Apply(node, units);
        return node;
    }
}
