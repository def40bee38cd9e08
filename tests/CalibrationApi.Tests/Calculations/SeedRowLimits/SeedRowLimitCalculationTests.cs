namespace CalibrationApi.Tests.Calculations.SeedRowLimits;

/// <summary>What a question about fertilizer with the seed is answered; limits and sums have their own tests.</summary>
public sealed class SeedRowLimitCalculationTests
{
    private static Question Demo => Question.Of(Question.SeedRowLimit);

    // 50 lb/ac of 46 % are 23 lb/ac; 2 in of 10 in lie between two printed openers, of which the stricter has 20 lb/ac.
    [Fact]
    public async Task Answer_DemoQuestion_JudgesTheWorstZone()
    {
        var answer = await Demo.AnswerAsync();

        Assert.Equal("above", answer.Word("/verdict"));
        Assert.Equal((20, "%"), answer.Quantity("/seedbedUtilisation"));
        Assert.Equal((23, "lb/ac"), answer.Quantity("/limits/0/load"));
        Assert.Equal((20, "lb/ac"), answer.Quantity("/limits/0/limit"));
        Assert.Equal((-3, "lb/ac"), answer.Quantity("/limits/0/margin"));
        Assert.Equal(2, answer.Number("/limits/0/zone"));
        Assert.Equal("stricter-of-two-cells", answer.Word("/limits/0/basis"));
        Assert.Equal(2, answer.List("/limits/0/cells").Count);
        Assert.Equal("mb-sbu", answer.Word("/limits/0/source/key"));
        Assert.Equal(
            ["above-published-limit", "nutrient-without-limit", "nitrogen-form-not-stated", "between-published-limits"],
            answer.Codes("/findings")
        );
        Assert.Equal(["local-guidance-first", "limit-is-no-promise", "spread-to-be-measured"], answer.Codes("/cautions"));
    }

    // 1.468 % for each lb/ac of urea in furrows of 1 in and rows of 30 in; here 50 lb/ac, 2 in and 10 in. The phosphate has no slope.
    [Fact]
    public async Task StandLoss_BesideTheTables_IsShownWithItsSourceAndJudgedInItsOwnPlace()
    {
        var answer = await Demo.With("/acceptableStandLoss", """{ "value": 12, "unit": "%" }""").AnswerAsync();
        var there = await Demo.With("/region", "\"US-SD\"").AnswerAsync();

        Assert.Equal(1.468 * 50 * 10 / 60, answer.Number("/standLoss/expected/value"), 1e-9);
        Assert.Equal((12, "%"), answer.Quantity("/standLoss/accepted"));
        Assert.Equal(30 * 2 * 12 / (1.468 * 10), answer.Number("/standLoss/products/0/maximum/value"), 1e-9);
        Assert.Equal("urea", answer.Word("/standLoss/products/0/material"));
        Assert.False(answer.Has("/standLoss/products/1/material"));
        Assert.False(answer.Flag("/standLoss/isWhole"));
        Assert.False(answer.Flag("/standLoss/judged"));
        Assert.Equal("sdsu-model", answer.Word("/standLoss/source/key"));
        Assert.Equal("above", there.Word("/verdict"));
        Assert.True(there.Flag("/standLoss/judged"));
        Assert.Contains("stand-loss-above-accepted", there.Codes("/findings"));
    }

    [Fact]
    public async Task Loads_DemoQuestion_AreTheSumOverProducts()
    {
        var answer = await Demo.AnswerAsync();

        var loads = answer
            .List("/loads")
            .ToDictionary(load => load!["nutrient"]!.GetValue<string>(), load => load!["rate"]!["value"]!.GetValue<double>());
        Assert.Equal(23 + 4.4, loads["N"], 1e-9);
        Assert.Equal(23, loads["urea-N"], 1e-9);
        Assert.Equal(20.8, loads["P2O5"], 1e-9);
        Assert.Equal(0, loads["K2O"]);
        Assert.Equal(0, loads["S"]);
    }

