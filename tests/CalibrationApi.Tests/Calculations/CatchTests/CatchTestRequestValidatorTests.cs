namespace CalibrationApi.Tests.Calculations.CatchTests;

/// <summary>Every way in which a catch test can be readable and wrong.</summary>
public sealed class CatchTestRequestValidatorTests
{
    [Theory]
    [InlineData("/catches/0/net", """{ "value": -5, "unit": "kg" }""", "#/catches/0/net", "net-negative")]
    [InlineData("/catches/0/net", """{ "value": 0, "unit": "kg" }""", "#/catches/0/net", "net-negative")]
    [InlineData("/catches/0/net", """{ "value": 1e-300, "unit": "kg" }""", "#/catches/0/net", "net-negative")]
    public async Task Net_NotAboveZero_IsNegative(string pointer, string json, string at, string code) =>
        await RefusesAsync(
            Question.Of(Question.CatchTest).Without("/catches/0/gross").Without("/catches/0/tare").With(pointer, json),
            at,
            code
        );

    [Theory]
    [InlineData("/catches/0/tare/value", "18.7", "#/catches/0/tare")]
    [InlineData("/catches/0/tare/value", "20", "#/catches/0/tare")]
    [InlineData("/catches/1/gross/value", "1.62", "#/catches/1/tare")]
    [InlineData("/catches/0/tare", """{ "value": 50, "unit": "lb" }""", "#/catches/0/tare")]
    [InlineData("/catches/0/gross/unit", "\"g\"", "#/catches/0/tare")]
    public async Task Tare_AtOrAboveGross_IsSwapped(string pointer, string json, string at) =>
        await RefusesAsync(Question.Of(Question.CatchTest).With(pointer, json), at, "tare-above-gross");

    [Fact]
    public async Task SharedTare_AboveOneGross_NamesThatCatch()
    {
        var question = Question
            .Of(Question.CatchTest)
            .Without("/tareReading")
            .Without("/catches/0/tare")
            .Without("/catches/1/tare")
            .With("/sharedTare", """{ "value": 18.6, "unit": "kg" }""");

        await RefusesAsync(question, "#/catches/1/tare", "tare-above-gross");
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-0.0")]
    [InlineData("-47")]
    [InlineData("1e-300")]
    public async Task Revolutions_NotAboveZero_AreNotPositive(string value) =>
        await RefusesAsync(
            Question.Of(Question.CatchTest).With("/catches/0/revolutions/value", value),
            "#/catches/0/revolutions",
            "revolutions-not-positive"
        );

    [Theory]
    [InlineData("0")]
    [InlineData("-1200")]
    [InlineData("1e-300")]
    public async Task Pulses_NotAboveZero_AreNotPositive(string value)
    {
        var question = Question
            .Of(Question.CatchTest)
            .Without("/catches/0/revolutions")
            .With("/catches/0/pulses", value)
            .With("/pulsesPerRevolution", """{ "value": 360, "unit": "pulses/rev" }""");

        await RefusesAsync(question, "#/catches/0/pulses", "revolutions-not-positive");
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-3")]
    public async Task Turns_NotAboveZero_AreNotPositive(string value)
    {
        var question = Question
            .Of(Question.CatchTest)
            .Without("/catches/0/revolutions")
            .With("/catches/0/turns", $$"""{ "value": {{value}}, "unit": "rev" }""")
            .With("/meterRevolutionsPerTurn", """{ "value": 2, "unit": "1" }""");

        await RefusesAsync(question, "#/catches/0/turns", "revolutions-not-positive");
    }

    [Fact]
    public async Task Catches_None_AreTooFew() =>
        await RefusesAsync(Question.Of(Question.CatchTest).With("/catches", "[]"), "#/catches", "too-few");

    [Fact]
    public async Task Catches_FiftyOne_AreTooMany()
    {
        var question = Question.Of(Question.CatchTest);
        for (var i = 2; i < 51; i++)
            question.Add("/catches", """{ "net": { "value": 17, "unit": "kg" }, "revolutions": { "value": 47, "unit": "rev" } }""");

        await RefusesAsync(question, "#/catches", "too-many");
    }

    [Fact]
    public async Task Catches_Fifty_AreTaken()
    {
        var question = Question.Of(Question.CatchTest);
        for (var i = 2; i < 50; i++)
            question.Add("/catches", """{ "net": { "value": 17, "unit": "kg" }, "revolutions": { "value": 47, "unit": "rev" } }""");

        Assert.Equal(50, (await question.AnswerAsync()).List("/catches").Count);
    }

    [Fact]
    public async Task Catches_AllExcluded_LeaveNothing()
    {
        var question = Question
            .Of(Question.CatchTest)
            .With("/catches/0/excluded", """{ "reason": "spilled" }""")
            .With("/catches/1/excluded", """{ "reason": "spilled" }""");

        await RefusesAsync(question, "#/catches", "catches-all-excluded");
    }

    [Theory]
    [InlineData("/catches/0/gross/value", "1e308")]
    [InlineData("/catches/0/gross/value", "1e309")]
    [InlineData("/catches/0/gross/value", "1000001")]
    [InlineData("/catches/0/gross/value", "1e-300")]
    [InlineData("/catches/0/gross/value", "-5")]
    [InlineData("/catches/0/revolutions/value", "1e308")]
    [InlineData("/catches/0/revolutions/value", "1000001")]
    [InlineData("/valueInForce/value", "0")]
    [InlineData("/valueInForce/value", "-0.342")]
    [InlineData("/valueInForce/value", "1e-300")]
    [InlineData("/scale/division/value", "0")]
    [InlineData("/scale/division/value", "1e-300")]
    [InlineData("/counterResolution/value", "-0.1")]
    [InlineData("/counterResolution/value", "10.5")]
    [InlineData("/targetRate/value", "0")]
    [InlineData("/area/value", "-48")]
    [InlineData("/product/bulkDensity/value", "0.5")]
    public async Task Number_OutOfRange_IsRefusedWithTheRange(string pointer, string value)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, value).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        var fault = Assert.Single(problem.Faults, fault => fault.Code == "number-out-of-range");
        Assert.Equal("#" + pointer[..pointer.LastIndexOf('/')], fault.Pointer);
        Assert.Matches(" has to be (above )?[0-9]", fault.Detail);
    }

