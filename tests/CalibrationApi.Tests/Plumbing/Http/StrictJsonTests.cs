namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>What the framework would let pass or answer without a body, and what this service answers instead.</summary>
public sealed class StrictJsonTests
{
    [Theory]
    [InlineData(Question.CatchTest, "/targetRate/value")]
    [InlineData(Question.CatchTest, "/catches/1/gross/value")]
    [InlineData(Question.CatchPlan, "/groundSpeed/value")]
    [InlineData(Question.CatchPlan, "/meters/2/valueInForce/value")]
    [InlineData(Question.MeterSpeed, "/rates/0/value")]
    [InlineData(Question.MeterSpeed, "/elements/1/measuredAt/0/meterSpeed/value")]
    public async Task Post_NumberMissing_IsNotTakenAsZero(string operation, string pointer)
    {
        using var response = await Question.Of(operation).Without(pointer).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal(("#" + pointer, "member-missing"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData(Question.CatchTest, "/bogus")]
    [InlineData(Question.CatchTest, "/scale/bogus")]
    [InlineData(Question.CatchTest, "/catches/0/gross/bogus")]
    [InlineData(Question.CatchPlan, "/meters/1/bogus")]
    [InlineData(Question.MeterSpeed, "/elements/0/bogus")]
    public async Task Post_UnknownMember_IsRefusedAtItsPlace(string operation, string pointer)
    {
        using var response = await Question.Of(operation).With(pointer, "1").AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("#" + pointer, "member-unknown"), (fault.Pointer, fault.Code));
        Assert.Contains("use one of: ", fault.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/CounterResolution", "'counterResolution'")]
    [InlineData("/counter_resolution", "'counterResolution'")]
    [InlineData("/counter-resolution", "'counterResolution'")]
    public async Task Post_MemberInOtherSpelling_IsToldTheRightOne(string pointer, string right)
    {
        using var response = await Question.Of(Question.CatchTest).With(pointer, "{}").AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal("member-unknown", fault.Code);
        Assert.Contains($"Write {right}", fault.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Question.CatchTest, "/catches/0/gross/value", "\"18.7\"")]
    [InlineData(Question.CatchTest, "/catches/0/gross/value", "\"\"")]
    [InlineData(Question.CatchTest, "/catches/0/gross/value", "\"NaN\"")]
    [InlineData(Question.CatchTest, "/catches/0/gross/value", "\"Infinity\"")]
    [InlineData(Question.CatchTest, "/catches/0/gross/value", "\"-Infinity\"")]
    [InlineData(Question.CatchTest, "/controllerEntry/decimals", "\"3\"")]
    [InlineData(Question.CatchPlan, "/groundSpeed/value", "\"9\"")]
    [InlineData(Question.MeterSpeed, "/elements/0/pocketsPerRevolution", "\"24\"")]
    public async Task Post_QuotedNumber_IsNotANumber(string operation, string pointer, string json)
    {
        using var response = await Question.Of(operation).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("#" + pointer, "type-wrong"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData("\"meter\": \"rear\"", "#/meter")]
    [InlineData("\"\\u006deter\": \"rear\"", "#/meter")]
    [InlineData("\"product\": {}", "#/product")]
    [InlineData("\"catches\": []", "#/catches")]
    public async Task Post_MemberTwice_TakesNeither(string again, string pointer)
    {
        var text = "{" + again + "," + Question.Of(Question.CatchTest).Text[1..];

        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, text);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal((pointer, "member-duplicate"), (fault.Pointer, fault.Code));
    }

    [Fact]
    public async Task Post_NumberTwiceInAQuantity_TakesNeither()
    {
        var text = Question
            .Of(Question.CatchTest)
            .Text.Replace("\"value\":18.7,", "\"value\":18.7,\"value\":18.7,", StringComparison.Ordinal);

        using var response = await Question.AskAsync(ApiHost.Client, Question.CatchTest, text);

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("#/catches/0/gross/value", "member-duplicate"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData(Question.CatchTest, "/tareReading", "1")]
    [InlineData(Question.CatchTest, "/scale/accuracyClass", "3")]
    [InlineData(Question.CatchTest, "/controllerEntry/form", "0")]
    [InlineData(Question.CatchPlan, "/drive", "0")]
    [InlineData(Question.CatchPlan, "/drive", "true")]
    [InlineData(Question.MeterSpeed, "/rates/0/unit", "1")]
    public async Task Post_NumberForAWord_IsRefused(string operation, string pointer, string json)
    {
        using var response = await Question.Of(operation).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("#" + pointer, "type-wrong"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData(Question.CatchTest, "/catches/0/excluded", "\"spilled\"")]
    [InlineData(Question.CatchTest, "/catches", "{}")]
    [InlineData(Question.CatchTest, "/catches/0", "[]")]
    [InlineData(Question.CatchTest, "/scale", "5")]
    [InlineData(Question.CatchTest, "/valueInForce/fromAnotherScale", "\"yes\"")]
    [InlineData(Question.CatchTest, "/controllerEntry/decimals", "2.5")]
    [InlineData(Question.CatchTest, "/controllerEntry/decimals", "99999999999")]
    [InlineData(Question.CatchPlan, "/meters", "\"front\"")]
    [InlineData(Question.CatchPlan, "/groundSpeed", "9")]
    [InlineData(Question.MeterSpeed, "/rates", "5")]
    public async Task Post_AnotherJsonType_IsRefusedAtItsPlace(string operation, string pointer, string json)
    {
        using var response = await Question.Of(operation).With(pointer, json).AskAsync();

        var fault = (await ProblemBody.ReadAsync(response, 400)).Only();
        Assert.Equal(("#" + pointer, "type-wrong"), (fault.Pointer, fault.Code));
    }

    [Theory]
    [InlineData(Question.CatchTest, "/scale")]
    [InlineData(Question.CatchTest, "/scale/division")]
    [InlineData(Question.CatchTest, "/catches")]
    [InlineData(Question.CatchTest, "/catches/0")]
    [InlineData(Question.CatchTest, "/controllerEntry/form")]
    [InlineData(Question.CatchTest, "/controllerEntry/decimals")]
    [InlineData(Question.CatchTest, "/product/price/currency")]
    [InlineData(Question.CatchTest, "/catches/0/gross")]
    [InlineData(Question.CatchTest, "/catches/0/tare")]
    [InlineData(Question.CatchTest, "/catches/0/revolutions")]
    [InlineData(Question.CatchPlan, "/groundSpeed")]
    [InlineData(Question.CatchPlan, "/scale")]
    [InlineData(Question.CatchPlan, "/meters")]
    [InlineData(Question.CatchPlan, "/meters/1")]
    [InlineData(Question.CatchPlan, "/meters/0/meter")]
    [InlineData(Question.CatchPlan, "/meters/0/coveredWidth")]
    [InlineData(Question.CatchPlan, "/meters/0/targetRate")]
    [InlineData(Question.CatchPlan, "/meters/0/valueInForce")]
    [InlineData(Question.CatchPlan, "/container/tare")]
    [InlineData(Question.CatchPlan, "/restorePoints/0")]
    [InlineData(Question.CatchPlan, "/restorePoints/0/name")]
    [InlineData(Question.MeterSpeed, "/coveredWidth")]
    [InlineData(Question.MeterSpeed, "/rates")]
    [InlineData(Question.MeterSpeed, "/rates/1")]
    [InlineData(Question.MeterSpeed, "/groundSpeeds")]
    [InlineData(Question.MeterSpeed, "/groundSpeeds/0")]
    [InlineData(Question.MeterSpeed, "/elements")]
    [InlineData(Question.MeterSpeed, "/elements/0")]
    [InlineData(Question.MeterSpeed, "/elements/0/name")]
    [InlineData(Question.MeterSpeed, "/elements/0/massPerRevolution")]
    [InlineData(Question.MeterSpeed, "/elements/1/measuredAt/0")]
    public async Task Post_NullWhereSomethingIsNeeded_IsMissing(string operation, string pointer)
    {
        using var response = await Question.Of(operation).With(pointer, "null").AskAsync();

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.Contains(problem.Faults, fault => fault.Pointer == "#" + pointer && fault.Code == "member-missing");
    }

    [Theory]
    [InlineData(Question.CatchTest)]
    [InlineData(Question.CatchPlan)]
    [InlineData(Question.MeterSpeed)]
    public async Task Post_EmptyObject_NamesEveryMissingMember(string operation)
    {
        string[] needed = operation switch
        {
            Question.CatchTest => ["#/catches", "#/scale"],
            Question.CatchPlan => ["#/groundSpeed", "#/meters", "#/scale"],
            _ => ["#/coveredWidth", "#/elements", "#/groundSpeeds", "#/rates"],
        };

        using var response = await Question.AskAsync(ApiHost.Client, operation, "{}");

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.All(problem.Faults, fault => Assert.Equal("member-missing", fault.Code));
        Assert.Equal(needed, problem.Faults.Select(fault => fault.Pointer!).Order(StringComparer.Ordinal));
    }
}
