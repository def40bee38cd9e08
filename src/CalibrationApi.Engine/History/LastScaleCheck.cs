using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.History;

/// <summary>The last check of a scale before a test.</summary>
public static class LastScaleCheck
{
    /// <summary>Days after which a check is overdue; judgement, no published source.</summary>
    public const int UsualDaysBetweenChecks = 365;

    /// <summary>What its age calls for; null when it is fresh enough.</summary>
    /// <param name="age">From the check to the test; null when there was none.</param>
    /// <param name="days">Days after which a check is overdue; the usual ones when null.</param>
    public static Finding? Overdue(TimeSpan? age, int? days)
    {
        if (age is not { } old)
            return Finding.Note(
                HistoryCodes.ScaleCheckOverdue,
                $"This scale had not been checked against known masses before the test. A check finds its error, which is then corrected."
            );
        var most = days ?? UsualDaysBetweenChecks;
        return old.TotalDays > most
            ? Finding.Warning(
                HistoryCodes.ScaleCheckOverdue,
                $"The last check of this scale was {old.TotalDays:F0} days before the test; after {most} days it is overdue."
            )
            : null;
    }
}
