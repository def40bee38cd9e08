namespace CalibrationApi.Engine.Answers;

/// <summary>What an answer is good for that has nothing else to judge.</summary>
public enum Usability
{
    /// <summary>Nothing speaks against it.</summary>
    Usable,

    /// <summary>Look at what was found before going by it.</summary>
    CheckFirst,

    /// <summary>Not good for anything as it is.</summary>
    DoNotUse,
}

/// <summary>The verdict of an answer that has no judgement of its own.</summary>
public static class Judgement
{
    /// <summary>What an answer with these findings is good for.</summary>
    /// <param name="findings">All of its findings.</param>
    /// <remarks>
    /// <para>Formula: the worst severity decides: a stop forbids it, a warning asks for a look, notes alone leave it usable.</para>
    /// <para>Range: any number of findings; without any the answer is usable.</para>
    /// <para>Source: judgement.</para>
    /// <para>Accuracy: exact (JudgementTests).</para>
    /// </remarks>
    public static Usability Of(IReadOnlyList<Finding> findings) =>
        findings.Any(finding => finding.Severity == Severity.Stop) ? Usability.DoNotUse
        : findings.Any(finding => finding.Severity == Severity.Warning) ? Usability.CheckFirst
        : Usability.Usable;
}
