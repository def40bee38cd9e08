using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;

namespace CalibrationApi.Engine.Tests.CatchTests;

/// <summary>Which of several earlier tests is put beside a test. Invented tests.</summary>
public sealed class EarlierTestSearchTests
{
    private static readonly CatchTestQuestion Changed = Given.Test(Given.Net(17.08, 47), Given.Net(16.94, 46.8)).InForce(0.30);

    [Fact]
    public void Of_NoEarlierTest_IsNone() => Assert.Null(EarlierTestSearch.Of(Changed, []));

    // The newest shows no change, the one before it shows the same one.
    [Fact]
    public void Of_SeveralTests_IsTheNewestThatConfirms() =>
        Assert.Equal("b", EarlierTestSearch.Of(Changed, [Earlier("a", 0.301), Earlier("b", 0.362), Earlier("c", 0.363)])!.Name);

    [Fact]
    public void Of_NoneConfirmsALargeChange_IsTheNewest() =>
        Assert.Equal("a", EarlierTestSearch.Of(Changed, [Earlier("a", 0.301), Earlier("b", 0.33)])!.Name);

    // Nothing to be borne out, and nothing to be said.
    [Fact]
    public void Of_NoneConfirmsASmallChange_IsNone() =>
        Assert.Null(EarlierTestSearch.Of(Changed.InForce(0.355), [Earlier("a", 0.355), Earlier("b", 0.40)]));

    [Fact]
    public void Of_NothingToCompareWith_IsNone() =>
        Assert.Null(EarlierTestSearch.Of(Changed with { Reference = null }, [Earlier("a", 0.362)]));

    [Fact]
    public void Of_TestThatIsRefused_IsNone() =>
        Assert.Null(EarlierTestSearch.Of(Changed with { Limits = new() { Tolerance = 0.001 } }, [Earlier("a", 0.362)]));

    private static EarlierTest Earlier(string name, double perRevolution) =>
        new()
        {
            Value = new(perRevolution),
            Catches = 2,
            Name = name,
            FromAnotherScale = false,
        };
}
