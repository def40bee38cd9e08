using System.Globalization;
using System.Text.Json.Nodes;

namespace CalibrationApi.Testing;

/// <summary>
/// A machine with as many meters and elements as may be, each with something to tell, and a plan that uses all its meters. Everything in it
/// is invented.
/// </summary>
public static class LargestMachine
{
    /// <summary>Its meters.</summary>
    public const int Meters = 64;

    /// <summary>Elements of each meter.</summary>
    public const int Elements = 20;

    /// <summary>
    /// Puts into the database, for each element of <c>@machine</c>, a copy of the first stored test; two statements, the second with
    /// a copy of the first adoption on each of these tests.
    /// </summary>
    public static IReadOnlyList<string> ValueForEachElement { get; } =
    [
        $"""
            with recursive numbers (n) as (select 0 union all select n + 1 from numbers where n + 1 < {Meters * Elements})
            insert into catch_tests (workspace, id, machine, meter, element, setting, product, lot, scale, plan, verdict, value, random, occurred_at, offset_minutes,
                                     received_at, entered, resolved, answer, context, engine_version, fingerprint)
            select workspace, substr(id, 1, 28) || printf('%08x', n), @machine, 'meter ' || (n / {Elements}), 'element ' || (n % {Elements}), setting, product, lot, scale, plan,
                   verdict, value, random, occurred_at, offset_minutes, received_at, entered, resolved, answer, context, engine_version, fingerprint
            from numbers, (select * from catch_tests order by seq limit 1)
            """,
        """
            insert into adoptions (workspace, id, machine, meter, element, setting, product, lot, test, entered_value, entered_unit, value, occurred_at, offset_minutes,
                                   received_at, body, fingerprint)
            select t.workspace, t.id, t.machine, t.meter, t.element, a.setting, a.product, a.lot, t.id, a.entered_value, a.entered_unit, a.value, a.occurred_at, a.offset_minutes,
                   a.received_at, a.body, a.fingerprint
            from catch_tests t, (select * from adoptions order by seq limit 1) a where t.machine = @machine
            """,
    ];

    /// <summary>The machine. Its limits leave little room, so that there is something to say of every element.</summary>
    public static JsonObject Machine() =>
        new()
        {
            ["name"] = "wide seeder",
            ["workingWidth"] = Quantity(9, "m"),
            ["meters"] = new JsonArray([
                .. Enumerable
                    .Range(0, Meters)
                    .Select(meter =>
                        (JsonNode)
                            new JsonObject
                            {
                                ["position"] = string.Create(CultureInfo.InvariantCulture, $"meter {meter}"),
                                ["coveredWidth"] = Quantity(9, "m"),
                                ["speedLimits"] = new JsonObject { ["minimum"] = Quantity(25, "rpm"), ["maximum"] = Quantity(35, "rpm") },
                                ["elements"] = new JsonArray([
                                    .. Enumerable
                                        .Range(0, Elements)
                                        .Select(element =>
                                            (JsonNode)
                                                new JsonObject
                                                {
                                                    ["name"] = string.Create(CultureInfo.InvariantCulture, $"element {element}"),
                                                    ["displacementPerRevolution"] = Quantity(
                                                        Math.Round(0.3 + 0.1 * element + 0.001 * meter, 3),
                                                        "L"
                                                    ),
                                                    ["pocketsPerRevolution"] = 12,
                                                }
                                        ),
                                ]),
                            }
                    ),
            ]),
        };

    /// <summary>A plan that uses every meter.</summary>
    public static JsonObject Plan(string machine, string product, string lot, string scale) =>
        new()
        {
            ["name"] = "wide field",
            ["machine"] = machine,
            ["scale"] = scale,
            ["groundSpeed"] = Quantity(9, "km/h"),
            ["workingSpeeds"] = new JsonObject { ["minimum"] = Quantity(5, "km/h"), ["maximum"] = Quantity(12, "km/h") },
            ["area"] = Quantity(48, "ha"),
            ["meters"] = new JsonArray([
                .. Enumerable
                    .Range(0, Meters)
                    .Select(meter =>
                        (JsonNode)
                            new JsonObject
                            {
                                ["meter"] = string.Create(CultureInfo.InvariantCulture, $"meter {meter}"),
                                ["element"] = "element 2",
                                ["product"] = product,
                                ["lot"] = lot,
                                ["targetRate"] = Quantity(90 + meter, "kg/ha"),
                            }
                    ),
            ]),
        };

    private static JsonObject Quantity(double value, string unit) => new() { ["value"] = value, ["unit"] = unit };
}
