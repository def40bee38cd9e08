using CalibrationApi.Http;
using CalibrationApi.Machines;
using CalibrationApi.Records;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Adoptions;

/// <summary>Reads adoptions and the values in force that follow from them.</summary>
internal static class ReadAdoptions
{
    /// <summary>Reads an adoption.</summary>
    /// <remarks>As entered, with the mass per revolution that follows and with what came to light since.</remarks>
    /// <param name="id">Id of the adoption.</param>
    /// <param name="units">Units of the answer; as-asked keeps what was entered.</param>
    /// <response code="200">The adoption.</response>
    public static IResult Get(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null)
    {
        using var connection = database.Open();
        return AdoptionStore.Find(connection, workspace, id) is { } adoption
            ? new RecordResult(AdoptionBody.Write(connection, workspace, adoption, MachineTimeZone.Of(connection, workspace, adoption.Series.Machine), units))
            : Pages.NotFound();
    }

    /// <summary>Lists the values in force on a machine.</summary>
    /// <remarks>
    /// For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom
    /// and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,
    /// but the number stays in force until another is adopted, because the controller uses it until then.
    /// </remarks>
    /// <param name="id">Id of the machine.</param>
    /// <param name="meter">Only this position.</param>
    /// <param name="element">Only this metering element.</param>
    /// <param name="setting">Only this setting.</param>
    /// <param name="product">Only the product with this id.</param>
    /// <param name="at">In force at this instant, RFC 3339; default now.</param>
    /// <param name="units">Units of the answer; as-asked keeps what was entered.</param>
    /// <response code="200">The values in force.</response>
    public static Results<JsonAnswer<ValuesInForceAnswer>, ProblemResult> InForce(
        string id,
        CalibrationDatabase database,
        Workspace workspace,
        [FromQuery] string? meter = null,
        [FromQuery] string? element = null,
        [FromQuery] string? setting = null,
        [FromQuery] string? product = null,
        [FromQuery] string? at = null,
        [FromQuery] string? units = null)
    {
        var instant = EnteredInstant.Now;
        if (at is not null && !EnteredInstant.TryRead(at, out instant))
            return ProblemResult.Invalid([EnteredInstant.WrongParameter("at")]);
        var items = database.Read(connection =>
        {
            var records = new RecordsReadOnce(connection, workspace);
            return records.Find<MachineRequest>(RecordKind.Machines, id) is { } machine
                ? AdoptionStore.InForceOnMachine(connection, workspace, id, instant)
                    .Where(adoption => Fits(adoption.Series, meter, element, setting, product))
                    .Select(adoption => AdoptionBody.InForce(records, adoption, machine.TimeZone ?? LocalDate.Utc, units))
                    .ToArray()
                : null;
        });
        return items is null ? Pages.NotFound() : JsonAnswer.Of(new ValuesInForceAnswer { Items = items });
    }

    private static bool Fits(Series series, string? meter, string? element, string? setting, string? product) =>
        (meter ?? series.Meter) == series.Meter && (element ?? series.Element) == series.Element
        && (setting ?? series.Setting) == series.Setting && (product ?? series.Product) == series.Product;
}
