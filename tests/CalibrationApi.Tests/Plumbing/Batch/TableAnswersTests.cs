using System.Text;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Plumbing.Batch;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>Answers as rows of a table.</summary>
public sealed class TableAnswersTests
{
    [Fact]
    public void Head_SentencesWithParts_HaveAColumnForTheSentenceOnly()
    {
        var columns = Encoding.UTF8.GetString(TableAnswers.Of<CatchTestAnswer>(TableFormat.Commas, []).Head.Span).Trim().Split(',');

        Assert.Contains("headline", columns);
        Assert.DoesNotContain(columns, column => column.Contains("parts", StringComparison.OrdinalIgnoreCase));
    }
}
