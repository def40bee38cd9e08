using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Finds among earlier tests the one that bears a test out.</summary>
public static class EarlierTestSearch
{
    /// <summary>The earlier test to put beside a test; null when none is worth naming.</summary>
    /// <param name="test">The test at hand.</param>
    /// <param name="earlier">Tests of the same meter, element, setting, product and lot since the value in force was adopted, newest
    /// first.</param>
    /// <remarks>
    /// The newest one that confirms the change (<see cref="SecondTest.Confirms"/>). Where none does and the change needs a second test, the
    /// newest one, so that the answer can say that it does not bear the change out; otherwise none. Accuracy: exact comparisons,
    /// EarlierTestSearchTests.
    /// </remarks>
    public static EarlierTest? Of(CatchTestQuestion test, IReadOnlyList<EarlierTest> earlier)
    {
        var needsOne = false;
        foreach (var one in earlier)
        {
            if (CatchTestEvaluation.Evaluate(test with { Earlier = one }).Result is not { SecondTest: { } second } result)
                return null;
            if (second.Confirms)
                return one;
            needsOne = result.FromExpected is { IsLarge: true };
        }

        return needsOne ? earlier[0] : null;
    }
}
