using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.ElementFits;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;
using static CalibrationApi.Engine.Tests.ElementFits.Fitted;

namespace CalibrationApi.Engine.Tests.ElementFits;

/// <summary>What is said of a fit: the headline, findings, assumptions and refusals.</summary>
public sealed class ElementFitSentencesTests
{
    [Fact]
    public void Headline_EachCase_SaysWhatToDo()
    {
        var fits = Of(Clover()).Headline.InMetric();
        Assert.StartsWith("Use small-seed roller: it turns at 17.9 rpm to 47.0 rpm", fits, StringComparison.Ordinal);
        Assert.Contains("Best would be about 0.07655 L per revolution; 0.02612 L to 0.2244 L keeps", fits, StringComparison.Ordinal);

        var none = Of(Clover() with { Elements = [] }).Headline.InMetric();
        Assert.StartsWith("Look for an element of about 0.07655 L", none, StringComparison.Ordinal);

        var nearest = Of(Clover() with { Elements = [Clover().Elements[0]] }).Headline.InMetric();
        Assert.StartsWith(
            "No element serves all rates at all ground speeds. The nearest is coarse roller",
            nearest,
            StringComparison.Ordinal
        );
        Assert.Contains("Look for about 0.07655 L", nearest, StringComparison.Ordinal);

        Assert.Equal(
            "No single element serves all of these rates at all of these speeds. Use two elements and change from one to the next at 23.24 kg/ha.",
            Of(Clover() with { Rates = [Rate(3), Rate(180)], GroundSpeeds = [Kmh(6), Kmh(12)] }).Headline.InMetric()
        );

        var wide = Of(Clover() with { Rates = [Rate(3), Rate(15)], GroundSpeeds = [Kmh(1), Kmh(25)] }).Headline.InMetric();
        Assert.Contains("Drive no faster than 4.5 km/h, or no slower than 5.556 km/h.", wide, StringComparison.Ordinal);

        var widest = Of(Clover() with { Rates = [Rate(1), Rate(50)], GroundSpeeds = [Kmh(1), Kmh(25)] }).Headline.InMetric();
        Assert.EndsWith("drive at one speed, and ask again with that one.", widest, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_EachDoubt_IsToldWithWhatHelps()
    {
        Assert.Equal([SharedCodes.OutsideMeterWindow], Codes(Clover()));
        Assert.Equal([ElementFitCodes.FitNotSure], Codes(Clover() with { Elements = [Clover().Elements[2]] }));
        Assert.Equal(
            [ElementFitCodes.FitNotSure],
            Codes(Clover() with { Rates = [Rate(10)], GroundSpeeds = [Kmh(1), Kmh(18)], Elements = [] })
        );
        Assert.Equal([ElementFitCodes.NoDisplacementServes], Codes(Clover() with { Rates = [Rate(1), Rate(30)], Elements = [] }));
        var full = Clover() with { Fill = new StatedFill(1.1, 0.05), Elements = [Clover().Elements[1]] };
        Assert.Equal([ElementCodes.FillUnlikeExpected], Codes(full));
        var pockets = full with { Elements = [full.Elements[0] with { Kind = ElementKind.ClosedPockets }] };
        Assert.Equal([ElementCodes.MoreThanTheElementHolds], Codes(pockets));
    }

    [Fact]
    public void Assumptions_NothingStated_AreAllListed()
    {
        Assert.Equal(
            [
                "bulkDensity/relativeUncertainty",
                "fillEfficiency",
                "fillEfficiencySpread",
                "elements/0/displacement/relativeUncertainty",
                "elements/1/displacement/relativeUncertainty",
                "elements/2/displacement/relativeUncertainty",
            ],
            Of(Clover()).Assumptions.Select(assumption => assumption.Member)
        );
        Assert.Empty(
            Of(Clover() with { Density = new(new BulkDensity(780), 0.02), Fill = new StatedFill(0.85, 0.05), Elements = [] }).Assumptions
        );
    }

    // One element of the size of a wheelbarrow's load, one smaller than a seed; and the two that no answer could be made of.
    [Theory]
    [InlineData(99_000, 4, 90, "rates")]
    [InlineData(1e-9, 4, 90, "rates")]
    [InlineData(0, 4, 90, "rates")]
    [InlineData(6, 90, 4, "speedLimits/minimum")]
    [InlineData(6, 4, 4, "speedLimits/minimum")]
    public void Question_Impossible_IsRefusedAtItsMember(double rate, double slowest, double fastest, string member)
    {
        var question = Clover() with
        {
            CoveredWidth = new Length(36),
            Rates = [Rate(rate)],
            SlowestMeter = Planned.Rpm(slowest),
            FastestMeter = Planned.Rpm(fastest),
        };

        var refusal = Assert.Single(ElementFitEvaluation.Evaluate(question).Refusals);
        Assert.Equal((SharedCodes.SettingsAtOdds, member), (refusal.Code, refusal.Member));
    }

    private static IEnumerable<FindingCode> Codes(ElementFitQuestion question) => Of(question).Findings.Select(finding => finding.Code);

    private static ElementFitResult Of(ElementFitQuestion question) => ElementFitEvaluation.Evaluate(question).Result!;
}
