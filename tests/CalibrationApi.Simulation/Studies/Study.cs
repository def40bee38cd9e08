namespace CalibrationApi.Simulation.Studies;

/// <summary>A table of cases that belong together.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Text">What is simulated, in a few sentences.</param>
/// <param name="Cases">Its rows.</param>
public sealed record Study(string Title, string Text, IReadOnlyList<StudyCase> Cases)
{
    /// <summary>The seed of all tables and tests.</summary>
    public const ulong Seed = 20260301;

    /// <summary>Trials behind each figure of its table.</summary>
    public int Trials { get; init; } = 50_000;

    /// <summary>Every study, in the order of the tables.</summary>
    public static IReadOnlyList<Study> All { get; } =
    [
        CoverageStudy.Study,
        StrayStudy.Study,
        AgreementStudy.Study,
        DecisionStudy.Study,
        SecondTestStudy.Study,
        MistakeStudy.Study,
        FittingMistakeStudy.Study,
    ];
}
