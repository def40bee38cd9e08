// Writes the tables of units with which the C# and the TypeScript client convert, from the list that the service answers:
// node src/Clients/generate-units.mjs
import { readFile, writeFile } from "node:fs/promises";

const at = path => new URL(path, import.meta.url);
const { units } = JSON.parse(await readFile(at("../../openapi/examples/listUnits.answer.json"), "utf8"));
const rows = units.map(({ symbol, dimension, toSi, offsetInSi = 0 }) => ({ symbol, values: `"${dimension}", ${toSi.numerator}, ${toSi.denominator}, ${offsetInSi}` }));

await writeFile(at("CSharp/Models/UnitFactors.cs"), `namespace CalibrationApi.Client.Models;

/// <summary>The units of the service with their exact factors, as <c>GET /v1/units</c> lists them; a test compares the two.</summary>
internal static class UnitFactors
{
    public static IReadOnlyDictionary<string, UnitFactor> All { get; } =
        new Dictionary<string, UnitFactor>(StringComparer.Ordinal)
        {
${rows.map(({ symbol, values }) => `            ["${symbol}"] = new(${values}),`).join("\n")}
        };
}
`);

await writeFile(at("TypeScript/src/units.ts"), `// The units of the service with their exact factors, as GET /v1/units lists them; a test compares the two.

/** What one of a unit is in SI units: dimension, numerator, denominator and, for temperatures, what is added. */
export const unitFactors = {
${rows.map(({ symbol, values }) => `  "${symbol}": [${values}],`).join("\n")}
} as const;
`);
