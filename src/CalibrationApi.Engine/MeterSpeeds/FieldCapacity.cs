using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Area worked per time.</summary>
public static class FieldCapacity
{
    /// <summary>Area worked in one hour: W v times field efficiency times one hour.</summary>
    /// <param name="workingWidth">Width worked W, above 0.</param>
    /// <param name="groundSpeed">Ground speed v, above 0.</param>
    /// <param name="fieldEfficiency">Share of the time spent working at that width and speed, above 0, at most 1; 1 gives the theoretical capacity.</param>
    /// <remarks>Source: University of Kentucky AEN-73 and Iowa State PM 696 (SOURCES.md, keys UKY-73 and ISU-696); checked in FieldCapacityReferenceTests.</remarks>
    public static Area PerHour(Length workingWidth, Speed groundSpeed, double fieldEfficiency = 1) =>
        new(workingWidth.Metres * groundSpeed.MetresPerSecond * fieldEfficiency * 3600);
}
