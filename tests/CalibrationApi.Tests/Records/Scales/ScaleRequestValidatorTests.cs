using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Records.Scales;

/// <summary>The rules of a scale.</summary>
public sealed class ScaleRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/division", null, "#/division", ErrorCode.MemberMissing)]
    [InlineData("/division", """{ "value": 0, "unit": "kg" }""", "#/division", ErrorCode.NumberOutOfRange)]
    [InlineData("/division", "20", "#/division", ErrorCode.TypeWrong)]
    [InlineData("/accuracyClass", "\"3\"", "#/accuracyClass", ErrorCode.WordUnknown)]
    [InlineData("/verificationInterval", """{ "value": -1, "unit": "g" }""", "#/verificationInterval", ErrorCode.NumberOutOfRange)]
    [InlineData("/statedAccuracy", """{ "value": 1, "unit": "%" }""", "#/statedAccuracy", ErrorCode.UnitWrongDimension)]
    [InlineData("/capacity", """{ "value": 0, "unit": "kg" }""", "#/capacity", ErrorCode.NumberOutOfRange)]
    [InlineData("/daysBetweenChecks", "0", "#/daysBetweenChecks", ErrorCode.NumberOutOfRange)]
    [InlineData("/daysBetweenChecks", "3661", "#/daysBetweenChecks", ErrorCode.NumberOutOfRange)]
    [InlineData("/daysBetweenChecks", "1.5", "#/daysBetweenChecks", ErrorCode.TypeWrong)]
    [InlineData("/daysBetweenChecks", "\"30\"", "#/daysBetweenChecks", ErrorCode.TypeWrong)]
    public async Task Scale_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var draft = json is null ? Farm.ScaleDraft.Without(pointer) : Farm.ScaleDraft.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/scales", draft))).RefusedAsync(
            code == ErrorCode.TypeWrong ? 400 : 422,
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
