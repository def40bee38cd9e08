using System.Runtime.Serialization;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>What keeps a catch from being larger.</summary>
public enum CatchBoundKind
{
    /// <summary>The container would run over.</summary>
    Container,

    /// <summary>The scale cannot carry more.</summary>
    ScaleCapacity,

    /// <summary>One person should not lift more.</summary>
    LiftLimit,

    /// <summary>The run would take too long.</summary>
    [EnumMember(Value = "maximum-run-time")]
    LongestRun,

    /// <summary>A meter on the same shaft is full first.</summary>
    SharedShaft,
}

/// <summary>One bound on the mass of a catch.</summary>
/// <param name="Kind">What bounds it.</param>
/// <param name="Mass">Largest net mass it allows, kg.</param>
public sealed record CatchBound(CatchBoundKind Kind, Mass Mass)
{
    /// <summary>All bounds of one meter, in a fixed order.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="container">Its container; null when unknown.</param>
    /// <param name="uncertainty">Relative standard uncertainty u_k of the value planned with.</param>
    /// <param name="plan">The plan.</param>
    /// <remarks>
    /// Container: V rho fill / (1 + 2 u_k), so that it does not run over when the value planned with is too low by its
    /// expanded uncertainty. Scale and lifting count the container; the run is bounded by R W v t.
    /// </remarks>
    internal static List<CatchBound> Of(PlannedMeter meter, Container? container, double uncertainty, CatchPlanQuestion plan)
    {
        var bounds = new List<CatchBound>(4);
        var tare = container?.Tare.Kilograms ?? 0;
        if (container is { Volume: { } volume } && meter.BulkDensity is { } density)
        {
            var full = volume.CubicMetres * density.KilogramsPerCubicMetre * (container.Fill ?? CatchPlanDefaults.ContainerFill);
            bounds.Add(new(CatchBoundKind.Container, new Mass(full / (1 + 2 * uncertainty))));
        }

        if (plan.Scale.Capacity is { } capacity)
            bounds.Add(new(CatchBoundKind.ScaleCapacity, new Mass(capacity.Kilograms - tare)));
        bounds.Add(new(CatchBoundKind.LiftLimit, new Mass((plan.LiftLimit?.Kilograms ?? CatchPlanDefaults.LiftLimitKilograms) - tare)));
        var flow = meter.TargetRate.KilogramsPerSquareMetre * meter.CoveredWidth.Metres * plan.GroundSpeed.MetresPerSecond;
        bounds.Add(new(CatchBoundKind.LongestRun, new Mass(flow * plan.LongestRunSeconds)));
        return bounds;
    }
}
