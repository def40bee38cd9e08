using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.MeteringElements;

/// <summary>What an element can hold, and what that says about a value. The limits are our own judgement.</summary>
public sealed class ElementContentTests
{
    // Certain inputs, so that the limits stand exactly where they are named.
    [Theory]
    [InlineData(ElementKind.ClosedPockets, 1.05, Plausibility.Usual)]
    [InlineData(ElementKind.ClosedPockets, 1.051, Plausibility.Impossible)]
    [InlineData(ElementKind.OpenFlutes, 1.051, Plausibility.Unusual)]
    [InlineData(ElementKind.OpenFlutes, 1.6, Plausibility.Unusual)]
    [InlineData(ElementKind.OpenFlutes, 1.601, Plausibility.Impossible)]
    [InlineData(ElementKind.Auger, 1.6, Plausibility.Unusual)]
    [InlineData(ElementKind.Auger, 1.601, Plausibility.Impossible)]
    [InlineData(null, 1.6, Plausibility.Unusual)]
    [InlineData(null, 1.601, Plausibility.Impossible)]
    // 0.9 exp(-2 x 0.15) = 0.667.
    [InlineData(ElementKind.ClosedPockets, 0.668, Plausibility.Usual)]
    [InlineData(ElementKind.ClosedPockets, 0.666, Plausibility.Unusual)]
    public void Judge_FillAtTheLimits_FollowsTheKind(ElementKind? kind, double fill, Plausibility expected)
    {
        var content = new ElementContent(new(new Volume(1e-3), 0), new(new BulkDensity(800), 0), kind);

        var (found, plausibility) = content.Judge(new MassPerRevolution(0.8 * fill), 0);

        NearlyEqual.Assert(fill, found);
        Assert.Equal(expected, plausibility);
    }

    // Two standard uncertainties are allowed for: 1.05 (1 + 2 sqrt(0.03^2 + 0.02^2 + 0.02^2)) = 1.1366.
    [Theory]
    [InlineData(1.136, Plausibility.Unusual)]
    [InlineData(1.137, Plausibility.Impossible)]
    public void Judge_UncertainValues_AllowsForIt(double fill, Plausibility expected) =>
        Assert.Equal(
            expected,
            new ElementContent(new(new Volume(1e-3)), new(new BulkDensity(800)), ElementKind.ClosedPockets)
                .Judge(new MassPerRevolution(0.8 * fill), 0.02)
                .Plausibility
        );

    // Canola of 660 kg/m3 in 0.03 L is 19.8 g, 0.0437 lb; 0.132 lb per revolution would be three times that.
    [Theory]
    [InlineData(ElementKind.ClosedPockets)]
    [InlineData(ElementKind.OpenFlutes)]
    [InlineData(null)]
    public void FindingOf_ThreeTimesWhatTheElementHolds_ForbidsSeeding(ElementKind? kind)
    {
        var content = new ElementContent(new(new Volume(0.03e-3)), new(new BulkDensity(660)), kind, "small seed");

        var finding = content.FindingOf("The measured value", new MassPerRevolution(0.132 * 0.45359237), 0.01);

        Assert.Equal((ElementCodes.MoreThanTheElementHolds, Severity.Stop), (finding!.Code, finding.Severity));
        Assert.StartsWith(
            "The measured value, 0.132 lb/rev, is more than the element small seed can deliver: full it holds 0.04365 lb/rev and this would fill it to 302 %.",
            DisplayUnits.UnitedStates.Write(finding.Detail),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void FindingOf_UnusualOrUsualValue_WarnsOrIsNone()
    {
        var content = new ElementContent(new(new Volume(0.03e-3)), new(new BulkDensity(660)));

        var unusual = content.FindingOf("The start value", new MassPerRevolution(0.0198 * 1.3), 0.1);
        Assert.Equal((ElementCodes.FillUnlikeExpected, Severity.Warning), (unusual!.Code, unusual.Severity));
        Assert.StartsWith(
            "The start value, 0.02574 kg/rev, would fill this element to 130 %; about 90 % is usual (judgement).",
            unusual.Detail.InMetric(),
            StringComparison.Ordinal
        );
        Assert.Null(content.FindingOf("The start value", new MassPerRevolution(0.0178), 0.1));
    }

    [Fact]
    public void Assumptions_NothingStated_AreListed()
    {
        var content = new ElementContent(new(new Volume(1e-3)), new(new BulkDensity(800)));

        Assert.Equal(3, content.Assumptions().Count());
        Assert.All(content.Assumptions(), assumption => Assert.Contains("judgement", assumption.Origin, StringComparison.Ordinal));
        Assert.Empty(new ElementContent(new(new Volume(1e-3), 0.01), new(new BulkDensity(800), 0.01), ElementKind.Auger).Assumptions());
    }

    // 0.61 L of 620 kg/m3; 0.9 of it as a start, known to 15 %, 3 % of density and 2 % of displacement in quadrature.
    [Fact]
    public void StartValue_NothingMeasured_IsTheUsualFillOfTheContent()
    {
        var content = new ElementContent(new(new Volume(0.61e-3), 0.02), new(new BulkDensity(620), 0.03));

        NearlyEqual.Assert(0.61e-3 * 620, content.Full.KilogramsPerRevolution);
        NearlyEqual.Assert(0.9 * 0.61e-3 * 620, content.StartValue.Value.KilogramsPerRevolution);
        NearlyEqual.Assert(Math.Sqrt(0.15 * 0.15 + 0.03 * 0.03 + 0.02 * 0.02), content.StartValue.StandardUncertainty);
    }
}
