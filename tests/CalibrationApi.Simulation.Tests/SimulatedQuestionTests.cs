using System.Text.Json.Nodes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Simulation.Tests;

public sealed class SimulatedQuestionTests
{
    [Fact]
    public void Of_ATestWithEverything_WritesTheReadingsWithTheirUnits()
    {
        var test = Given.Setup with
        {
            Asked = asked => asked with { Reference = new ReferenceValue(new MassPerRevolution(0.36), ReferenceKind.ValueInForce) },
        };
        var made = test.Run(SeededRandom.Of(1, 1));

        var body = SimulatedQuestion.Of(made);

        Assert.Equal("kg/rev", body["valueInForce"]!["unit"]!.GetValue<string>());
        var catches = body["catches"]!.AsArray();
        Assert.Equal(made.Catches.Count, catches.Count);
        Assert.All(catches.Zip(made.Catches), pair =>
        {
            Assert.Equal(pair.Second.Gross, Number(pair.First!["gross"]!, "kg"), 1e-9);
            Assert.Equal(pair.Second.Tare!.Value, Number(pair.First!["tare"]!, "kg"), 1e-9);
            Assert.Equal(pair.Second.Counted, Number(pair.First!["revolutions"]!, "rev"), 1e-9);
        });
    }

    [Fact]
    public void Of_NetMassesOnly_WritesNoTare()
    {
        var body = SimulatedQuestion.Of((Given.Setup with { WritesNetOnly = true }).Run(SeededRandom.Of(1, 1)));

        Assert.All(body["catches"]!.AsArray(), one =>
        {
            Assert.NotNull(one!["net"]);
            Assert.Null(one["gross"]);
            Assert.Null(one["tare"]);
        });
        Assert.Null(body["valueInForce"]);
    }

    private static double Number(JsonNode quantity, string unit)
    {
        Assert.Equal(unit, quantity["unit"]!.GetValue<string>());
        return quantity["value"]!.GetValue<double>();
    }
}
