using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>What came to light after a test was kept.</summary>
public sealed class KnownSinceTests
{
    public static TheoryData<KnownSince, FindingCode, string> Each =>
        new()
        {
            {
                new() { ErrorOfFailedCheck = 0.012 },
                HistoryCodes.ScaleCheckFailedLater,
                "it was 1.20 % off"
            },
            {
                new() { IsScaleCheckChanged = true },
                HistoryCodes.ScaleCheckChanged,
                "corrected by that check"
            },
            {
                new() { IsEarlierTestSuperseded = true },
                HistoryCodes.BasisSuperseded,
                "The earlier test"
            },
            {
                new() { IsStartSuperseded = true },
                HistoryCodes.BasisSuperseded,
                "The last test"
            },
            {
                new() { InForce = SinceThenInForce.Entered },
                HistoryCodes.ValueInForceChanged,
                "was entered after it"
            },
            {
                new() { InForce = SinceThenInForce.Changed },
                HistoryCodes.ValueInForceChanged,
                "was entered or corrected after it"
            },
            {
                new() { InForce = SinceThenInForce.BasisSuperseded },
                HistoryCodes.BasisSuperseded,
                "rests on a test"
            },
        };

    [Theory]
    [MemberData(nameof(Each))]
    public void Findings_OfOneThing_AreThatOne(KnownSince known, FindingCode code, string part)
    {
        var finding = Assert.Single(known.Findings());

        Assert.Equal((code, Severity.Warning), (finding.Code, finding.Severity));
        Assert.Contains(part, finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_OfNothing_AreNone() => Assert.Empty(new KnownSince().Findings());
}
