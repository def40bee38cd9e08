using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>A wheel that drives meters: what a turn of it covers and has to deliver.</summary>
/// <param name="Circumference">Rolling circumference C, above 0.</param>
/// <param name="Width">Width fed W, above 0: of the machine, or of one row for a meter of one row.</param>
/// <param name="Skid">Share s of its turns that the wheel lacks in the field, below 1: positive when it turns less often than the distance
/// asks for, negative when it turns more often.</param>
/// <remarks>
/// <para>Formula: R = k g (1 - s) / (C W), kg/m2: k mass per meter revolution, g meter revolutions per turn of the wheel. A wheel that
/// skids by s puts down s less than the same turns do in the yard.</para>
/// <para>Range: circumference and width above 0, skid below 1, negative for a wheel that turns too often.</para>
/// <para>Source: SOURCES.md, keys FIELD-2007, chapter 8 (without skid), and NIRALA-2011 (skid).</para>
/// <para>Accuracy: there and back within 1e-12 (DriveWheelTests); published turns and rates as printed, or the table of cases says why not
/// (DriveWheelTradeTests).</para>
/// </remarks>
public readonly record struct DriveWheel(Length Circumference, Length Width, double Skid = 0)
{
    /// <summary>Ground covered in one turn in the field: C W / (1 - s).</summary>
    public Area AreaPerTurn => new(Circumference.Metres * Width.Metres / (1 - Skid));

    /// <summary>Turns that the wheel makes over an area in the field: A (1 - s) / (C W).</summary>
    /// <param name="area">Area A.</param>
    public double TurnsFor(Area area) => area.SquareMetres / AreaPerTurn.SquareMetres;

    /// <summary>Rate of a mass per turn: m / (ground covered in a turn).</summary>
    /// <param name="perTurn">Mass m that a turn delivers over the width, per revolution of the wheel.</param>
    public MassPerArea Rate(MassPerRevolution perTurn) => new(perTurn.KilogramsPerRevolution / AreaPerTurn.SquareMetres);

    /// <summary>Rate of a meter geared to the wheel.</summary>
    /// <param name="perMeterRevolution">Mass k per revolution of the meter, over the width.</param>
    /// <param name="meterRevolutionsPerTurn">Gearing g, above 0.</param>
    public MassPerArea Rate(MassPerRevolution perMeterRevolution, double meterRevolutionsPerTurn) =>
        Rate(new MassPerRevolution(perMeterRevolution.KilogramsPerRevolution * meterRevolutionsPerTurn));

    /// <summary>Mass that a turn has to deliver for a rate: the inverse of <see cref="Rate(MassPerRevolution)"/>.</summary>
    /// <param name="rate">Target rate R.</param>
    public MassPerRevolution MassPerTurn(MassPerArea rate) => new(rate.KilogramsPerSquareMetre * AreaPerTurn.SquareMetres);

    /// <summary>
    /// Gearing for a rate: meter revolutions per turn of the wheel, the inverse of <see cref="Rate(MassPerRevolution, double)"/>.
    /// </summary>
    /// <param name="rate">Target rate R, above 0.</param>
    /// <param name="perMeterRevolution">Mass k per revolution of the meter, over the width, above 0.</param>
    /// <remarks>
    /// <para>Formula: g = R C W / ((1 - s) k), the mass that a turn has to deliver over that of a meter revolution.</para>
    /// <para>Range: kg/m2 and kg per revolution, both above 0.</para>
    /// <para>Source: SOURCES.md, key GATE-RATIO.</para>
    /// <para>Accuracy: 1e-12, shown in DriveWheelTests and DriveWheelTradeTests.</para>
    /// </remarks>
    public double MeterRevolutionsPerTurn(MassPerArea rate, MassPerRevolution perMeterRevolution) =>
        MassPerTurn(rate).KilogramsPerRevolution / perMeterRevolution.KilogramsPerRevolution;
}
