namespace CalibrationApi.Simulation;

/// <summary>One catch on its way from the meter to the paper. Mistakes change it at the stage where people make them.</summary>
public sealed class OneCatch
{
    /// <summary>Position in the test, from 0.</summary>
    public required int Position { get; init; }

    /// <summary>The catch before it; null for the first one.</summary>
    public OneCatch? Before { get; init; }

    /// <summary>Turns of the shaft.</summary>
    public required double Turns { get; init; }

    /// <summary>Mass of the empty container, kg.</summary>
    public required double Container { get; init; }

    /// <summary>What the container holds before it runs over, kg; null when it is large enough for anything.</summary>
    public double? Capacity { get; init; }

    /// <summary>Points of the meter whose product goes into the container.</summary>
    public required int PointsCaught { get; set; }

    /// <summary>Mass per revolution that the meter delivers in this catch, kg.</summary>
    public required double PerRevolution { get; set; }

    /// <summary>Share of the turns in which anything falls.</summary>
    public double ShareDelivered { get; set; } = 1;

    /// <summary>Mass that stays in the meter and in the line, kg.</summary>
    public double HeldBack { get; set; }

    /// <summary>Largest mass that stays in the container, kg.</summary>
    public double MostThatStays { get; set; } = double.PositiveInfinity;

    /// <summary>Mass in the container, kg.</summary>
    public double Caught { get; internal set; }

    /// <summary>Reading with the product, as written down, kg.</summary>
    public double Gross { get; set; }

    /// <summary>Reading of the empty container, as written down, kg; null when a net mass was written down.</summary>
    public double? Tare { get; set; }

    /// <summary>What the scale shows under the empty container alone, kg, whether or not anybody wrote it down.</summary>
    public double EmptyReading { get; internal set; }

    /// <summary>Turns as written down.</summary>
    public double Counted { get; set; }

    /// <summary>Net mass as written down, kg.</summary>
    public double Net => Gross - (Tare ?? 0);
}
