namespace CalibrationApi.Tests.Calculations.StandCounts;

/// <summary>What a stand count is answered; the numbers of the engine have their own tests.</summary>
public sealed class StandCountCalculationTests
{
    // 308 plants on eight times 1 m of a row at 15 cm; 170 kg/ha of 48 g per thousand, 99 % pure, 95 % germinating.
    [Fact]
    public async Task Answer_DemoQuestion_IsThatOnPaper()
    {
        var answer = await Question.Of(Question.StandCount).AnswerAsync();

        Assert.Equal("/m2", answer.Word("/stand/estimate/unit"));
        Assert.Equal(308 / 1.2, answer.Number("/stand/estimate/value"), 1e-9);
        Assert.Equal(308, answer.Number("/plantsCounted"));
        Assert.Equal((1.2, "m2"), answer.Quantity("/areaCounted"));
        Assert.Equal(170e-4 * 0.99 / 48e-6, answer.Number("/seedsSown/value"), 1e-9);
        Assert.Equal(100 * 308 / 1.2 / 350.625, answer.Number("/survival/estimate/value"), 1e-9);
        Assert.Equal(100 * 308 / 1.2 / 350.625 / 0.95, answer.Number("/emergence/estimate/value"), 1e-9);
        Assert.Equal(100 * (308 / 1.2 / 270 - 1), answer.Number("/deviation/value"), 1e-9);
        Assert.Equal(8, answer.List("/counts").Count);
        Assert.InRange(answer.Number("/probabilityBelowMinimum"), 0, 0.05);
        Assert.Equal(0.95, answer.Number("/stand/coverageProbability"));
    }

    [Theory]
    [InlineData("""{ "rowLength": { "value": 0.5, "unit": "m" }, "rowSpacing": { "value": 25, "unit": "cm" }, "rows": 2 }""", 0.25)]
    [InlineData("""{ "length": { "value": 50, "unit": "cm" }, "width": { "value": 50, "unit": "cm" } }""", 0.25)]
    [InlineData("""{ "area": { "value": 0.25, "unit": "m2" } }""", 0.25)]
    [InlineData("""{ "hoopDiameter": { "value": 56, "unit": "cm" } }""", 0.24630086404)]
    public async Task Ground_InEveryForm_IsItsArea(string ground, double area)
    {
        var answer = await Question.Of(Question.StandCount).With("/ground", ground).AnswerAsync();

        Assert.Equal(area, answer.Number("/counts/0/area/value"), 1e-9);
        Assert.Equal("m2", answer.Word("/counts/0/area/unit"));
        Assert.Equal(308 / (8 * area), answer.Number("/stand/estimate/value"), 1e-5);
    }

    [Fact]
    public async Task Ground_OfOneCount_GoesBeforeThatOfAll()
    {
        var answer = await Question
            .Of(Question.StandCount)
            .With("/counts/1/ground", """{ "area": { "value": 0.3, "unit": "m2" } }""")
            .AnswerAsync();

        Assert.Equal(0.15, answer.Number("/counts/0/area/value"));
        Assert.Equal(0.3, answer.Number("/counts/1/area/value"));
        Assert.Equal(308 / 1.35, answer.Number("/stand/estimate/value"), 1e-9);
    }

    [Fact]
    public async Task Sown_AsSeeds_NeedsNoKernelMass()
    {
        var answer = await Question
            .Of(Question.StandCount)
            .With("/sown", """{ "seedsPerArea": { "value": 350.625, "unit": "/m2" } }""")
            .Without("/prior")
            .AnswerAsync();

        Assert.Equal(100 * 308 / 1.2 / 350.625, answer.Number("/survival/estimate/value"), 1e-9);
        Assert.False(answer.Has("/emergence"));
        Assert.False(answer.Has("/learned"));
    }

