using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.Tests.Answers;

public sealed class JudgementTests
{
    private static readonly Finding Note = Finding.Note(SharedCodes.WithinTolerance, $"a note");
    private static readonly Finding Warning = Finding.Warning(SharedCodes.CatchesScatterMoreThanExpected, $"a warning");
    private static readonly Finding Stop = AdoptionSuperseded();

    [Fact]
    public void Of_TheWorstSeverity_Decides()
    {
        Assert.Equal(Usability.Usable, Judgement.Of([]));
        Assert.Equal(Usability.Usable, Judgement.Of([Note, Note]));
        Assert.Equal(Usability.CheckFirst, Judgement.Of([Note, Warning, Note]));
        Assert.Equal(Usability.DoNotUse, Judgement.Of([Stop, Warning]));
        Assert.Equal(Usability.DoNotUse, Judgement.Of([Warning, Note, Stop]));
    }

    private static Finding AdoptionSuperseded() =>
        CalibrationApi.Engine.Adoptions.AdoptedAgainstTest.Superseded("wrong lot", isOfSameSeries: true);
}
