using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Wheels;

/// <summary>The width of a machine: built, driven and typed in.</summary>
/// <param name="Nominal">Openers times spacing.</param>
/// <param name="PassToPass">Distance from a mark on the machine to the same mark in the next pass; null when not measured.</param>
/// <param name="InForce">Width typed into the controller; null when not stated: the nominal one.</param>
/// <remarks>
/// <para>Formula: W_eff = pass to pass, otherwise nominal W; overlap o = W - W_eff, m; overlap share W / W_eff - 1; rate factor W_used /
/// W_eff.</para>
/// <para>Range: widths above 0; an overlap below 0 is a strip left, and then share and factor go the other way.</para>
/// <para>Source: common practice, no published source; published overlaps in tests.</para>
/// <para>Accuracy: 1e-12 relative (WorkingWidthTests); published overlaps as printed, or the table of cases says why not
/// (DistanceTradeTests).</para>
/// </remarks>
public sealed record WorkingWidth(Length Nominal, Length? PassToPass = null, Length? InForce = null)
{
    /// <summary>Width covered anew with each pass: pass to pass where it was measured, otherwise the nominal width.</summary>
    public Length Effective => PassToPass ?? Nominal;

    /// <summary>Width that the controller reckons with.</summary>
    public Length Used => InForce ?? Nominal;

    /// <summary>Nominal less effective width: positive where passes overlap, negative where strips are left.</summary>
    public Length Overlap => new(Nominal.Metres - Effective.Metres);

    /// <summary>Overlap as a share of the width covered anew, W / (W - o) - 1: the product that a field takes beyond its area.</summary>
    public double OverlapShare => Nominal.Metres / Effective.Metres - 1;

    /// <summary>Rate applied to the field over the rate set: W_used / W_effective.</summary>
    public double RateFactor => Used.Metres / Effective.Metres;

    /// <summary>
    /// How many times wider, or narrower, than built a machine may be driven or typed in; what differs more is a slip and no overlap.
    /// Judgement, no published source.
    /// </summary>
    public const double MostTimes = 2;

    /// <summary>What is said of a width that does not fit the openers.</summary>
    public const string AtOdds =
        "This width is less than half or more than twice openers times spacing. Check the three numbers and their units.";

    /// <summary>A width does not fit the openers and their spacing.</summary>
    /// <param name="metres">The width W, m.</param>
    /// <param name="openers">Number of openers n.</param>
    /// <param name="spacing">Distance between neighbours a, m.</param>
    /// <remarks>Formula: W / (n a) above 2 or below 1/2.</remarks>
    public static bool IsAtOdds(double metres, int openers, double spacing) =>
        metres / (openers * spacing) is > MostTimes or < 1 / MostTimes;

    /// <summary>The nominal width of a machine: openers times spacing.</summary>
    /// <param name="openers">Number of openers, above 0.</param>
    /// <param name="spacing">Distance between neighbours.</param>
    /// <remarks>Formula: W = n a, openers times spacing, m.</remarks>
    public static Length OfOpeners(int openers, Length spacing) => new(openers * spacing.Metres);
}
