namespace CalibrationApi.Tests.Records.Containers;

/// <summary>The rules of a container.</summary>
public sealed class ContainerRequestValidatorTests(RecordService service) : IClassFixture<RecordService>
{
    [Theory]
    [InlineData("/tare", null, "#/tare", "member-missing")]
    [InlineData("/tare", """{ "value": -1, "unit": "kg" }""", "#/tare", "number-out-of-range")]
    [InlineData("/tare", """{ "value": 11, "unit": "t" }""", "#/tare", "number-out-of-range")]
    [InlineData("/volume", """{ "value": 0, "unit": "L" }""", "#/volume", "number-out-of-range")]
    [InlineData("/volume", """{ "value": 1, "unit": "bu" }""", "#/volume", "unit-ambiguous")]
    [InlineData("/fill", """{ "value": 101, "unit": "%" }""", "#/fill", "number-out-of-range")]
    public async Task Container_MemberThatBreaksARule_IsRefusedThere(string pointer, string? json, string at, string code)
    {
        var draft = json is null ? Farm.ContainerDraft.Without(pointer) : Farm.ContainerDraft.With(pointer, Draft.Json(json));

        await (await service.WithoutTraceAsync(() => service.PostAsync("/v1/containers", draft))).RefusedAsync(422, at, code);
    }

    [Fact]
    public async Task Container_WithoutTare_MayWeighNothing() =>
        await service.CreateAsync("/v1/containers", Farm.ContainerDraft.With("/tare", Draft.Quantity(0, "kg")).Without("/volume"));
}
