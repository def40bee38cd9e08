using System.Text.Json.Nodes;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Simulation;

/// <summary>A simulated test as a client would ask it of the service.</summary>
public static class SimulatedQuestion
{
    /// <summary>
    /// The body of <c>POST /v1/calculations/catch-test</c>: the readings as written down, the scale, and the value in force where there is
    /// one.
    /// </summary>
    public static JsonObject Of(SimulatedTest test)
    {
        var question = test.Question;
        var scale = new JsonObject { ["division"] = Quantity(question.Scale.Division.Kilograms, "kg") };
        if (question.Scale.AccuracyClass is { } accuracy)
            scale["accuracyClass"] = accuracy.ToString();
        var body = new JsonObject { ["scale"] = scale };
        if (question.Reference is { Kind: ReferenceKind.ValueInForce } inForce)
            body["valueInForce"] = Quantity(inForce.Value.KilogramsPerRevolution, "kg/rev");
        body["catches"] = new JsonArray([.. test.Catches.Select(Catch)]);
        return body;
    }

    private static JsonObject Catch(OneCatch one)
    {
        var written = new JsonObject { [one.Tare is null ? "net" : "gross"] = Quantity(one.Gross, "kg") };
        if (one.Tare is { } tare)
            written["tare"] = Quantity(tare, "kg");
        written["revolutions"] = Quantity(one.Counted, "rev");
        return written;
    }

    // Twelve digits: no scale and no counter shows more, and none of the noise of binary fractions.
    private static JsonObject Quantity(double value, string unit) => new() { ["value"] = Math.Round(value, 12), ["unit"] = unit };
}