    [Fact]
    public async Task Number_OfFourHundredDigits_IsOutOfRange() =>
        await RefusesAsync(
            Question.Of(Question.CatchTest).With("/targetRate/value", new string('9', 400)),
            "#/targetRate",
            "number-out-of-range"
        );

    [Fact]
    public async Task Number_WithFourHundredDecimals_IsTaken()
    {
        var answer = await Question.Of(Question.CatchTest).With("/targetRate/value", "90." + new string('0', 400)).AnswerAsync();

        Assert.Equal(95.44351864145131, answer.Number("/effectIfValueInForceStays/appliedRate/value"), 1e-9);
    }

    [Theory]
    [InlineData("/repeatabilityDegreesOfFreedom", "0")]
    [InlineData("/repeatabilityDegreesOfFreedom", "1e309")]
    [InlineData("/coverageProbability", "1")]
    [InlineData("/coverageProbability", "0.4")]
    [InlineData("/coverageProbability", "-1e309")]
    [InlineData("/pocketsPerRevolution", "0")]
    [InlineData("/pocketsPerRevolution", "-12")]
    [InlineData("/controllerEntry/decimals", "-1")]
    [InlineData("/controllerEntry/decimals", "10")]
    [InlineData("/product/price/value", "-1")]
    [InlineData("/repeatability", """{ "value": 0, "unit": "%" }""")]
    [InlineData("/repeatability", """{ "value": 31, "unit": "%" }""")]
    [InlineData("/tolerance", """{ "value": 51, "unit": "%" }""")]
    [InlineData("/wantedPrecision", """{ "value": 0, "unit": "1" }""")]
    [InlineData("/dayToDay", """{ "value": -1, "unit": "%" }""")]
    [InlineData("/secondTestChange", """{ "value": 101, "unit": "%" }""")]
    [InlineData("/valueInForce/relativeUncertainty", """{ "value": 101, "unit": "%" }""")]
    public async Task Setting_OutOfRange_IsRefused(string pointer, string json) =>
        await RefusesAsync(Question.Of(Question.CatchTest).With(pointer, json), "#" + pointer, "number-out-of-range");

