using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Adoptions;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Reads adoptions and the values in force that follow from them.</summary>
internal static class ReadAdoptions
{
    /// <summary>Most values on a page: each reads the test that it rests on.</summary>
    public const int LongestPage = 500;

    private static readonly ListTable Table = ListTable.Of<ValueInForceAnswer>();

    /// <summary>Reads an adoption.</summary>
    /// <remarks>As entered, with the mass per revolution that follows and with what came to light since.</remarks>
    /// <param name="id">Id of the adoption.</param>
    /// <param name="units">Units of the answer; as-asked keeps what was entered.</param>
    /// <response code="200">The adoption.</response>
    public static IResult Get(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null) =>
        AdoptionRecords.All.Get(id, database, workspace, units);

    /// <summary>Lists the values in force on a machine.</summary>
    /// <remarks>
    /// For each meter, element, setting and product with an adopted value: the number in the controller, since when, by whom
    /// and why, with which lot and treatment it was found, and what it rests on. A correction of the test behind it is said,
    /// but the number stays in force until another is adopted, because the controller uses it until then. Page by page, at most
    /// 500 at once; follow the next link. As JSON, CSV or NDJSON by the Accept header.
    /// </remarks>
    /// <param name="id">Id of the machine.</param>
    /// <response code="200">The values in force.</response>
    public static IResult InForce(
        string id,
        [AsParameters] ValuesInForceQuery query,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        Cursors cursors
    )
    {
        var instant = EnteredInstant.Now;
        if (query.At is not null && !EnteredInstant.TryRead(query.At, out instant))
            return ProblemResult.Invalid([EnteredInstant.WrongParameter("at")]);
        if (database.Read(connection => new WorkspaceReader(connection, workspace).Machine(id)) is not { } machine)
            return Pages.NotFound();
        var scope = string.Join('\0', workspace, "values in force", id, query.At, query.Meter, query.Element, query.Setting, query.Product);
        return SimpleList.Of(
            query,
            context,
            cursors,
            scope,
            Table,
            database,
            (connection, after, most) =>
            {
                var reader = new WorkspaceReader(connection, workspace);
                return AdoptionStore
                    .InForceOnMachine(connection, workspace, id, instant, query.Series, after.Length == 0 ? null : after, most)
                    .Select(adoption =>
                        (KeptJson.Node(ValueInForce.Of(reader, adoption, machine.TimeZone ?? LocalDate.Utc, query.Units)), adoption.Id)
                    );
            },
            LongestPage
        );
    }
}
