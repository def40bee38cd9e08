using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Calculations.SeedRowLimits;

/// <summary>Every way in which a question about fertilizer with the seed can be readable and wrong.</summary>
public sealed class SeedRowLimitRequestValidatorTests
{
    [Theory]
    [InlineData("/crop", "\"rice\"", "#/crop", ErrorCode.WordUnknown)]
    [InlineData("/crop", "null", "#/crop", ErrorCode.MemberMissing)]
    [InlineData("/soil", "\"sand\"", "#/soil", ErrorCode.WordUnknown)]
    [InlineData("/moisture", "\"fair\"", "#/moisture", ErrorCode.WordUnknown)]
    [InlineData("/region", "\"nowhere\"", "#/region", ErrorCode.WordUnknown)]
    [InlineData("/opener", "\"boot\"", "#/opener", ErrorCode.WordUnknown)]
    [InlineData("/rowSpacing/value", "0", "#/rowSpacing", ErrorCode.NumberOutOfRange)]
    [InlineData("/rowSpacing/value", "1e309", "#/rowSpacing", ErrorCode.NumberOutOfRange)]
    [InlineData("/rowSpacing/unit", "\"in2\"", "#/rowSpacing", ErrorCode.UnitUnknown)]
    [InlineData("/spread/value", "10.1", "#/spread", ErrorCode.SettingsAtOdds)]
    [InlineData("/spread/unit", "\"ft\"", "#/spread", ErrorCode.SettingsAtOdds)]
    [InlineData("/spread/value", "-2", "#/spread", ErrorCode.NumberOutOfRange)]
    [InlineData("/products", "[]", "#/products", ErrorCode.TooFew)]
    [InlineData("/products/0", "null", "#/products/0", ErrorCode.MemberMissing)]
    [InlineData("/products/0/name", "\" \"", "#/products/0/name", ErrorCode.TextWrong)]
    [InlineData("/products/0/analysis", "null", "#/products/0/analysis", ErrorCode.MemberMissing)]
    [InlineData("/products/0/analysis", "[]", "#/products/0/analysis", ErrorCode.TooFew)]
    [InlineData("/products/0/analysis/0/share/value", "101", "#/products/0/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/0/analysis/0/nutrient", "\"Zn\"", "#/products/0/analysis/0/nutrient", ErrorCode.WordUnknown)]
    [InlineData("/products/0/analysis/0/share/value", "-1", "#/products/0/analysis/0/share", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/0/analysis/0/share/value", "0", "#/products/0/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/1/share/value", "90", "#/products/1/analysis", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/1/analysis/1/nutrient", "\"N\"", "#/products/1/analysis/1/nutrient", ErrorCode.SettingsAtOdds)]
    [InlineData("/products/0/rates", "null", "#/products/0/rates", ErrorCode.MemberMissing)]
    [InlineData("/products/0/rates", "[]", "#/products/0/rates", ErrorCode.TooFew)]
    [InlineData("/products/0/rates/0/value", "-1", "#/products/0/rates/0", ErrorCode.NumberOutOfRange)]
    [InlineData("/products/0/rates/0/unit", "\"kg\"", "#/products/0/rates/0", ErrorCode.UnitWrongDimension)]
    [InlineData(
        "/products/1/rates",
        """[{ "value": 1, "unit": "lb/ac" }, { "value": 2, "unit": "lb/ac" }]""",
        "#/products/1/rates",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData(
        "/products/0/nutrients",
        """[{ "nutrient": "N", "amount": { "value": 5, "unit": "lb/ac" } }]""",
        "#/products/0/nutrients",
        ErrorCode.SettingsAtOdds
    )]
    [InlineData("/products/0/nitrogenForm", "\"nitrate\"", "#/products/0/nitrogenForm", ErrorCode.WordUnknown)]
    [InlineData("/sources", "[]", "#/sources", ErrorCode.TooFew)]
    [InlineData("/sources", """["handbook"]""", "#/sources/0", ErrorCode.WordUnknown)]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/source", ErrorCode.MemberMissing)]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/nutrient", ErrorCode.MemberMissing)]
    [InlineData("/localLimits", "[{}]", "#/localLimits/0/rate", ErrorCode.MemberMissing)]
    [InlineData(
        "/localLimits",
        """[{ "source": "sheet", "nutrient": "n", "rate": { "value": 5, "unit": "lb/ac" } }]""",
        "#/localLimits/0/nutrient",
        ErrorCode.WordUnknown
    )]
    public async Task Member_ThatBreaksARule_IsRefusedAtItsPlace(string pointer, string json, string at, string code)
    {
        using var response = await Question.Of(Question.SeedRowLimit).With(pointer, json).AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == at && fault.Code == code);
    }

    [Theory]
    [InlineData("[]", "#/products/0/nutrients", ErrorCode.TooFew)]
    [InlineData(
        """[{ "nutrient": "N", "amount": { "value": -5, "unit": "lb/ac" } }]""",
        "#/products/0/nutrients/0/amount",
        ErrorCode.NumberOutOfRange
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
        var answer = await Question.Of(Question.SeedRowLimit).With("/spread/value", "10").AnswerAsync();

        Assert.Equal((100, "%"), answer.Quantity("/seedbedUtilisation"));
    }
}
