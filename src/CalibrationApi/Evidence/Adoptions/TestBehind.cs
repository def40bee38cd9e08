using System.Text.Json;
using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Evidence.Superseding;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>The test behind an adopted value, and what took its place since.</summary>
/// <param name="Test">The test.</param>
/// <param name="Measured">The mass per revolution that it measured, as answered.</param>
/// <param name="Enter">What it said to enter; null when the form of the controller was not known.</param>
/// <param name="SupersededBy">The test in its place, with what was wrong; null while it stands.</param>
internal sealed record TestBehind(BasisRecord Test, JsonNode Measured, JsonNode? Enter, Supersedes? SupersededBy)
{
    /// <summary>Its conditions as entered.</summary>
    public Conditions? Conditions =>
        Test.Conditions is { } entered
            ? (Conditions?)JsonSerializer.Deserialize(entered, JsonSettings.Contract.GetTypeInfo(typeof(Conditions)))
            : null;

    /// <summary>Reads it; null for a value stated by hand.</summary>
    public static TestBehind? Of(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption) =>
        adoption.Test is { } id && CatchTestStore.FindBasis(connection, workspace, id) is { } test
            ? new TestBehind(
                test,
                JsonNode.Parse(test.Measured)!,
                test.Enter is { } enter ? JsonNode.Parse(enter) : null,
                Standing(connection, workspace, id)
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
    private static Supersedes? Standing(SqliteConnection connection, Workspace workspace, string test)
    {
        if (SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, test) is not { } first)
            return null;
        var standing = first.Replacement;
        while (SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, standing) is { } next)
            standing = next.Replacement;
        return new Supersedes { Record = standing, Reason = first.Reason };
    }
}
