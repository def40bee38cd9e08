namespace CalibrationApi.Plumbing.Observability;

/// <summary>So many lines a minute; the others are counted.</summary>
/// <param name="most">Lines a minute.</param>
/// <param name="clock">Measures the minutes.</param>
internal sealed class LineBudget(int most, TimeProvider clock)
{
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    private readonly Lock counting = new();
    private long windowStart = clock.GetTimestamp();
    private int told;
    private int untold;

    /// <summary>Takes a line.</summary>
    /// <returns>Whether there is one, and how many got none in the window that ended just now.</returns>
    public (bool IsToBeTold, int UntoldBefore) Take()
    {
        lock (counting)
        {
            var before = 0;
            if (clock.GetElapsedTime(windowStart) >= Window)
            {
                before = untold;
                (windowStart, told, untold) = (clock.GetTimestamp(), 0, 0);
            }

            var isTold = told < most;
            if (isTold)
                told++;
            else
                untold++;
            return (isTold, before);
        }
    }
}
