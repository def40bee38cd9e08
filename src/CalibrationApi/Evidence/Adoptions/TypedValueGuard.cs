using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Asks the engine what speaks against a typed number, and refuses it until the request answers all of it.</summary>
internal static class TypedValueGuard
{
    /// <summary>Null when the number may be adopted.</summary>
    public static ProblemResult? Refuse(
        AdoptionRequest request,
        WorkspaceReader reader,
        Series series,
        TypedNumberReading typing,
        MassPerRevolution value,
        CatchTestRecord? test,
        ElementContent? content
    )
    {
        var typed = new TypedValue
        {
            Value = value,
            InWords = typing.InWords,
            Step = typing.Step()?.KilogramsPerRevolution ?? 0,
            Test = test is null ? null : Read(test),
            Content = content,
        };
        var objections = TypedValueCheck.ObjectionsTo(
            TypedValueRecords.Surround(
                typed,
                reader,
                series,
                request.Lot,
                EnteredInstant.Read(request.OccurredAt!),
                request.Supersedes?.Record
            )
        );
        var answered = request.Despite ?? [];
        var errors = ProblemResult.Told(
            [.. objections.Where(objection => answered.All(one => one!.Code != objection.Code.Word))],
            DisplayUnits.Metric.With(UsualUnits.PerRevolution(request.TypedIn!.Unit))
        );
        for (var i = 0; i < answered.Count; i++)
        {
            var code = answered[i]!.Code;
            if (objections.All(objection => objection.Code.Word != code))
                errors.Add(Needless(i, "That does not speak against this number. Leave this answer out."));
            else if (answered.Take(i).Any(one => one!.Code == code))
                errors.Add(Needless(i, "This code is answered already. Leave one of the two answers out."));
        }

        return errors.Count == 0 ? null : ProblemResult.Invalid(errors);
    }

    private static ProblemError Needless(int position, string detail) =>
        new()
        {
            Pointer = string.Create(CultureInfo.InvariantCulture, $"#/despite/{position}"),
            Code = SharedCodes.SettingsAtOdds,
            Detail = detail,
        };

    private static TestBehindValue Read(CatchTestRecord test)
    {
        var answer = JsonNode.Parse(test.Answer)!;
        var measured = answer["massPerRevolution"]!;
        var kept = test.Verdict == "keep" ? JsonNode.Parse(test.Resolved)!["valueInForce"] : null;
        return new TestBehindValue(
            new MassPerRevolution(Canonical(measured, "value")),
            Canonical(measured, "expandedUncertainty"),
            answer["enter"]?["resultingMassPerRevolution"] is { } enter ? new MassPerRevolution(Canonical(enter, "value")) : null,
            kept is null ? null : new MassPerRevolution(Canonical(kept, "value"))
        );
    }

    /// <summary>A member of a stored quantity, canonical.</summary>
    public static double Canonical(JsonNode quantity, string member) =>
        UnitTable.Get(quantity["unit"]!.GetValue<string>()).Canonical(quantity[member]!.GetValue<double>());
}
