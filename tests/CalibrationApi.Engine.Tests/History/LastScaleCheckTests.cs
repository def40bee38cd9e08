using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;

namespace CalibrationApi.Engine.Tests.History;

/// <summary>Whether the last check of a scale is fresh enough.</summary>
public sealed class LastScaleCheckTests
{
    [Theory]
    [InlineData(365, null)]
    [InlineData(30, 30)]
    public void Overdue_OnItsLastDay_SaysNothing(int age, int? days) => Assert.Null(LastScaleCheck.Overdue(TimeSpan.FromDays(age), days));

    [Theory]
    [InlineData(366, null, "366 days before the test; after 365 days it is overdue.")]
    [InlineData(31, 30, "31 days before the test; after 30 days it is overdue.")]
    public void Overdue_Later_Warns(int age, int? days, string end)
    {
        var finding = LastScaleCheck.Overdue(TimeSpan.FromDays(age), days)!;

        Assert.Equal((HistoryCodes.ScaleCheckOverdue, Severity.Warning), (finding.Code, finding.Severity));
        Assert.EndsWith(end, finding.Detail.InMetric(), StringComparison.Ordinal);
    }

    [Fact]
    public void Overdue_NeverChecked_IsANote()
    {
        var finding = LastScaleCheck.Overdue(null, 30)!;

        Assert.Equal((HistoryCodes.ScaleCheckOverdue, Severity.Note), (finding.Code, finding.Severity));
    }
}
