using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.Adoptions;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>An adoption as the value in force.</summary>
internal static class ValueInForce
{
    public static ValueInForceAnswer Of(WorkspaceReader reader, AdoptionRecord adoption, string timeZone, string? units)
    {
        var answerUnits = AnswerUnits.For(units, UsualUnits.PerRevolution(adoption.EnteredUnit));
        var entered = KeptJson.Read<AdoptionRequest>(adoption.Body);
        var basis = TestBehind.Of(reader, adoption);
        var adopted = AdoptionFindings.ValueOf(reader, adoption, entered, basis);
        return new ValueInForceAnswer
        {
            Machine = adoption.Series.Machine,
            Meter = adoption.Series.Meter,
            Element = adoption.Series.Element,
            Setting = adoption.Series.Setting.Length == 0 ? null : adoption.Series.Setting,
            Product = adoption.Series.Product,
            Headline = answerUnits.Text(adopted.Headline),
            HeadlineParts = answerUnits.Parts(adopted.Headline),
            Verdict = Words.Of(adopted.Verdict),
            MassPerRevolution = answerUnits.MassPerRevolution(new MassPerRevolution(adoption.Value)),
            TypedIn = new AnyQuantity { Value = adoption.EnteredValue, Unit = adoption.EnteredUnit },
            Adoption = adoption.Id,
            Since = EnteredInstant.Write(adoption.OccurredAt),
            SinceLocalDate = LocalDate.Of(adoption.OccurredAt, timeZone),
            RecordedBy = entered.RecordedBy!,
            Reason = entered.Reason!,
            Despite = entered.Despite,
            Lot = adoption.Lot,
            Treatment = adoption.Lot is { } lot ? reader.Lot(lot)?.Treatment : null,
            Test = adoption.Test,
            Measured = basis?.MeasuredIn(units),
            Conditions = basis?.Conditions,
            BasisSupersededBy = basis?.SupersededBy,
            Findings = answerUnits.Findings(adopted.Findings),
        };
    }
}
