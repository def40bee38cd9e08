using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Simulation;

/// <summary>A counter of revolutions.</summary>
/// <param name="Resolution">Its smallest step in revolutions; 0 counts exactly.</param>
/// <param name="Start">Where a count begins within a step.</param>
public sealed record SimulatedCounter(double Resolution, CountStart Start = CountStart.Free)
{
    /// <summary>What it shows after so many turns.</summary>
    /// <remarks>
    /// A free start and stop: the edges passed in between, an error of variance r^2 / 6. On an edge: the nearest step, r^2 / 12.
    /// </remarks>
    internal double Show(double turns, SeededRandom random)
    {
        if (Resolution <= 0)
            return turns;
        var steps = turns / Resolution;
        return Resolution * (Start == CountStart.OnEdge ? Math.Round(steps) : Math.Floor(random.NextDouble() + steps));
    }
}
