using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>What is known of the scale that weighed the catches.</summary>
/// <remarks>
/// Accuracy: 1e-12 relative against the formulas by hand (ScaleTests); the printed factors of a rounded reading (RoundingReferenceTests).
/// </remarks>
public sealed record Scale
{
    private const double UnverifiedShareOfLoad = 0.005;

    /// <summary>Smallest step of the display, kg; above 0.</summary>
    public required Mass Division { get; init; }

    /// <summary>Class on the data plate of a verified scale.</summary>
    public AccuracyClass? AccuracyClass { get; init; }

    /// <summary>Verification interval e of the data plate; the division when absent.</summary>
    public Mass? VerificationInterval { get; init; }

    /// <summary>Limit of error stated by the maker or the owner, kg, for a scale without a class; goes before the class.</summary>
    public Mass? StatedAccuracy { get; init; }

    /// <summary>Span error found by a check; corrected, and its uncertainty takes the place of every limit.</summary>
    public KnownScaleError? KnownError { get; init; }

    /// <summary>Largest load, container included.</summary>
    public Mass? Capacity { get; init; }

    /// <summary>Standard deviation of one reading of a load that swings or creeps, beyond the division.</summary>
    public Mass? ReadingScatter { get; init; }

    /// <summary>The mass behind an indicated one: m = m_ind / (1 + eps).</summary>
    internal double Corrected(double indicated) => KnownError is { } error ? indicated / (1 + error.Relative) : indicated;

    /// <summary>Half width of the rectangular distribution of the span error at a net load, kg, and where it comes from.</summary>
    /// <param name="net">Net load, kg, above 0.</param>
    /// <remarks>
    /// <para>Formula: OIML R 76 in service for a classed scale; the stated accuracy where one is given; otherwise the larger of one
    /// division and 0.5 % of the load (judgement, no published source).</para>
    /// <para>Range: loads above 0, at most the capacity. A zero offset cancels between gross and tare.</para>
    /// <para>Source: OIML R 76-1:2006, 3.5.1 and 3.5.2 (SOURCES.md, key OIML-R76); 0.5 % is judgement.</para>
    /// </remarks>
    public (Mass Limit, string Origin) LimitAt(Mass net) => (MassLimitAt(net), OriginOfLimit);

    private string OriginOfLimit =>
        StatedAccuracy is not null ? "stated accuracy of the scale"
        : AccuracyClass is { } accuracyClass ? $"OIML R 76, class {accuracyClass}, in service"
        : "scale without class, stated accuracy or check: the larger of one division and 0.5 % of the load; judgement";

    private Mass MassLimitAt(Mass net)
    {
        if (StatedAccuracy is { } stated)
            return stated;
        if (AccuracyClass is not { } accuracyClass)
            return new Mass(Math.Max(Division.Kilograms, UnverifiedShareOfLoad * net.Kilograms));
        var interval = (VerificationInterval ?? Division).Kilograms;
        return new Mass(OimlR76.LimitInService(accuracyClass, net.Kilograms / interval) * interval);
    }

    /// <summary>Standard uncertainty of the span at a net load, relative.</summary>
    /// <param name="net">Net load, kg, above 0.</param>
    /// <remarks>
    /// <para>Formula: a / (sqrt(3) m) with limit a and load m, both kg; where a check found the error, the standard uncertainty of
    /// that.</para>
    /// <para>Range: loads above 0.</para>
    /// <para>Source: JCGM 100:2008, 4.3.7 (SOURCES.md, key GUM).</para>
    /// </remarks>
    public double RelativeSpanUncertainty(Mass net) =>
        KnownError is { } error ? error.StandardUncertainty : MassLimitAt(net).Kilograms / (Math.Sqrt(3) * net.Kilograms);

    /// <summary>Random standard uncertainty of one net mass from the display and from a swinging load, kg.</summary>
    /// <param name="tare">How the empty container was taken into account.</param>
    /// <returns>
    /// Two displayed readings: d / sqrt(6). Zeroed on the device, whose zero is kept to a quarter of a division: d sqrt(1/12 + 1/48).
    /// Shared tare: the gross part d / sqrt(12) alone; the tare part is common to all catches (<see cref="SharedTareUncertainty"/>).
    /// </returns>
    /// <remarks>
    /// <para>Formula: u^2 = r + s^2, with r the rounding of the readings as returned and s the scatter of one reading, kg.</para>
    /// <para>Range: a division above 0; a scatter of 0 where none is stated.</para>
    /// <para>Source: JCGM 100:2008, F.2.2.1 for the rounding of an indication (SOURCES.md, key GUM); the quarter division of a zero setting
    /// is OIML R 76-1:2006, 4.5.2 (key OIML-R76).</para>
    /// </remarks>
    public double RandomUncertainty(TareReading tare)
    {
        var d = Division.Kilograms;
        var rounding = tare switch
        {
            TareReading.Each => d * d / 6,
            TareReading.Shared => d * d / 12,
            TareReading.Zeroed => d * d * (1.0 / 12 + 1.0 / 48),
            _ => throw new ArgumentOutOfRangeException(nameof(tare)),
        };
        var scatter = ReadingScatter?.Kilograms ?? 0;
        return Math.Sqrt(rounding + scatter * scatter);
    }

    /// <summary>Standard uncertainty of one tare reading that serves all catches, kg; 0 for the other ways of taring.</summary>
    /// <param name="tare">How the empty container was taken into account.</param>
    /// <remarks>
    /// <para>Formula: d / sqrt(12) with division d, kg; 0 unless the tare is shared.</para>
    /// <para>Range: a division above 0.</para>
    /// <para>Source: JCGM 100:2008, F.2.2.1 (SOURCES.md, key GUM).</para>
    /// </remarks>
    public double SharedTareUncertainty(TareReading tare) => tare == TareReading.Shared ? Division.Kilograms / Math.Sqrt(12) : 0;

    /// <summary>What the answer must say about the scale when nothing but its division is known.</summary>
    /// <param name="net">The net load.</param>
    /// <param name="member">The member of the question that the scale stands in.</param>
    internal Assumption SpanAssumption(Mass net, string member = "scale")
    {
        if (KnownError is { } error)
            return new Assumption(
                "scaleError",
                new Ratio(error.StandardUncertainty),
                "standard uncertainty of the error found by the check of the scale"
            )
            {
                Member = "",
            };
        var (limit, origin) = LimitAt(net);
        return new Assumption("scaleLimit", limit, origin) { Member = StatedAccuracy is null ? $"{member}/statedAccuracy" : "" };
    }
}
