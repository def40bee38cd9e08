namespace CalibrationApi.Tests.Calculations.SeedRowLimits;

/// <summary>Every way in which a question about fertilizer with the seed can be readable and wrong.</summary>
public sealed class SeedRowLimitRequestValidatorTests
{
    [Theory]
    [InlineData("/crop", "\"rice\"", "#/crop", "word-unknown")]
    [InlineData("/crop", "null", "#/crop", "member-missing")]
    [InlineData("/soil", "\"sand\"", "#/soil", "word-unknown")]
    [InlineData("/moisture", "\"fair\"", "#/moisture", "word-unknown")]
    [InlineData("/region", "\"nowhere\"", "#/region", "word-unknown")]
    [InlineData("/opener", "\"boot\"", "#/opener", "word-unknown")]
    [InlineData("/rowSpacing/value", "0", "#/rowSpacing", "number-out-of-range")]
    [InlineData("/rowSpacing/value", "1e309", "#/rowSpacing", "number-out-of-range")]
    [InlineData("/rowSpacing/unit", "\"in2\"", "#/rowSpacing", "unit-unknown")]
    [InlineData("/seedRowWidth/value", "10.1", "#/seedRowWidth", "settings-at-odds")]
    [InlineData("/seedRowWidth/unit", "\"ft\"", "#/seedRowWidth", "settings-at-odds")]
    [InlineData("/seedRowWidth/value", "-2", "#/seedRowWidth", "number-out-of-range")]
    [InlineData("/products", "[]", "#/products", "too-few")]
    [InlineData("/products/0", "null", "#/products/0", "member-missing")]
    [InlineData("/products/0/name", "\" \"", "#/products/0/name", "text-wrong")]
    [InlineData("/products/0/analysis", "null", "#/products/0/analysis", "member-missing")]
    [InlineData("/products/0/analysis", "[]", "#/products/0/analysis", "too-few")]
    [InlineData("/products/0/analysis/0/share/value", "101", "#/products/0/analysis", "number-out-of-range")]
    [InlineData("/products/0/analysis/0/nutrient", "\"Zn\"", "#/products/0/analysis/0/nutrient", "word-unknown")]
    [InlineData("/products/0/analysis/0/share/value", "-1", "#/products/0/analysis/0/share", "number-out-of-range")]
    [InlineData("/products/0/analysis/0/share/value", "0", "#/products/0/analysis", "number-out-of-range")]
    [InlineData("/products/1/analysis/1/share/value", "90", "#/products/1/analysis", "number-out-of-range")]
    [InlineData("/products/1/analysis/1/nutrient", "\"N\"", "#/products/1/analysis/1/nutrient", "settings-at-odds")]
    [InlineData("/products/0/rates", "null", "#/products/0/rates", "member-missing")]
    [InlineData("/products/0/rates", "[]", "#/products/0/rates", "too-few")]
    [InlineData("/products/0/rates/0/value", "-1", "#/products/0/rates/0", "number-out-of-range")]
    [InlineData("/products/0/rates/0/unit", "\"kg\"", "#/products/0/rates/0", "unit-wrong-dimension")]
    [InlineData(
        "/products/1/rates",
        """[{ "value": 1, "unit": "lb/ac" }, { "value": 2, "unit": "lb/ac" }]""",
        "#/products/1/rates",
        "settings-at-odds"
    )]
    [InlineData(
        "/products/0/nutrients",
        """[{ "nutrient": "N", "amount": { "value": 5, "unit": "lb/ac" } }]""",
        "#/products/0/nutrients",
        "settings-at-odds"
    )]
    [InlineData("/products/0/nitrogenForm", "\"nitrate\"", "#/products/0/nitrogenForm", "word-unknown")]
    [InlineData("/sources", "[]", "#/sources", "too-few")]
    [InlineData("/sources", """["handbook"]""", "#/sources/0", "word-unknown")]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/source", "member-missing")]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/nutrient", "member-missing")]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/rate", "member-missing")]
    [InlineData(
        "/localLimits",
        """[{ "source": "sheet", "nutrient": "n", "rate": { "value": 5, "unit": "lb/ac" } }]""",
        "#/localLimits/0/nutrient",
        "word-unknown"
    )]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.SeedRowLimit).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("[]", "#/products/0/nutrients", "too-few")]
    [InlineData(
        """[{ "nutrient": "N", "amount": { "value": -5, "unit": "lb/ac" } }]""",
        "#/products/0/nutrients/0/amount",
        "number-out-of-range"
    )]
    public async Task Nutrients_ThatBreakARule_AreRefused(string json, string at, string code)
    {
        using var response = await Question
            .Of(Question.SeedRowLimit)
            .Without("/products/0/analysis")
            .Without("/products/0/rates")
            .With("/products/0/nutrients", json)
            .AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Fact]
    public async Task Analysis_OfExactlyAHundredPerCent_IsTaken()
    {
        var answer = await Question
            .Of(Question.SeedRowLimit)
            .With(
                "/products/0/analysis",
                """[{ "nutrient": "N", "share": { "value": 33.3, "unit": "%" } }, { "nutrient": "P2O5", "share": { "value": 33.3, "unit": "%" } }, { "nutrient": "K2O", "share": { "value": 33.4, "unit": "%" } }]"""
            )
            .AnswerAsync();

        Assert.NotEmpty(answer.List("/limits"));
    }

    [Fact]
    public async Task Spread_AsWideAsTheRows_IsTaken()
    {
        var answer = await Question.Of(Question.SeedRowLimit).With("/seedRowWidth/value", "10").AnswerAsync();

        Assert.Equal((100, "%"), answer.Quantity("/seedbedUtilisation"));
    }
}