    [Fact]
    public async Task Answer_CountsOnly_LeavesTheRestOut()
    {
        var answer = await Question
            .Of(Question.StandCount)
            .Without("/sown")
            .Without("/prior")
            .Without("/targetStand")
            .Without("/minimumStand")
            .AnswerAsync();

        Assert.All((string[])["/survival", "/emergence", "/learned", "/deviation", "/probabilityBelowMinimum", "/seedsSown"], member =>
            Assert.False(answer.Has(member), member)
        );
        Assert.True(answer.Has("/scatter"));
        Assert.Equal(["wantedPrecision"], answer.List("/assumptions").Select(assumption => assumption!["name"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Answer_OneCount_HasNoScatterAndSaysSo()
    {
        var answer = await Question.Of(Question.StandCount).With("/counts", """[{ "plants": 40 }]""").AnswerAsync();

        Assert.False(answer.Has("/scatter"));
        Assert.Contains("single-reading", answer.Codes("/findings"));
    }

    [Fact]
    public async Task Answer_NoPlants_EndsAtAFiniteUpperLimit()
    {
        var answer = await Question.Of(Question.StandCount).With("/counts", """[{ "plants": 0 }, { "plants": 0 }]""").AnswerAsync();

        Assert.Equal(0, answer.Number("/stand/estimate/value"));
        Assert.Equal(3.688879 / 0.3, answer.Number("/stand/upper/value"), 1e-4);
        Assert.Equal(0, answer.Number("/emergence/estimate/value"));
        Assert.False(answer.Has("/countsNeeded"));
        Assert.StartsWith("No plant was found in two counts", answer.Word("/headline"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Prior_MoreThanTheCountsSay_PullsTheLearnedShareUp()
    {
        var answer = await Question.Of(Question.StandCount).AnswerAsync();

        Assert.Equal("emergence", answer.Word("/learned/reading"));
        Assert.InRange(answer.Number("/learned/mean/value"), answer.Number("/emergence/estimate/value"), 82);
        Assert.InRange(answer.Number("/learned/weightOfCounts/value"), 50, 100);
    }

    [Fact]
    public async Task Findings_HoopAndShortcut_AreNamed()
    {
        var answer = await Question
            .Of(Question.StandCount)
            .With("/ground", """{ "hoopDiameter": { "value": 56, "unit": "cm" }, "calledArea": { "value": 0.25, "unit": "m2" } }""")
            // Four times the mean count of 38.5, divided by ten.
            .With("/statedStand", """{ "value": 15.4, "unit": "/ft2" }""")
            .AnswerAsync();

        Assert.Contains("sample-area-miscalled", answer.Codes("/findings"));
        Assert.Contains("divide-by-ten", answer.Codes("/findings"));
    }

    // As much too high, but in plants per m2, which the shortcut does not make.
    [Fact]
    public async Task StatedStand_PerSquareMetre_IsNoShortcut()
    {
        var answer = await Question.Of(Question.StandCount).With("/statedStand", """{ "value": 276.28, "unit": "/m2" }""").AnswerAsync();

        Assert.Equal(["stated-stand-differs"], answer.Codes("/findings"));
    }

    [Fact]
    public async Task Question_InFeet_HasTheSameAnswer()
    {
        // NIST SP 811 (2008), appendix B.8.
        const double Pound = 0.45359237,
            Acre = 0.40468564224,
            Foot = 0.3048;
        var feet = await Question
            .Of(Question.StandCount)
            .Convert("/ground/rowLength", "ft", Foot)
            .Convert("/ground/rowSpacing", "in", 2.54)
            .Convert("/sown/rate", "lb/ac", Pound / Acre)
            .Convert("/targetStand", "/ft2", 1 / (Foot * Foot))
            .Convert("/minimumStand", "/ac", 1 / (Acre * 10_000))
            .AnswerAsync();
        var metric = await Question.Of(Question.StandCount).AnswerAsync();

        Assert.Equal("/ft2", feet.Word("/stand/estimate/unit"));
        Assert.Equal("ft2", feet.Word("/areaCounted/unit"));
        Assert.Equal(metric.Number("/stand/upper/value") * Foot * Foot, feet.Number("/stand/upper/value"), 1e-9);
        foreach (
            var pointer in (string[])
                [
                    "/emergence/estimate/value",
                    "/emergence/lower/value",
                    "/learned/mean/value",
                    "/deviation/value",
                    "/probabilityBelowMinimum",
                ]
        )
            Assert.Equal(metric.Number(pointer), feet.Number(pointer), 1e-8);
    }

    [Fact]
    public async Task Query_UnitsUs_WritesSentencesInThemToo()
    {
        var answer = await Question.Of(Question.StandCount).AnswerAsync("?units=us");

        Assert.Equal("/ft2", answer.Word("/stand/estimate/unit"));
        Assert.Equal("ft2", answer.Word("/areaCounted/unit"));
        Assert.Contains("plants/ft2", answer.Word("/headline"), StringComparison.Ordinal);
        Assert.DoesNotContain("/m2", answer.Word("/headline"), StringComparison.Ordinal);
    }
}