    [Theory]
    [InlineData("/catches/0/gross/unit", "\"KG\"", "#/catches/0/gross", "unit-unknown")]
    [InlineData("/catches/0/gross/unit", "\"kilo\"", "#/catches/0/gross", "unit-unknown")]
    [InlineData("/catches/0/gross/unit", "\"kg \"", "#/catches/0/gross", "unit-unknown")]
    [InlineData("/catches/0/gross/unit", "\"L\"", "#/catches/0/gross", "unit-wrong-dimension")]
    [InlineData("/targetRate/unit", "\"kg\"", "#/targetRate", "unit-wrong-dimension")]
    [InlineData("/valueInForce/unit", "\"kg/ha\"", "#/valueInForce", "unit-wrong-dimension")]
    [InlineData("/catches/0/gross/unit", "\"\"", "#/catches/0/gross", "unit-missing")]
    [InlineData("/catches/0/gross/unit", "null", "#/catches/0/gross", "unit-missing")]
    [InlineData("/catches/0/gross/unit", "\"bu\"", "#/catches/0/gross", "unit-wrong-dimension")]
    [InlineData("/catches/0/gross/unit", "\"ton\"", "#/catches/0/gross", "unit-ambiguous")]
    [InlineData("/product/bulkDensity/unit", "\"lb/bu\"", "#/product/bulkDensity", "unit-ambiguous")]
    [InlineData("/controllerEntry/unit", "\"kg\"", "#/controllerEntry/unit", "unit-wrong-dimension")]
    [InlineData("/controllerEntry/unit", "\"stone/rev\"", "#/controllerEntry/unit", "unit-unknown")]
    [InlineData("/controllerEntry/unit", "\"bu\"", "#/controllerEntry/unit", "unit-ambiguous")]
    public async Task Unit_ThatDoesNotFit_IsRefusedWithThoseThatDo(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((at, code), (fault.Pointer, fault.Code));
        Assert.Matches(@"(one of|Write [^ ]+): .+\.$", fault.Detail);
    }

    [Theory]
    [InlineData("/tareReading", "\"Each\"")]
    [InlineData("/tareReading", "\"\"")]
    [InlineData("/countStart", "\"onEdge\"")]
    [InlineData("/scale/accuracyClass", "\"3\"")]
    [InlineData("/scale/accuracyClass", "\"iii\"")]
    [InlineData("/product/material", "\"sticky\"")]
    [InlineData("/controllerEntry/form", "\"massPerRevolution\"")]
    [InlineData("/product/price/per", "\"kg/ha\"")]
    public async Task Word_Unknown_IsRefusedWithTheKnownOnes(string pointer, string json)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal(("#" + pointer, "word-unknown"), (fault.Pointer, fault.Code));
        Assert.Contains("Use one of: ", fault.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("EUr")]
    [InlineData("EURO")]
    [InlineData("€")]
    [InlineData("")]
    [InlineData("EUR\\n")]
    public async Task Currency_NotThreeCapitals_IsRefused(string currency) =>
        await RefusesAsync(
            Question.Of(Question.CatchTest).With("/product/price/currency", $"\"{currency}\""),
            "#/product/price/currency",
            "text-wrong"
        );

    [Theory]
    [InlineData("/meter")]
    [InlineData("/product/name")]
    public async Task Name_LongOrBlank_IsRefused(string pointer)
    {
        await RefusesAsync(Question.Of(Question.CatchTest).With(pointer, $"\"{new string('x', 101)}\""), "#" + pointer, "text-too-long");
        await RefusesAsync(Question.Of(Question.CatchTest).With(pointer, "\" \\t\""), "#" + pointer, "text-wrong");
        await RefusesAsync(Question.Of(Question.CatchTest).With(pointer, "\"\""), "#" + pointer, "text-wrong");
    }

    [Fact]
    public async Task Density_MissingForAVolumePerRevolution_IsAskedFor()
    {
        var question = Question
            .Of(Question.CatchTest)
            .Without("/product/bulkDensity")
            .With("/controllerEntry", """{ "form": "volume-per-revolution", "unit": "L", "decimals": 3 }""");

        await RefusesAsync(question, "#/product/bulkDensity", "density-missing");
    }

    [Theory]
    [InlineData("mass-per-revolutions", "kg", null, "member-missing")]
    [InlineData("mass-per-revolutions", "kg", "null", "member-missing")]
    [InlineData("mass-per-revolutions", "kg", "0", "number-out-of-range")]
    [InlineData("mass-per-revolutions", "kg", "1001", "number-out-of-range")]
    [InlineData("mass-per-revolution", "kg/rev", "10", "settings-at-odds")]
    public async Task ControllerEntry_RevolutionsOfTheNumber_GoWithTheFormThatNeedsThem(
        string form,
        string unit,
        string? revolutions,
        string code
    )
    {
        var question = Question
            .Of(Question.CatchTest)
            .With("/controllerEntry", $$"""{ "form": "{{form}}", "unit": "{{unit}}", "decimals": 3 }""");

        await RefusesAsync(
            revolutions is null ? question : question.With("/controllerEntry/revolutions", revolutions),
            "#/controllerEntry/revolutions",
            code
        );
    }