    // The limit is printed in lb/ac and stays so beside the answer's own unit.
    [Theory]
    [InlineData("metric", "kg/ha")]
    [InlineData("us", "lb/ac")]
    public async Task Units_Chosen_KeepThePrintedNumberAsPrinted(string units, string unit)
    {
        var answer = await Demo.AnswerAsync($"?units={units}");

        Assert.Equal(unit, answer.Word("/limits/0/limit/unit"));
        Assert.Equal((20, "lb/ac"), answer.Quantity("/limits/0/asPrinted"));
        Assert.Contains($" {unit} of urea nitrogen", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_InMillimetresAndKilograms_HasTheSameVerdicts()
    {
        // NIST SP 811 (2008), appendix B.8.
        const double Inch = 25.4,
            Pound = 0.45359237 / 0.40468564224;
        var question = Demo.Convert("/rowSpacing", "mm", 1 / Inch).Convert("/seedRowWidth", "mm", 1 / Inch);
        foreach (var rate in (string[])["/products/0/rates/0", "/products/0/rates/1", "/products/0/rates/2", "/products/1/rates/0"])
            question.Convert(rate, "kg/ha", 1 / Pound);

        var answer = await question.AnswerAsync();

        Assert.Equal("above", answer.Word("/verdict"));
        Assert.Equal(23 * Pound, answer.Number("/limits/0/load/value"), 1e-9);
        Assert.Equal(20 * Pound, answer.Number("/limits/0/limit/value"), 1e-9);
        Assert.Equal("kg/ha", answer.Word("/limits/0/limit/unit"));
    }

    [Fact]
    public async Task Nutrients_StatedDirectly_CountAsTheirProductWould()
    {
        var answer = await Demo.Without("/products/0/analysis")
            .Without("/products/0/rates")
            .With("/products/0/nutrients", """[{ "nutrient": "N", "amount": { "value": 23, "unit": "lb/ac" } }]""")
            .AnswerAsync();

        Assert.Equal(23, answer.Number("/limits/0/load/value"), 1e-12);
        Assert.Equal("above", answer.Word("/verdict"));
    }

    [Fact]
    public async Task DrySeedbed_InManitoba_HalvesTheLimitAndShowsBothNumbers()
    {
        var answer = await Demo.With("/moisture", "\"dry\"").AnswerAsync();

        Assert.Equal((10, "lb/ac"), answer.Quantity("/limits/0/limit"));
        Assert.Equal((20, "lb/ac"), answer.Quantity("/limits/0/asPrinted"));
        Assert.Equal("mb-dry", answer.Word("/reductions/0/source/key"));
        Assert.Equal((50, "%"), answer.Quantity("/reductions/0/left"));
        Assert.True(answer.Flag("/reductions/0/applied"));
    }

    [Fact]
    public async Task NothingHeld_ForACrop_GivesNoNumberAndSaysSo()
    {
        var answer = await Demo.With("/crop", "\"other\"").AnswerAsync();

        Assert.Equal("no-published-limit", answer.Word("/verdict"));
        Assert.Empty(answer.List("/limits"));
        Assert.StartsWith("No published limit is held", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SourceWithoutANumber_ForTheGeometry_SaysWhy()
    {
        var answer = await Demo.With("/region", "\"US-KS\"")
            .With("/rowSpacing/value", "12")
            .With("/products/0/rates", """[{ "value": 0, "unit": "lb/ac" }]""")
            .AnswerAsync();

        var at = answer.List("/limits").ToList().FindIndex(limit => limit!["nutrient"]!.GetValue<string>() == "N-plus-K2O");
        Assert.Equal("no-published-limit", answer.Word($"/limits/{at}/verdict"));
        Assert.Contains("rows of 10 in", answer.Word($"/limits/{at}/reason"), StringComparison.Ordinal);
        Assert.False(answer.Has($"/limits/{at}/limit"));
        Assert.False(answer.Has($"/limits/{at}/margin"));
        Assert.False(answer.Has($"/limits/{at}/asPrinted"));
        Assert.Equal("no-published-limit", answer.Word("/verdict"));
    }

    [Fact]
    public async Task LocalLimit_BesidePublishedOnes_IsJudgedWithItsSource()
    {
        var answer = await Demo.With(
                "/localLimits",
                """[{ "source": "adviser's sheet", "nutrient": "P2O5", "rate": { "value": 15, "unit": "lb/ac" } }]"""
            )
            .AnswerAsync();

        var limit = Assert.Single(answer.List("/limits"), limit => limit!["source"]!["key"]!.GetValue<string>() == "stated")!;
        Assert.Equal("above", limit["verdict"]!.GetValue<string>());
        Assert.Equal("adviser's sheet", limit["source"]!["publisher"]!.GetValue<string>());
        Assert.Equal(-5.8, limit["margin"]!["value"]!.GetValue<double>(), 1e-9);
    }

    [Fact]
    public async Task Sources_Chosen_AreTheOnlyOnes()
    {
        var answer = await Demo.Without("/region").With("/sources", """["ksu-wheat"]""").AnswerAsync();

        Assert.NotEmpty(answer.List("/limits"));
        Assert.All(answer.List("/limits"), limit => Assert.Equal("ksu-wheat", limit!["source"]!["key"]!.GetValue<string>()));
        Assert.Contains("region-not-stated", answer.Codes("/findings"));
    }
}
