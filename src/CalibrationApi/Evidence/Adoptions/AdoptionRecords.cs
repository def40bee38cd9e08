using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Adoptions as evidence.</summary>
internal sealed class AdoptionRecords() : EvidenceRecords<AdoptionRequest, AdoptionRecord>(EvidenceKind.Adoption, "adoptions")
{
    public static AdoptionRecords All { get; } = new();

    protected override AdoptionRecord? Find(WorkspaceReader reader, string id) => reader.Adoption(id);

    protected override void Insert(WorkspaceReader reader, AdoptionRecord record) =>
        AdoptionStore.Insert(reader.Connection, reader.Workspace, record);

    protected override byte[] Body(WorkspaceReader reader, AdoptionRecord record, string? units)
    {
        var answerUnits = AnswerUnits.For(units, UsualUnits.PerRevolution(record.EnteredUnit));
        var entered = KeptJson.Read<AdoptionRequest>(record.Body);
        var adopted = AdoptionFindings.ValueOf(reader, record, entered, TestBehind.Of(reader, record));
        return KeptJson.Bytes(
            new AdoptionAnswer
            {
                Id = record.Id,
                OccurredAt = EnteredInstant.Write(record.OccurredAt),
                LocalDate = LocalDate.Of(record.OccurredAt, reader.TimeZoneOf(record.Series.Machine)),
                ReceivedAt = EnteredInstant.Write(record.ReceivedAt),
                Headline = answerUnits.Text(adopted.Headline),
                HeadlineParts = answerUnits.Parts(adopted.Headline),
                Verdict = Words.Of(adopted.Verdict),
                MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(record.Value)),
                Entered = AsKept<AdoptionRequest>.Entered(record.Body),
                Findings = answerUnits.Findings(adopted.Findings),
                SupersededBy = SupersededBy(reader, record),
            }
        );
    }
}
