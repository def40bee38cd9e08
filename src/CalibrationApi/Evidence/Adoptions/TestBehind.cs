using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Evidence.Recording;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>The test behind an adopted value, and what took its place since.</summary>
/// <param name="Test">The test.</param>
/// <param name="Measured">The mass per revolution that it measured, as answered.</param>
/// <param name="Enter">What it said to enter; null when the form of the controller was not known.</param>
/// <param name="SupersededBy">The test in its place, with what was wrong; null while it stands.</param>
internal sealed record TestBehind(BasisRecord Test, JsonNode Measured, JsonNode? Enter, Supersedes? SupersededBy)
{
    /// <summary>Its conditions as entered.</summary>
    public Conditions? Conditions => Test.Conditions is { } entered ? KeptJson.Read<Conditions>(entered) : null;

    /// <summary>What it found, as numbers.</summary>
    public TestBehindValue Value =>
        new(
            new MassPerRevolution(TypedValueGuard.Canonical(Measured, "value")),
            TypedValueGuard.Canonical(Measured, "expandedUncertainty"),
            Enter is { } enter ? new MassPerRevolution(TypedValueGuard.Canonical(enter["resultingMassPerRevolution"]!, "value")) : null
        );

    /// <summary>Reads it; null for a value stated by hand.</summary>
    public static TestBehind? Of(WorkspaceReader reader, AdoptionRecord adoption) =>
        adoption.Test is { } id && reader.TestBehind(id) is { } test
            ? new TestBehind(
                test,
                JsonNode.Parse(test.Measured)!,
                test.Enter is { } enter ? JsonNode.Parse(enter) : null,
                Standing(reader, id)
            )
            : null;

    /// <summary>What it measured, in the units of an answer.</summary>
    public MeasuredMassPerRevolution MeasuredIn(string? units)
    {
        var measured = Measured;
        if (QuantityConversion.For(units) is { } display)
            QuantityConversion.Apply(measured = measured.DeepClone(), display);
        return (MeasuredMassPerRevolution)measured.Deserialize(JsonSettings.Contract.GetTypeInfo(typeof(MeasuredMassPerRevolution)))!;
    }

    // Only a test that stands can be adopted, so the end of a chain is named, with what was wrong at its beginning.
    private static Supersedes? Standing(WorkspaceReader reader, string test)
    {
        if (reader.Replacement(EvidenceKind.CatchTest, test) is not { } first)
            return null;
        var standing = first.Replacement;
        while (reader.Replacement(EvidenceKind.CatchTest, standing) is { } next)
            standing = next.Replacement;
        return new Supersedes { Record = standing, Reason = first.Reason };
    }
}
