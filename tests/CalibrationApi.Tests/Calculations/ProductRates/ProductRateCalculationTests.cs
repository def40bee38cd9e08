namespace CalibrationApi.Tests.Calculations.ProductRates;

/// <summary>What a question about product rates is answered; the numbers of the engine have their own tests.</summary>
public sealed class ProductRateCalculationTests
{
    private const string FixedRate = """{ "value": 60, "unit": "kg/ha" }""";

    // On paper: the starter brings 9 of N, P2O5 and K2O. Phosphate (40 - 9) / 0.52, potash (30 - 9) / 0.60, sulfate 15 / 0.24, and urea for
    // what is left of 110 - 25 - 9 after the nitrogen of the two.
    private const double Phosphate = 31 / 0.52;
    private const double Urea = (76 - 0.11 * Phosphate - 0.21 * 62.5) / 0.46;

    [Fact]
    public async Task Answer_DemoQuestion_IsAsOnPaper()
    {
        var answer = await Question.Of(Question.ProductRate).AnswerAsync();

        Assert.Equal("met", answer.Word("/verdict"));
        var rates = new[] { 60, Urea, 62.5, Phosphate, 35 };
        for (var i = 0; i < rates.Length; i++)
        {
            Assert.Equal(rates[i], answer.Number($"/products/{i}/rate/value"), 1e-9);
            Assert.Equal("kg/ha", answer.Word($"/products/{i}/rate/unit"));
            Assert.Equal(i == 0, answer.Flag($"/products/{i}/isFixed"));
        }

        Assert.Equal(rates.Sum(), answer.Number("/totalRate/value"), 1e-9);
        Assert.Equal((9 + 25 + 76.0, "kg/ha"), answer.Quantity("/nutrients/0/total"));
        Assert.Equal(0, answer.Number("/nutrients/0/surplus/value"));
        Assert.StartsWith("Apply 60 kg/ha of compound starter, ", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.Equal(["soil-test-first", "seed-row-has-its-own-limit", "not-all-products-mix"], answer.Codes("/cautions"));
    }

    [Fact]
    public async Task Money_IsPerHectareAndPerKilogramAndInTotal()
    {
        var answer = await Question.Of(Question.ProductRate).AnswerAsync();

        var perHectare = (60 * 455 + Urea * 480 + 62.5 * 290 + Phosphate * 700 + 35 * 410) / 1000;
        Assert.Equal(perHectare, answer.Number("/costPerArea/value"), 1e-9);
        Assert.Equal(("EUR", "ha"), (answer.Word("/costPerArea/currency"), answer.Word("/costPerArea/per")));
        Assert.Equal(perHectare * 48, answer.Number("/totalCost/value"), 1e-7);
        Assert.Equal(0.480 / 0.46, answer.Number("/products/1/nutrientCost/value"), 1e-12);
        Assert.Equal(("N", "kg"), (answer.Word("/products/1/nutrientCost/nutrient"), answer.Word("/products/1/nutrientCost/per")));
        Assert.False(answer.Has("/products/2/nutrientCost"));
        // A tonne of phosphate less the value of its nitrogen, over 520 kg.
        Assert.Equal((700 - 110 * 0.480 / 0.46) / 520, answer.Number("/nutrients/1/costOfNextUnit/value"), 1e-12);
        Assert.False(answer.Has("/nutrients/1/costOfLimit"));
    }

    [Fact]
    public async Task Area_GivesMassAndWholePackages()
    {
        var answer = await Question.Of(Question.ProductRate).AnswerAsync();

        Assert.Equal((3000, "kg"), answer.Quantity("/products/2/totalMass"));
        Assert.Equal(5, answer.Number("/products/2/packages"));
        Assert.Equal(Math.Ceiling(Urea * 48 / 600), answer.Number("/products/1/packages"));
        Assert.False(answer.Has("/products/0/packages"));

        var without = await Question.Of(Question.ProductRate).Without("/area").AnswerAsync();
        Assert.False(without.Has("/products/2/totalMass") || without.Has("/products/2/packages") || without.Has("/totalCost"));
        Assert.True(without.Has("/costPerArea"));
    }

    // With a limit in place of its target, sulfur has no price, and what the limit costs stands beside it.
    [Fact]
    public async Task Limit_ThatBinds_HasItsOwnCost()
    {
        var question = Question
            .Of(Question.ProductRate)
            .With("/targets/3", """{ "nutrient": "S", "kind": "at-most", "amount": { "value": 5, "unit": "kg/ha" } }""")
            .With("/products/2/price/value", "100");
        var answer = await question.AnswerAsync();

        var sulfur = answer
            .List("/nutrients")
            .Select((one, i) => (Symbol: one!["nutrient"]!.GetValue<string>(), At: i))
            .Single(one => one.Symbol == "S")
            .At;
        Assert.False(answer.Has($"/nutrients/{sulfur}/costOfNextUnit"));
        Assert.True(answer.Number($"/nutrients/{sulfur}/costOfLimit/value") > 0);
        Assert.Equal("kg", answer.Word($"/nutrients/{sulfur}/costOfLimit/per"));
    }

    [Fact]
    public async Task NoPrices_NoMoney()
    {
        var question = Question.Of(Question.ProductRate);
        for (var i = 0; i < 5; i++)
            question.Without($"/products/{i}/price");

        var answer = await question.AnswerAsync();

        Assert.False(
            answer.Has("/costPerArea")
                || answer.Has("/totalCost")
                || answer.Has("/products/1/totalCost")
                || answer.Has("/products/1/nutrientCost")
                || answer.Has("/nutrients/0/costOfNextUnit")
        );
        Assert.Equal(
            ["kind", "price"],
            answer.List("/assumptions").Select(assumption => assumption!["name"]!.GetValue<string>()).Distinct()
        );
    }

    [Fact]
    public async Task TargetsThatCannotBeMet_AreSaidWithWhy()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/products/3/maximumRate", """{ "value": 40, "unit": "kg/ha" }""")
            .AnswerAsync();

        Assert.Equal("missed", answer.Word("/verdict"));
        Assert.False(answer.Flag("/nutrients/1/met"));
        Assert.Equal(
            (9 + 0.52 * 40 - 40, "kg/ha"),
            (Math.Round(answer.Number("/nutrients/1/surplus/value"), 9), answer.Word("/nutrients/1/surplus/unit"))
        );
        Assert.Equal(["most-rate-binds"], answer.Codes("/findings"));
        Assert.False(answer.Has("/nutrients/0/costOfNextUnit"));
        Assert.Equal((40, "kg/ha"), answer.Quantity("/products/3/rate"));
    }

    [Fact]
    public async Task Kind_LeftOut_IsAtLeastAndSaid()
    {
        var question = Question.Of(Question.ProductRate);
        var answer = await question.AnswerAsync();

        Assert.Equal("at-least", answer.Word("/nutrients/2/kind"));
        Assert.Equal("kind", answer.Word("/assumptions/0/name"));
        for (var i = 0; i < 4; i++)
            question.With($"/targets/{i}/kind", "\"at-least\"");
        Assert.Empty((await question.AnswerAsync()).List("/assumptions"));
    }

    [Fact]
    public async Task Forms_ElementAndOxide_AreToldApart()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/targets/1/nutrient", "\"P\"")
            .With("/targets/1/amount/value", "17.457")
            .AnswerAsync();

        Assert.Equal("P", answer.Word("/nutrients/1/nutrient"));
        Assert.Equal("P", answer.Word("/products/3/supplies/1/nutrient"));
        // 2 P over P2O5, standard atomic weights: 61.948 / 141.943.
        Assert.Equal((17.457 * 141.942523996 / 61.947523996 - 9) / 0.52, answer.Number("/products/3/rate/value"), 1e-9);
    }

    [Fact]
    public async Task Question_InPoundsAndInKilograms_HasTheSameAnswer()
    {
        // NIST SP 811 (2008), appendix B.8.
        const double Pound = 0.45359237,
            Acre = 0.40468564224;
        var question = Question
            .Of(Question.ProductRate)
            .Convert("/area", "ac", Acre)
            .Convert("/products/0/fixedRate", "lb/ac", Pound / Acre)
            .Convert("/targets/0/maximum", "lb/ac", Pound / Acre)
            .Convert("/credits/0/amount", "lb/ac", Pound / Acre);
        for (var i = 0; i < 4; i++)
            question.Convert($"/targets/{i}/amount", "lb/ac", Pound / Acre).Convert($"/products/{i + 1}/packageMass", "lb", Pound);

        var pounds = await question.AnswerAsync();
        var metric = await Question.Of(Question.ProductRate).AnswerAsync();

        foreach (
            var (pointer, unit, factor) in (ReadOnlySpan<(string, string, double)>)
                [
                    ("/products/1/rate", "lb/ac", Pound / Acre),
                    ("/products/3/supplies/0/amount", "lb/ac", Pound / Acre),
                    ("/products/1/totalMass", "lb", Pound),
                    ("/nutrients/0/fromComputedRates", "lb/ac", Pound / Acre),
                    ("/blend/0/share", "%", 1),
                    ("/totalRate", "lb/ac", Pound / Acre),
                ]
        )
        {
            var (value, symbol) = pounds.Quantity(pointer);
            Assert.Equal(unit, symbol);
            Assert.True(Math.Abs(value * factor / metric.Number(pointer + "/value") - 1) < 1e-12, pointer);
        }

        Assert.Equal(("ac", "lb"), (pounds.Word("/costPerArea/per"), pounds.Word("/nutrients/0/costOfNextUnit/per")));
        Assert.Equal(metric.Number("/costPerArea/value") * Acre, pounds.Number("/costPerArea/value"), 1e-9);
        Assert.Equal(metric.Number("/totalCost/value"), pounds.Number("/totalCost/value"), 1e-7);
        Assert.Equal(metric.Number("/products/1/packages"), pounds.Number("/products/1/packages"));
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/products/3/maximumRate", """{ "value": 40, "unit": "kg/ha" }""")
            .AnswerAsync("?units=us");

        Assert.Equal("lb/ac", answer.Word("/products/0/rate/unit"));
        Assert.Equal("lb", answer.Word("/products/1/totalMass/unit"));
        Assert.Equal("ac", answer.Word("/costPerArea/per"));
        Assert.DoesNotContain("kg", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.DoesNotContain("kg", answer.Word("/findings/0/detail"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task OneTargetAndOneProduct_AreEnough()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/targets", """[{ "nutrient": "SO3", "amount": { "value": 30, "unit": "kg/ha" } }]""")
            .With("/products", """[{ "name": "sulfur", "analysis": [{ "nutrient": "SO3", "share": { "value": 225, "unit": "%" } }] }]""")
            .Without("/credits")
            .Without("/area")
            .AnswerAsync();

        Assert.Equal(30 / 2.25, answer.Number("/products/0/rate/value"), 1e-12);
    }

    [Fact]
    public async Task EveryRateFixed_IsOnlyAddedUp()
    {
        var question = Question.Of(Question.ProductRate);
        for (var i = 1; i < 5; i++)
            question.With($"/products/{i}/fixedRate", FixedRate);

        var answer = await question.AnswerAsync();

        Assert.Equal(0.15 * 60 + 0.46 * 60 + 0.21 * 60 + 0.11 * 60, answer.Number("/nutrients/0/fromFixedRates/value"), 1e-9);
        Assert.Equal("missed", answer.Word("/verdict"));
        Assert.Empty(answer.List("/blend"));
    }
}
