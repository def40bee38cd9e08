using System.Globalization;

namespace CalibrationApi.Tests.Calculations.CatchPlans;

/// <summary>What a catch plan is answered; the numbers of the engine have their own tests.</summary>
public sealed class CatchPlanCalculationTests
{
    // The invented worked plan of the demo data, with the numbers as the documentation prints them.
    [Theory]
    [InlineData(0, "16.074", "47", "79.4", "35.53", "86.4", "0.1786", 1, "2.74", "container", "16.35")]
    [InlineData(1, "22.72", "32", "183.6", "10.46", "78.9", "0.4131", 1, "2.88", "lift-limit", "23.38")]
    [InlineData(2, "4.03", "130", "298.5", "26.13", "17.2", "0.6717", 1, "2.71", "maximum-run-time", "4.05")]
    public async Task Answer_WorkedPlan_HasThePrintedNumbers(
        int meter,
        string mass,
        string revolutions,
        string time,
        string speed,
        string fill,
        string area,
        int catches,
        string precision,
        string bound,
        string limit
    )
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync();

        var at = $"/meters/{meter}";
        AssertPrinted(mass, answer.Quantity($"{at}/catchMass"), "kg");
        AssertPrinted(revolutions, answer.Quantity($"{at}/revolutions"), "rev");
        AssertPrinted(time, answer.Quantity($"{at}/runTime"), "s");
        AssertPrinted(speed, answer.Quantity($"{at}/meterSpeed"), "rpm");
        AssertPrinted(fill, answer.Quantity($"{at}/containerFill"), "%");
        AssertPrinted(area, answer.Quantity($"{at}/simulatedArea"), "ha");
        AssertPrinted(precision, answer.Quantity($"{at}/expectedPrecision"), "%");
        AssertPrinted(limit, answer.Quantity($"{at}/limitedBy/mass"), "kg");
        Assert.Equal(catches, answer.Number($"{at}/catches"));
        Assert.Equal(bound, answer.Word($"{at}/limitedBy/bound"));
        Assert.True(answer.Flag($"{at}/withinLimits"));
    }

    [Fact]
    public async Task Answer_WorkedPlan_StopsTheMetersInOrder()
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync();

        Assert.Equal(
            ["1 front 79.4", "2 middle 183.6", "3 rear 298.5"],
            answer
                .List("/stopOrder")
                .Select(stop =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{stop!["group"]} {stop["meter"]} {stop["time"]!["value"]!.GetValue<double>():F1}"
                    )
                )
        );
    }

    [Fact]
    public async Task Answer_WorkedPlan_WarnsOfTheCoarseScaleAtItsMeter()
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync();

        Assert.Equal(["coarse-scale"], answer.Codes("/findings"));
        Assert.Equal("rear", answer.Word("/findings/0/meter"));
    }

    [Fact]
    public async Task Steps_OfAnyPlan_CanBeDoneInSomeOrder()
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync();

        var waiting = answer
            .List("/steps")
            .ToDictionary(
                step => step!["id"]!.GetValue<string>(),
                step => step!["after"]!.AsArray().Select(id => id!.GetValue<string>()).ToHashSet()
            );
        Assert.NotEmpty(waiting);
        while (waiting.Count > 0)
        {
            var ready = waiting.Where(step => step.Value.Count == 0).Select(step => step.Key).ToArray();
            Assert.NotEmpty(ready);
            foreach (var id in ready)
            {
                waiting.Remove(id);
                foreach (var after in waiting.Values)
                    after.Remove(id);
            }
        }
    }

    [Fact]
    public async Task Steps_DisturbedPoints_AreOpenedAndPutBackInTheOwnersWords()
    {
        var answer = await Question
            .Of(Question.CatchPlan)
            .With("/restorePoints", """[{ "name": "bride d'entraînement", "toOpen": "dévisser", "toRestore": "revisser à fond" }]""")
            .AnswerAsync();

        var details = answer.List("/steps").Select(step => step!["detail"]!.GetValue<string>()).ToArray();
        Assert.Contains(details, detail => detail.Contains("dévisser", StringComparison.Ordinal));
        Assert.Contains(details, detail => detail.Contains("revisser à fond", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Cautions_OfAnyPlan_AreThere()
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync();

        Assert.Superset(
            new HashSet<string>
            {
                "manual-first",
                "unexpected-start",
                "rotating-parts",
                "stored-pressure",
                "product-dust",
                "tank-entry",
                "heavy-container",
            },
            answer.Codes("/cautions").ToHashSet()
        );
    }

    [Fact]
    public async Task SharedShaft_AllMeters_StopWithTheFirstFullOne()
    {
        var answer = await Question.Of(Question.CatchPlan).With("/drive", "\"shared-shaft\"").AnswerAsync();

        Assert.All(answer.List("/meters"), meter => Assert.Equal(79.3777777777778, meter!["runTime"]!["value"]!.GetValue<double>(), 1e-9));
        Assert.Equal("container", answer.Word("/meters/0/limitedBy/bound"));
        Assert.Equal("shared-shaft", answer.Word("/meters/1/limitedBy/bound"));
        Assert.All(answer.List("/stopOrder"), stop => Assert.Equal(1, stop!["group"]!.GetValue<int>()));
    }

    // 47 revolutions take 79.4 s at 9 km/h, so a shortest run of 100 s is simulated at 9 x 79.4 / 100 km/h.
    [Fact]
    public async Task ShortestRun_LongerThanTheRun_MovesTheSimulatedSpeed()
    {
        var answer = await Question
            .Of(Question.CatchPlan)
            .With("/minimumRunTime", """{ "value": 100, "unit": "s" }""")
            .With("/containersAtHand", "2")
            .AnswerAsync();

        Assert.Equal(9 * 79.3777777777778 / 100, answer.Number("/meters/0/simulatedSpeed/value"), 1e-9);
        Assert.Equal("km/h", answer.Word("/meters/0/simulatedSpeed/unit"));
        Assert.Equal(100, answer.Number("/meters/0/runTime/value"), 1e-9);
        Assert.Equal(3, answer.Number("/containersNeeded"));
        Assert.False(answer.Flag("/oneAfterTheOther"));
        Assert.Contains("simulated-speed-moved", answer.Codes("/findings"));
        Assert.Contains("too-few-containers", answer.Codes("/findings"));
    }

    [Fact]
    public async Task WorkingSpeeds_BothEnds_AreChecked()
    {
        var answer = await Question
            .Of(Question.CatchPlan)
            .With("/workingSpeeds", """{ "minimum": { "value": 3, "unit": "km/h" }, "maximum": { "value": 12, "unit": "km/h" } }""")
            .AnswerAsync();

        // 55 kg/ha at 3 km/h takes a third of the 10.46 rpm at 9 km/h: under the 4 rpm that the meter may turn.
        Assert.Equal((3, "km/h"), answer.Quantity("/meters/1/speedChecks/0/groundSpeed"));
        Assert.Equal(10.4577464788732 / 3, answer.Number("/meters/1/speedChecks/0/meterSpeed/value"), 1e-9);
        Assert.False(answer.Flag("/meters/1/speedChecks/0/withinLimits"));
        Assert.True(answer.Flag("/meters/1/speedChecks/1/withinLimits"));
        Assert.Contains("outside-meter-window", answer.Codes("/findings"));
        Assert.Contains("wide-speed-range", answer.Codes("/findings"));
    }

    [Fact]
    public async Task StartValue_InPlaceOfAValueInForce_IsPlannedMoreCarefully()
    {
        var inForce = await Question.Of(Question.CatchPlan).AnswerAsync();
        var predicted = await Question
            .Of(Question.CatchPlan)
            .Without("/meters/0/valueInForce")
            .With("/meters/0/startValue", """{ "value": 0.342, "unit": "kg/rev" }""")
            .AnswerAsync();

        Assert.True(predicted.Number("/meters/0/catchMass/value") < inForce.Number("/meters/0/catchMass/value"));
    }

    [Fact]
    public async Task OwnContainer_OfOneMeter_GoesBeforeTheCommonOne()
    {
        var answer = await Question
            .Of(Question.CatchPlan)
            .With("/meters/0/container", """{ "volume": { "value": 10, "unit": "L" }, "tare": { "value": 1, "unit": "kg" } }""")
            .AnswerAsync();

        Assert.True(answer.Number("/meters/0/catchMass/value") < 6.2);
        Assert.Equal(22.72, answer.Number("/meters/1/catchMass/value"), 1e-9);
    }

    [Fact]
    public async Task Question_InPoundsAndInKilograms_HasTheSamePlan()
    {
        // NIST SP 811 (2008), appendix B.8: pound, acre, mile, foot, and the US bushel in hectolitres.
        const double Pound = 0.45359237,
            Acre = 0.40468564224,
            Mile = 1.609344,
            Foot = 0.3048,
            Bushel = 0.3523907016688;
        var question = Question
            .Of(Question.CatchPlan)
            .Convert("/groundSpeed", "mi/h", Mile)
            .Convert("/scale/capacity", "lb", Pound)
            .Convert("/scale/division", "lb", Pound)
            .Convert("/container/tare", "lb", Pound)
            .Convert("/container/volume", "bu-us", 100 * Bushel);
        for (var i = 0; i < 3; i++)
        {
            question
                .Convert($"/meters/{i}/coveredWidth", "ft", Foot)
                .Convert($"/meters/{i}/targetRate", "lb/ac", Pound / Acre)
                .Convert($"/meters/{i}/bulkDensity", "lb/bu-us", Pound / Bushel)
                .Convert($"/meters/{i}/valueInForce", "lb/rev", Pound);
        }

        var pounds = await question.AnswerAsync();
        var metric = await Question.Of(Question.CatchPlan).AnswerAsync();

        for (var i = 0; i < 3; i++)
        {
            Near(metric, pounds, $"/meters/{i}/catchMass", "lb", Pound);
            Near(metric, pounds, $"/meters/{i}/limitedBy/mass", "lb", Pound);
            Near(metric, pounds, $"/meters/{i}/simulatedArea", "ac", Acre);
            Near(metric, pounds, $"/meters/{i}/revolutions", "rev", 1);
            Near(metric, pounds, $"/meters/{i}/runTime", "s", 1);
            Near(metric, pounds, $"/meters/{i}/meterSpeed", "rpm", 1);
            Near(metric, pounds, $"/meters/{i}/containerFill", "%", 1);
            Near(metric, pounds, $"/meters/{i}/expectedPrecision", "%", 1);
        }

        Assert.Contains(" lb at front", pounds.Word("/headline"), StringComparison.Ordinal);
        Assert.Contains("mi/h", pounds.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.CatchPlan).AnswerAsync("?units=us");

        Assert.Equal("lb", answer.Word("/meters/0/catchMass/unit"));
        Assert.Equal("ac", answer.Word("/meters/0/simulatedArea/unit"));
        Assert.Contains("At 5.592 mi/h", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.DoesNotContain(" kg", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.DoesNotContain(" kg", answer.Word("/findings/0/detail"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("g", 20, "kg")]
    [InlineData("oz", 0.7, "lb")]
    [InlineData("lb", 0.05, "lb")]
    public async Task Masses_FollowTheScale(string division, double value, string mass)
    {
        var answer = await Question
            .Of(Question.CatchPlan)
            .With("/scale/division", string.Create(CultureInfo.InvariantCulture, $$"""{ "value": {{value}}, "unit": "{{division}}" }"""))
            .AnswerAsync();

        Assert.Equal(mass, answer.Word("/meters/0/catchMass/unit"));
    }

    private static void AssertPrinted(string printed, (double Value, string Unit) quantity, string unit)
    {
        var decimals = printed.Contains('.', StringComparison.Ordinal)
            ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1
            : 0;
        Assert.Equal((printed, unit), (quantity.Value.ToString("F" + decimals, CultureInfo.InvariantCulture), quantity.Unit));
    }

    private static void Near(Answer metric, Answer other, string pointer, string unit, double factor)
    {
        var (value, symbol) = other.Quantity(pointer);
        Assert.Equal(unit, symbol);
        Assert.True(Math.Abs(value * factor / metric.Number(pointer + "/value") - 1) < 1e-9, pointer);
    }
}