    [Theory]
    [InlineData("mass-per-pulse", "g", "#/pulsesPerRevolution")]
    [InlineData("mass-per-time", "kg/min", "#/meterSpeed")]
    public async Task ControllerEntry_FormThatNeedsMore_SaysWhat(string form, string unit, string at) =>
        await RefusesAsync(
            Question.Of(Question.CatchTest).With("/controllerEntry", $$"""{ "form": "{{form}}", "unit": "{{unit}}", "decimals": 3 }"""),
            at,
            "member-missing"
        );

    [Theory]
    [InlineData("/catches/0/pulses", "1000", "#/pulsesPerRevolution")]
    [InlineData("/catches/0/turns", """{ "value": 20, "unit": "rev" }""", "#/meterRevolutionsPerTurn")]
    [InlineData("/catches/0/runTime", """{ "value": 60, "unit": "s" }""", "#/meterSpeed")]
    public async Task Count_ThatNeedsMore_SaysWhat(string pointer, string json, string at) =>
        await RefusesAsync(Question.Of(Question.CatchTest).Without("/catches/0/revolutions").With(pointer, json), at, "member-missing");

    [Fact]
    public async Task IndicatedMass_WithoutTheValueTypedIn_AsksForIt()
    {
        var question = Question
            .Of(Question.CatchTest)
            .Without("/valueInForce")
            .Without("/catches/0/revolutions")
            .With("/catches/0/indicatedMass", """{ "value": 16, "unit": "kg" }""");

        await RefusesAsync(question, "#/valueTypedIn", "member-missing");
    }

    [Theory]
    [InlineData("/startValue", """{ "value": 0.35, "unit": "kg/rev" }""", "#/startValue")]
    [InlineData("/sharedTare", """{ "value": 1.62, "unit": "kg" }""", "#/tareReading")]
    [InlineData("/catches/0/net", """{ "value": 17, "unit": "kg" }""", "#/catches/0/net")]
    [InlineData("/catches/0/runTime", """{ "value": 60, "unit": "s" }""", "#/catches/0")]
    [InlineData("/caughtPoints", """{ "caught": 13, "total": 12 }""", "#/caughtPoints/caught")]
    public async Task Settings_ThatExcludeEachOther_AreAtOdds(string pointer, string json, string at)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == "settings-at-odds");
    }

    [Fact]
    public async Task Settings_PrecisionThatTheToleranceDoesNotAllow_AreRefusedByTheEngine()
    {
        // A test that is only wanted to 20 % can never show that a value is within 0.1 %.
        var question = Question
            .Of(Question.CatchTest)
            .With("/tolerance", """{ "value": 0.1, "unit": "%" }""")
            .With("/wantedPrecision", """{ "value": 20, "unit": "%" }""");

        using var response = await question.AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal("settings-at-odds", fault.Code);
    }

    [Fact]
    public async Task Question_WithManyFaults_IsToldAllOfThem()
    {
        var question = Question
            .Of(Question.CatchTest)
            .With("/meter", "\"\"")
            .With("/product/material", "\"wet\"")
            .With("/product/bulkDensity/unit", "\"lb/bu\"")
            .With("/product/price/currency", "\"euro\"")
            .Without("/product/price/value")
            .With("/scale/division/value", "0")
            .With("/scale/accuracyClass", "\"V\"")
            .With("/valueInForce/unit", "\"kg\"")
            .With("/controllerEntry/decimals", "99")
            .Without("/targetRate/unit")
            .With("/area/value", "1e309")
            .With("/catches/0/tare/value", "30")
            .With("/catches/1/revolutions/value", "-1")
            .Add("/catches", "null")
            .Add("/catches", "{}");

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(
            [
                "#/area number-out-of-range",
                "#/catches/0/tare tare-above-gross",
                "#/catches/1/revolutions revolutions-not-positive",
                "#/catches/2 member-missing",
                "#/catches/3/gross member-missing",
                "#/catches/3/revolutions member-missing",
                "#/controllerEntry/decimals number-out-of-range",
                "#/meter text-wrong",
                "#/product/bulkDensity unit-ambiguous",
                "#/product/material word-unknown",
                "#/product/price/currency text-wrong",
                "#/product/price/value member-missing",
                "#/scale/accuracyClass word-unknown",
                "#/scale/division number-out-of-range",
                "#/targetRate unit-missing",
                "#/valueInForce unit-wrong-dimension",
            ],
            problem.Faults.Select(fault => $"{fault.Pointer} {fault.Code}").Order(StringComparer.Ordinal)
        );
        Assert.Contains("16 things", problem.Detail, StringComparison.Ordinal);
    }

    private static async Task RefusesAsync(Question question, string pointer, string code)
    {
        using var response = await question.AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((pointer, code), (fault.Pointer, fault.Code));
    }
}
