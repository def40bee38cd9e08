using System.Globalization;
using System.Text;
using System.Text.Json;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>Catch tests as a table, one catch in each row.</summary>
public sealed class TableBatchTests
{
    private const string Header = "test,scale.division [kg],net [kg],revolutions [rev]";

    [Fact]
    public async Task Test_OfATable_IsAnsweredAsItsJson()
    {
        using var single = await Question.AskAsync(
            ApiHost.Client,
            Question.CatchTest,
            """
            { "meter": "front", "product": { "name": "=barley", "price": { "value": 420, "currency": "EUR", "per": "t" } },
              "scale": { "division": { "value": 20, "unit": "g" }, "accuracyClass": "III" }, "pocketsPerRevolution": 12,
              "valueInForce": { "value": 0.342, "unit": "kg/rev", "relativeUncertainty": { "value": 1.2, "unit": "%" }, "fromAnotherScale": true },
              "catches": [
                { "gross": { "value": 18.7, "unit": "kg" }, "tare": { "value": 1620, "unit": "g" }, "revolutions": { "value": 47, "unit": "rev" } },
                { "gross": { "value": 18.56, "unit": "kg" }, "tare": { "value": 1.62, "unit": "kg" }, "revolutions": { "value": 46.8, "unit": "rev" }, "excluded": { "reason": "spilled, \"half\"" } } ] }
            """
        );

        using var response = await SendAsync(
            """"
            test,note,meter,product.name,product.price.value,product.price.currency,product.price.per,scale.division [g],scale.accuracyClass,pocketsPerRevolution,valueInForce [kg/rev],valueInForce.relativeUncertainty [%],valueInForce.fromAnotherScale,gross [kg],tare,tare unit,revolutions [rev],excluded.reason
            A,whatever,front,'=barley,420,EUR,t,20,III,12,0.342,1.2,true,18.7,1620,g,47,
            A,,,,,,,,III,,,,,18.56,1.62,kg,46.8,"spilled, ""half"""
            """"
        );

        Assert.Equal(
            [
                $$"""{"line":2,"test":"A","given":[{"column":"note","text":"whatever"},{"column":"meter","text":"front"}],"result":{{await single.Content.ReadAsStringAsync()}}}""",
            ],
            await Batches.LinesAsync(response)
        );
    }

    [Fact]
    public async Task Semicolons_WithDecimalCommas_SayTheSameAsCommasWithPoints()
    {
        var commas = $"{Header}\r\nA,0.02,14.5,40\r\nB,0.02,3.6,1e1\r\n";
        var semicolons = commas.Replace(',', ';').Replace('.', ',').Replace("scale,division", "scale.division", StringComparison.Ordinal);

        using var one = await SendAsync(commas);
        using var other = await SendAsync(semicolons);

        Assert.Equal(await Batches.LinesAsync(one), await Batches.LinesAsync(other));
    }

    [Theory]
    [InlineData("1.234", "number-ambiguous")]
    [InlineData("-16.920", "number-ambiguous")]
    [InlineData("1.234,5", "type-wrong")]
    [InlineData("1.234.567", "type-wrong")]
    [InlineData("1 234", "type-wrong")]
    [InlineData("14,5 kg", "type-wrong")]
    [InlineData("14,", "type-wrong")]
    [InlineData("NaN", "type-wrong")]
    [InlineData("1e999", "number-out-of-range")]
    [InlineData("14.5", null)]
    [InlineData("0.342", null)]
    [InlineData("14,500", null)]
    public async Task Number_BetweenSemicolons_IsReadOnlyWhereItIsClear(string number, string? code)
    {
        var line = Assert.Single(await AnswersAsync($"test;scale.division [kg];net [kg];revolutions [rev]\nA;0,02;{number};40\n"));

        AssertNumber(line, code);
    }

    [Theory]
    [InlineData("\"14,5\"", "number-ambiguous")]
    [InlineData("\"1,234\"", "number-ambiguous")]
    [InlineData("14.5.1", "type-wrong")]
    [InlineData("1.234", null)]
    public async Task Number_BetweenCommas_HasADecimalPoint(string number, string? code)
    {
        var line = Assert.Single(await AnswersAsync($"{Header}\nA,0.02,{number},40\n"));

        AssertNumber(line, code);
    }

    [Fact]
    public async Task Number_WithAnUnquotedDecimalComma_IsNoticedByTheSurplusCell()
    {
        var line = Assert.Single(await AnswersAsync($"{Header}\nA,0.02,14,5,40\n"));

        var fault = Batches.Only(line).Fault;
        Assert.Equal(("too-many", (2L, (string?)null)), (fault.Code, fault.Place!.Value));
    }

    [Theory]
    [InlineData("test,scale.division [kg],Net [kg]", "Net [kg]", "member-unknown")]
    [InlineData("test,scale.division [kg],weight", "weight", "member-unknown")]
    [InlineData("test,scale.division [kg],net", "net", "unit-missing")]
    [InlineData("test,scale.division [kg],net []", "net []", "unit-missing")]
    [InlineData("test,scale.division [kg],net [stone]", "net [stone]", "unit-unknown")]
    [InlineData("test,scale.division [kg],net [rev]", "net [rev]", "unit-wrong-dimension")]
    [InlineData("test,scale.division [kg],product.bulkDensity [lb/bu]", "product.bulkDensity [lb/bu]", "unit-ambiguous")]
    [InlineData("test,scale.division [kg],net [kg],net [lb]", "net [lb]", "member-duplicate")]
    [InlineData("test,scale.division [kg],net [kg],net unit", "net [kg]", "settings-at-odds")]
    [InlineData("test,scale.division [kg],net unit", "net unit", "member-missing")]
    [InlineData("test,test,scale.division [kg]", "test", "member-duplicate")]
    [InlineData("test,pulses [1]", "pulses [1]", "member-unknown")]
    [InlineData("scale.division [kg],net [kg]", "test", "member-missing")]
    public async Task Header_WithAFault_RefusesTheWholeTable(string header, string column, string code)
    {
        using var response = await SendAsync(header + "\nA,1,2,3\n");

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal((code, (1L, (string?)column)), (fault.Code, fault.Place!.Value));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    public async Task Table_WithoutHeader_IsRefused(string text)
    {
        using var response = await SendAsync(text);

        Assert.All((await ProblemBody.ReadAsync(response, 422)).Faults, fault => Assert.Equal("member-missing", fault.Code));
    }

    [Fact]
    public async Task Errors_OfRules_NameRowAndColumn()
    {
        var lines = await AnswersAsync(
            """
            test,scale.division [kg],gross [kg],tare [kg],revolutions,revolutions unit

            A,0.02,18.7,1.62,47,rev
            A,,1.62,18.7,47,rev
            ,,,,,
            B,0.02,18.7,1.62,47,revs
            C,,18.7,1.62,47,rev
            """
        );

        Assert.Equal([3, 6, 7], lines.Select(Batches.Number));
        Assert.Equal(["A", "B", "C"], lines.Select(line => line.GetProperty("test").GetString()));
        (string, string?, (long, string?))[] faults =
        [
            .. lines.Select(Batches.Only).Select(only => (only.Fault.Code, only.Fault.Pointer, only.Fault.Place!.Value)),
        ];
        Assert.Equal(
            [
                ("tare-above-gross", "#/catches/1/tare", (4L, "tare [kg]")),
                ("unit-unknown", "#/catches/0/revolutions", (6L, "revolutions")),
                ("member-missing", "#/scale", (7L, "scale.division [kg]")),
            ],
            faults
        );
    }

    [Fact]
    public async Task Rows_OfATestThatStandApart_AreRefusedTheSecondTime()
    {
        var lines = await AnswersAsync($"{Header}\nA,0.02,14.5,40\nB,0.02,14.5,40\nA,0.02,14.6,40\n");

        Assert.Equal([2, 3, 4], lines.Select(Batches.Number));
        Assert.Equal([true, true, false], lines.Select(line => line.TryGetProperty("result", out _)));
        Assert.Equal("rows-apart", Batches.Only(lines[2]).Fault.Code);
    }

    [Fact]
    public async Task Rows_ThatContradictTheFirstOfTheirTest_AreRefused()
    {
        var line = Assert.Single(await AnswersAsync($"{Header}\nA,0.02,14.5,40\nA,0.05,14.5,40\n"));

        var fault = Batches.Only(line).Fault;
        Assert.Equal(("settings-at-odds", (3L, (string?)"scale.division [kg]")), (fault.Code, fault.Place!.Value));
    }

    [Fact]
    public async Task Row_WithoutATest_SpoilsTheTestBeforeIt()
    {
        var lines = await AnswersAsync($"{Header}\nA,0.02,14.5,40\n,0.02,14.5,40\nB,0.02,14.5,40\n");

        Assert.Equal([2, 4], lines.Select(Batches.Number));
        Assert.Equal(
            ("member-missing", (3L, (string?)"test")),
            (Batches.Only(lines[0]).Fault.Code, Batches.Only(lines[0]).Fault.Place!.Value)
        );
        Assert.True(lines[1].TryGetProperty("result", out _));
    }

    [Theory]
    [InlineData("A,0.02,14.5,4\"0", "text-wrong")]
    public async Task Row_WithAStrayQuote_IsRefused(string row, string code)
    {
        var line = Assert.Single(await AnswersAsync($"{Header}\n{row}\n"));

        Assert.Contains(
            code,
            line.GetProperty("problem").GetProperty("errors").EnumerateArray().Select(error => error.GetProperty("code").GetString())
        );
    }

    [Fact]
    public async Task Row_ThatNeverEnds_EndsTheTable()
    {
        var lines = await AnswersAsync($"{Header}\nA,0.02,14.5,40\nB,\"{new string('x', 200_000)}\nC,0.02,14.5,40\n");

        Assert.Equal([2, 3], lines.Select(Batches.Number));
        Assert.True(lines[0].TryGetProperty("result", out _));
        Assert.Equal((413, "line-too-long"), (Batches.Only(lines[1]).Status, Batches.Only(lines[1]).Fault.Code));
    }

    [Fact]
    public async Task Row_ThatIsNotUtf8_HasAProblemAndTheNextTestGoesOn()
    {
        byte[] body =
        [
            .. Encoding.UTF8.GetBytes("test,scale.division [kg],product.name,net [kg],revolutions [rev]\nA,0.02,Wei"),
            0xDF,
            .. "klee,14.5,40\nB,0.02,x,14.5,40\n"u8,
        ];

        using var response = await Batches.SendAsync(ApiHost.Client, Question.CatchTest, body, mediaType: Batches.Csv);

        var lines = (await Batches.LinesAsync(response)).Select(line => JsonSerializer.Deserialize<JsonElement>(line)).ToArray();
        Assert.Equal("text-wrong", Batches.Only(lines[0]).Fault.Code);
        Assert.True(lines[1].TryGetProperty("result", out _));
    }

    [Fact]
    public async Task Answers_AsATable_HoldWhatTheLinesHold()
    {
        var season = await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "demo-data", "season-catches.csv"));
        using var linesResponse = await Batches.SendAsync(ApiHost.Client, Question.CatchTest, season, mediaType: Batches.Csv);
        using var tableResponse = await Batches.SendAsync(
            ApiHost.Client,
            Question.CatchTest,
            season,
            mediaType: Batches.Csv,
            accept: Batches.Csv
        );
        var lines = (await Batches.LinesAsync(linesResponse)).Select(line => JsonSerializer.Deserialize<JsonElement>(line)).ToArray();

        // As a program reads it, with commas in place of the semicolons: no cell of this table holds either.
        var text = await tableResponse.Content.ReadAsStringAsync();
        Assert.Equal("text/csv; charset=utf-8; header=present", tableResponse.Content.Headers.ContentType?.ToString());
        string[][] rows = [.. text.Split("\r\n")[..^1].Select(row => row.Split(';'))];
        var header = rows[0];

        Assert.Equal(33, lines.Length);
        Assert.Equal(34, rows.Length);
        Assert.Distinct(header);
        Assert.All(lines.Zip(rows.Skip(1)), pair =>
        {
            var (line, row) = pair;
            var result = line.GetProperty("result");
            Assert.Equal(header.Length, row.Length);
            Assert.Equal(line.GetProperty("test").GetString(), Cell("test"));
            Assert.Equal(result.GetProperty("verdict").GetString(), Cell("verdict"));
            Assert.Equal(result.GetProperty("headline").GetString(), Cell("headline"));
            Assert.Equal(
                result.GetProperty("massPerRevolution").GetProperty("value").GetDouble(),
                double.Parse(Cell("massPerRevolution").Replace(',', '.'), CultureInfo.InvariantCulture)
            );
            Assert.Equal("kg/rev", Cell("massPerRevolution unit"));
            Assert.Equal(
                string.Join(
                    ' ',
                    result.GetProperty("findings").EnumerateArray().Select(finding => finding.GetProperty("code").GetString())
                ),
                Cell("findings")
            );

            string Cell(string column) => row[Array.IndexOf(header, column)];
        });
    }

    [Fact]
    public async Task Answers_ToLinesAsATable_AreHarmlessAndSayWhatIsWrong()
    {
        using var response = await Batches.SendAsync(
            ApiHost.Client,
            Question.CatchTest,
            Encoding.UTF8.GetBytes($"{Batches.Line(Question.CatchTest)}\n{{}}\n"),
            accept: Batches.Csv
        );

        var rows = Rfc4180.Read(await response.Content.ReadAsStringAsync());
        Assert.Equal(["200", "422"], rows.Select(row => row["status"]));
        Assert.Equal("0.363", rows[0]["enter"]);
        Assert.Equal("member-missing", rows[1]["errors"]);
        Assert.Contains("#/scale: This member is missing", rows[1]["detail"], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/csv")]
    [InlineData("text/tab-separated-values")]
    public async Task Tabs_BetweenCells_SayTheSameAsCommas(string mediaType)
    {
        var commas = $"{Header}\nA,0.02,14.5,40\nB,0.02,3.625,1e1\n";

        using var one = await SendAsync(commas);
        using var other = await Batches.SendAsync(
            ApiHost.Client,
            Question.CatchTest,
            Encoding.UTF8.GetBytes(commas.Replace(',', '\t')),
            mediaType: mediaType
        );

        Assert.Equal(await Batches.LinesAsync(one), await Batches.LinesAsync(other));
    }

    [Theory]
    [InlineData("14,5", null)]
    [InlineData("0,342", null)]
    [InlineData("1.234", null)]
    [InlineData("1,234", "number-ambiguous")]
    [InlineData("1.234,5", "type-wrong")]
    public async Task Number_BetweenTabs_IsReadOnlyWhereItIsClear(string number, string? code)
    {
        var line = Assert.Single(await AnswersAsync($"{Header.Replace(',', '\t')}\nA\t0.02\t{number}\t40\n"));

        AssertNumber(line, code);
    }

    [Fact]
    public async Task Header_WithAUnitInRoundBrackets_IsToldHowToWriteIt()
    {
        using var response = await SendAsync("test,scale.division [kg],gross (lb),tare (kilos)\nA,1,2,3\n");

        var faults = (await ProblemBody.ReadAsync(response, 422)).Faults;
        Assert.Contains(faults, fault => fault.Detail.Contains("Write `gross [lb]`", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Detail.Contains("Write `tare [kg]`", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("test,scale.division [kg],net [kg],revolutions [rev]\nA,0.02,14.5,\n", "revolutions [rev]")]
    [InlineData("test,scale.division [kg],net [kg]\nA,0.02,14.5\n", "revolutions")]
    [InlineData("test,net [kg],revolutions [rev]\nA,14.5,40\n", null)]
    public async Task Cell_Missing_IsToldByItsColumn(string table, string? column)
    {
        var fault = Batches.Only(Assert.Single(await AnswersAsync(table))).Fault;

        Assert.Equal((2L, column), fault.Place!.Value);
    }

    [Fact]
    public async Task Answers_NamesThatLookLikeFormulas_AreMadeHarmless()
    {
        using var response = await SendAsync($"{Header}\n=1+1,0.02,14.5,40\n", Batches.Csv);

        Assert.Equal("'=1+1", Rfc4180.Read(await response.Content.ReadAsStringAsync())[0]["test"]);
    }

    private static void AssertNumber(JsonElement line, string? code)
    {
        if (code is null)
        {
            Assert.True(line.TryGetProperty("result", out _), line.GetRawText());
            return;
        }

        var (_, fault) = Batches.Only(line);
        Assert.Equal((code, "#/catches/0/net", (2L, (string?)"net [kg]")), (fault.Code, fault.Pointer, fault.Place!.Value));
    }

    private static Task<HttpResponseMessage> SendAsync(string table, string? accept = null) =>
        Batches.SendAsync(ApiHost.Client, Question.CatchTest, Encoding.UTF8.GetBytes(table), mediaType: Batches.Csv, accept: accept);

    private static async Task<JsonElement[]> AnswersAsync(string table)
    {
        using var response = await SendAsync(table);
        return [.. (await Batches.LinesAsync(response)).Select(line => JsonSerializer.Deserialize<JsonElement>(line))];
    }
}
