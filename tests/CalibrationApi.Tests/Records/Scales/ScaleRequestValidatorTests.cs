namespace CalibrationApi.Tests.Records.Scales;

/// <summary>The rules of a scale.</summary>
public sealed class ScaleRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/division", null, "#/division", "member-missing")]
    [InlineData("/division", """{ "value": 0, "unit": "kg" }""", "#/division", "number-out-of-range")]
    [InlineData("/division", "20", "#/division", "type-wrong")]
    [InlineData("/accuracyClass", "\"3\"", "#/accuracyClass", "word-unknown")]
    [InlineData("/verificationInterval", """{ "value": -1, "unit": "g" }""", "#/verificationInterval", "number-out-of-range")]
    [InlineData("/statedAccuracy", """{ "value": 1, "unit": "%" }""", "#/statedAccuracy", "unit-wrong-dimension")]
    [InlineData("/capacity", """{ "value": 0, "unit": "kg" }""", "#/capacity", "number-out-of-range")]
    [InlineData("/daysBetweenChecks", "0", "#/daysBetweenChecks", "number-out-of-range")]
    [InlineData("/daysBetweenChecks", "3661", "#/daysBetweenChecks", "number-out-of-range")]
    [InlineData("/daysBetweenChecks", "1.5", "#/daysBetweenChecks", "type-wrong")]
    [InlineData("/daysBetweenChecks", "\"30\"", "#/daysBetweenChecks", "type-wrong")]
    public async Task Scale_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var draft = json is null ? Farm.ScaleDraft.Without(pointer) : Farm.ScaleDraft.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/scales", draft))).RefusedAsync(
            code == "type-wrong" ? 400 : 422,
            at,
            code
        );
    }

    [Fact]
    public async Task Scale_ItsDescription_EntersTheQuestionOfItsTests()
    {
        var farm = await Farm.CreateAsync(service);
        var scale = await service.CreateAsync(
            "/v1/scales",
            Farm.ScaleDraft.With("/verificationInterval", Draft.Quantity(20, "g")).With("/statedAccuracy", Draft.Quantity(50, "g"))
        );

        var test = (await farm.TestAsync(test => test.With("/scale", scale))).Body;

        Assert.Equal((20, "g"), test.Quantity("/resolved/scale/verificationInterval"));
        Assert.Equal((50, "g"), test.Quantity("/resolved/scale/statedAccuracy"));
        Assert.Equal((50, "kg"), test.Quantity("/resolved/scale/capacity"));
    }
}
