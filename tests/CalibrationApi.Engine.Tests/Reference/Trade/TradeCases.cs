namespace CalibrationApi.Engine.Tests.Reference.Trade;

/// <summary>Published examples of a topic that the engine computes: reproduced, shown to be a shortcut or a misprint.</summary>
public abstract class TradeCases<TTopic> : TradeFigures<TTopic>
    where TTopic : ITradeTopic
{
#pragma warning disable CA1000 // The runner takes test data from static members only.
    public static TheoryData<string, string, string> ByTheEngine => Those(by => by == Engine);
#pragma warning restore CA1000

    [Theory]
    [MemberData(nameof(ByTheEngine))]
    [Trait("Category", "Trade")]
    [Trait("Category", "Reference")]
    public void PublishedCase_ByTheEngine_HasItsStatus(string status, string id, string quantity) => AssertStatus(status, id, quantity);
}
