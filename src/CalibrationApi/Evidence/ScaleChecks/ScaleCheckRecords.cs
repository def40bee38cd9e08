using System.Text.Json.Nodes;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Checks of scales as evidence.</summary>
internal sealed class ScaleCheckRecords() : EvidenceRecords<ScaleCheckRequest, ScaleCheckRecord>(EvidenceKind.ScaleCheck, "scale-checks")
{
    public static ScaleCheckRecords All { get; } = new();

    protected override ScaleCheckRecord? Find(WorkspaceReader reader, string id) => reader.ScaleCheck(id);

    protected override void Insert(WorkspaceReader reader, ScaleCheckRecord record) =>
        ScaleCheckStore.Insert(reader.Connection, reader.Workspace, record);

    protected override byte[] Body(WorkspaceReader reader, ScaleCheckRecord record, string? units)
    {
        var outcome = KeptJson.Read<ScaleCheckOutcome>(Converted(record.Answer, units));
        return KeptJson.Bytes(
            new ScaleCheckAnswer
            {
                Id = record.Id,
                OccurredAt = EnteredInstant.Write(record.OccurredAt),
                ReceivedAt = EnteredInstant.Write(record.ReceivedAt),
                Headline = outcome.Headline,
                HeadlineParts = outcome.HeadlineParts,
                Verdict = outcome.Verdict,
                Error = outcome.Error,
                StandardUncertainty = outcome.StandardUncertainty,
                LargestDeviation = outcome.LargestDeviation,
                Limit = outcome.Limit,
                LimitOrigin = outcome.LimitOrigin,
                Entered = AsKept<ScaleCheckRequest>.Entered(record.Body),
                SupersededBy = SupersededBy(reader, record),
            }
        );
    }

    private static string Converted(string kept, string? units)
    {
        if (QuantityConversion.For(units) is not { } display)
            return kept;
        var node = JsonNode.Parse(kept)!;
        QuantityConversion.Apply(node, display);
        return node.ToJsonString();
    }
}
