using System.Text.Json.Nodes;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Http;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;

namespace CalibrationApi.Adoptions;

/// <summary>Asks the engine what speaks against a typed number, and refuses it until the request answers.</summary>
internal static class TypedValueGuard
{
    /// <summary>Null when the number may be adopted.</summary>
    public static ProblemResult? Refuse(AdoptionRequest request, TypedNumberReading typing, double value, CatchTestRecord? test, AdoptionRecord? before, ElementContent? content)
    {
        var objections = TypedValueCheck.ObjectionsTo(new TypedValue
        {
            Value = new MassPerRevolution(value),
            InWords = typing.InWords,
            Step = typing.Step(),
            Test = test is null ? null : Read(test),
            Before = before is null ? null : new MassPerRevolution(before.Value),
            Content = content,
        });
        if (request.Despite?.Code is { } code)
        {
            if (objections.Count == 0)
                return ProblemResult.Invalid([new ProblemError { Pointer = "#/despite", Code = ErrorCode.SettingsAtOdds, Detail = "Nothing speaks against this number. Leave 'despite' out." }]);
            if (objections[0].Code == code)
                return null;
        }

        var units = UnitTable.Find(request.TypedIn!.Unit!) is { Dimension: Dimension.MassPerRevolution } unit ? DisplayUnits.Metric.With(unit) : DisplayUnits.Metric;
        return objections.Count == 0 ? null : ProblemResult.Refused(objections, units);
    }

    private static TestBehindValue Read(CatchTestRecord test)
    {
        var answer = JsonNode.Parse(test.Answer)!;
        var measured = answer["massPerRevolution"]!;
        var kept = test.Verdict == "keep" ? JsonNode.Parse(test.Resolved)!["valueInForce"] : null;
        return new TestBehindValue(
            new MassPerRevolution(Canonical(measured, "value")),
            Canonical(measured, "expandedUncertainty"),
            answer["enter"]?["resultingMassPerRevolution"] is { } enter ? new MassPerRevolution(Canonical(enter, "value")) : null,
            kept is null ? null : new MassPerRevolution(Canonical(kept, "value")));
    }

    /// <summary>A member of a stored quantity, canonical.</summary>
    public static double Canonical(JsonNode quantity, string member) =>
        UnitTable.Get(quantity["unit"]!.GetValue<string>()).Canonical(quantity[member]!.GetValue<double>());
}
