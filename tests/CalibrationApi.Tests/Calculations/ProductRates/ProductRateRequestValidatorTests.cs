using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.ProductRates;

/// <summary>Every way in which a question about product rates can be readable and wrong.</summary>
public sealed class ProductRateRequestValidatorTests
{
    [Theory]
    [InlineData("/targets", "[]", "#/targets", ErrorCode.TooFew)]
    [InlineData("/targets/0/nutrient", "\"nitrogen\"", "#/targets/0/nutrient", ErrorCode.WordUnknown)]
    [InlineData("/targets/1/nutrient", "\"N\"", "#/targets/1/nutrient", ErrorCode.SettingsAtOdds)]
    [InlineData("/targets/3/nutrient", "\"K\"", "#/targets/3/nutrient", ErrorCode.SettingsAtOdds)]
    [InlineData("/targets/0/amount/value", "0", "#/targets/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/targets/0/amount/value", "-1", "#/targets/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/targets/0/amount/value", "0.0009", "#/targets/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/targets/0/amount/value", "1e309", "#/targets/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/targets/0/amount/value", "1e-300", "#/targets/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/targets/0/amount/unit", "\"kg\"", "#/targets/0/amount", ErrorCode.UnitWrongDimension)]
    [InlineData("/targets/0/kind", "\"about\"", "#/targets/0/kind", ErrorCode.WordUnknown)]
    [InlineData("/targets/0/kind", "\"exactly\"", "#/targets/0/most", ErrorCode.SettingsAtOdds)]
    [InlineData("/targets/0/most/value", "109", "#/targets/0/most", ErrorCode.SettingsAtOdds)]
    [InlineData("/products", "[]", "#/products", ErrorCode.TooFew)]
    [InlineData("/products/1/name", "\"\"", "#/products/1/name", ErrorCode.TextWrong)]
    [InlineData("/products/1/analysis", "[]", "#/products/1/analysis", ErrorCode.TooFew)]
    [InlineData("/products/1/analysis/0/share/value", "0", "#/products/1/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/0/share/value", "0.009", "#/products/1/analysis/0/share", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/0/share/value", "-46", "#/products/1/analysis/0/share", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/0/share/value", "101", "#/products/1/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/0/share/value", "251", "#/products/1/analysis/0/share", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/3/analysis/0/share/value", "49", "#/products/3/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/3/analysis/1/nutrient", "\"P\"", "#/products/3/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/3/analysis/1/nutrient", "\"N\"", "#/products/3/analysis/1/nutrient", ErrorCode.SettingsAtOdds)]
    [InlineData("/products/3/analysis/1/nutrient", "\"Mg\"", "#/products/3/analysis/1/nutrient", ErrorCode.WordUnknown)]
    [InlineData("/products/1/price/value", "-480", "#/products/1/price/value", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/price/currency", "\"USD\"", "#/products/1/price/currency", ErrorCode.SettingsAtOdds)]
    [InlineData("/products/1/price/per", "\"bag\"", "#/products/1/price/per", ErrorCode.WordUnknown)]
    [InlineData("/products/0/leastRate", """{ "value": 10, "unit": "kg/ha" }""", "#/products/0/fixedRate", ErrorCode.SettingsAtOdds)]
    [InlineData("/products/0/mostRate", """{ "value": 90, "unit": "kg/ha" }""", "#/products/0/fixedRate", ErrorCode.SettingsAtOdds)]
    [InlineData("/products/1/mostRate", """{ "value": -1, "unit": "kg/ha" }""", "#/products/1/mostRate", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/leastRate", """{ "value": 0.0009, "unit": "kg/ha" }""", "#/products/1/leastRate", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/packageMass/value", "0", "#/products/1/packageMass", ErrorCode.NumberOutOfRange)]
    [InlineData("/credits/0/nutrient", "\"NO3\"", "#/credits/0/nutrient", ErrorCode.WordUnknown)]
    [InlineData("/credits/0/amount/value", "-5", "#/credits/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/credits/0/amount/value", "0.0009", "#/credits/0/amount", ErrorCode.NumberOutOfRange)]
    [InlineData("/credits/0/origin", "\" \"", "#/credits/0/origin", ErrorCode.TextWrong)]
    [InlineData("/area/value", "0", "#/area", ErrorCode.NumberOutOfRange)]
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
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#" + pointer && fault.Code == ErrorCode.MemberMissing);
    }

    [Fact]
    public async Task Rates_ThatCross_AreAtOdds()
    {
        using var response = await Question
            .Of(Question.ProductRate)
            .With("/products/1/leastRate", """{ "value": 100, "unit": "lb/ac" }""")
            .With("/products/1/mostRate", """{ "value": 112, "unit": "kg/ha" }""")
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        var fault = Assert.Single(problem.Faults);
        Assert.Equal(("#/products/1/mostRate", ErrorCode.SettingsAtOdds), (fault.Pointer, fault.Code));
    }

    // 100 lb/ac are 112.08511561 kg/ha: the same rate written in two units crosses nothing.
    [Fact]
    public async Task Rates_ThatAreTheSameInTwoUnits_AreTaken()
    {
        var answer = await Question
            .Of(Question.ProductRate)
            .With("/products/1/leastRate", """{ "value": 100, "unit": "lb/ac" }""")
            .With("/products/1/mostRate", """{ "value": 112.08511561, "unit": "kg/ha" }""")
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
            problem.Faults.Where(fault => fault.Code == ErrorCode.TooMany).Select(fault => fault.Pointer!).Order(StringComparer.Ordinal)
        );
    }
}
