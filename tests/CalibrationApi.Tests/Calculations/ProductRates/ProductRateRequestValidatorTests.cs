namespace CalibrationApi.Tests.Calculations.ProductRates;

/// <summary>Every way in which a question about product rates can be readable and wrong.</summary>
public sealed class ProductRateRequestValidatorTests
{
    [Theory]
    [InlineData("/targets", "[]", "#/targets", "too-few")]
    [InlineData("/targets/0/nutrient", "\"nitrogen\"", "#/targets/0/nutrient", "word-unknown")]
    [InlineData("/targets/1/nutrient", "\"N\"", "#/targets/1/nutrient", "settings-at-odds")]
    [InlineData("/targets/3/nutrient", "\"K\"", "#/targets/3/nutrient", "settings-at-odds")]
    [InlineData("/targets/0/amount/value", "0", "#/targets/0/amount", "number-out-of-range")]
    [InlineData("/targets/0/amount/value", "-1", "#/targets/0/amount", "number-out-of-range")]
    [InlineData("/targets/0/amount/value", "0.0009", "#/targets/0/amount", "number-out-of-range")]
    [InlineData("/targets/0/amount/value", "1e309", "#/targets/0/amount", "number-out-of-range")]
    [InlineData("/targets/0/amount/value", "1e-300", "#/targets/0/amount", "number-out-of-range")]
    [InlineData("/targets/0/amount/unit", "\"kg\"", "#/targets/0/amount", "unit-wrong-dimension")]
    [InlineData("/targets/0/kind", "\"about\"", "#/targets/0/kind", "word-unknown")]
    [InlineData("/targets/0/kind", "\"exactly\"", "#/targets/0/maximum", "settings-at-odds")]
    [InlineData("/targets/0/maximum/value", "109", "#/targets/0/maximum", "settings-at-odds")]
    [InlineData("/products", "[]", "#/products", "too-few")]
    [InlineData("/products/1/name", "\"\"", "#/products/1/name", "text-wrong")]
    [InlineData("/products/1/analysis", "[]", "#/products/1/analysis", "too-few")]
    [InlineData("/products/1/analysis/0/share/value", "0", "#/products/1/analysis", "number-out-of-range")]
    [InlineData("/products/1/analysis/0/share/value", "0.009", "#/products/1/analysis/0/share", "number-out-of-range")]
    [InlineData("/products/1/analysis/0/share/value", "-46", "#/products/1/analysis/0/share", "number-out-of-range")]
    [InlineData("/products/1/analysis/0/share/value", "101", "#/products/1/analysis", "number-out-of-range")]
    [InlineData("/products/1/analysis/0/share/value", "251", "#/products/1/analysis/0/share", "number-out-of-range")]
    [InlineData("/products/3/analysis/0/share/value", "49", "#/products/3/analysis", "number-out-of-range")]
    [InlineData("/products/3/analysis/1/nutrient", "\"P\"", "#/products/3/analysis", "number-out-of-range")]
    [InlineData("/products/3/analysis/1/nutrient", "\"N\"", "#/products/3/analysis/1/nutrient", "settings-at-odds")]
    [InlineData("/products/3/analysis/1/nutrient", "\"Mg\"", "#/products/3/analysis/1/nutrient", "word-unknown")]
    [InlineData("/products/1/price/value", "-480", "#/products/1/price/value", "number-out-of-range")]
    [InlineData("/products/1/price/currency", "\"USD\"", "#/products/1/price/currency", "settings-at-odds")]
    [InlineData("/products/1/price/per", "\"bag\"", "#/products/1/price/per", "word-unknown")]
    [InlineData("/products/0/minimumRate", """{ "value": 10, "unit": "kg/ha" }""", "#/products/0/fixedRate", "settings-at-odds")]
    [InlineData("/products/0/maximumRate", """{ "value": 90, "unit": "kg/ha" }""", "#/products/0/fixedRate", "settings-at-odds")]
    [InlineData("/products/1/maximumRate", """{ "value": -1, "unit": "kg/ha" }""", "#/products/1/maximumRate", "number-out-of-range")]
    [InlineData("/products/1/minimumRate", """{ "value": 0.0009, "unit": "kg/ha" }""", "#/products/1/minimumRate", "number-out-of-range")]
    [InlineData("/products/1/packageMass/value", "0", "#/products/1/packageMass", "number-out-of-range")]
    [InlineData("/credits/0/nutrient", "\"NO3\"", "#/credits/0/nutrient", "word-unknown")]
    [InlineData("/credits/0/amount/value", "-5", "#/credits/0/amount", "number-out-of-range")]
    [InlineData("/credits/0/amount/value", "0.0009", "#/credits/0/amount", "number-out-of-range")]
    [InlineData("/credits/0/origin", "\" \"", "#/credits/0/origin", "text-wrong")]
    [InlineData("/area/value", "0", "#/area", "number-out-of-range")]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.ProductRate).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("/targets")]
    [InlineData("/targets/0/nutrient")]
    [InlineData("/targets/0/amount")]
    [InlineData("/products")]
    [InlineData("/products/1/name")]
    [InlineData("/products/1/analysis")]
    [InlineData("/products/1/analysis/0/nutrient")]
    [InlineData("/products/1/analysis/0/share")]
    [InlineData("/products/1/price")]
    [InlineData("/products/1/price/currency")]
    [InlineData("/credits/0/nutrient")]
    [InlineData("/credits/0/amount")]
    public async Task Member_ThatIsNeeded_IsMissed(string pointer)
    {
        using var response = await Question.Of(Question.ProductRate).Without(pointer).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#" + pointer && fault.Code == "member-missing");
    }

    [Fact]
    public async Task Rates_ThatCross_AreAtOdds()
    {
        using var response = await Question
            .Of(Question.ProductRate)
            .With("/products/1/minimumRate", """{ "value": 100, "unit": "lb/ac" }""")
            .With("/products/1/maximumRate", """{ "value": 112, "unit": "kg/ha" }""")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        var fault = Assert.Single(problem.Faults);
        Assert.Equal(("#/products/1/maximumRate", "settings-at-odds"), (fault.Pointer, fault.Code));
    }

    // 100 lb/ac are 112.08511561 kg/ha: the same rate written in two units crosses nothing.
    [Fact]
    public async Task Rates_ThatAreTheSameInTwoUnits_AreTaken()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/products/1/minimumRate", """{ "value": 100, "unit": "lb/ac" }""")
            .With("/products/1/maximumRate", """{ "value": 112.08511561, "unit": "kg/ha" }""")
            .AnswerAsync();

        Assert.Equal(112.08511561, answer.Number("/products/1/rate/value"), 1e-6);
    }

    [Fact]
    public async Task Lists_LongerThanAllowed_AreTooMany()
    {
        var question = Question.Of(Question.ProductRate);
        for (var i = 0; i < 64; i++)
        {
            question.Add("/targets", """{ "nutrient": "N", "amount": { "value": 5, "unit": "kg/ha" } }""");
            question.Add(
                "/products",
                """{ "name": "spare", "analysis": [{ "nutrient": "N", "share": { "value": 5, "unit": "%" } }], "price": { "value": 1, "currency": "EUR", "per": "t" } }"""
            );
            question.Add("/credits", """{ "nutrient": "N", "amount": { "value": 1, "unit": "kg/ha" } }""");
        }

        using var response = await question.AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Equal(
            ["#/credits", "#/products", "#/targets"],
            problem.Faults.Where(fault => fault.Code == "too-many").Select(fault => fault.Pointer!).Order(StringComparer.Ordinal)
        );
    }
}
