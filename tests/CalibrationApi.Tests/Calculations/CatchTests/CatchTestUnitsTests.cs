using System.Globalization;

namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>An answer speaks the units of its question, and means the same in any other.</summary>
public sealed class CatchTestUnitsTests
{
    // International pound and acre: NIST SP 811 (2008), appendix B.8.
    private const double Pound = 0.45359237;
    private const double Acre = 0.40468564224;
    private const double PoundPerAcre = Pound / Acre;

    [Fact]
    public async Task Question_InPounds_IsAnsweredInPounds()
    {
        var answer = await InPounds().AnswerAsync();

        Assert.Equal("lb/rev", answer.Word("/massPerRevolution/unit"));
        Assert.Equal("lb", answer.Word("/catches/0/net/unit"));
        Assert.Equal("lb/ac", answer.Word("/effectIfValueInForceStays/appliedRate/unit"));
        Assert.Equal("lb", answer.Word("/effectIfValueInForceStays/massOverArea/unit"));
        Assert.EndsWith(" lb/rev.", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_InPoundsAndInKilograms_HasTheSameAnswer()
    {
        var metric = await Question.Of(Question.CatchTest).AnswerAsync();
        var pounds = await InPounds().AnswerAsync();

        foreach (
            var same in (string[])
                [
                    "/massPerRevolution/coverageFactor",
                    "/massPerRevolution/degreesOfFreedom",
                    "/change/value",
                    "/change/expandedUncertainty",
                    "/probabilityWithinTolerance",
                    "/agreement/q",
                    "/agreement/qProbability",
                    "/agreement/spread/value",
                    "/uncertaintyParts/0/relative/value",
                    "/uncertaintyParts/1/relative/value",
                    "/effectIfValueInForceStays/totalCost/value",
                ]
        )
            Near(metric.Number(same), pounds.Number(same), same);
        foreach (
            var mass in (string[])
                [
                    "/massPerRevolution/value",
                    "/massPerRevolution/expandedUncertainty",
                    "/totalMassOverTotalRevolutions/value",
                    "/meanOfRatios/value",
                    "/catches/0/net/value",
                    "/catches/1/massPerRevolution/value",
                    "/effectIfValueInForceStays/massOverArea/value",
                ]
        )
            Near(metric.Number(mass), pounds.Number(mass) * Pound, mass);
        Near(
            metric.Number("/effectIfValueInForceStays/appliedRate/value"),
            pounds.Number("/effectIfValueInForceStays/appliedRate/value") * PoundPerAcre,
            "applied rate"
        );
        Assert.Equal(metric.Word("/verdict"), pounds.Word("/verdict"));
        Assert.Equal(metric.Codes("/findings"), pounds.Codes("/findings"));
    }

    [Theory]
    [InlineData("?units=us", "lb/rev", "lb", "lb/ac", Pound, PoundPerAcre)]
    [InlineData("?units=metric", "kg/rev", "kg", "kg/ha", 1.0, 1.0)]
    [InlineData("?units=as-asked", "kg/rev", "kg", "kg/ha", 1.0, 1.0)]
    [InlineData("", "kg/rev", "kg", "kg/ha", 1.0, 1.0)]
    public async Task Query_Units_ChoosesThoseOfTheAnswer(
        string query,
        string perRevolution,
        string mass,
        string rate,
        double kilograms,
        double rateFactor
    )
    {
        var asked = await Question.Of(Question.CatchTest).AnswerAsync();

        var answer = await Question.Of(Question.CatchTest).AnswerAsync(query);

        Assert.Equal(perRevolution, answer.Word("/massPerRevolution/unit"));
        Assert.Equal(mass, answer.Word("/catches/0/net/unit"));
        Assert.Equal(rate, answer.Word("/effectIfValueInForceStays/appliedRate/unit"));
        Near(asked.Number("/massPerRevolution/value"), answer.Number("/massPerRevolution/value") * kilograms, "mass per revolution");
        Near(
            asked.Number("/effectIfValueInForceStays/appliedRate/value"),
            answer.Number("/effectIfValueInForceStays/appliedRate/value") * rateFactor,
            "applied rate"
        );
        // What is typed in stays in the unit of the controller, whatever the reader likes.
        Assert.Equal((0.363, "kg/rev"), answer.Quantity("/enter"));
    }

    [Fact]
    public async Task Query_UnitsMetric_TurnsAnswersToPoundQuestionsMetric()
    {
        var answer = await InPounds().AnswerAsync("?units=metric");

        Assert.Equal("kg/rev", answer.Word("/massPerRevolution/unit"));
        Assert.Equal(17.08, answer.Number("/catches/0/net/value"), 1e-9);
    }

    [Fact]
    public async Task Masses_OfTwoUnits_FollowTheFirstCatch()
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/catches/0/gross", """{ "value": 41.23, "unit": "lb" }""")
            .With("/catches/0/tare", """{ "value": 3.57, "unit": "lb" }""")
            .AnswerAsync();

        Assert.Equal((37.66, "lb"), answer.Quantity("/catches/0/net"));
        Assert.Equal("lb", answer.Word("/catches/1/net/unit"));
        Near(16.94, answer.Number("/catches/1/net/value") * Pound, "second catch");
    }

    [Theory]
    [InlineData("342", "g/rev")]
    [InlineData("0.754", "lb/rev")]
    [InlineData("12.06", "oz/rev")]
    public async Task ValueInForce_KeepsItsOwnUnit(string value, string unit)
    {
        var answer = await Question
            .Of(Question.CatchTest)
            .With("/valueInForce", $$"""{ "value": {{value}}, "unit": "{{unit}}" }""")
            .AnswerAsync();

        Assert.Equal(unit, answer.Word("/massPerRevolution/unit"));
        Assert.Equal("kg", answer.Word("/catches/0/net/unit"));
    }

    [Fact]
    public async Task TargetRate_InGramsPerSquareMetre_IsAnsweredSo()
    {
        var answer = await Question.Of(Question.CatchTest).With("/targetRate", """{ "value": 9, "unit": "g/m2" }""").AnswerAsync();

        Assert.Equal("g/m2", answer.Word("/effectIfValueInForceStays/appliedRate/unit"));
        Assert.Equal(9.54435186414513, answer.Number("/effectIfValueInForceStays/appliedRate/value"), 1e-9);
    }

    [Theory]
    [InlineData("t", "kg/rev")]
    [InlineData("g", "g/rev")]
    [InlineData("lb", "lb/rev")]
    [InlineData("oz", "oz/rev")]
    [InlineData("ton-us", "lb/rev")]
    [InlineData("ton-uk", "lb/rev")]
    public async Task NothingInForce_TheValueFollowsTheMasses(string mass, string perRevolution)
    {
        var kilograms = mass switch
        {
            "t" => 1000,
            "g" => 0.001,
            "lb" => Pound,
            "oz" => Pound / 16,
            "ton-us" => 2000 * Pound,
            _ => 2240 * Pound,
        };
        var value = (17.08 / kilograms).ToString("R", CultureInfo.InvariantCulture);

        var answer = await Question
            .Of(Question.CatchTest)
            .Without("/valueInForce")
            .Without("/controllerEntry")
            .With(
                "/catches",
                $$"""[{ "net": { "value": {{value}}, "unit": "{{mass}}" }, "revolutions": { "value": 47, "unit": "rev" } }]"""
            )
            .AnswerAsync();

        Assert.Equal(perRevolution, answer.Word("/massPerRevolution/unit"));
        Assert.Equal(mass, answer.Word("/catches/0/net/unit"));
    }

    private static Question InPounds()
    {
        var question = Question.Of(Question.CatchTest);
        foreach (var mass in (string[])["/catches/0/gross", "/catches/0/tare", "/catches/1/gross", "/catches/1/tare", "/scale/division"])
            question.Convert(mass, "lb", Pound);
        return question
            .Convert("/valueInForce", "lb/rev", Pound)
            .Convert("/targetRate", "lb/ac", PoundPerAcre)
            .Convert("/area", "ac", Acre)
            .With("/controllerEntry/unit", "\"lb/rev\"");
    }

    private static void Near(double expected, double actual, string what) =>
        Assert.True(Math.Abs(actual / expected - 1) < 1e-9, $"{what}: {expected} and {actual}");
}
